package io.github.ringstate.calibration;

import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.ApproachHands;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.FlightLimits;
import io.github.ringstate.pilot.Hands;
import io.github.ringstate.pilot.Recognition;
import io.github.ringstate.pilot.Spread;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.UncertainNumbers;
import io.github.ringstate.recording.Estimate;
import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * How an encounter was flown: the numbers that belong to it alone and are estimated beside those
 * that are asked for. Each is a function of a number that is standard normal before the recording
 * is looked at: when the flight began, the numbers of the entry and those of the recovery, and when
 * the pilot moved.
 */
final class PilotNumbers {

  private static final NormalDistribution NORMAL = new NormalDistribution();

  /** How far the start may be from where the onsets meet, s. */
  private static final double START = 2;

  /** The first movement after the recorded onset where none is seen, s. Assumed: prompt. */
  private static final Estimate PROMPT = new Estimate(1.5, 1.5);

  /** The least deviation of a movement that is seen, s; attitude and lever are readings too. */
  private static final double SEEN = 1;

  /** A movement still further ahead of the onset counts as so many deviations ahead of it. */
  private static final double FARTHEST_AHEAD = 5;

  /** How far a number of the entry may be off, as a deviation of its logit. Assumed: widely. */
  private static final double ENTRY = 1;

  /** How long a flight is kept after its arrest, s. */
  static final double PAST_ARREST = 4;

  private final Demonstration demonstration;
  private final List<Parameter> entry;
  private final List<Spread> technique;
  private final Estimate movement;

  PilotNumbers(Demonstration demonstration) {
    this.demonstration = demonstration;
    entry =
        demonstration.entry().parameters().stream()
            .filter(parameter -> !ApproachHands.PARAMETERS.contains(parameter))
            .toList();
    technique = demonstration.technique().spreads();
    double onset = demonstration.found().onsetTime().value();
    movement =
        demonstration
            .found()
            .movement()
            .map(seen -> new Estimate(seen.time().value(), SEEN))
            .orElse(new Estimate(onset + PROMPT.value(), PROMPT.deviation()));
  }

  int size() {
    return 2 + entry.size() + technique.size();
  }

  /** How much later than thought at first the flight began, s. */
  double later(double[] normals, int from) {
    return START * normals[from];
  }

  /**
   * How long after an onset the pilot first moved, s. What is known of the movement is a normal
   * distribution, of which only the part after the onset can have been: so every unknown has a
   * delay of its own, and none is without effect.
   *
   * @param onset s on the clock of the recording
   */
  double delay(double[] normals, int from, double onset) {
    double ahead = Math.min((onset - movement.value()) / movement.deviation(), FARTHEST_AHEAD);
    double after =
        NORMAL.cumulativeProbability(-normals[from + size() - 1])
            * NORMAL.cumulativeProbability(-ahead);
    double moved = -NORMAL.inverseCumulativeProbability(inside(after));
    double delay = movement.deviation() * (moved - ahead);
    return Math.min(Math.max(delay, 0), Recognition.DELAY.high());
  }

  /** The encounter with a craft that has the numbers asked for; its delay is to be set. */
  Encounter encounter(Helicopter craft, double[] normals, int from) {
    ParameterSet entered = demonstration.numbers();
    for (int i = 0; i < entry.size(); i++) {
      Parameter parameter = entry.get(i);
      entered = entered.with(parameter, value(parameter, normals[from + 1 + i]));
    }
    ParameterSet recovered = ParameterSet.standard(demonstration.technique().parameters());
    for (int i = 0; i < technique.size(); i++) {
      Spread spread = technique.get(i);
      double chance = NORMAL.cumulativeProbability(normals[from + 1 + entry.size() + i]);
      recovered = recovered.with(spread.parameter(), spread.value(inside(chance)));
    }
    return demonstration
        .flown()
        .withCraft(craft)
        .withInflow(craft.inflow(), demonstration.flown().boundary().over(craft.inflow()))
        .withEntry(demonstration.entry().maker().apply(entered))
        .withRecovery(demonstration.technique().maker().apply(together(recovered)))
        .withRecognition(Recognition.afterOnset(0))
        .withLimits(FlightLimits.STANDARD.with(FlightLimits.TIME_PAST_ARREST, PAST_ARREST));
  }

  /**
   * A hand that moves hardly later than the other comes in as quickly, so that the flight does not
   * jump where both move at once.
   */
  private static ParameterSet together(ParameterSet technique) {
    if (!technique.parameters().contains(Hands.COLLECTIVE_LATER)) {
      return technique;
    }
    double later = 2 * Math.abs(technique.get(Hands.COLLECTIVE_LATER));
    return technique.with(
        Hands.COMING_IN,
        Math.min(Math.max(later, Hands.COMING_IN.quantity().low()), Hands.COMING_IN.standard()));
  }

  private double value(Parameter parameter, double normal) {
    double expected = demonstration.numbers().get(parameter);
    if (parameter.equals(demonstration.entry().wind())) {
      double wind = expected + demonstration.windDeviation() * normal;
      return Math.min(Math.max(wind, parameter.quantity().low()), parameter.quantity().high());
    }
    return UncertainNumbers.value(
        parameter, UncertainNumbers.logit(parameter, expected) + ENTRY * normal);
  }

  private static double inside(double chance) {
    return Math.min(Math.max(chance, 1e-12), 1 - 1e-12);
  }
}
