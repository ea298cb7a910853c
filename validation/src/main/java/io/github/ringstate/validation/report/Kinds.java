package io.github.ringstate.validation.report;

import io.github.ringstate.validation.check.CheckKind;
import io.github.ringstate.validation.check.Tally;

/**
 * How many checks there are of each kind.
 *
 * @param verification how many verifications
 * @param calibration how many calibrations
 * @param validation how many validations
 * @param counted how many of these count
 */
record Kinds(long verification, long calibration, long validation, long counted) {

  static Kinds of(Tally tally) {
    return new Kinds(
        tally.count(CheckKind.VERIFICATION),
        tally.count(CheckKind.CALIBRATION),
        tally.count(CheckKind.VALIDATION),
        tally.counted().size());
  }
}
