package io.github.ringstate.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.chance.IndependentStream;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.ApproachHands;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.TailwindApproach;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.pilot.Hands;
import io.github.ringstate.pilot.Spread;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.UncertainNumbers;
import io.github.ringstate.recording.Channel;
import io.github.ringstate.recording.Estimate;
import io.github.ringstate.recording.FoundEncounter;
import io.github.ringstate.recording.Movement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PilotNumbersTest {

  private static final double TIME = 40;

  private static final List<Parameter> TWO =
      List.of(RingStateInflow.ONSET_TOTAL, RingStateInflow.EXIT_TOTAL);

  /** An encounter in which the movement is seen at some time on the clock of the recording. */
  private static Demonstration moved(Technique technique, double delay, double later, long seed) {
    Encounter flown =
        Flights.encounter(Flights.CRAFT)
            .withRecovery(technique.draw(new IndependentStream(3, seed)))
            .withDelay(delay);
    Demonstration one = Flights.demonstration(flown, technique, Flights.SLOW, seed).orElseThrow();
    return with(one, one.found().onsetTime().value() + later);
  }

  private static Demonstration with(Demonstration one, double time) {
    return with(one, Optional.of(new Movement(Channel.PITCH, new Estimate(time, 0.2), -0.2, 0, 0)));
  }

  private static Demonstration with(Demonstration one, Optional<Movement> movement) {
    FoundEncounter found = one.found();
    return new Demonstration(
        one.name(),
        one.motion(),
        Flights.with(found, movement, found.arrestTime()),
        one.flown(),
        one.entry(),
        one.numbers(),
        one.windDeviation(),
        one.technique());
  }

  private static double delay(PilotNumbers pilot, double normal, double onset) {
    double[] normals = new double[pilot.size()];
    normals[pilot.size() - 1] = normal;
    return pilot.delay(normals, 0, onset);
  }

  /** The area under a normal density, of deviation 1 s about the movement, by Simpson's rule. */
  private static double area(double from, double to) {
    int parts = 2000;
    double step = (to - from) / parts;
    double sum = 0;
    for (int k = 0; k <= parts; k++) {
      double x = from + k * step - TIME;
      sum += (k == 0 || k == parts ? 1 : k % 2 == 1 ? 4 : 2) * FastMath.exp(-x * x / 2);
    }
    return sum * step / 3;
  }

  /**
   * What is known of a movement, given that it comes after the onset: the part of the density up to
   * the delay is that of the standard normal one up to its number (tables: 0.841345 at 1, 0.977250
   * at 2).
   */
  @ParameterizedTest
  @ValueSource(doubles = {-6, -1, 0, 0.5, 2, 4})
  void aDelayIsWhatIsKnownOfTheMovementGivenThatItFollowsTheOnset(double ahead) {
    PilotNumbers pilot = new PilotNumbers(with(moved(Technique.FORWARD, 1, 0, 5), TIME));
    double onset = TIME + ahead;
    double all = area(onset, TIME + 12);
    double[] normals = {-2, -1, 0, 1, 2};
    double[] parts = {0.022750, 0.158655, 0.5, 0.841345, 0.977250};
    for (int k = 0; k < normals.length; k++) {
      double delay = delay(pilot, normals[k], onset);
      assertEquals(parts[k], area(onset, onset + delay) / all, 1e-5, ahead + " " + normals[k]);
    }
    // far ahead of the onset the number still tells
    assertTrue(delay(pilot, 0.5, TIME + 30) > 1.2 * delay(pilot, 0, TIME + 30));
  }

  private static double chance(double normal) {
    return new NormalDistribution().cumulativeProbability(normal);
  }

  /**
   * By hand: the wind by its deviation, another number of the entry by a deviation of 1 of its
   * logit, a number of the technique by what its spread has at the chance of the normal; a hand
   * that is late by t comes in over twice that, as far as that may be and no longer than usual.
   */
  @ParameterizedTest
  @ValueSource(doubles = {-1.5, -0.2, 0.4})
  void theNumbersOfAnEncounterLieAboutWhatIsThoughtOfThem(double normal) {
    Demonstration one = moved(Technique.FORWARD, 1, 1, 5);
    PilotNumbers pilot = new PilotNumbers(one);
    List<Parameter> entry = new ArrayList<>(one.entry().parameters());
    entry.removeAll(ApproachHands.PARAMETERS);
    List<Spread> spreads = one.technique().spreads();
    assertEquals(2 + entry.size() + spreads.size(), pilot.size());
    int from = 3;
    double[] normals = new double[from + pilot.size()];
    ParameterSet entered = one.numbers();
    for (int i = 0; i < entry.size(); i++) {
      double own = normal + 0.1 * i;
      normals[from + 1 + i] = own;
      Parameter parameter = entry.get(i);
      double thought = one.numbers().get(parameter);
      double low = parameter.quantity().low();
      double high = parameter.quantity().high();
      double odds = (thought - low) / (high - thought) * FastMath.exp(own);
      double value =
          parameter.equals(one.entry().wind())
              ? thought + one.windDeviation() * own
              : low + (high - low) * odds / (1 + odds);
      entered = entered.with(parameter, value);
    }
    ParameterSet recovered = ParameterSet.standard(one.technique().parameters());
    for (int i = 0; i < spreads.size(); i++) {
      double own = 0.3 * i - normal;
      normals[from + 1 + entry.size() + i] = own;
      recovered = recovered.with(spreads.get(i).parameter(), spreads.get(i).value(chance(own)));
    }
    double late = 2 * Math.abs(recovered.get(Hands.COLLECTIVE_LATER));
    recovered =
        recovered.with(
            Hands.COMING_IN,
            Math.max(Hands.COMING_IN.quantity().low(), Math.min(late, Hands.COMING_IN.standard())));
    Encounter asked = pilot.encounter(DemoCraft.UTILITY, normals, from);
    ParameterSet approached = ((TailwindApproach) asked.entry()).numbers();
    for (Parameter parameter : entered.parameters()) {
      assertEquals(entered.get(parameter), approached.get(parameter), 1e-9, parameter.name());
    }
    assertEquals(one.technique().maker().apply(recovered), asked.recovery());
    assertEquals(DemoCraft.UTILITY, asked.craft());
    assertEquals(DemoCraft.UTILITY.inflow(), asked.inflow());
    assertEquals(2 * 0.7, pilot.later(new double[] {0, 0, 0, 0.7}, from), 1e-15);
  }

  /** A movement that nobody saw is thought to come 1.5 s after the recorded onset. */
  @Test
  void aMovementThatIsNotSeenIsThoughtToBePrompt() {
    Demonstration seen = moved(Technique.FORWARD, 1, 1, 5);
    PilotNumbers pilot = new PilotNumbers(with(seen, Optional.empty()));
    double onset = seen.found().onsetTime().value();
    // of a normal density of deviation 1.5 s about 1.5 s, what is after the onset: tables of
    // chances
    double all = 0.841345;
    double half = 1 - chance((delay(pilot, 0, onset) - 1.5) / 1.5);
    assertEquals(all / 2, half, 1e-6);
  }

  /** What brakes the approach may be taken for the recovery: the fit must find the real one. */
  @Test
  void aMovementSeenBeforeTheOnsetDoesNotHoldTheFit() {
    UncertainNumbers prior = Flights.prior(TWO);
    Calibration calibration = new Calibration(prior, Flights.CRAFT);
    UncertainNumbers early =
        calibration
            .fit(
                List.of(
                    moved(Technique.FORWARD, 1.2, -0.3, 5), moved(Technique.LATERAL, 1, -0.3, 6)))
            .posterior();
    UncertainNumbers right =
        calibration
            .fit(List.of(moved(Technique.FORWARD, 1.2, 1.2, 5), moved(Technique.LATERAL, 1, 1, 6)))
            .posterior();
    for (int i = 0; i < TWO.size(); i++) {
      assertEquals(right.mean()[i], early.mean()[i], right.deviation(i), TWO.get(i).name());
    }
  }
}
