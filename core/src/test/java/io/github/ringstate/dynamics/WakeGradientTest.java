package io.github.ringstate.dynamics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.inflow.ThreeStateInflow;
import io.github.ringstate.rotor.InflowLag;
import java.util.SplittableRandom;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Three-state dynamic inflow against its matrices: Pitt and Peters, Vertica 5, 1981, and Peters and
 * HaQuang, Journal of the American Helicopter Society 33, 1988 (from memory).
 */
class WakeGradientTest {

  private static final Helicopter CRAFT = DemoCraft.UTILITY;
  private static final EquationsOfMotion PLAIN = equations(false);
  private static final EquationsOfMotion THREE = equations(true);

  private static EquationsOfMotion equations(boolean gradient) {
    RingStateInflow ring = RingStateInflow.standard();
    return AtSeaLevel.with(gradient ? new ThreeStateInflow(ring) : ring, CRAFT);
  }

  /** A steady flight, with induced velocity and gradient moved off it. */
  private static double[] disturbed(SplittableRandom random) {
    double forward = 2 + 18 * random.nextDouble();
    double[] state = Trim.find(THREE, forward, -2).state(THREE, forward, -2);
    state[State.INDUCED] *= 0.9 + 0.2 * random.nextDouble();
    state[State.GRADIENT_NOSE] += 4 * random.nextDouble() - 2;
    state[State.GRADIENT_RIGHT] = 0;
    return state;
  }

  @Test
  void theRatesAreThoseOfThePublishedMatrices() {
    SplittableRandom random = new SplittableRandom(9);
    double radius = CRAFT.rotor().radius();
    double mass = CRAFT.si(InflowLag.APPARENT_MASS);
    for (int i = 0; i < 50; i++) {
      double[] state = disturbed(random);
      // no sideways flow, so that the direction of flight is along the nose
      state[State.BANK] = 0;
      Loads loads = THREE.at(0, state).loads();
      double v = state[State.INDUCED];
      double c = state[State.GRADIENT_NOSE];
      double through = loads.axial() + v;
      double lag =
          CRAFT.rotor().inflowLag().rate(loads.edgewise(), through, v, THREE.hoverInduced());
      double massFlow = lag * mass * radius / 2;
      double alpha = FastMath.atan2(through, loads.edgewise());
      double chi = Math.PI / 2 - alpha;
      double skew = 15 * Math.PI / 64 * FastMath.tan(chi / 2);
      double sine = FastMath.sin(alpha);
      RealMatrix gains =
          MatrixUtils.createRealMatrix(
              new double[][] {{0.5, skew}, {skew, -4 * sine / (1 + sine)}});
      RealMatrix inverse = new LUDecomposition(gains).getSolver().getInverse();
      double[] carried = inverse.scalarMultiply(massFlow).operate(new double[] {v, c});
      double plain = PLAIN.at(0, state).rate(State.INDUCED);
      double expected = plain + (2 * massFlow * v - carried[0]) / (mass * radius);
      double moment = 16 / (45 * Math.PI) * radius;
      Motion at = THREE.at(0, state);
      // the flow that keeps the skew defined, 0.01 vh, changes some per mille
      assertEquals(expected, at.rate(State.INDUCED), 0.01 * Math.abs(plain - expected) + 1e-3);
      assertEquals(
          carried[1] / moment,
          at.rate(State.GRADIENT_NOSE),
          0.01 * Math.abs(carried[1] / moment) + 1e-2);
      assertEquals(0, at.rate(State.GRADIENT_RIGHT), 1e-12);
    }
  }

  /** k = (15 pi / 32) tan(chi / 2) of the mean, along the direction of flight. */
  @ParameterizedTest
  @ValueSource(doubles = {3, 8, 15, 30})
  void steadyFlightHasThePublishedGradientAndTheTrimOfTheModelBeneath(double speed) {
    Trim trim = Trim.find(THREE, speed, 0);
    assertEquals(Trim.find(PLAIN, speed, 0), trim);
    double[] state = trim.state(THREE, speed, 0);
    Motion at = THREE.at(0, state);
    double through = at.loads().axial() + state[State.INDUCED];
    double chi = FastMath.atan2(at.loads().edgewise(), through);
    double gain = 15 * Math.PI / 32 * FastMath.tan(chi / 2);
    double gradient = FastMath.hypot(state[State.GRADIENT_NOSE], state[State.GRADIENT_RIGHT]);
    assertEquals(gain, gradient / state[State.INDUCED], 0.01 * gain);
    assertTrue(state[State.GRADIENT_NOSE] > 0);
    assertEquals(0, at.rate(State.GRADIENT_NOSE), 1e-9);
    assertEquals(0, at.rate(State.INDUCED), 1e-8);
  }

  @Test
  void inAxialFlowNothingDiffersToTheBit() {
    SplittableRandom random = new SplittableRandom(10);
    double[] state = AtSeaLevel.hover(PLAIN);
    state[State.PITCH] = 0;
    state[State.BANK] = 0;
    for (int i = 0; i < 200; i++) {
      state[State.SPEED_UP] = 5 - 25 * random.nextDouble();
      state[State.INDUCED] = 5 + 15 * random.nextDouble();
      Motion plain = PLAIN.at(0, state);
      Motion three = THREE.at(0, state);
      for (int quantity = 0; quantity < State.SIZE; quantity++) {
        assertEquals(plain.rate(quantity), three.rate(quantity), 0.0, "quantity " + quantity);
      }
    }
  }

  /** After a step of the collective both seek the same steady flight, by different ways. */
  @Test
  void aDisturbanceDiesAwayToTheSameSteadyFlight() {
    double[] start = Trim.find(THREE, 20, 0).state(THREE, 20, 0);
    double steady = start[State.INDUCED];
    start[State.INDUCED] += 1;
    Leg after = Leg.fly(THREE, 0, start, 0.05);
    Leg beside = Leg.fly(PLAIN, 0, start, 0.05);
    assertTrue(after.state()[State.INDUCED] > steady);
    assertTrue(
        Math.abs(after.state()[State.INDUCED] - beside.state()[State.INDUCED]) > 0.01,
        "the coupling is felt");
    Leg late = Leg.fly(THREE, 0, start, 2);
    Leg lateBeside = Leg.fly(PLAIN, 0, start, 2);
    assertEquals(lateBeside.state()[State.INDUCED], late.state()[State.INDUCED], 0.05);
  }
}
