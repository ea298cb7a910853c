package io.github.ringstate.chance;

import org.hipparchus.random.SobolSequenceGenerator;

/**
 * The Sobol sequence with the direction numbers of Joe and Kuo (SIAM J. Sci. Comput. 30, 2008), in
 * the order of the Gray code (Antonov and Saleev 1979); any coordinate of any point is found
 * without the others. Its direction numbers are read off Hipparchus's generator.
 */
final class SobolSequence {

  /** How many coordinates a point has: more than any technique draws, and quickly read. */
  static final int DIMENSIONS = 64;

  /** Binary digits of a coordinate; the sequence has two to the power of so many points. */
  static final int DIGITS = 31;

  /** By coordinate, the last digit of each number at the right end. */
  private static final int[][] DIRECTIONS = directions();

  private SobolSequence() {}

  /** Points of which the Gray code has one digit are the direction numbers. */
  private static int[][] directions() {
    SobolSequenceGenerator generator = new SobolSequenceGenerator(DIMENSIONS);
    int[][] directions = new int[DIMENSIONS][DIGITS];
    for (int digit = 0; digit < DIGITS; digit++) {
      double[] point = generator.skipTo((int) ((2L << digit) - 1));
      for (int dimension = 0; dimension < DIMENSIONS; dimension++) {
        directions[dimension][digit] = (int) (point[dimension] * (1L << DIGITS));
      }
    }
    return directions;
  }

  /**
   * A coordinate of a point.
   *
   * @param index the point, from 0 to 2^31 - 1
   * @param dimension the coordinate, from 0
   * @return its first {@link #DIGITS} binary digits
   */
  static int digits(int index, int dimension) {
    int[] directions = DIRECTIONS[dimension];
    int digits = 0;
    for (int gray = index ^ (index >>> 1); gray != 0; gray &= gray - 1) {
      digits ^= directions[Integer.numberOfTrailingZeros(gray)];
    }
    return digits;
  }
}
