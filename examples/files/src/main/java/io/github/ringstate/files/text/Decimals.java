package io.github.ringstate.files.text;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as text: a point, no grouping, whatever the locale; zero has no sign. */
public final class Decimals {

  private static final int MOST_DECIMALS = 3;

  private Decimals() {}

  /**
   * A number with a fixed count of decimals.
   *
   * @param value the number; finite
   * @param decimals how many digits stand behind the point, not negative
   * @return the text
   */
  public static String fixed(double value, int decimals) {
    return new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }

  /**
   * A number that a user gave: one decimal, or as many as it was given with, up to three.
   *
   * @param value the number; finite
   * @return the text
   */
  public static String given(double value) {
    return fixed(value, decimalsOf(value));
  }

  /**
   * How many decimals a number is written with.
   *
   * @param value the number; finite
   * @return one to three
   */
  public static int decimalsOf(double value) {
    int scale = rounded(value).scale();
    return Math.min(MOST_DECIMALS, Math.max(1, scale));
  }

  /**
   * A number without needless decimals, for a sentence.
   *
   * @param value the number; finite
   * @return the text, for instance {@code 2} or {@code 0.5}
   */
  public static String brief(double value) {
    return rounded(value).toPlainString();
  }

  /**
   * As finely as any number is written: finer than people give one, coarser than what a conversion
   * between units leaves behind.
   *
   * @param value the number; finite
   * @return the number with three decimals at most
   */
  public static BigDecimal rounded(double value) {
    return new BigDecimal(value).setScale(MOST_DECIMALS, RoundingMode.HALF_UP).stripTrailingZeros();
  }

  /**
   * Rounds a number upwards from what is {@link #rounded written} of it.
   *
   * @param value the number; finite
   * @param decimals how many digits are to stand behind the point
   * @return the rounded number
   */
  public static double up(double value, int decimals) {
    return rounded(value).setScale(decimals, RoundingMode.CEILING).doubleValue();
  }

  /**
   * Rounds a number downwards from what is {@link #rounded written} of it.
   *
   * @param value the number; finite
   * @param decimals how many digits are to stand behind the point
   * @return the rounded number
   */
  public static double down(double value, int decimals) {
    return rounded(value).setScale(decimals, RoundingMode.FLOOR).doubleValue();
  }
}
