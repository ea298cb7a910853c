package io.github.ringstate.analysis.equilibrium;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.air.Wind;
import io.github.ringstate.craft.CraftBody;
import io.github.ringstate.craft.CraftLimits;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.NoSteadyFlightException;
import io.github.ringstate.dynamics.State;
import io.github.ringstate.inflow.RingStateInflow;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

class SteadyFlightTest {

  private static EquationsOfMotion equations(Helicopter craft, double altitude, Wind wind) {
    return new EquationsOfMotion(
        craft, StandardAtmosphere.at(altitude), wind, RingStateInflow.standard(), false);
  }

  private static String refusal(EquationsOfMotion equations, double ahead, double up) {
    return String.valueOf(
        assertThrows(
                NoSteadyFlightException.class, () -> SteadyFlight.find(equations, ahead, 0, up))
            .getMessage());
  }

  /** Newton's first law and a rotor that keeps its speed, by the equations of motion themselves. */
  @ParameterizedTest
  @FieldSource("io.github.ringstate.craft.DemoCraft#ALL")
  void inAutorotationNothingDrivesTheRotorButTheAir(Helicopter craft) {
    for (double airspeed : new double[] {0, 15, 30}) {
      EquationsOfMotion motion = equations(craft, 0, new Wind(4, -6));
      SteadyFlight flight = SteadyFlight.autorotation(motion, airspeed, 0);
      double[] state =
          flight.trim().state(motion, flight.forward(), flight.sideways(), flight.verticalSpeed());
      Motion at = motion.at(0, state);
      assertEquals(0, at.rate(State.SPEED_UP), 1e-7);
      assertEquals(0, at.rate(State.SPEED_NORTH), 1e-7);
      assertEquals(0, flight.power(), 1e-6 * craft.takeOffPower(motion.air()));
    }
  }

  /**
   * Vertical autorotation at 1.8 to 2.1 hover induced velocities (ideal autorotation near 1.8,
   * Leishman, Principles of Helicopter Aerodynamics, ch. 2, from memory; more with the drag of the
   * blades and the tail rotor), and slower ahead than straight down.
   */
  @ParameterizedTest
  @FieldSource("io.github.ringstate.craft.DemoCraft#ALL")
  void theAutorotationHasTheUsualSpeed(Helicopter craft) {
    EquationsOfMotion motion = equations(craft, 0, Wind.CALM);
    double straight = SteadyFlight.autorotation(motion, 0, 0).verticalSpeed();
    double z = straight / motion.hoverInduced();
    assertTrue(z < -1.8 && z > -2.1, "at " + z);
    assertTrue(SteadyFlight.autorotation(motion, 25, 0).verticalSpeed() > 0.75 * straight);
  }

  @Test
  void aLimitThatStandsAgainstAFlightIsNamedWithWhatIsNeeded() {
    Helicopter full = DemoCraft.TRAINER.with(Helicopter.MASS, 620);
    String power = refusal(equations(full, 4000, Wind.CALM), 0, 0);
    assertTrue(power.contains(SteadyFlight.NEEDS) && power.contains("the take-off power"), power);
    Helicopter lowLever = DemoCraft.TRAINER.with(CraftLimits.MAXIMUM_COLLECTIVE, 7);
    String high = refusal(equations(lowLever, 0, Wind.CALM), 0, 0);
    assertTrue(high.contains("maximum collective is 7.00 deg"), high);
    Helicopter highLever = DemoCraft.TRAINER.with(CraftLimits.MINIMUM_COLLECTIVE, 9);
    String low = refusal(equations(highLever, 0, Wind.CALM), 0, 0);
    assertTrue(low.contains("a collective of 8.24 deg; its minimum collective is 9"), low);
    // by hand, at 35 m/s 2 m2 of drag take 1500 N of 5900, 14 deg of pitch; 25 m/s aside and 4 m2
    // as much of bank
    Helicopter level =
        DemoCraft.TRAINER.with(CraftLimits.PITCH_LIMIT, 10).with(CraftBody.FORWARD_AREA, 2);
    String nose = refusal(equations(level, 0, Wind.CALM), 35, 0);
    assertTrue(nose.contains("its " + CraftLimits.PITCH_LIMIT.name() + " is 10.00 deg"), nose);
    Helicopter upright =
        DemoCraft.TRAINER.with(CraftLimits.BANK_LIMIT, 10).with(CraftBody.SIDE_AREA, 4);
    String bank =
        String.valueOf(
            assertThrows(
                    NoSteadyFlightException.class,
                    () -> SteadyFlight.find(equations(upright, 0, Wind.CALM), 0, 25, 0))
                .getMessage());
    assertTrue(bank.contains("its " + CraftLimits.BANK_LIMIT.name() + " is 10.00 deg"), bank);
  }

  @Test
  void theBladesMayStandAgainstItToo() {
    String stalled = refusal(equations(DemoCraft.HEAVY, 9000, Wind.CALM), 0, 0);
    assertTrue(stalled.contains("has no steady flight"), stalled);
  }

  /** Galilei: what counts is the motion through the air. */
  @Test
  void aSteadyWindChangesNothing() {
    SteadyFlight calm = SteadyFlight.find(equations(DemoCraft.TWIN, 1000, Wind.CALM), 20, 3, -2);
    SteadyFlight windy =
        SteadyFlight.find(equations(DemoCraft.TWIN, 1000, new Wind(-9, 5)), 20, 3, -2);
    assertEquals(calm.trim().collective(), windy.trim().collective(), 1e-10);
    assertEquals(calm.power(), windy.power(), 1e-6 * calm.power());
  }
}
