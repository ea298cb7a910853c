package io.github.ringstate.validation.check;

import java.util.Optional;

/**
 * One comparison of the library with the outside.
 *
 * @param question what is compared with whom
 * @param expectation what the source says
 * @param actual what the library gives, in the question's unit
 * @param why why the tolerance is what it is, for people
 * @param difference why the library does not agree, where it does not
 */
public record Check(
    Question question,
    Expectation expectation,
    double actual,
    String why,
    Optional<KnownDifference> difference) {

  /**
   * The same check, of which it is known that it does not agree. It fails if the library's value
   * leaves the bounds, and also if it comes to agree: the explanation is then out of date.
   *
   * @param low least value of the library that the explanation covers
   * @param high greatest value of the library that it covers
   * @param explanation why the library does not agree
   * @return the check
   */
  public Check butDiffers(double low, double high, String explanation) {
    return new Check(
        question,
        expectation,
        actual,
        why,
        Optional.of(new KnownDifference(explanation, low, high)));
  }

  /**
   * The library's value less the expected one.
   *
   * @return the error, in the question's unit; for a range, from its middle
   */
  public double error() {
    return actual - expectation.value();
  }

  /**
   * How much of the tolerance the error uses up.
   *
   * @return the size of the error over the tolerance; 1 at the edge of the tolerance
   */
  public double share() {
    double error = Math.abs(error());
    return error == 0 ? 0 : error / expectation.tolerance();
  }

  /**
   * How the check came out.
   *
   * @return the status
   */
  public Status status() {
    if (difference.isEmpty()) {
      return expectation.holds(actual) ? Status.PASSED : Status.FAILED;
    }
    return !expectation.holds(actual) && difference.get().covers(actual)
        ? Status.KNOWN_DIFFERENCE
        : Status.FAILED;
  }
}
