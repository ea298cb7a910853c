package io.github.ringstate.encounter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.Trim;
import io.github.ringstate.pilot.CollectiveOnly;
import io.github.ringstate.pilot.Lateral;
import io.github.ringstate.pilot.NoRecovery;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The standard entry. */
class TailwindApproachTest {

  private static Entry with(Parameter parameter, double value) {
    return EntryKind.TAILWIND_APPROACH.with(parameter, value);
  }

  /** What is asked of the motion from the start on, every tenth of a second. */
  private static List<double[]> flown(Encounter encounter) {
    return Samples.of(encounter, 0.1, TailwindApproachTest::sample);
  }

  private static double[] sample(Motion motion) {
    return new double[] {
      motion.time(), motion.forwardAirspeed(), motion.groundSpeed(), motion.loads().shaftPower()
    };
  }

  @ParameterizedTest
  @FieldSource("io.github.ringstate.craft.DemoCraft#ALL")
  void leadsEveryDemoCraftIntoTheRingState(Helicopter craft) {
    Encounter encounter = Encounter.of(craft).withRecovery(new Lateral());
    assertEquals(new TailwindApproach(), encounter.entry());
    Outcome outcome = encounter.fly();
    assertEquals(Ending.ARRESTED, outcome.ending());
    double onset = outcome.onsetTime().orElseThrow();
    assertTrue(onset > 1 && onset < 20, "onset after " + onset + " s");
  }

  @ParameterizedTest
  @FieldSource("io.github.ringstate.craft.DemoCraft#ALL")
  void theAirspeedGoesThroughZeroBeforeTheGroundSpeedDoes(Helicopter craft) {
    List<double[]> flown = flown(Encounter.of(craft).withRecovery(new NoRecovery()).withDelay(20));
    double wind = new TailwindApproach().numbers().si(TailwindApproach.WIND);
    for (double[] at : flown) {
      assertEquals(at[2] - wind, at[1], 1e-9, "the wind is behind");
    }
    double[] still = flown.stream().filter(at -> at[1] <= 0).findFirst().orElseThrow();
    assertEquals(wind, still[2], 0.2);
    assertEquals(Unit.KNOT.toSi(30), flown.get(0)[2], 1e-9);
  }

  /** The approach takes less than the hover, and the airspeed is lost before the power is back. */
  @ParameterizedTest
  @FieldSource("io.github.ringstate.craft.DemoCraft#ALL")
  void thePowerIsLowerThanThatOfTheHoverAtOnset(Helicopter craft) {
    Encounter encounter = Encounter.of(craft).withRecovery(new NoRecovery()).withDelay(0);
    double onset = encounter.fly().onsetTime().orElseThrow();
    double hover = hoverPower(encounter);
    for (double[] at : flown(encounter)) {
      if (at[0] <= onset) {
        assertTrue(at[3] < 0.85 * hover, at[3] / hover + " of the hover at " + at[0] + " s");
      }
    }
  }

  private static double hoverPower(Encounter encounter) {
    EquationsOfMotion motion = new Scene(encounter).equations(false);
    Trim hover = Trim.find(motion, 0, 0);
    return motion.at(0, hover.state(motion, 0, 0)).loads().shaftPower();
  }

  @Test
  void morePowerAtArrivalComesLaterToTheRingStateOrNever() {
    Encounter encounter = Encounter.of(DemoCraft.TRAINER);
    double last = 0;
    for (double power : new double[] {46, 60, 70, 80, 90, 100}) {
      Outcome outcome = encounter.withEntry(with(TailwindApproach.POWER, power)).fly();
      double onset = outcome.onsetTime().orElse(Double.POSITIVE_INFINITY);
      assertTrue(onset >= last, "onset after " + onset + " s with " + power + " %");
      last = onset;
    }
    assertEquals(
        encounter.withEntry(with(TailwindApproach.POWER, 20)).fly(),
        encounter.withEntry(with(TailwindApproach.POWER, 40)).fly(),
        "less than the approach takes leaves the collective where it was");
  }

  /** Common practice, no source: a tailwind takes the airspeed away at the same ground speed. */
  @Test
  void aHeadwindKeepsTheCraftOutOfTheRingState() {
    assertEquals(
        Ending.NO_ONSET,
        Encounter.of(DemoCraft.TRAINER).withEntry(with(TailwindApproach.WIND, -20)).fly().ending());
  }

  /**
   * Common practice, no source: a craft that arrives with little power has more to make up than one
   * that has begun to settle from a hover.
   */
  @ParameterizedTest
  @ValueSource(doubles = {1, 2, 3})
  void powerAloneStopsLessOfItThanFromAHover(double delay) {
    Encounter arriving =
        Encounter.of(DemoCraft.TRAINER).withRecovery(new CollectiveOnly()).withDelay(delay);
    double loss = arriving.fly().altitudeLoss().orElse(Double.POSITIVE_INFINITY);
    double settling =
        arriving.withEntry(new Settling()).fly().altitudeLoss().orElse(Double.POSITIVE_INFINITY);
    assertTrue(loss > 1.3 * settling, loss + " m against " + settling + " m");
  }

  /** Anywhere in the ranges there is an outcome, or a sentence on why there is none. */
  @Test
  void anyNumbersGiveAnOutcomeOrAClearRefusal() {
    SplittableRandom random = new SplittableRandom(20);
    int onsets = 0;
    for (int i = 0; i < 300; i++) {
      ParameterSet numbers = ParameterSet.standard(TailwindApproach.PARAMETERS);
      for (Parameter parameter : TailwindApproach.PARAMETERS) {
        Quantity range = parameter.quantity();
        double share = random.nextDouble();
        double end = random.nextInt(8) == 0 ? Math.rint(share) : share;
        numbers = numbers.with(parameter, range.low() + end * (range.high() - range.low()));
      }
      Encounter encounter =
          Encounter.of(DemoCraft.ALL.get(i % 4))
              .withEntry(new TailwindApproach(numbers))
              .withRecovery(new Lateral());
      Outcome outcome;
      try {
        outcome = encounter.fly();
      } catch (IllegalStateException none) {
        assertTrue(none.getMessage().contains(Trim.NO_STEADY_FLIGHT), none.getMessage());
        continue;
      }
      outcome.altitudeLoss().ifPresent(loss -> assertTrue(loss >= 0, "a loss of " + loss + " m"));
      outcome.peakDescent().ifPresent(sink -> assertFalse(Double.isNaN(sink)));
      onsets += outcome.ending() == Ending.NO_ONSET ? 0 : 1;
    }
    assertTrue(onsets > 60, onsets + " of 300 reach the ring state");
  }
}
