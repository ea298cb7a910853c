package io.github.ringstate.inflow;

import io.github.ringstate.quantity.MadeOf;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The onset of the ring state by the speed of the tip vortices: they leave the disc at half the
 * induced velocity, so they stay at it when the descent is as fast, 2 |z| = v.
 *
 * <p>Wolkovitch, Analytical prediction of vortex-ring boundaries for helicopters in steep descents,
 * Journal of the American Helicopter Society 17(3), 1972. His induced velocity at that point is v =
 * 1 / sqrt(x^2 + z^2), the momentum value with z + v = |z|, so the onset is 4 z^2 (x^2 + z^2) = 1.
 * Known to be late at low edgewise speed and not to close at high edgewise speed; his exit needs an
 * empirical factor and is not modelled here.
 */
public final class TipVortex extends MadeOf implements BoundaryCriterion {

  /** Creates the criterion; it has no parameters. */
  public TipVortex() {}

  @Override
  public String name() {
    return "tip-vortex";
  }

  /** {@inheritDoc} Here 1 - 4 z^2 (x^2 + z^2) in descent, 1 in level flight and climb. */
  @Override
  public double margin(double edgewise, double axial) {
    double x = HoverUnits.EDGEWISE.check(edgewise);
    double z = HoverUnits.AXIAL.check(axial);
    return z < 0 ? 1 - 4 * z * z * (x * x + z * z) : 1;
  }

  /** {@inheritDoc} One band at every edgewise speed, without an exit. */
  @Override
  public List<RingBand> bands(double edgewise) {
    double xx = HoverUnits.EDGEWISE.check(edgewise) * edgewise;
    double onset = -1 / Math.sqrt(2 * (xx + Math.sqrt(xx * xx + 1)));
    return List.of(new RingBand(onset, OptionalDouble.empty()));
  }

  /** {@inheritDoc} Infinite: the criterion does not close. */
  @Override
  public OptionalDouble reach() {
    return OptionalDouble.of(Double.POSITIVE_INFINITY);
  }
}
