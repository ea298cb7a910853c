package io.github.ringstate.instructor.report;

import java.util.function.DoubleUnaryOperator;

/**
 * Heights rounded for people, to the precision that the model deserves: 1 ft below 100 ft, 5 ft
 * from there, 10 ft from 1000 ft.
 */
public final class Feet {

  /** What a conversion between metres and feet may leave behind; no height. */
  private static final double ROUNDING = 1e-9;

  private Feet() {}

  /**
   * Rounds a height.
   *
   * @param feet the height, ft, not negative
   * @return the rounded height, ft
   */
  public static double rounded(double feet) {
    return rounded(feet, Math::rint);
  }

  /**
   * Rounds a height upwards.
   *
   * @param feet the height, ft, not negative
   * @return the rounded height, ft, not below the height
   */
  public static double up(double feet) {
    return rounded(feet, value -> Math.ceil(value - ROUNDING) + 0.0);
  }

  /**
   * Rounds a height downwards.
   *
   * @param feet the height, ft, not negative
   * @return the rounded height, ft, not above the height
   */
  public static double down(double feet) {
    return rounded(feet, value -> Math.floor(value + ROUNDING));
  }

  private static double rounded(double feet, DoubleUnaryOperator rounding) {
    double whole = rounding.applyAsDouble(feet);
    if (whole < 100) {
      return whole;
    }
    double fives = 5 * rounding.applyAsDouble(feet / 5);
    return fives < 1000 ? fives : 10 * rounding.applyAsDouble(feet / 10);
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
