package io.github.ringstate.chance;

/** Bits that look random and are the same whenever they are asked for. */
final class Bits {

  private static final long GOLDEN = 0x9E3779B97F4A7C15L;

  private Bits() {}

  /** The bits at a place of the sequence that a seed begins. */
  static long of(long seed, long place) {
    return at(mixed(seed), place);
  }

  /** The same, of a key that is mixed already: the outputs of SplitMix64 in any order. */
  static long at(long key, long place) {
    return mixed(key + GOLDEN * (place + 1));
  }

  /** The finaliser of MurmurHash3's 64-bit variant 13 (Stafford), as SplitMix64 uses it. */
  private static long mixed(long bits) {
    long z = (bits ^ (bits >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }
}
