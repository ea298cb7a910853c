package io.github.ringstate.study.run;

import static io.github.ringstate.study.run.RunLimits.Bound.ASKED;
import static io.github.ringstate.study.run.RunLimits.Bound.HEIGHT_VELOCITY;
import static io.github.ringstate.study.run.RunLimits.Bound.POWER;
import static io.github.ringstate.study.run.RunLimits.Bound.RING_STATE;
import static io.github.ringstate.study.run.Runs.plan;
import static io.github.ringstate.study.run.Runs.study;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.HeightVelocityCurve;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class RunLimitsTest {

  private static final double KNOT = Unit.KNOT.toSi(1);

  @Test
  void theLimitsAreTheEdgesOfThePowerAndTheBoundary() {
    RunStudy study = study(10, 15, 25);
    double wanted = Unit.FOOT_PER_MINUTE.toSi(800);
    RunLimits limits = RunLimits.find(study, wanted, 0, KNOT).orElseThrow();
    assertFalse(keeps(study, limits.minimum() - KNOT, wanted));
    for (double airspeed = limits.minimum();
        airspeed <= limits.maximum() + 1e-9;
        airspeed += KNOT) {
      assertTrue(keeps(study, airspeed, wanted), airspeed + " m/s");
    }
    assertEquals(24 * KNOT, RunLimits.find(study, wanted, 24 * KNOT, KNOT).orElseThrow().minimum());
    // a finer step finds them within a coarser one
    RunLimits fine = RunLimits.find(study, wanted, 0, KNOT / 4).orElseThrow();
    assertTrue(fine.minimum() <= limits.minimum() && fine.minimum() > limits.minimum() - KNOT);
    assertTrue(fine.maximum() >= limits.maximum() && fine.maximum() < limits.maximum() + KNOT);
  }

  @Test
  void theGreatestAirspeedIsTheLastWithThePower() {
    for (Helicopter craft : DemoCraft.ALL) {
      RunStudy study = new RunStudy(plan(craft, 0, 0, 20));
      double greatest = RunLimits.find(study, 0, 0, KNOT).orElseThrow().maximum();
      double available = craft.continuousPower(StandardAtmosphere.at(0));
      assertTrue(study.power(greatest).getAsDouble() <= available);
      OptionalDouble beyond = study.power(greatest + KNOT);
      // 180 kt: 60 kt over the ground into a wind of 100 and an allowance of 20, beyond which no
      // run
      // leads
      assertTrue(
          Math.abs(greatest - 180 * KNOT) < 1e-9
              || beyond.isEmpty()
              || beyond.getAsDouble() > available,
          craft.name() + ": " + greatest);
    }
  }

  @Test
  void noRunWithContinuousPowerLeftIsTooFast() {
    // 60 kt over the ground against gusts of 55: 115 kt by arithmetic, and with the twin's 960 kW
    // there is power left at each of them.
    RunStudy study = new RunStudy(plan(DemoCraft.TWIN, 40, 55, 60));
    RunTrack against = study.track(0);
    assertEquals(115, Unit.KNOT.fromSi(against.maximumAirspeed()), 1e-9);
    assertTrue(against.continuousMargin() > 0);
    RunLimits limits = RunLimits.find(study, 0, 0, KNOT).orElseThrow();
    assertFalse(limits.above(against.maximumAirspeed()));
  }

  @Test
  void theLeastAirspeedSaysWhatItFollowsFrom() {
    // 40 kt up to 400 ft by the curve, invented; at 500 ft the curve asks for nothing
    HeightVelocityCurve curve =
        new HeightVelocityCurve(
            List.of(
                new HeightVelocityCurve.Point(40 * KNOT, Unit.FOOT.toSi(400)),
                new HeightVelocityCurve.Point(40 * KNOT, 0)));
    RunStudy low = new RunStudy(plan(DemoCraft.TRAINER, curve, Runs.wind(0, 0), 25, 300, 300));
    RunLimits limits = RunLimits.find(low, 0, 24 * KNOT, KNOT).orElseThrow();
    assertEquals(HEIGHT_VELOCITY, limits.bound());
    assertEquals(40, Unit.KNOT.fromSi(limits.minimum()), 1e-9);
    RunStudy high = new RunStudy(plan(DemoCraft.TRAINER, curve, Runs.wind(0, 0), 25, 500, 300));
    assertEquals(ASKED, RunLimits.find(high, 0, 24 * KNOT, KNOT).orElseThrow().bound());
    double wanted = Unit.FOOT_PER_MINUTE.toSi(800);
    assertEquals(RING_STATE, RunLimits.find(high, wanted, 0, KNOT).orElseThrow().bound());
    // 60 kW: less than the some 77 of the hover, more than the least of forward flight
    RunStudy weak =
        new RunStudy(plan(DemoCraft.TRAINER.with(Helicopter.CONTINUOUS_POWER, 60), 0, 0, 20));
    assertEquals(POWER, RunLimits.find(weak, 0, 0, KNOT).orElseThrow().bound());
  }

  @Test
  void withoutPowerAtAnyAirspeedThereAreNoLimits() {
    // 30 kW: induced power alone at 90 kt and less, by momentum theory T^2 / (2 rho A V), and the
    // blades' profile power of some 25 kW together are more than that; beyond, so are these and the
    // drag of the fuselage, rho f V^3 / 2.
    RunStudy study =
        new RunStudy(plan(DemoCraft.TRAINER.with(Helicopter.CONTINUOUS_POWER, 30), 0, 0, 20));
    assertEquals(Optional.empty(), RunLimits.find(study, 0, 0, KNOT));
  }

  @Test
  void limitsThatAreNoneAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new RunLimits(2, ASKED, 1, 1));
    assertThrows(IllegalArgumentException.class, () -> new RunLimits(Double.NaN, ASKED, 1, 1));
    assertThrows(IllegalArgumentException.class, () -> new RunLimits(1, ASKED, 2, 0));
  }

  private static boolean keeps(RunStudy study, double airspeed, double wanted) {
    OptionalDouble margin = study.boundaryMargin(airspeed);
    double power = study.power(airspeed).getAsDouble();
    return (margin.isEmpty() || margin.getAsDouble() >= wanted) && power <= 82_000;
  }

  @Test
  void oneAirspeedCanBeTheWholeOfTheLimits() {
    RunLimits one = new RunLimits(2, ASKED, 2, 1);
    assertFalse(one.below(2));
    assertFalse(one.above(2));
    assertTrue(one.below(1.99));
    assertTrue(one.above(2.01));
  }

  /** 20 kt of wind by arithmetic: a hover has them from ahead, and 60 kt downwind leave 40. */
  @Test
  void aGroundSpeedInsteadMayBeNoneOrTheGreatestOrThePlanned() {
    RunPlan plan = plan(DemoCraft.TRAINER, 20, 20, 30);
    double south = Math.PI;
    assertEquals(0, Runs.limits(0, 20).maximumGroundSpeed(plan, 0).orElseThrow());
    assertEquals(60, knots(Runs.limits(40, 80).minimumGroundSpeed(plan, south)), 1e-9);
    assertEquals(OptionalDouble.empty(), Runs.limits(41, 80).minimumGroundSpeed(plan, south));
    for (int speed = 1; speed <= 60; speed++) {
      RunPlan kept = plan.withGroundSpeed(speed * KNOT);
      assertEquals(speed, knots(Runs.limits(0, 80).maximumGroundSpeed(kept, 0)), 1e-9);
      assertEquals(speed, knots(Runs.limits(0, 80).minimumGroundSpeed(kept, 0)), 1e-9);
    }
  }

  private static double knots(OptionalDouble speed) {
    return Unit.KNOT.fromSi(speed.orElseThrow());
  }

  @Test
  void aMarginThatIsJustKeptIsKept() {
    RunStudy study = study(10, 15, 25);
    double wanted = study.boundaryMargin(10 * KNOT).orElseThrow();
    assertTrue(study.boundaryMargin(9 * KNOT).orElseThrow() < wanted);
    assertEquals(10 * KNOT, RunLimits.find(study, wanted, 0, KNOT).orElseThrow().minimum());
  }
}
