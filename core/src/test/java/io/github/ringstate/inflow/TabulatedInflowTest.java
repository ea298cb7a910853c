package io.github.ringstate.inflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.quantity.OutOfRangeException;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class TabulatedInflowTest {

  private static final RingStateInflow MODEL = RingStateInflow.standard();
  private static final TabulatedInflow TABLE = new TabulatedInflow(MODEL);

  /** Second method: the model itself, whose roots are solved for. */
  @Test
  void theTableIsWithinFourMillionthsOfTheModel() {
    SplittableRandom random = new SplittableRandom(1);
    double worst = 0;
    for (int i = 0; i < 300_000; i++) {
      double x = 2 * random.nextDouble();
      double z = -2.5 + 3.5 * random.nextDouble();
      worst = Math.max(worst, Math.abs(TABLE.induced(x, z) - MODEL.induced(x, z)));
    }
    assertTrue(worst < 4e-6, "" + worst);
    assertTrue(worst > 1e-9, "a table is no copy of the model: " + worst);
  }

  @Test
  void nodesAreExact() {
    for (int i = 0; i <= 160; i += 3) {
      for (int j = -100; j <= 40; j += 3) {
        assertEquals(MODEL.induced(i / 80.0, j / 40.0), TABLE.induced(i / 80.0, j / 40.0), 1e-12);
      }
    }
  }

  /** The slopes on both sides of the lines between cells, by differences of second order. */
  @Test
  void theSlopeIsContinuousAcrossTheLinesBetweenCells() {
    double h = 1e-5;
    SplittableRandom random = new SplittableRandom(2);
    for (int i = 0; i < 2000; i++) {
      double x = (1 + random.nextInt(158)) / 80.0;
      double z = -2.49 + 3.48 * random.nextDouble();
      assertEquals(slope(x, z, -h, 0), slope(x, z, h, 0), 2e-3, x + " " + z);
      double line = (-99 + random.nextInt(138)) / 40.0;
      double across = 0.005 + 1.98 * random.nextDouble();
      assertEquals(
          slope(across, line, 0, -h), slope(across, line, 0, h), 2e-3, across + " " + line);
    }
  }

  private static double slope(double x, double z, double dx, double dz) {
    double step = dx + dz;
    return (4 * TABLE.induced(x + dx, z + dz)
            - 3 * TABLE.induced(x, z)
            - TABLE.induced(x + 2 * dx, z + 2 * dz))
        / (2 * step);
  }

  @Test
  void beyondTheTableTheModelIsAsked() {
    assertEquals(MODEL.induced(3, -1), TABLE.induced(3, -1));
    assertEquals(MODEL.induced(0.2, -4), TABLE.induced(0.2, -4));
    assertEquals(MODEL.slope(3, -0.7), TABLE.slope(3, -0.7));
    assertEquals(MODEL.lossShare(0.3, -0.7), TABLE.lossShare(0.3, -0.7));
    assertThrows(OutOfRangeException.class, () -> TABLE.induced(Double.NaN, -1));
    assertThrows(OutOfRangeException.class, () -> TABLE.induced(0, Double.NaN));
    assertThrows(OutOfRangeException.class, () -> TABLE.induced(-0.1, 0));
  }

  /** Second method: the model itself. */
  @Test
  void theSlopeIsThatOfTheModelWithinAThousandth() {
    SplittableRandom random = new SplittableRandom(4);
    for (int i = 0; i < 100_000; i++) {
      double x = 2 * random.nextDouble();
      double z = -2.5 + 3.5 * random.nextDouble();
      assertEquals(MODEL.slope(x, z), TABLE.slope(x, z), 1e-3, x + " " + z);
    }
  }

  /** Second method: the model itself. */
  @Test
  void theRingIsThatOfTheModel() {
    VortexRing exact = MODEL.ring();
    VortexRing table = new TabulatedRing(exact);
    assertEquals(exact.losses(), table.losses());
    assertEquals(exact.memory(), table.memory());
    for (double z = -3; z < 1; z += 0.00113) {
      assertEquals(exact.own(z), table.own(z), 4e-7, "z = " + z);
      assertEquals(exact.left(1 + z / 3), table.left(1 + z / 3));
      assertEquals(
          exact.feeding(MODEL, 0.4, z), table.feeding(TABLE, 0.4, z), 0.02, "feeding at " + z);
    }
  }

  /** Any model that accepts the table's speeds may be tabulated. */
  @Test
  void anotherModelIsTabulatedAsWell() {
    TabulatedInflow other = new TabulatedInflow(SmoothMomentum.standard());
    assertEquals(SmoothMomentum.standard().name(), other.name());
    // even in the edgewise speed: level on the axis
    for (double z = -2.4; z < 1; z += 0.1) {
      assertEquals(other.induced(0, z), other.induced(1e-6, z), 1e-11, "z = " + z);
    }
    SplittableRandom random = new SplittableRandom(3);
    for (int i = 0; i < 20_000; i++) {
      double x = 2 * random.nextDouble();
      double z = -2.5 + 3.5 * random.nextDouble();
      assertEquals(SmoothMomentum.standard().induced(x, z), other.induced(x, z), 1e-5);
    }
  }
}
