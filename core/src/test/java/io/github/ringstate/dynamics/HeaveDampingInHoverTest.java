package io.github.ringstate.dynamics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.ringstate.Every;
import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.craft.CraftBody;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.inflow.CubicBridge;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.rotor.Rotor;
import java.util.List;
import java.util.stream.Stream;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Heave damping in hover, Zw = -2 a s A rho Vtip l0 / ((16 l0 + a s) m), with l0 the hover inflow
 * over tip speed: Padfield, Helicopter Flight Dynamics, ch. 4 (from memory; derived anew from CT =
 * (s a / 2) (theta / 3 - lambda / 2) and momentum theory).
 */
class HeaveDampingInHoverTest {

  private static final double STEP = 0.01;

  static Stream<Arguments> craftAndInflow() {
    return Stream.concat(
        Every.of(DemoCraft.ALL, List.of(RingStateInflow.standard())),
        Stream.of(Arguments.of(DemoCraft.TRAINER, new CubicBridge())));
  }

  /** Vertical acceleration over vertical speed, with the inflow settled at each speed. */
  private static double quasiSteadyDamping(Helicopter craft, InflowModel inflow) {
    EquationsOfMotion motion = AtSeaLevel.with(inflow, craft);
    double[] hover = AtSeaLevel.hover(motion);
    // Level, so that axial is vertical; the force balance is not needed for a derivative.
    hover[State.BANK] = 0;
    hover[State.PITCH] = 0;
    return (settled(motion, hover, STEP) - settled(motion, hover, -STEP)) / (2 * STEP);
  }

  private static double settled(EquationsOfMotion motion, double[] hover, double verticalSpeed) {
    double[] state = hover.clone();
    state[State.SPEED_UP] = verticalSpeed;
    state[State.INDUCED] =
        new BracketingNthOrderBrentSolver(1e-13, 1e-13, 5)
            .solve(
                200,
                induced -> {
                  state[State.INDUCED] = induced;
                  return motion.at(0, state).rate(State.INDUCED);
                },
                0.5 * hover[State.INDUCED],
                1.5 * hover[State.INDUCED]);
    return motion.at(0, state).rate(State.SPEED_UP);
  }

  private static double padfield(Helicopter craft, double liftSlope) {
    double density = StandardAtmosphere.at(0).density();
    double tip = craft.si(Rotor.TIP_SPEED);
    double area = Math.PI * craft.si(Rotor.RADIUS) * craft.si(Rotor.RADIUS);
    double thrust = craft.mass() * 9.80665 / (1 - craft.si(CraftBody.DOWNLOAD));
    double inflow = Math.sqrt(thrust / (2 * density * area)) / tip;
    double as = liftSlope * craft.si(Rotor.SOLIDITY);
    return -2 * as * area * density * tip * inflow / ((16 * inflow + as) * craft.mass());
  }

  /** With the assumptions of the formula (whole span, no tip loss, no download) to 0.3 per cent. */
  @ParameterizedTest
  @MethodSource("craftAndInflow")
  void anIdealRotorIsDampedAsTheFormulaSays(Helicopter craft, InflowModel inflow) {
    Helicopter ideal =
        craft
            .with(Rotor.TIP_LOSS, 1)
            .with(Rotor.ROOT_CUTOUT, 0)
            .with(Rotor.BLADE_LOADING_LIMIT, 0.25)
            .with(CraftBody.DOWNLOAD, 0);
    double expected = padfield(ideal, ideal.si(Rotor.LIFT_SLOPE));
    assertEquals(expected, quasiSteadyDamping(ideal, inflow), 0.003 * Math.abs(expected));
  }

  /**
   * Tip loss B and cut-out c leave (B^2 - c^2) of the lift that the inflow takes, the download the
   * rest of the force: with these the formula holds to one and a half per cent (the rest is the
   * bend towards the blade loading limit); without them the demo craft lie within 12 per cent of
   * it.
   */
  @ParameterizedTest
  @MethodSource("craftAndInflow")
  void aDemoCraftIsDampedAsTheFormulaSaysForItsEffectiveSpan(Helicopter craft, InflowModel inflow) {
    double outer = craft.si(Rotor.TIP_LOSS);
    double inner = craft.si(Rotor.ROOT_CUTOUT);
    double expected =
        padfield(craft, craft.si(Rotor.LIFT_SLOPE) * (outer * outer - inner * inner))
            * (1 - craft.si(CraftBody.DOWNLOAD));
    double damping = quasiSteadyDamping(craft, inflow);
    assertEquals(expected, damping, 0.015 * Math.abs(expected));
    double whole = padfield(craft, craft.si(Rotor.LIFT_SLOPE));
    assertEquals(whole, damping, 0.12 * Math.abs(whole));
  }

  /** Typical values -0.25 to -0.4 per second (Padfield; from memory). */
  @ParameterizedTest
  @MethodSource("craftAndInflow")
  void theHeaveDampingOfTheDemoCraftIsOfTheUsualSize(Helicopter craft, InflowModel inflow) {
    assertEquals(-0.32, quasiSteadyDamping(craft, inflow), 0.09);
  }
}
