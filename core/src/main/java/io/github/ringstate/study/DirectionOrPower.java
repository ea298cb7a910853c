package io.github.ringstate.study;

import io.github.ringstate.encounter.Approach;
import io.github.ringstate.encounter.BulkFlight;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.pilot.Recognition;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.study.EqualTerms.Way;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How much of the lateral recovery's advantage is its direction, and how much is that its power
 * comes at once: the same lean ahead and aside, each with climb power at once and with the
 * collective reduced first, on {@link EqualTerms}.
 *
 * <p>The four losses give the advantage of leaning aside with power at once over leaning ahead with
 * the collective reduced first. Each of the two changes may be made before the other or after it;
 * its part is the mean of what it saves either way, so that the parts add up to the advantage.
 *
 * <p>Losses are in m, from onset; infinite where the descent was not arrested.
 *
 * @param delay from onset to the pilot's action, s
 * @param forward loss by the forward recovery as it is taught, with its standard numbers
 * @param lateral loss by the lateral recovery as it is taught, with its standard numbers
 * @param aheadReduced loss leaning ahead, the collective reduced first
 * @param aheadAtOnce loss leaning ahead with power at once
 * @param asideReduced loss leaning aside, the collective reduced first
 * @param asideAtOnce loss leaning aside with power at once
 * @param levelAtOnce loss with the same power at once and no lean; not a way out
 */
public record DirectionOrPower(
    double delay,
    double forward,
    double lateral,
    double aheadReduced,
    double aheadAtOnce,
    double asideReduced,
    double asideAtOnce,
    double levelAtOnce) {

  /**
   * Flies the comparison.
   *
   * @param base what all flights share; its recovery and its delay play no part; away from the
   *     ground
   * @param numbers a value for each of {@link EqualTerms#PARAMETERS}
   * @param delays from the start of the clock of the recognition to the pilot's action, s
   * @return a comparison for each delay; none if the ring state is not met
   * @throws IllegalArgumentException if there is ground, which would cut losses short
   */
  public static List<DirectionOrPower> fly(
      Encounter base, ParameterSet numbers, List<Double> delays) {
    if (base.height().isPresent()) {
      throw new IllegalArgumentException("losses are compared away from the ground");
    }
    Approach approach = Approach.fly(base, Simulator.fast());
    if (!approach.onset()) {
      return List.of();
    }
    BulkFlight flight = new BulkFlight(approach);
    return delays.stream().map(delay -> at(flight, base.recognition(), numbers, delay)).toList();
  }

  private static DirectionOrPower at(
      BulkFlight flight, Recognition clock, ParameterSet numbers, double delay) {
    Recognition recognition = clock.withDelay(delay);
    return new DirectionOrPower(
        delay,
        loss(flight, Technique.FORWARD.standard(), recognition),
        loss(flight, Technique.LATERAL.standard(), recognition),
        loss(flight, new EqualTerms(Way.AHEAD, false, numbers), recognition),
        loss(flight, new EqualTerms(Way.AHEAD, true, numbers), recognition),
        loss(flight, new EqualTerms(Way.ASIDE, false, numbers), recognition),
        loss(flight, new EqualTerms(Way.ASIDE, true, numbers), recognition),
        loss(flight, new EqualTerms(Way.NOWHERE, true, numbers), recognition));
  }

  private static double loss(BulkFlight flight, Recovery recovery, Recognition recognition) {
    Ending ending = flight.fly(recovery, recognition);
    return ending == Ending.ARRESTED ? flight.altitudeLoss() : Double.POSITIVE_INFINITY;
  }

  /**
   * How much less is lost leaning aside with power at once than leaning ahead with the collective
   * reduced first.
   *
   * @return the height, m; empty where one of the four descents was not arrested
   */
  public OptionalDouble advantage() {
    return known(aheadReduced - asideAtOnce);
  }

  /**
   * The part of the advantage that is direction.
   *
   * @return the height, m, negative if leaning aside costs more; empty as above
   */
  public OptionalDouble byDirection() {
    return known(0.5 * (aheadReduced - asideReduced + (aheadAtOnce - asideAtOnce)));
  }

  /**
   * The part of the advantage that is power at once.
   *
   * @return the height, m; empty as above
   */
  public OptionalDouble byPower() {
    return known(0.5 * (aheadReduced - aheadAtOnce + (asideReduced - asideAtOnce)));
  }

  private OptionalDouble known(double height) {
    double all = aheadReduced + aheadAtOnce + asideReduced + asideAtOnce;
    return Double.isInfinite(all) ? OptionalDouble.empty() : OptionalDouble.of(height);
  }
}
