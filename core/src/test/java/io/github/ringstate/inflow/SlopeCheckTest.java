package io.github.ringstate.inflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.quantity.Quantity;
import java.util.Optional;
import java.util.SplittableRandom;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whether a model's slope is that of its total inflow. */
class SlopeCheckTest {

  /** A model with a wave of its own in the induced velocity, whose slope it states in part. */
  private static final class Waved extends InflowOver {

    private final double height;
    private final double wave;
    private final double share;

    Waved(InflowModel model, double height, double wave, double share) {
      super(model, height, wave, share);
      this.height = height;
      this.wave = wave;
      this.share = share;
    }

    @Override
    public double induced(double edgewise, double axial) {
      return super.induced(edgewise, axial) + height * FastMath.sin(wave * axial);
    }

    @Override
    public double slope(double edgewise, double axial) {
      return super.slope(edgewise, axial) + share * height * wave * FastMath.cos(wave * axial);
    }
  }

  static Iterable<InflowModel> models() {
    return InflowModelContractTest.models();
  }

  @ParameterizedTest
  @MethodSource("models")
  void everyModelOfTheLibraryPassesThoughItHasCornersAndJumps(InflowModel model) {
    assertEquals(Optional.empty(), SlopeCheck.compare(model));
  }

  @Test
  void aTablePasses() {
    InflowModel table = new TabulatedInflow(RingStateInflow.standard());
    assertEquals(Optional.empty(), SlopeCheck.compare(table));
  }

  @ParameterizedTest
  @MethodSource("models")
  void aWavePassesWithItsSlopeAndIsFoundWithoutOrWithHalfOfIt(InflowModel model) {
    SplittableRandom random = new SplittableRandom(20261129);
    for (int i = 0; i < 200; i++) {
      double height = random.nextDouble(0.1, 0.3);
      double wave = random.nextDouble(1, 4);
      assertEquals(
          Optional.empty(), SlopeCheck.compare(new Waved(model, height, wave, 1)), model::name);
      for (double share : new double[] {0, 0.5, Double.NaN}) {
        assertTrue(
            SlopeCheck.compare(new Waved(model, height, wave, share)).isPresent(), model::name);
      }
    }
  }

  /** A polygon through points of another model, with its slope by a difference to both sides. */
  private record Polygon(InflowModel model, double low, double cell, double step)
      implements InflowModel {

    @Override
    public String name() {
      return "polygon";
    }

    @Override
    public double lossShare(double edgewise, double axial) {
      return model.lossShare(edgewise, axial);
    }

    @Override
    public double induced(double edgewise, double axial) {
      double node = low + cell * FastMath.floor((axial - low) / cell);
      double share = (axial - node) / cell;
      return (1 - share) * model.induced(edgewise, node)
          + share * model.induced(edgewise, node + cell);
    }

    @Override
    public double slope(double edgewise, double axial) {
      return (total(edgewise, axial + step) - total(edgewise, axial - step)) / (2 * step);
    }
  }

  @Test
  void aPolygonPassesWithASlopeByDifferencesWhereverItsCornersAre() {
    SplittableRandom random = new SplittableRandom(20261129);
    for (int i = 0; i < 400; i++) {
      InflowModel polygon =
          new Polygon(
              RingStateInflow.standard(),
              -3 - random.nextDouble(),
              random.nextDouble(0.1, 0.3),
              random.nextDouble(1e-6, 1e-3));
      assertEquals(Optional.empty(), SlopeCheck.compare(polygon));
    }
  }

  /** A slope that is wrong everywhere: speeds of the check lie in 0 to 0.5, none in 0.1 to 0.4. */
  @Test
  void aModelIsAskedWithinItsRangesOnly() {
    InflowModel wrong = new Waved(new MomentumTheory(), 0.2, 1, 0);
    assertTrue(SlopeCheck.compare(new Ranged(wrong, 0, 0.5)).isPresent());
    assertEquals(Optional.empty(), SlopeCheck.compare(new Ranged(wrong, 0.1, 0.4)));
  }

  /** A model in a narrower range of axial speeds, which answers beyond it all the same. */
  private static final class Ranged extends InflowOver {

    private final Quantity range;

    Ranged(InflowModel model, double low, double high) {
      super(model, low, high);
      range = HoverUnits.AXIAL.within(low, high);
    }

    @Override
    public Quantity axialRange() {
      return range;
    }
  }

  /** Momentum theory in climb: w = z/2 + sqrt(1 + z^2/4), so that dw/dz = 0.515 at z = 0.06. */
  @Test
  void theFaultNamesTheSpeedsAndBothSlopes() {
    assertEquals(
        Optional.of(
            "states a slope of 0.515 at edgewise speed 0.00 and axial speed 0.06 (in hover induced"
                + " velocities), where its total inflow has one of 0.715; who changes the induced"
                + " velocity must change the slope with it"),
        SlopeCheck.compare(new Waved(new MomentumTheory(), 0.2, 1, 0)));
  }
}
