package io.github.ringstate.rotor;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.ringstate.quantity.ParameterSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InflowLagTest {

  private static final double RADIUS = 5;
  private static final double HOVER_INDUCED = 9;

  private static InflowLag lag(double minimumMassFlow) {
    return new InflowLag(
        ParameterSet.standard(Rotor.PARAMETERS).with(InflowLag.MINIMUM_MASS_FLOW, minimumMassFlow),
        RADIUS);
  }

  /**
   * The apparent mass 0.849 rho A R follows the mass flow (x^2 + (w + v) w) / sqrt(x^2 + w^2),
   * twice the hover induced velocity in hover (Pitt and Peters, Vertica 5, 1981): worked out by
   * hand in hover induced velocities. What keeps a still flow finite is 5e-5 of a flow of one.
   */
  @ParameterizedTest
  @CsvSource({
    // edgewise, total inflow, induced, mass flow
    "0, 1, 1, 2",
    "3, 0, 0.33, 3",
    "0, -2, 1, 1",
    "0, 3, 0.4, 3.4",
    "3, 4, 0.5, 5.4"
  })
  void theRateIsTheMassFlowOverTheApparentMass(double x, double w, double v, double massFlow) {
    double vh = HOVER_INDUCED;
    double rate = lag(0.2).rate(x * vh, w * vh, v * vh, vh);
    double exact = massFlow * vh * 2 / (0.637 * 4 / 3 * RADIUS);
    assertEquals(exact, rate, 1e-4 * exact);
  }

  /** In hover the time constant is 0.212 R / vh: 0.637 x 4/3 over four. */
  @Test
  void inHoverTheTimeConstantIsThatOfTheHandbooks() {
    double rate = lag(0.2).rate(0, HOVER_INDUCED, HOVER_INDUCED, HOVER_INDUCED);
    assertEquals(0.212 * RADIUS / HOVER_INDUCED, 1 / rate, 0.002 * 0.212 * RADIUS / HOVER_INDUCED);
  }

  @Test
  void aFlowThatStandsStillLeavesTheLeastOne() {
    double rate = lag(1).rate(0, 0, 1.5 * HOVER_INDUCED, HOVER_INDUCED);
    assertEquals(HOVER_INDUCED * 2 / (0.637 * 4 / 3 * RADIUS), rate, 1e-12);
  }
}
