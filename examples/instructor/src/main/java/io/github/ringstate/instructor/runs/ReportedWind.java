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
 * @param aloft mean winds above it, in place of the power law
 */
record ReportedWind(
    double from, double mean, double gust, boolean gustAssumed, double exponent, WindAloft aloft) {

  /** No wind. */
  static final ReportedWind CALM =
      new ReportedWind(0, 0, 0, false, PowerLawWind.EXPONENT_OPEN_LAND, WindAloft.NONE);

  boolean isCalm() {
    return gust == 0;
  }

  /**
   * The wind at a height.
   *
   * @param height height above ground, m
   * @param allowance what moves beside it, m/s
   * @return the wind, calm if no wind is reported at any height
   * @throws UserError if the gust grows beyond what is accepted, or no wind is known so high
   */
  RunWind at(double height, double allowance) {
    if (isCalm() && !aloft.isGiven()) {
      return RunWind.calm(allowance);
    }
    PowerLawWind law = PowerLawWind.of(Wind.CALM, exponent);
    double ratio = law.speedRatio(height);
    // below 10 m the wind aloft says nothing
    if (!aloft.isGiven() || height <= law.referenceHeight()) {
      return new RunWind(from, mean * ratio, accepted(gust * ratio), allowance);
    }
    Wind wind = aloft.at(height, new WindAloft.Level(law.referenceHeight(), from, mean));
    return new RunWind(
        wind.directionFrom(),
        wind.speed(),
        accepted(wind.speed() + (gust - mean) * ratio),
        allowance);
  }

  private static double accepted(double greatest) {
    double most = RunWind.SPEED.unit().fromSi(greatest);
    if (!(most <= RunWind.SPEED.high())) {
      throw UserError.usage(
          "--wind-kt or --gust-kt with --wind-exponent or --wind-aloft cannot make "
              + Decimals.fixed(most, 1)
              + " kt at the height flown"
              + UserError.ALLOWED
              + RangeText.of(RunWind.SPEED));
    }
    return greatest;
  }

  /**
   * The wind in words.
   *
   * @param units the units to speak in
   * @return for instance {@code from 240 deg, 15 kt, gusts 22 kt}
   */
  String inWords(UnitSystem units) {
    return RunsMessages.SAY.reported(
        Headings.windFrom(from),
        units.typed(Unit.KNOT, mean),
        units.typed(Unit.KNOT, gust),
        gust > 0,
        gust > mean);
  }
}
