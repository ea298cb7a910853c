package io.github.ringstate.dynamics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.Every;
import io.github.ringstate.air.Air;
import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.air.Wind;
import io.github.ringstate.craft.CraftBody;
import io.github.ringstate.craft.CraftLimits;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.rotor.BladeDrag;
import io.github.ringstate.rotor.Rotor;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class TrimTest {

  private static EquationsOfMotion equations(Helicopter craft, Air air, Wind wind) {
    return new EquationsOfMotion(craft, air, wind, RingStateInflow.standard(), false);
  }

  static Stream<Arguments> steadyFlights() {
    double[][] speeds = {
      {0, 0}, {0, 4}, {0, -2}, {0, -5}, {0, -10}, {0, -20}, {10, -3}, {25, 0}, {45, -5}
    };
    return Every.of(DemoCraft.ALL, List.of(0.0, 2400.0), List.of(speeds));
  }

  /** Newton: nothing accelerates in steady flight; also not in a steady wind. */
  @ParameterizedTest
  @MethodSource("steadyFlights")
  void nothingAcceleratesInATrimmedFlight(Helicopter craft, double altitude, double[] speeds) {
    double airspeed = speeds[0];
    double verticalSpeed = speeds[1];
    EquationsOfMotion motion = equations(craft, StandardAtmosphere.at(altitude), new Wind(-7, 3));
    Trim trim = Trim.find(motion, airspeed, verticalSpeed);
    Motion at = motion.at(0, trim.state(motion, airspeed, verticalSpeed));
    assertEquals(0, at.rate(State.SPEED_NORTH), 2e-8);
    assertEquals(0, at.rate(State.SPEED_EAST), 2e-8);
    assertEquals(0, at.rate(State.SPEED_UP), 2e-8);
    assertEquals(0, at.rate(State.INDUCED), 2e-7);
    assertEquals(airspeed, at.forwardAirspeed(), 1e-12);
    assertEquals(0, at.sidewaysAirspeed(), 1e-12);
    assertEquals(verticalSpeed, at.verticalSpeed(), 1e-12);
    assertEquals(0, at.rate(State.INDICATED_VERTICAL_SPEED), 1e-12);
  }

  /**
   * The governor rounds its limits off, so in a hover with power to spare the rotor's speed drifts
   * by less than a thousandth a second before it settles.
   */
  @ParameterizedTest
  @FieldSource("io.github.ringstate.craft.DemoCraft#ALL")
  void theRotorKeepsItsSpeedInAHoverWithPowerToSpare(Helicopter craft) {
    EquationsOfMotion motion = AtSeaLevel.calm(craft);
    Trim trim = Trim.find(motion, 0, 0);
    double nominal = craft.rotor().nominalSpeed();
    assertEquals(0, motion.at(0, trim.state(motion, 0, 0)).rate(State.ROTOR_SPEED), 1e-3 * nominal);
    double after = Leg.fly(motion, 0, trim.state(motion, 0, 0), 5).state()[State.ROTOR_SPEED];
    assertEquals(nominal, after, 1e-3 * nominal);
  }

  /** What of the mean drag coefficient goes with blade loading. */
  private static double polar(double loading) {
    return 8 * (2 * -0.0216 * loading / (3 * 5.73) + 4 * 0.4 * loading * loading / (5.73 * 5.73));
  }

  /**
   * T = W / (1 - download) by the balance along the shaft, vh by Rankine and Froude, P = T k vh +
   * (s cd / 8) rho A Vtip^3 (Leishman, Principles of Helicopter Aerodynamics, ch. 2 and 5; from
   * memory) with 8 times the torque of Bailey's polar beyond that at CT/s = 0.07, 2 d1 (CT/s) / (3
   * a) + 4 d2 (CT/s)^2 / a^2 (Gessow and Myers; from memory), by hand.
   */
  @ParameterizedTest
  @FieldSource("io.github.ringstate.craft.DemoCraft#ALL")
  void hoverPowerIsWhatAHandCalculationGives(Helicopter craft) {
    EquationsOfMotion motion = AtSeaLevel.calm(craft);
    Trim trim = Trim.find(motion, 0, 0);
    Motion at = motion.at(0, trim.state(motion, 0, 0));
    double density = motion.air().density();
    double area = Math.PI * craft.si(Rotor.RADIUS) * craft.si(Rotor.RADIUS);
    // The shaft leans to hold the tail rotor's push.
    double thrust =
        craft.mass() * 9.80665 / (1 - craft.si(CraftBody.DOWNLOAD)) * Math.cos(trim.bank());
    double vh = Math.sqrt(thrust / (2 * density * area));
    double tip = craft.si(Rotor.TIP_SPEED);
    // The blades carry what thrust takes at the given tip loss and cut-out.
    double loading = thrust / (density * area * tip * tip * craft.si(Rotor.SOLIDITY));
    double drag = craft.si(BladeDrag.PROFILE_DRAG) + polar(loading) - polar(0.07);
    double profile = craft.si(Rotor.SOLIDITY) * drag / 8 * density * area * tip * tip * tip;
    double rotor = thrust * craft.si(Rotor.INDUCED_POWER_FACTOR) * vh + profile;
    assertEquals(thrust, at.loads().thrust(), 1e-3 * thrust);
    assertEquals(rotor, at.loads().rotorPower(), 2e-3 * rotor);
    assertEquals(
        rotor * (1 + craft.si(Helicopter.TRANSMISSION_AND_TAIL_ROTOR_POWER)),
        at.loads().shaftPower(),
        2e-3 * at.loads().shaftPower());
  }

  /** Figure of merit 0.6 to 0.75 for real rotors (Gessow and Myers; Leishman; from memory). */
  @ParameterizedTest
  @FieldSource("io.github.ringstate.craft.DemoCraft#ALL")
  void theFigureOfMeritIsThatOfARealRotor(Helicopter craft) {
    EquationsOfMotion motion = AtSeaLevel.calm(craft);
    Motion at = motion.at(0, AtSeaLevel.hover(motion));
    double ideal =
        at.loads().thrust()
            * craft.rotor().hoverInducedVelocity(at.loads().thrust(), motion.air().density());
    double merit = ideal / at.loads().rotorPower();
    assertTrue(merit > 0.6 && merit < 0.75, "figure of merit " + merit);
  }

  /** The invented limits are to leave a hover possible, near full mass too. */
  @ParameterizedTest
  @FieldSource("io.github.ringstate.craft.DemoCraft#ALL")
  void everyDemoCraftHoversWithinItsContinuousPowerAtSeaLevel(Helicopter craft) {
    Helicopter full = craft.with(Helicopter.MASS, craft.numbers().get(Helicopter.MAXIMUM_MASS));
    EquationsOfMotion motion = AtSeaLevel.calm(full);
    Motion at = motion.at(0, AtSeaLevel.hover(motion));
    assertTrue(at.power() < 1, "power " + at.power());
    assertTrue(at.collective() < full.si(CraftLimits.MAXIMUM_COLLECTIVE));
  }

  @ParameterizedTest
  @ValueSource(doubles = {150, 300})
  void whereThereIsNoSteadyFlightTheRefusalNamesTheSpeeds(double airspeed) {
    EquationsOfMotion motion = AtSeaLevel.calm(DemoCraft.TRAINER);
    IllegalStateException refusal =
        assertThrows(IllegalStateException.class, () -> Trim.find(motion, airspeed, 0));
    String message = String.valueOf(refusal.getMessage());
    assertTrue(message.startsWith("trainer" + Trim.NO_STEADY_FLIGHT + airspeed), message);
  }

  /** A whole turn of pitch solves the equations as well, and so may flight on the back. */
  @Test
  void steadyFlightIsUpright() {
    SplittableRandom random = new SplittableRandom(3);
    for (int i = 0; i < 12_000; i++) {
      Helicopter craft = DemoCraft.ALL.get(i % DemoCraft.ALL.size());
      double mass =
          random.nextDouble(
              craft.numbers().get(Helicopter.MINIMUM_MASS),
              craft.numbers().get(Helicopter.MAXIMUM_MASS));
      double altitude = random.nextDouble(0, 2400);
      double airspeed = random.nextDouble(0, 40);
      double descent = random.nextDouble(0, 15);
      EquationsOfMotion motion =
          equations(craft.with(Helicopter.MASS, mass), StandardAtmosphere.at(altitude), Wind.CALM);
      Trim trim = Trim.find(motion, airspeed, -descent);
      assertTrue(
          Math.abs(trim.pitch()) < 0.5 && Math.abs(trim.bank()) < 0.1,
          craft.name()
              + " "
              + mass
              + " "
              + altitude
              + " "
              + airspeed
              + " "
              + descent
              + ": "
              + trim);
    }
  }

  @Test
  void aSpeedThatIsNoNumberIsRefused() {
    EquationsOfMotion motion = AtSeaLevel.calm(DemoCraft.TRAINER);
    assertThrows(IllegalArgumentException.class, () -> Trim.find(motion, Double.NaN, 0));
    assertThrows(IllegalArgumentException.class, () -> Trim.find(motion, 0, Double.NaN));
  }
}
