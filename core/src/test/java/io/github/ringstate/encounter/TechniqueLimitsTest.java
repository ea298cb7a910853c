package io.github.ringstate.encounter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.State;
import io.github.ringstate.pilot.Autorotation;
import io.github.ringstate.pilot.CollectiveOnly;
import io.github.ringstate.pilot.Cues;
import io.github.ringstate.pilot.FirstToFire;
import io.github.ringstate.pilot.FirstToFire.Branch;
import io.github.ringstate.pilot.Forward;
import io.github.ringstate.pilot.Lateral;
import io.github.ringstate.pilot.Limited;
import io.github.ringstate.pilot.NoRecovery;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.pilot.Switched;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

class TechniqueLimitsTest {

  private static final Encounter TRAINER =
      Encounter.of(DemoCraft.TRAINER).withEntry(new Settling());

  private static ParameterSet corner(List<Parameter> parameters, SplittableRandom random) {
    ParameterSet numbers = ParameterSet.standard(parameters);
    for (Parameter parameter : parameters) {
      numbers =
          numbers.with(
              parameter,
              random.nextBoolean() ? parameter.quantity().low() : parameter.quantity().high());
    }
    return numbers;
  }

  @ParameterizedTest
  @FieldSource("io.github.ringstate.craft.DemoCraft#ALL")
  void everyTechniqueAtTheLimitsOfItsParametersEndsInADeclaredOutcome(Helicopter craft) {
    SplittableRandom random = new SplittableRandom(8);
    for (Technique technique : Technique.ALL) {
      for (int i = 0; i < 4; i++) {
        Recovery free = technique.maker().apply(corner(technique.parameters(), random));
        Recovery flown = i % 2 == 0 ? free : new Limited(free, corner(Limited.PARAMETERS, random));
        Encounter encounter =
            Encounter.of(craft).withRecovery(flown).withDelay(random.nextDouble(0, 5));
        assertSound(i < 2 ? encounter : encounter.withHeight(random.nextDouble(5, 120)));
      }
    }
  }

  private static void assertSound(Encounter encounter) {
    Outcome outcome =
        encounter.fly(
            Simulator.dormandPrince(1e-6),
            new Trajectory(
                0.25,
                (phase, seen) -> {
                  for (int i = 0; i < State.SIZE; i++) {
                    assertTrue(Double.isFinite(seen.state(i)), phase + ", state " + i);
                  }
                  assertTrue(seen.rotorSpeed() > 0, phase);
                }));
    switch (outcome.ending()) {
      case ARRESTED -> {
        assertTrue(outcome.altitudeLoss().orElseThrow() > 0);
        assertTrue(outcome.timeToArrest().orElseThrow() > 0);
      }
      case GROUND -> {
        assertEquals(encounter.height().orElseThrow(), outcome.altitudeLoss().orElseThrow(), 1e-5);
        assertTrue(outcome.impactSpeed().orElseThrow() > 0);
      }
      case NOT_ARRESTED, ARREST_NOT_LASTING, STOPPED ->
          assertFalse(outcome.altitudeLoss().isPresent());
      case NO_ONSET -> assertFalse(outcome.onsetTime().isPresent());
    }
  }

  @Test
  void aBindingLimitIsReportedOnceWhereItBegins() {
    ParameterSet tight =
        ParameterSet.standard(Limited.PARAMETERS).with(Limited.PITCH, 8).with(Limited.RATE, 60);
    Outcome held = TRAINER.withRecovery(new Limited(new Forward(), tight)).fly();
    assertEquals(
        1, held.occurrences().stream().filter(o -> o.kind() == EventKind.LIMIT_BINDS).count());
    Outcome free = TRAINER.fly();
    assertFalse(free.happened(EventKind.LIMIT_BINDS));
    assertTrue(held.altitudeLoss().orElseThrow() > free.altitudeLoss().orElseThrow());
  }

  @Test
  void limitsThatDoNotBindAreNotReported() {
    ParameterSet wide = ParameterSet.standard(Limited.PARAMETERS);
    for (Parameter parameter : List.of(Limited.PITCH, Limited.BANK, Limited.RATE)) {
      wide = wide.with(parameter, parameter.quantity().high());
    }
    wide =
        wide.with(Limited.REVERSAL_RATE, Limited.REVERSAL_RATE.quantity().high())
            .with(Limited.MINIMUM_THRUST, 0);
    Outcome limited = TRAINER.withRecovery(new Limited(new Lateral(), wide)).fly();
    assertFalse(limited.happened(EventKind.LIMIT_BINDS));
    assertEquals(
        TRAINER.withRecovery(new Lateral()).fly().altitudeLoss().orElseThrow(),
        limited.altitudeLoss().orElseThrow(),
        1e-6);
  }

  @Test
  void theThrustFloorHoldsTheCollectiveInAnEntryIntoAutorotation() {
    double free = leastLoad(new Autorotation());
    ParameterSet floor =
        ParameterSet.standard(Limited.PARAMETERS).with(Limited.MINIMUM_THRUST, 0.9);
    Recovery limited = new Limited(new Autorotation(), floor);
    double held = leastLoad(limited);
    assertTrue(free < 0.75, "least thrust " + free + " of the weight");
    assertTrue(held > 0.85, "least thrust " + held + " of the weight");
    assertTrue(TRAINER.withRecovery(limited).fly().happened(EventKind.LIMIT_BINDS));
  }

  private static double leastLoad(Recovery recovery) {
    return Collections.min(Samples.of(TRAINER.withRecovery(recovery), 0.02, Motion::loadFactor));
  }

  @Test
  void theWayBackFromABankIsHeldToTheReversalRate() {
    double free = fastestRollBack(new Lateral());
    double held = fastestRollBack(new Limited(new Lateral()));
    assertTrue(free > Math.toRadians(14), Math.toDegrees(free) + " deg/s");
    assertTrue(held < Math.toRadians(12.01), Math.toDegrees(held) + " deg/s");
  }

  private static double fastestRollBack(Recovery recovery) {
    return Collections.max(
        Samples.in(
            "level",
            TRAINER.withRecovery(recovery).withDelay(4),
            0.02,
            seen -> Math.abs(seen.state(State.BANK_RATE))));
  }

  @Test
  void aWrongFirstInstinctCostsHeightAndTheLongerTheMore() {
    double last = TRAINER.withRecovery(new Lateral()).fly().altitudeLoss().orElseThrow();
    for (double seconds : new double[] {1, 2, 3}) {
      Recovery wrong = Switched.after(new NoRecovery(), seconds, new Lateral());
      Outcome outcome = TRAINER.withRecovery(wrong).fly();
      assertEquals(Ending.ARRESTED, outcome.ending());
      assertTrue(outcome.altitudeLoss().orElseThrow() > last);
      last = outcome.altitudeLoss().orElseThrow();
      // doing nothing for a while and then the right thing is the right thing after more delay
      assertEquals(
          TRAINER
              .withRecovery(new Lateral())
              .withDelay(1 + seconds)
              .fly()
              .altitudeLoss()
              .orElseThrow(),
          last,
          0.5);
    }
  }

  @Test
  void sinkThatDoesNotAnswerThePowerMakesThePilotChangeOver() {
    Recovery changing =
        Switched.onCue(new CollectiveOnly(), Cues.sinkNotAnswering(6), new Forward());
    Encounter late = TRAINER.withDelay(4.5);
    assertEquals(Ending.NOT_ARRESTED, ending(late, new CollectiveOnly(), 200));
    assertEquals(Ending.ARRESTED, late.withRecovery(changing).fly().ending());
  }

  /** Power alone does arrest, but only after this height, m. */
  private static Ending ending(Encounter encounter, Recovery recovery, double within) {
    Outcome outcome = encounter.withRecovery(recovery).fly();
    return outcome.altitudeLoss().orElse(Double.POSITIVE_INFINITY) > within
        ? Ending.NOT_ARRESTED
        : outcome.ending();
  }

  @Test
  void theFirstCueToFireChoosesTheTechnique() {
    Recovery fast =
        new FirstToFire(
            List.of(
                new Branch(Cues.sinkShown(0, 4), new Forward()),
                new Branch(Cues.of("time", seen -> seen.sinceRecognition() - 1), new Lateral())));
    List<String> early = phases(TRAINER.withRecovery(fast).withDelay(0));
    assertTrue(early.contains("bank out") && !early.contains("nose down"), early.toString());
    List<String> late = phases(TRAINER.withRecovery(fast).withDelay(3));
    assertTrue(late.contains("nose down") && !late.contains("bank out"), late.toString());
  }

  private static List<String> phases(Encounter encounter) {
    return encounter.record().history().sampled(0.05).stream()
        .map(Instant::phase)
        .distinct()
        .toList();
  }
}
