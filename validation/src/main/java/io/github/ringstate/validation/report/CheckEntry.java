package io.github.ringstate.validation.report;

import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.Expectation;
import io.github.ringstate.validation.check.KnownDifference;
import io.github.ringstate.validation.check.Question;
import io.github.ringstate.validation.check.Status;

/**
 * A check as the report prints it.
 *
 * @param name what is compared
 * @param quantity which quantity, or empty if the name says it
 * @param kind what it can prove
 * @param comparedWith what the library is compared with
 * @param obtained how the expected number was obtained
 * @param source the number of the source
 * @param place where in the source
 * @param expected the expected number or range, with its unit
 * @param tolerance the tolerance, or empty if the expectation says it
 * @param actual the library's number, with its unit
 * @param brief the same with fewer digits
 * @param error the library's number less the expected one
 * @param share the error over the tolerance
 * @param style the status for the style sheet
 * @param status the status for people
 * @param why why the tolerance is what it is
 * @param difference why the library does not agree, or empty if that is not known
 */
record CheckEntry(
    String name,
    String quantity,
    String kind,
    String comparedWith,
    String obtained,
    int source,
    String place,
    String expected,
    String tolerance,
    String actual,
    String brief,
    String error,
    String share,
    String style,
    String status,
    String why,
    String difference) {

  static CheckEntry of(Check check, Bibliography bibliography) {
    Question question = check.question();
    Expectation expectation = check.expectation();
    return new CheckEntry(
        question.name(),
        question.name().endsWith(question.quantity()) ? "" : question.quantity(),
        question.kind().label(),
        question.comparedWith().label(),
        question.obtained().label(),
        bibliography.number(question.source()),
        question.source().place(),
        expected(check),
        expectation.range() || expectation.value() == 0
            ? ""
            : "±\u00a0" + Digits.of(expectation.tolerance(), 2),
        Digits.of(check.actual(), expectation.range() ? 4 : 6) + unit(check),
        Digits.of(check.actual(), 4) + unit(check),
        Digits.of(check.error(), 3),
        share(check),
        style(check.status()),
        check.status().label(),
        check.why(),
        check.difference().map(KnownDifference::explanation).orElse(""));
  }

  private static String expected(Check check) {
    Expectation expectation = check.expectation();
    double value = expectation.value();
    double tolerance = expectation.tolerance();
    if (expectation.range()) {
      return Digits.of(value - tolerance, 4)
          + " to "
          + Digits.of(value + tolerance, 4)
          + unit(check);
    }
    return value == 0
        ? "at most " + Digits.of(tolerance, 2) + unit(check)
        : Digits.of(value, 6) + unit(check);
  }

  private static String unit(Check check) {
    String unit = check.question().unit();
    return unit.equals("1") ? "" : "\u00a0" + unit;
  }

  /** The share of the tolerance that the error takes up, in per cent. */
  static String share(Check check) {
    double percent = 100 * check.share();
    if (percent > 1000) {
      return "over 1000\u00a0%";
    }
    return percent > 0 && percent < 0.1
        ? "under 0.1\u00a0%"
        : Digits.of(percent, percent < 10 ? 1 : 3) + "\u00a0%";
  }

  private static String style(Status status) {
    return switch (status) {
      case PASSED -> "passed";
      case KNOWN_DIFFERENCE -> "known";
      case FAILED -> "failed";
    };
  }
}
