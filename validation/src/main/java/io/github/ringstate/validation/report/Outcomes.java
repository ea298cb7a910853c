package io.github.ringstate.validation.report;

import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.Status;
import java.util.List;

/**
 * How many checks came out how.
 *
 * @param all how many there are
 * @param passed how many passed
 * @param known how many are known differences
 * @param failed how many failed
 */
record Outcomes(long all, long passed, long known, long failed) {

  static Outcomes of(List<Check> checks) {
    return new Outcomes(
        checks.size(),
        count(checks, Status.PASSED),
        count(checks, Status.KNOWN_DIFFERENCE),
        count(checks, Status.FAILED));
  }

  private static long count(List<Check> checks, Status status) {
    return checks.stream().filter(check -> check.status() == status).count();
  }
}
