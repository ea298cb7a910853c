package io.github.ringstate.analysis.sensitivity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.analysis.sensitivity.SobolIndices.Index;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;

class SobolIndicesTest {

  /**
   * sin x1 + 7 sin^2 x2 + 0.1 x3^4 sin x1 for x uniform from -pi to pi (Ishigami and Homma, First
   * International Symposium on Uncertainty Modeling and Analysis, 1990), whose indices have closed
   * forms: V1 = (1 + b pi^4 / 5)^2 / 2, V2 = a^2 / 8, V13 = 8 b^2 pi^8 / 225, others none
   * (Saltelli, Chan and Scott, Sensitivity Analysis, 2000; from memory). To three digits first
   * 0.314, 0.442, 0 and total 0.558, 0.442, 0.244.
   */
  @Test
  void theIndicesOfIshigamisFunctionAreThePublishedOnes() {
    double a = 7;
    double b = 0.1;
    SobolIndices found =
        SobolIndices.of(
            u -> {
              double sine1 = FastMath.sin(Math.PI * (2 * u[0] - 1));
              double sine2 = FastMath.sin(Math.PI * (2 * u[1] - 1));
              double x3 = Math.PI * (2 * u[2] - 1);
              return sine1 + a * sine2 * sine2 + b * x3 * x3 * x3 * x3 * sine1;
            },
            3,
            8 * 4096,
            7);
    double pi4 = FastMath.pow(Math.PI, 4);
    double v1 = FastMath.pow(1 + b * pi4 / 5, 2) / 2;
    double v2 = a * a / 8;
    double v13 = 8 * b * b * pi4 * pi4 / 225;
    double v = v1 + v2 + v13;
    assertEquals(v, found.variance(), 0.01 * v);
    assertEquals(a / 2, found.mean(), 0.01);
    double[] first = {v1 / v, v2 / v, 0};
    double[] total = {(v1 + v13) / v, v2 / v, v13 / v};
    assertEquals(0.314, first[0], 5e-4);
    assertEquals(0.442, first[1], 5e-4);
    assertEquals(0.558, total[0], 5e-4);
    assertEquals(0.244, total[2], 5e-4);
    for (int i = 0; i < 3; i++) {
      Index index = found.indices().get(i);
      assertEquals(first[i], index.first(), 0.005);
      assertEquals(total[i], index.total(), 0.005);
      assertTrue(index.firstHalfWidth() < 0.01);
      assertTrue(index.totalHalfWidth() < 0.01);
    }
    assertEquals(5L * 8 * 4096, found.evaluations());
  }

  /** 95 % intervals hold the known index in about 95 % of repetitions. */
  @Test
  void theConfidenceIntervalsHoldWhatTheySay() {
    int held = 0;
    int repetitions = 200;
    for (int seed = 0; seed < repetitions; seed++) {
      // 3 x + y: variances 9 to 1
      Index index =
          SobolIndices.of(u -> 3 * u[0] + FastMath.sin(40 * u[1]), 2, 64, seed).indices().get(0);
      double other = (1 - FastMath.sin(80) / 80) / 2 - FastMath.pow((1 - FastMath.cos(40)) / 40, 2);
      if (Math.abs(index.first() - 0.75 / (0.75 + other)) <= index.firstHalfWidth()) {
        held++;
      }
    }
    // binomial: 190 +- 9 by three standard deviations
    assertTrue(held >= 175 && held <= 199, held + " of " + repetitions);
  }

  @Test
  void whatDoesNotVaryOrIsNotFiniteIsRefused() {
    assertThrows(ArithmeticException.class, () -> SobolIndices.of(u -> 1, 2, 64, 1));
    assertThrows(ArithmeticException.class, () -> SobolIndices.of(u -> 1 / 0.0, 2, 64, 1));
    assertThrows(IllegalArgumentException.class, () -> SobolIndices.of(u -> u[0], 0, 64, 1));
    for (int samples : new int[] {-5, 0, 63, Integer.MAX_VALUE}) {
      assertThrows(IllegalArgumentException.class, () -> SobolIndices.of(u -> u[0], 2, samples, 1));
    }
  }
}
