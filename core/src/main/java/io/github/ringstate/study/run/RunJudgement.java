package io.github.ringstate.study.run;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * A verdict on a run on a track, with the checks that it follows from.
 *
 * <p>Four things keep the craft off the ground: an airspeed away from the ring state and out of the
 * height-velocity area, in turns too, a height that covers what it costs to meet the ring state all
 * the same, and the power to hover. Each is judged whether or not the run meets the ring state, and
 * the worst finding gives the verdict.
 *
 * @param verdict the verdict
 * @param airspeed the check of the airspeed on this track
 * @param turn the check of a turn downwind
 * @param height the check of the height
 * @param hover the check of the power to hover
 * @param limits the airspeeds that keep the margins; empty where there are none
 */
public record RunJudgement(
    RunVerdict verdict,
    AirspeedCheck airspeed,
    TurnCheck turn,
    HeightCheck height,
    HoverCheck hover,
    Optional<RunLimits> limits) {

  /**
   * Judges a run.
   *
   * @param study the run
   * @param limits the airspeeds that keep the margins; empty where there are none
   * @param track direction flown over the ground, rad clockwise from north
   * @param worst the worst loss on any track; empty where the ring state is met on none
   * @return the judgement
   */
  public static RunJudgement of(
      RunStudy study, Optional<RunLimits> limits, double track, Optional<RunLoss> worst) {
    AirspeedCheck airspeed = AirspeedCheck.of(study.plan(), limits, track);
    TurnCheck turn = TurnCheck.of(study, limits);
    HeightCheck height = HeightCheck.of(study.plan(), worst);
    HoverCheck hover = HoverCheck.of(study);
    return new RunJudgement(
        verdict(airspeed.finding(), turn.finding(), height.finding(), hover.finding()),
        airspeed,
        turn,
        height,
        hover,
        limits);
  }

  static RunVerdict verdict(Finding... findings) {
    return switch (Stream.of(findings).max(Finding::compareTo).orElse(Finding.HOLDS)) {
      case HOLDS -> RunVerdict.FLY;
      case HOLDS_WITH_A_LIMIT -> RunVerdict.FLY_WITH_A_LIMIT;
      case NOT_AS_PLANNED -> RunVerdict.NOT_AS_PLANNED;
      case FAILS -> RunVerdict.DO_NOT_FLY;
    };
  }

  /**
   * The airspeed to keep at least, turns included, which the run as planned keeps on this track.
   *
   * @return the airspeed, m/s; empty unless the run is flown with this limit
   */
  public OptionalDouble minimumAirspeed() {
    return verdict == RunVerdict.FLY_WITH_A_LIMIT && limits.isPresent()
        ? OptionalDouble.of(limits.get().minimum())
        : OptionalDouble.empty();
  }

  /**
   * The ground speed that would be flown in place of the one planned.
   *
   * @return the ground speed, m/s; empty unless the run is not flown as planned
   */
  public OptionalDouble groundSpeedInstead() {
    return verdict == RunVerdict.NOT_AS_PLANNED ? airspeed.groundSpeed() : OptionalDouble.empty();
  }
}
