package io.github.ringstate.study.run;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Whether the airspeed is kept if the ground speed is held through a turn downwind.
 *
 * @param finding how it comes out: with a limit where the airspeed would be lost
 * @param airspeed what is left of the airspeed, m/s
 * @param groundSpeed the least ground speed, no less than planned, that keeps the least airspeed
 *     with the wind behind, m/s; empty where none that is accepted does, or there are no limits
 */
public record TurnCheck(Finding finding, double airspeed, OptionalDouble groundSpeed) {

  /**
   * Checks the turn.
   *
   * @param study the run
   * @param limits the airspeeds that keep the margins; empty where there are none
   * @return what becomes of the airspeed
   */
  public static TurnCheck of(RunStudy study, Optional<RunLimits> limits) {
    double airspeed = study.airspeedDownwind();
    if (limits.isEmpty()) {
      return new TurnCheck(Finding.FAILS, airspeed, OptionalDouble.empty());
    }
    RunLimits keep = limits.get();
    return new TurnCheck(
        keep.below(airspeed) ? Finding.HOLDS_WITH_A_LIMIT : Finding.HOLDS,
        airspeed,
        keep.minimumGroundSpeed(study.plan(), study.plan().wind().downwind()));
  }
}
