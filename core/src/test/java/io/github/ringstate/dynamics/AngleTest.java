package io.github.ringstate.dynamics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;

/** Second method: FastMath of Hipparchus. */
class AngleTest {

  @Test
  void sineAndCosineAgreeWithFastMathEverywhere() {
    for (double x = -8; x <= 8; x += 1e-3) {
      assertEquals(FastMath.sin(x), Angle.sin(x), 1e-15, "" + x);
      assertEquals(FastMath.cos(x), Angle.cos(x), 2e-15, "" + x);
    }
  }

  @Test
  void zeroIsExactAndWhatIsNoNumberStaysNone() {
    assertEquals(0, Angle.sin(0));
    assertEquals(1, Angle.cos(0));
    assertTrue(Double.isNaN(Angle.sin(Double.NaN)));
    assertTrue(Double.isNaN(Angle.cos(Double.NaN)));
  }
}
