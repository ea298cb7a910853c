package io.github.ringstate.validation.check;

import java.util.Optional;

/**
 * What is asked of the library, and against whom. A question is a verification, the least that it
 * can be, until it is declared to be more.
 *
 * @param name one line that tells the check from all others
 * @param quantity what is compared
 * @param unit its unit; {@code 1} for a pure number
 * @param kind what an answer can prove
 * @param comparedWith what the library is compared with
 * @param obtained how the expected number came here
 * @param source where it comes from
 */
public record Question(
    String name,
    String quantity,
    String unit,
    CheckKind kind,
    ComparedWith comparedWith,
    Obtained obtained,
    Source source) {

  /**
   * The same question, to which numbers of the library were fitted or chosen.
   *
   * @return a calibration
   */
  public Question calibration() {
    return of(CheckKind.CALIBRATION, obtained);
  }

  /**
   * The same question, measured or stated by others, to which nothing was fitted.
   *
   * @return a validation
   */
  public Question validation() {
    return of(CheckKind.VALIDATION, obtained);
  }

  /**
   * Whether this is a validation that counts: of a source that can be found again, and by a number
   * that was read and not remembered.
   *
   * @return true if so
   */
  public boolean counts() {
    return kind == CheckKind.VALIDATION
        && source.citable()
        && (obtained == Obtained.PRINTED || obtained == Obtained.TRANSCRIBED);
  }

  /**
   * The same question, its expected number come by otherwise.
   *
   * @param how how the number came here
   * @return the question
   */
  public Question as(Obtained how) {
    return of(kind, how);
  }

  private Question of(CheckKind newKind, Obtained how) {
    return new Question(name, quantity, unit, newKind, comparedWith, how, source);
  }

  /**
   * Expects a value.
   *
   * @param expected the value, in the question's unit
   * @param tolerance how far the library may be from it
   * @param actual what the library gives
   * @param why why the tolerance is what it is
   * @return the check
   */
  public Check near(double expected, double tolerance, double actual, String why) {
    return check(new Expectation(expected, tolerance, false), actual, why);
  }

  /**
   * Expects a value in a range.
   *
   * @param low the range's lower end, in the question's unit
   * @param high the range's upper end
   * @param actual what the library gives
   * @param why why the range is what it is
   * @return the check
   */
  public Check within(double low, double high, double actual, String why) {
    return check(new Expectation(0.5 * (low + high), 0.5 * (high - low), true), actual, why);
  }

  /**
   * Expects an error that is not above a budget.
   *
   * @param budget the greatest error allowed, in the question's unit
   * @param actual the error found
   * @param why why the budget is what it is
   * @return the check
   */
  public Check atMost(double budget, double actual, String why) {
    return check(new Expectation(0, budget, false), actual, why);
  }

  private Check check(Expectation expectation, double actual, String why) {
    return new Check(this, expectation, actual, why, Optional.empty());
  }
}
