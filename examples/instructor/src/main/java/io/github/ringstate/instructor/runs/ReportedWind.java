package io.github.ringstate.instructor.runs;

import io.github.ringstate.air.PowerLawWind;
import io.github.ringstate.air.Wind;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.text.RangeText;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.run.RunWind;

/**
 * A wind as it is reported: 10 m above ground.
 *
 * @param from where it comes from, rad clockwise from north
 * @param mean mean speed, m/s
 * @param gust greatest speed, m/s, not below the mean
 * @param gustAssumed whether nobody reported the gust
 * @param exponent power of height with which both grow
 */
record ReportedWind(double from, double mean, double gust, boolean gustAssumed, double exponent) {

  /** No wind. */
  static final ReportedWind CALM =
      new ReportedWind(0, 0, 0, false, PowerLawWind.EXPONENT_OPEN_LAND);

  boolean isCalm() {
    return gust == 0;
  }

  /**
   * Speed at a height over the speed reported.
   *
   * @param height height above ground, m
   * @return the ratio
   * @throws UserError if the gust grows beyond what is accepted
   */
  double ratio(double height) {
    double ratio = PowerLawWind.of(Wind.CALM, exponent).speedRatio(height);
    double most = RunWind.SPEED.unit().fromSi(gust * ratio);
    if (!(most <= RunWind.SPEED.high())) {
      throw UserError.usage(
          "--wind-kt or --gust-kt with --wind-exponent cannot make "
              + Decimals.fixed(most, 1)
              + " kt at the height flown"
              + UserError.ALLOWED
              + RangeText.of(RunWind.SPEED));
    }
    return ratio;
  }

  /**
   * The wind in words.
   *
   * @param units the units to speak in
   * @return for instance {@code from 240 deg, 15 kt, gusts 22 kt}
   */
  String inWords(UnitSystem units) {
    return RunsMessages.SAY.reported(
        Decimals.brief(Unit.DEGREE.fromSi(from)),
        units.typed(Unit.KNOT, mean),
        units.typed(Unit.KNOT, gust),
        gust > 0,
        gust > mean);
  }
}
