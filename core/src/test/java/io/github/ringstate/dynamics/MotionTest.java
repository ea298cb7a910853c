package io.github.ringstate.dynamics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.air.Wind;
import io.github.ringstate.air.WindField;
import io.github.ringstate.craft.CraftBody;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.inflow.RingStateInflow;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What is read of a motion agrees with its state, with its loads and with the laws of mechanics.
 */
class MotionTest {

  private static final Helicopter CRAFT = DemoCraft.TRAINER;
  private static final double GRAVITY = StandardAtmosphere.STANDARD_GRAVITY_CGPM_1901;

  static LongStream seeds() {
    return LongStream.range(0, 20);
  }

  private static EquationsOfMotion equations(WindField wind, ThrustDisturbance shaking) {
    return new EquationsOfMotion(
        CRAFT, StandardAtmosphere.at(0), wind, RingStateInflow.standard(), false, shaking);
  }

  private static double[] someState(long seed) {
    double[] state = BodyAxesTest.someState(new SplittableRandom(seed));
    state[State.UP] = 55;
    return state;
  }

  /** The wind has a part of each, so that the air's speeds are not the ground's. */
  @ParameterizedTest
  @MethodSource("seeds")
  void speedsAlongTheHeadingAreThoseOfTheState(long seed) {
    double[] state = someState(seed);
    WindField rising =
        (time, north, east, height, result) -> {
          result[0] = 2;
          result[1] = -3;
          result[2] = 0.5;
        };
    Motion at = equations(rising, ThrustDisturbance.NONE).at(7, state);
    double sine = Math.sin(state[State.HEADING]);
    double cosine = Math.cos(state[State.HEADING]);
    double north = state[State.SPEED_NORTH];
    double east = state[State.SPEED_EAST];
    assertEquals(north * cosine + east * sine, at.groundSpeed(), 1e-12);
    assertEquals(east * cosine - north * sine, at.sidewaysGroundSpeed(), 1e-12);
    assertEquals((north - 2) * cosine + (east + 3) * sine, at.forwardAirspeed(), 1e-12);
    assertEquals((east + 3) * cosine - (north - 2) * sine, at.sidewaysAirspeed(), 1e-12);
    assertEquals(Math.hypot(north - 2, east + 3), at.airspeed(), 1e-12);
    // the axes are turned, and lengths stay
    assertEquals(
        Math.hypot(at.airspeed(), state[State.SPEED_UP] - 0.5) / at.hoverInduced(),
        Math.hypot(at.edgewiseOverHover(), at.axialOverHover()),
        1e-12);
    assertEquals(state[State.INDUCED] / at.hoverInduced(), at.inducedOverHover(), 1e-12);
    assertEquals(state[State.UP], at.height());
    assertEquals(state[State.PITCH], at.pitch());
    assertEquals(state[State.BANK], at.bank());
    assertEquals(state[State.HEADING], at.heading());
    assertEquals(state[State.ROTOR_SPEED], at.rotorSpeed() * CRAFT.rotor().nominalSpeed(), 1e-9);
  }

  /**
   * Newton: the work of all forces on the craft is what its kinetic energy gains, mass times speed
   * times acceleration. In still air the thrust, along the shaft, works along the axial speed.
   */
  @ParameterizedTest
  @MethodSource("seeds")
  void theForcesDoTheWorkThatTheCraftGains(long seed) {
    double[] state = someState(seed);
    Motion at = equations(Wind.CALM, ThrustDisturbance.NONE).at(0, state);
    double gained = 0;
    for (int axis = 0; axis < 3; axis++) {
      gained += CRAFT.mass() * state[State.SPEED_NORTH + axis] * at.rate(State.SPEED_NORTH + axis);
    }
    Loads loads = at.loads();
    double weight = -CRAFT.weight() * at.verticalSpeed();
    double work =
        loads.thrust() * loads.axial()
            + at.dragPower()
            + at.sidePower()
            + at.downloadPower()
            + weight;
    assertEquals(gained, work, 1e-9 * CRAFT.weight());
    assertTrue(at.dragPower() < 0, "drag takes energy away");
    assertEquals(
        -CRAFT.si(CraftBody.DOWNLOAD) * loads.thrust() * loads.axial(),
        at.downloadPower(),
        1e-9 * CRAFT.weight());
    // what the rotor takes is lifting, inducing and dragging its blades
    assertEquals(
        loads.rotorPower(),
        loads.thrust() * loads.axial() + loads.inducedPower() + loads.profilePower(),
        1e-9 * loads.profilePower());
    double continuous = CRAFT.continuousPower(StandardAtmosphere.at(0));
    assertEquals(loads.shaftPower() / continuous, at.power(), 1e-12);
  }

  /** A disturbance of which the factor tells time and speeds at which it was asked. */
  @ParameterizedTest
  @MethodSource("seeds")
  void theThrustIsShakenByTheFactorAtTheInstantAndItsSpeedsOverHover(long seed) {
    ThrustDisturbance linear =
        new ThrustDisturbance() {
          @Override
          public double factor(double time, double edgewise, double axial) {
            return 1 + time / 100 + edgewise / 50 + axial / 20;
          }

          @Override
          public double roughness(double edgewise, double axial) {
            return edgewise + 10 * axial;
          }
        };
    double[] state = someState(seed);
    Motion still = equations(Wind.CALM, ThrustDisturbance.NONE).at(0, state);
    double edgewise = still.edgewiseOverHover();
    double axial = still.axialOverHover();
    Motion shaken = equations(Wind.CALM, linear).at(7, state);
    assertEquals(
        (1.07 + edgewise / 50 + axial / 20) * still.loads().thrust(),
        shaken.loads().thrust(),
        1e-9 * CRAFT.weight());
    assertEquals(edgewise + 10 * axial, shaken.roughness(), 1e-12);
  }

  /** In steady flight the body feels its weight, and the engine gives what is asked. */
  @Test
  void steadyFlightFeelsItsWeight() {
    ThrustDisturbance rough =
        new ThrustDisturbance() {
          @Override
          public double factor(double time, double edgewise, double axial) {
            return 1;
          }

          @Override
          public double roughness(double edgewise, double axial) {
            return 0.07;
          }
        };
    EquationsOfMotion equations = equations(Wind.CALM, rough);
    double scale = equations.hoverInduced();
    for (double sink : new double[] {0, 0.3, 1, 1.7}) {
      double[] state = Trim.find(equations, 0, -sink * scale).state(equations, 0, -sink * scale);
      Motion at = equations.at(0, state);
      assertEquals(1, at.loadFactor(), 0.02);
      assertEquals(0, at.verticalAcceleration() / GRAVITY, 1e-6);
      assertEquals(0.07, at.roughness());
      assertEquals(
          at.loads().shaftPower() / CRAFT.maximumPower(StandardAtmosphere.at(0)),
          at.loads().engineDemand(),
          1e-3);
      double slope = equations.inflow().slope(at.edgewiseOverHover(), at.axialOverHover());
      assertEquals(slope < 0, at.sinkFeedsItself(), "at " + sink);
      assertEquals(sink == 1, at.sinkFeedsItself(), "at " + sink);
    }
  }

  /** What is commanded is read back. */
  @Test
  void controlsHoldWhatTheyAreGiven() {
    Controls controls = new Controls();
    controls.pitch(0.1, 0.2);
    controls.bank(-0.3, 0.4);
    controls.collective(0.15, 0.5);
    assertEquals(0.1, controls.pitch());
    assertEquals(0.2, controls.pitchRate());
    assertEquals(-0.3, controls.bank());
    assertEquals(0.4, controls.bankRate());
    assertEquals(0.15, controls.collective());
    assertEquals(0.5, controls.collectiveRate());
  }
}
