package io.github.ringstate.study.run;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * A verdict on a run on a track, with the checks that it follows from.
 *
 * <p>Three things keep the craft off the ground: an airspeed away from the ring state, a height
 * that covers what it costs to meet it all the same, and the power to hover. A run is flown as
 * planned where all three checks hold. The worst of them gives the verdict, and two that are short
 * are as bad as one that fails: an airspeed that nothing but the pilot keeps does not make up for a
 * height that half of the pilots would lose (assumed).
 *
 * @param verdict the verdict
 * @param airspeed the check of the airspeed
 * @param height the check of the height
 * @param hover the check of the power to hover
 * @param limits the airspeeds that keep the margins; empty where there are none
 */
public record RunJudgement(
    RunVerdict verdict,
    AirspeedCheck airspeed,
    HeightCheck height,
    HoverCheck hover,
    Optional<RunLimits> limits) {

  /**
   * Judges a run.
   *
   * @param study the run
   * @param limits the airspeeds that keep the margins; empty where there are none
   * @param track the run on a track
   * @param loss altitude loss if the ring state is met from this track; empty where it is not met
   * @param worst the worst such loss on any track; empty where it is met on none
   * @return the judgement
   */
  public static RunJudgement of(
      RunStudy study,
      Optional<RunLimits> limits,
      RunTrack track,
      Optional<RunLoss> loss,
      Optional<RunLoss> worst) {
    double direction = track.triangle().track();
    AirspeedCheck airspeed = AirspeedCheck.of(study.plan(), limits, direction);
    HeightCheck height = HeightCheck.of(study, limits, direction, loss, worst);
    HoverCheck hover = HoverCheck.of(study);
    return new RunJudgement(
        verdict(airspeed.finding(), height.finding(), hover.finding()),
        airspeed,
        height,
        hover,
        limits);
  }

  static RunVerdict verdict(Finding... findings) {
    Finding worst = Stream.of(findings).max(Finding::compareTo).orElse(Finding.HOLDS);
    boolean two = Stream.of(findings).filter(each -> each == Finding.SHORT).count() > 1;
    return switch (worst) {
      case HOLDS -> RunVerdict.FLY;
      case HOLDS_WITH_A_LIMIT -> RunVerdict.FLY_WITH_A_LIMIT;
      case SHORT -> two ? RunVerdict.DO_NOT_FLY : RunVerdict.FLY_WITH_A_LIMIT;
      case FAILS -> RunVerdict.DO_NOT_FLY;
    };
  }

  /**
   * The airspeed to keep at least, turns included.
   *
   * @return the airspeed, m/s; empty unless the run is flown with this limit
   */
  public OptionalDouble minimumAirspeed() {
    return verdict == RunVerdict.FLY_WITH_A_LIMIT
            && airspeed.reason() != AirspeedCheck.Reason.HIGH
            && limits.isPresent()
        ? OptionalDouble.of(limits.get().minimum())
        : OptionalDouble.empty();
  }

  /**
   * The ground speed to keep to at most.
   *
   * @return the ground speed, m/s; empty unless the run is flown with this limit
   */
  public OptionalDouble maximumGroundSpeed() {
    return verdict == RunVerdict.FLY_WITH_A_LIMIT && airspeed.reason() == AirspeedCheck.Reason.HIGH
        ? airspeed.groundSpeed()
        : OptionalDouble.empty();
  }
}
