package io.github.ringstate.study.sweep;

import io.github.ringstate.chance.RandomStream;

/**
 * A random order of the numbers from 0 to n - 1, any place of which is found without the others and
 * without memory: a Feistel network over the next even power of two, walked until the result falls
 * below n (Black and Rogaway, Ciphers with Arbitrary Finite Domains, CT-RSA 2002).
 */
final class Permutation {

  private static final int ROUNDS = 6;

  private final int size;
  private final int halfBits;
  private final long mask;
  private final long[] keys = new long[ROUNDS];

  Permutation(int size, RandomStream draws) {
    this.size = size;
    int bits = Math.max(2, 32 - Integer.numberOfLeadingZeros(Math.max(size - 1, 1)));
    halfBits = (bits + 1) / 2;
    mask = (1L << halfBits) - 1;
    for (int i = 0; i < ROUNDS; i++) {
      keys[i] = draws.seed();
    }
  }

  int at(int place) {
    long value = place;
    do {
      value = mixed(value);
    } while (value >= size);
    return (int) value;
  }

  private long mixed(long value) {
    long left = value >>> halfBits;
    long right = value & mask;
    for (long key : keys) {
      long next = left ^ (round(right, key) & mask);
      left = right;
      right = next;
    }
    return left << halfBits | right;
  }

  /** Any function will do; this is the finaliser of SplitMix64. */
  private static long round(long half, long key) {
    long z = half + key;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }
}
