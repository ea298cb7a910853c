package io.github.ringstate.inflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.github.ringstate.quantity.OutOfRangeException;
import java.util.List;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class DescentFitsTest {

  static List<String[]> reference() {
    return ReferenceTable.rows("descent_fits.csv");
  }

  /**
   * Source: the formulas as printed (from memory), in 50-digit arithmetic; see the file's first
   * lines.
   */
  @ParameterizedTest
  @MethodSource("reference")
  void theFitsAgreeWithTheirPrintedCoefficients(
      String axial, String quartic, String quarticReal, String segments, String cubic) {
    double z = Double.parseDouble(axial);
    assertEquals(Double.parseDouble(quartic), new QuarticFit(1).induced(0, z), 1e-6);
    assertEquals(Double.parseDouble(quarticReal), new QuarticFit(1.15).induced(0, z), 1e-6);
    assertEquals(Double.parseDouble(segments), new TwoSegmentFit(1).induced(0, z), 1e-6);
    assertEquals(Double.parseDouble(cubic), new CubicBridge().induced(0, z), 1e-6);
  }

  /** Source: arithmetic on the published coefficients; the fit has no fold, only weak damping. */
  @Test
  void theQuarticKeepsAWeakDampingInTheRingState() {
    QuarticFit fit = new QuarticFit(1);
    double least = 1;
    double where = 0;
    for (int i = 100; i <= 2000; i++) {
      double z = -i * 1e-3;
      if (fit.slope(0, z) < least) {
        least = fit.slope(0, z);
        where = z;
      }
    }
    assertEquals(0.08, least, 0.005);
    assertEquals(-0.95, where, 0.05);
    assertEquals(-0.125, fit.slope(0, 0), 1e-12);
  }

  @Test
  void theTwoSegmentsMeetAtTheKneeAndReachTheHoverFactorAtTheWindmillLimit() {
    for (double k : new double[] {1, 1.15, 1.4}) {
      TwoSegmentFit fit = new TwoSegmentFit(k);
      assertEquals(2.5 * k, fit.induced(0, -1.5), 1e-15);
      assertEquals(fit.induced(0, -1.5), fit.induced(0, -1.5 - 1e-12), 1e-11);
      assertEquals(k, fit.induced(0, -2), 1e-15);
      assertEquals(k, fit.factor());
      assertEquals(k, new QuarticFit(k).factor());
    }
  }

  /** They were fitted to power and thrust, and so hold all losses. */
  @Test
  void theFitsHoldTheWholeLosses() {
    for (double z = -2; z <= 0; z += 0.25) {
      assertEquals(1, QuarticFit.standard().lossShare(0, z));
      assertEquals(1, TwoSegmentFit.standard().lossShare(0, z));
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.999, 1.401, Double.NaN})
  void anInducedPowerFactorOutsideItsRangeIsRefused(double k) {
    assertThrows(OutOfRangeException.class, () -> new QuarticFit(k));
    assertThrows(OutOfRangeException.class, () -> new TwoSegmentFit(k));
  }

  /**
   * Source: the ellipse and the cubic of NASA/TP-2005-213477 (from memory). A known difference of
   * that model and not of this code: across the lower half of the edge its induced velocity jumps,
   * by 0.06 when rounded to two digits, and at the tip (0.816, -1.5) from 1.130 to 1.100.
   */
  @Test
  void theCubicBridgeJumpsOnTheLowerHalfOfItsEllipse() {
    CubicBridge bridge = new CubicBridge();
    double upper = 0;
    double lower = 0;
    for (int i = 1; i < 1000; i++) {
      double angle = Math.PI * i / 1000 - Math.PI / 2;
      double x = FastMath.cos(angle) / Math.sqrt(1.5);
      double depth = FastMath.sin(angle);
      double inside = bridge.induced(x * (1 - 1e-9), -1.5 + 0.5 * depth * (1 - 1e-9));
      double outside = bridge.induced(x * (1 + 1e-9), -1.5 + 0.5 * depth * (1 + 1e-9));
      double jump = Math.abs(outside - inside);
      if (depth > 0) {
        upper = Math.max(upper, jump);
      } else {
        lower = Math.max(lower, jump);
      }
    }
    assertEquals(0.06, lower, 0.001);
    assertEquals(0.030, upper, 0.001);
  }
}
