package io.github.ringstate.encounter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.CraftLimits;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.pilot.Autorotation;
import io.github.ringstate.pilot.Cockpit;
import io.github.ringstate.pilot.Lateral;
import io.github.ringstate.pilot.Phase;
import io.github.ringstate.pilot.Phases;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Arrest means arrested for good; the lowest point is that of the flight as it is sampled. */
class LastingArrestTest {

  private static final Encounter LIGHT = Encounter.of(DemoCraft.TRAINER).withEntry(new Settling());

  /** Out to the side, arrested there, the collective lowered, and raised again or not. */
  private record Twice(double lowered, double seconds, boolean again) implements Recovery {

    @Override
    public String name() {
      return "twice";
    }

    @Override
    public List<Phase> phases() {
      List<Phase> phases = new ArrayList<>();
      phases.add(Phase.of("out", Twice::out, seen -> seen.verticalSpeed() - 0.3));
      if (again) {
        phases.add(Phase.of("down", this::down, seen -> seen.sincePhaseBegan() - seconds));
        phases.add(Phase.last("up", Twice::out));
      } else {
        phases.add(Phase.last("down", this::down));
      }
      return phases;
    }

    private static void out(Cockpit seen, Controls controls) {
      controls.bank(seen.tailPush() * 0.25, 0.3);
      controls.collective(seen.hoverCollective() + Math.toRadians(1), 0.1);
    }

    private void down(Cockpit seen, Controls controls) {
      controls.bank(seen.hoverBank(), 0.3);
      controls.collective(seen.hoverCollective() - Math.toRadians(lowered), 0.1);
    }
  }

  private static double lowest(Encounter encounter) {
    return Collections.min(Samples.of(encounter, 0.005, Motion::height));
  }

  @Test
  void aLaterLowCounts() {
    Encounter twice = LIGHT.withRecovery(new Twice(2, 2, true));
    Outcome outcome = twice.fly();
    assertEquals(Ending.ARRESTED, outcome.ending());
    assertEquals(-lowest(twice), outcome.altitudeLoss().orElseThrow(), 1e-3);
    List<Occurrence> arrests =
        outcome.occurrences().stream().filter(seen -> seen.kind() == EventKind.ARREST).toList();
    assertEquals(2, arrests.size(), () -> "" + outcome);
    assertTrue(arrests.get(1).height() < arrests.get(0).height() - 0.3, () -> "" + arrests);
    assertEquals(
        arrests.get(1).time() - outcome.onsetTime().orElseThrow(),
        outcome.timeToArrest().orElseThrow(),
        1e-9);
    Occurrence last = outcome.occurrences().get(outcome.occurrences().size() - 1);
    assertEquals(EventKind.CLEAR, last.kind());
    assertEquals(arrests.get(1).height() + Unit.FOOT.toSi(20), last.height(), 1e-6);
    BulkFlight fast = new BulkFlight(Approach.fly(twice, Simulator.fast()));
    assertEquals(Ending.ARRESTED, fast.fly(twice.recovery(), twice.recognition()));
    assertEquals(outcome.altitudeLoss().orElseThrow(), fast.altitudeLoss(), 0.03);
    assertEquals(outcome.timeToArrest().orElseThrow(), fast.timeToArrest(), 0.05);
  }

  @Test
  void anArrestAfterWhichTheDescentGoesOnDoesNotLast() {
    Encounter once = LIGHT.withRecovery(new Twice(2, 0, false));
    Outcome outcome = once.fly();
    assertEquals(Ending.ARREST_NOT_LASTING, outcome.ending());
    assertTrue(outcome.altitudeLoss().isEmpty());
    assertTrue(outcome.timeToArrest().isEmpty());
    assertTrue(outcome.happened(EventKind.ARREST));
    BulkFlight fast = new BulkFlight(Approach.fly(once, Simulator.fast()));
    assertEquals(Ending.ARREST_NOT_LASTING, fast.fly(once.recovery(), once.recognition()));
    assertTrue(Double.isNaN(fast.altitudeLoss()));
    assertTrue(Double.isNaN(fast.timeToArrest()));
    double loss = -outcome.first(EventKind.ARREST).orElseThrow().height();
    Outcome grounded = once.withHeight(loss + 2).fly();
    assertEquals(Ending.GROUND, grounded.ending());
    assertEquals(loss + 2, grounded.altitudeLoss().orElseThrow(), 1e-9);
  }

  /** A rotor that is below its warning when the sink stops has not arrested it for good. */
  @Test
  void anArrestAtTheCostOfTheRotorSpeedDoesNotLast() {
    Encounter plain = LIGHT.withRecovery(new Lateral());
    assertEquals(Ending.ARRESTED, plain.fly().ending());
    Recovery pull =
        new Phases(
            "pull",
            List.of(
                Phase.last(
                    "pull",
                    (seen, controls) -> {
                      controls.bank(seen.tailPush() * 0.25, 0.3);
                      controls.collective(seen.hoverCollective() + Math.toRadians(5), 0.2);
                    })));
    Outcome outcome = LIGHT.withRecovery(pull).fly();
    assertTrue(outcome.happened(EventKind.LOW_ROTOR_SPEED), () -> "" + outcome);
    assertTrue(outcome.happened(EventKind.ARREST), () -> "" + outcome);
    assertEquals(Ending.ARREST_NOT_LASTING, outcome.ending());
  }

  /** That a flare with the collective left low drives the rotor: common practice, no source. */
  @Test
  void anArrestWithTheRotorTooFastDoesNotLast() {
    Encounter flared =
        LIGHT.withRecovery(
            new Autorotation(
                ParameterSet.standard(Autorotation.PARAMETERS)
                    .with(Autorotation.FLARE, 20)
                    .with(Autorotation.FLARE_AIRSPEED, 80)
                    .with(Autorotation.COLLECTIVE_RATE, 1)));
    Outcome outcome = flared.fly();
    assertTrue(outcome.happened(EventKind.HIGH_ROTOR_SPEED), () -> "" + outcome);
    assertTrue(outcome.happened(EventKind.ARREST), () -> "" + outcome);
    assertFalse(outcome.happened(EventKind.LOW_ROTOR_SPEED), () -> "" + outcome);
    assertEquals(Ending.ARREST_NOT_LASTING, outcome.ending());
    BulkFlight fast = new BulkFlight(Approach.fly(flared, Simulator.fast()));
    assertEquals(Ending.ARREST_NOT_LASTING, fast.fly(flared.recovery(), flared.recognition()));
    Encounter wide = flared.withCraft(flared.craft().with(CraftLimits.HIGH_ROTOR_SPEED, 130));
    assertFalse(wide.fly().happened(EventKind.HIGH_ROTOR_SPEED));
    assertEquals(Ending.ARRESTED, wide.fly().ending());
  }

  @Test
  void anArrestThatLastsEndsTheStoryAtTheArrest() {
    Encounter plain = LIGHT.withRecovery(new Lateral());
    Outcome outcome = plain.fly();
    Occurrence last = outcome.occurrences().get(outcome.occurrences().size() - 1);
    assertEquals(EventKind.ARREST, last.kind());
    assertEquals(-last.height(), outcome.altitudeLoss().orElseThrow(), 1e-12);
    double[] end = new double[1];
    Outcome sampled =
        plain.fly(
            Simulator.precise(), new Trajectory(0.01, (phase, motion) -> end[0] = motion.time()));
    assertEquals(outcome, sampled);
    assertEquals(last.time(), end[0], 0.0101);
  }
}
