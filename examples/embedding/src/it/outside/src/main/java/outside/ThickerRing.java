package outside;

import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.inflow.VortexRing;

/**
 * An inflow model that takes another and adds a bump to it about an axial speed of -1.
 *
 * @param base the model it starts from
 * @param height the height of the bump, over the hover induced velocity
 */
public record ThickerRing(InflowModel base, double height) implements InflowModel {

  @Override
  public String name() {
    return "thicker-ring";
  }

  @Override
  public double induced(double edgewise, double axial) {
    double x = inBump(axial);
    return base.induced(edgewise, axial) + height * (1 - x * x) * (1 - x * x);
  }

  @Override
  public double slope(double edgewise, double axial) {
    double x = inBump(axial);
    return base.slope(edgewise, axial) - 4 * height * x * (1 - x * x);
  }

  @Override
  public double lossShare(double edgewise, double axial) {
    return base.lossShare(edgewise, axial);
  }

  @Override
  public VortexRing ring() {
    return base.ring();
  }

  /** -1 to 1 in the bump, at an end of it outside. */
  private static double inBump(double axial) {
    return Math.min(Math.max(axial + 1, -1), 1);
  }
}
