package io.github.ringstate.study.run;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.HeightVelocityCurve;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.quantity.Unit;
import java.util.Optional;

/** Runs for tests. */
final class Runs {

  private Runs() {}

  /** Wind from north, no allowance beside it; kt. */
  static RunWind wind(double wind, double gust) {
    return new RunWind(0, Unit.KNOT.toSi(wind), Unit.KNOT.toSi(gust), 0);
  }

  /**
   * Wind from north, no allowance; speeds in kt, descent 100 ft/min, 500 ft above ground, 50 to be
   * left, none lower than 500.
   */
  static RunPlan plan(Helicopter craft, double wind, double gust, double groundSpeed) {
    return plan(craft, HeightVelocityCurve.NONE, wind(wind, gust), groundSpeed, 500, 500);
  }

  /** The same in another wind, by a curve, at a height above the lowest of runs, both in ft. */
  static RunPlan plan(
      Helicopter craft,
      HeightVelocityCurve curve,
      RunWind wind,
      double groundSpeed,
      double height,
      double lowest) {
    return new RunPlan(
        craft,
        curve,
        StandardAtmosphere.at(0),
        wind,
        Unit.KNOT.toSi(groundSpeed),
        Unit.FOOT_PER_MINUTE.toSi(100),
        Unit.FOOT.toSi(height),
        Unit.FOOT.toSi(lowest),
        Unit.FOOT.toSi(50));
  }

  static RunStudy study(double wind, double gust, double groundSpeed) {
    return new RunStudy(plan(DemoCraft.TRAINER, wind, gust, groundSpeed));
  }

  /** Airspeeds to keep, kt, in steps of a knot. */
  static RunLimits limits(double minimum, double maximum) {
    return new RunLimits(
        Unit.KNOT.toSi(minimum), RunLimits.Bound.ASKED, Unit.KNOT.toSi(maximum), Unit.KNOT.toSi(1));
  }

  /** Loss of half and of most of the pilots, ft; none below 0. */
  static Optional<RunLoss> loss(double halfFt, double mostFt) {
    // a hair less, so that 450 and 50 are 500 whatever the rounding
    return mostFt < 0
        ? Optional.empty()
        : Optional.of(new RunLoss(Unit.FOOT.toSi(halfFt - 1e-9), Unit.FOOT.toSi(mostFt - 1e-9)));
  }
}
