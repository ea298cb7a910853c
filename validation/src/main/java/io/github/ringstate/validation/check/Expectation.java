package io.github.ringstate.validation.check;

/**
 * What a check expects: a value with a tolerance, or a range.
 *
 * @param value the value, or the middle of the range
 * @param tolerance how far the library may be from it, or half the width of the range; not negative
 * @param range whether the source gives a range
 */
public record Expectation(double value, double tolerance, boolean range) {

  /** Checks the tolerance. */
  public Expectation {
    if (!(tolerance >= 0)) {
      throw new IllegalArgumentException("a tolerance must not be negative, but is " + tolerance);
    }
  }

  /**
   * Whether a value is as expected.
   *
   * @param actual the value
   * @return true if it lies within the tolerance; false for NaN
   */
  public boolean holds(double actual) {
    // A range ends where its ends are printed, whatever the rounding of its middle.
    return Math.abs(actual - value) <= tolerance * (range ? 1 + 1e-12 : 1);
  }
}
