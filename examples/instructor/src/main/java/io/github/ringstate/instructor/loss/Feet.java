package io.github.ringstate.instructor.loss;

import io.github.ringstate.instructor.report.Decimals;

/**
 * Heights rounded for people, to the precision that the model deserves: 1 ft below 100 ft, 5 ft
 * from there, 10 ft from 1000 ft.
 */
public final class Feet {

  private Feet() {}

  /**
   * Rounds a height.
   *
   * @param feet the height, ft, not negative
   * @return the rounded height, ft
   */
  public static double rounded(double feet) {
    double whole = Math.rint(feet);
    if (whole < 100) {
      return whole;
    }
    double fives = 5 * Math.rint(feet / 5);
    return fives < 1000 ? fives : 10 * Math.rint(feet / 10);
  }

  /**
   * A height in words.
   *
   * @param feet the height, ft, not negative
   * @return the rounded height without its unit
   */
  public static String text(double feet) {
    return Decimals.fixed(rounded(feet), 0);
  }
}
