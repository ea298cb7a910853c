package io.github.ringstate.study.run;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.quantity.Unit;
import java.util.Optional;

/** Runs for tests. */
final class Runs {

  private Runs() {}

  /** Wind from north; speeds in kt, descent 100 ft/min, 500 ft above ground, 50 to be left. */
  static RunPlan plan(Helicopter craft, double wind, double gust, double groundSpeed) {
    return new RunPlan(
        craft,
        StandardAtmosphere.at(0),
        0,
        Unit.KNOT.toSi(wind),
        Unit.KNOT.toSi(gust),
        Unit.KNOT.toSi(groundSpeed),
        Unit.FOOT_PER_MINUTE.toSi(100),
        Unit.FOOT.toSi(500),
        Unit.FOOT.toSi(50));
  }

  static RunStudy study(double wind, double gust, double groundSpeed) {
    return new RunStudy(plan(DemoCraft.TRAINER, wind, gust, groundSpeed));
  }

  /** Airspeeds to keep, kt, in steps of a knot. */
  static RunLimits limits(double minimum, double maximum) {
    return new RunLimits(Unit.KNOT.toSi(minimum), Unit.KNOT.toSi(maximum), Unit.KNOT.toSi(1));
  }

  /** Loss of half and of most of the pilots, ft; none below 0. */
  static Optional<RunLoss> loss(double halfFt, double mostFt) {
    // a hair less, so that 450 and 50 are 500 whatever the rounding
    return mostFt < 0
        ? Optional.empty()
        : Optional.of(new RunLoss(Unit.FOOT.toSi(halfFt - 1e-9), Unit.FOOT.toSi(mostFt - 1e-9)));
  }
}
