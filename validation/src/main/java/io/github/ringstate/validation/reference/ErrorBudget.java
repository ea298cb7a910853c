package io.github.ringstate.validation.reference;

/**
 * How large the errors in one column may be, or are.
 *
 * @param largest the largest size of an error, in the column's unit
 * @param rootMeanSquare the root of the mean of the squared errors, in the column's unit
 */
public record ErrorBudget(double largest, double rootMeanSquare) {

  /**
   * The errors of some values.
   *
   * @param expected what they should be
   * @param actual what they are, in the same order
   * @return largest and root-mean-square error; NaN if any value is NaN or there are none
   */
  public static ErrorBudget of(double[] expected, double[] actual) {
    if (expected.length != actual.length) {
      throw new IllegalArgumentException(
          expected.length + " expected values, but " + actual.length + " actual ones");
    }
    double largest = 0;
    double squares = 0;
    for (int i = 0; i < expected.length; i++) {
      double error = Math.abs(actual[i] - expected[i]);
      largest = Math.max(largest, error);
      squares += error * error;
    }
    double mean = squares / expected.length;
    return new ErrorBudget(Double.isNaN(mean) ? Double.NaN : largest, Math.sqrt(mean));
  }
}
