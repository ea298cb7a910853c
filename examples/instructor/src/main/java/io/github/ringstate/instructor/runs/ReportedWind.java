package io.github.ringstate.instructor.runs;

import io.github.ringstate.air.PowerLawWind;
import io.github.ringstate.air.Wind;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.text.RangeText;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.run.RunPlan;

/**
 * A wind as it is reported: 10 m above ground.
 *
 * @param fromDeg where it comes from, deg clockwise from north
 * @param meanKt mean speed, kt
 * @param gustKt greatest speed, kt, not below the mean
 * @param exponent power of height with which both grow
 */
record ReportedWind(double fromDeg, double meanKt, double gustKt, double exponent) {

  /**
   * Speed at a height over the speed reported.
   *
   * @param heightFt height above ground, ft
   * @return the ratio
   * @throws UserError if the gust grows beyond what is accepted
   */
  double ratio(double heightFt) {
    double ratio = PowerLawWind.of(Wind.CALM, exponent).speedRatio(Unit.FOOT.toSi(heightFt));
    if (!(gustKt * ratio <= RunPlan.WIND.high())) {
      throw UserError.usage(
          "--wind-kt or --gust-kt with --wind-exponent cannot make "
              + Decimals.fixed(gustKt * ratio, 1)
              + " kt at the height flown"
              + UserError.ALLOWED
              + RangeText.of(RunPlan.WIND));
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
    return gustKt == 0
        ? "calm"
        : "from "
            + Decimals.brief(fromDeg)
            + " deg, "
            + units.given(Unit.KNOT, meanKt)
            + (gustKt > meanKt ? ", gusts " + units.given(Unit.KNOT, gustKt) : ", no gusts");
  }
}
