package io.github.ringstate.validation.catalogue;

/** The published curves of axial flow, written out from their formulas. */
final class PublishedFits {

  private PublishedFits() {}

  /** Leishman's quartic, chapter 2 (from memory). */
  static double quartic(double k, double z) {
    return k - 1.125 * z - 1.372 * z * z - 1.718 * Math.pow(z, 3) - 0.655 * Math.pow(z, 4);
  }

  /** Young's two segments, RAE TR 78125 (from memory). */
  static double twoSegment(double k, double z) {
    return z > -1.5 ? k * (1 - z) : k * (7 + 3 * z);
  }

  /** Momentum theory in climb, and its continuation into the descent. */
  static double climb(double z) {
    return -z / 2 + Math.sqrt(z * z / 4 + 1);
  }

  /** Momentum theory in the windmill brake state, z at most -2. */
  static double windmill(double z) {
    return -z / 2 - Math.sqrt(z * z / 4 - 1);
  }
}
