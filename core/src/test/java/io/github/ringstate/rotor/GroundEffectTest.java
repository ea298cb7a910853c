package io.github.ringstate.rotor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * T / Tinf = 1 / (1 - (R / 4Z)^2 / (1 + (V / v)^2)) at constant power: Cheeseman and Bennett, ARC
 * R&amp;M 3021, 1955 (formula from memory, values computed from it).
 */
class GroundEffectTest {

  @ParameterizedTest
  @CsvSource({
    // Z/R, V/v, thrust ratio
    "0.5, 0, 1.333333333",
    "0.75, 0, 1.125",
    "1, 0, 1.066666667",
    "2, 0, 1.015873016",
    "1, 1, 1.032258065",
    "0.5, 2, 1.052631579",
    "4, 0, 1.003921569"
  })
  void atConstantPowerTheThrustIsThatOfTheFormula(
      double heightOverRadius, double speedOverInduced, double thrustRatio) {
    double ratio = GroundEffect.inducedRatio(4, 4 * heightOverRadius, 7 * speedOverInduced, 7);
    // induced power T^(3/2) ratio is the same at both thrusts: ratio x thrustRatio^(3/2) = 1
    assertEquals(thrustRatio, Math.pow(ratio, -2.0 / 3), 1e-9);
  }

  @Test
  void belowHalfARadiusTheEffectGrowsNoFurther() {
    assertEquals(Math.pow(0.75, 1.5), GroundEffect.inducedRatio(4, 0.1, 0, 7), 1e-12);
    assertEquals(Math.pow(0.75, 1.5), GroundEffect.inducedRatio(4, -3, 0, 7), 1e-12);
  }

  @Test
  void theEffectFadesWithHeightAndWithSpeed() {
    double before = 0;
    for (double z = 2; z < 40; z += 0.5) {
      double ratio = GroundEffect.inducedRatio(4, z, 0, 7);
      assertTrue(ratio > before && ratio < 1);
      before = ratio;
    }
    before = 0;
    for (double v = 0; v < 40; v += 1) {
      double ratio = GroundEffect.inducedRatio(4, 3, v, 7);
      assertTrue(ratio > before && ratio < 1);
      before = ratio;
    }
  }

  @Test
  void aRotorAtRestAndWithoutInflowIsANumberToo() {
    assertEquals(1, GroundEffect.inducedRatio(4, 3, 0, 0), 1e-12);
  }
}
