package io.github.ringstate.validation.results;

import io.github.ringstate.analysis.best.BestRecovery;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.study.PilotStudy;
import io.github.ringstate.study.Progress;
import io.github.ringstate.study.Sampling;
import io.github.ringstate.validation.open.Summary;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What one encounter costs. Losses are in m, infinite where a descent is not arrested.
 *
 * @param value what varies, in SI units
 * @param best the least loss that a search found; empty if it found none that arrests
 * @param ways what each way out costs
 */
public record LossPoint(double value, OptionalDouble best, List<Way> ways) {

  /** The ways out, in order. */
  public static final List<Technique> TECHNIQUES =
      Technique.ALL.stream().filter(Technique::wayOut).toList();

  private static final long SEED = 1;

  /**
   * One way out.
   *
   * @param technique which
   * @param standard the loss of one pilot with standard numbers
   * @param people losses of people with the standard model
   * @param models losses of that pilot over models; those that do not meet the ring state are left
   *     out
   * @param excess what that pilot, within the limits of the best, loses more than it, m; empty if
   *     either is not arrested
   */
  public record Way(
      Technique technique,
      double standard,
      Summary people,
      Summary models,
      OptionalDouble excess) {}

  /** Copies the list. */
  public LossPoint {
    ways = List.copyOf(ways);
  }

  static LossPoint of(double value, Encounter encounter, Effort effort) {
    Optional<BestRecovery> best = best(encounter, effort);
    List<Way> ways = new ArrayList<>();
    for (Technique technique : TECHNIQUES) {
      Encounter flown = encounter.withRecovery(technique.standard());
      ways.add(
          new Way(
              technique,
              loss(flown),
              people(encounter, technique, effort.pilots()),
              Summary.of(
                  effort.models().stream()
                      .mapToDouble(model -> loss(with(flown, model)))
                      .filter(loss -> !Double.isNaN(loss))
                      .toArray()),
              best.isPresent() ? best.get().excess(technique) : OptionalDouble.empty()));
    }
    return new LossPoint(
        value,
        best.isPresent() ? OptionalDouble.of(best.get().loss()) : OptionalDouble.empty(),
        ways);
  }

  private static Optional<BestRecovery> best(Encounter encounter, Effort effort) {
    try {
      return Optional.of(effort.search().apply(encounter));
    } catch (ArithmeticException noneArrests) {
      return Optional.empty();
    }
  }

  private static Summary people(Encounter encounter, Technique technique, int pilots) {
    return Summary.of(
        new PilotStudy(encounter, technique, Optional.empty(), SEED)
            .fly(Sampling.of(pilots), Progress.SILENT)
            .losses());
  }

  private static Encounter with(Encounter encounter, RingStateInflow model) {
    return encounter.withInflow(model, encounter.boundary().over(model));
  }

  /** The loss, m: infinite where the descent is not arrested, NaN where there is no ring state. */
  private static double loss(Encounter encounter) {
    Outcome outcome = encounter.fly(Simulator.fast(), null);
    if (outcome.ending() == Ending.NO_ONSET) {
      return Double.NaN;
    }
    return outcome.ending() == Ending.ARRESTED
        ? outcome.altitudeLoss().orElseThrow()
        : Double.POSITIVE_INFINITY;
  }
}
