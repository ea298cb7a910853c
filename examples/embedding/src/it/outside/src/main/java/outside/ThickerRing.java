package outside;

import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.inflow.InflowOver;

/** An inflow model that takes another and adds a bump to it about an axial speed of -1. */
public final class ThickerRing extends InflowOver {

  private final double height;

  /**
   * Adds the bump.
   *
   * @param base the model it starts from
   * @param height the height of the bump, over the hover induced velocity
   */
  public ThickerRing(InflowModel base, double height) {
    super(base, height);
    this.height = height;
  }

  @Override
  public String name() {
    return "thicker-ring";
  }

  @Override
  public double induced(double edgewise, double axial) {
    double x = inBump(axial);
    return super.induced(edgewise, axial) + height * (1 - x * x) * (1 - x * x);
  }

  @Override
  public double slope(double edgewise, double axial) {
    double x = inBump(axial);
    return super.slope(edgewise, axial) - 4 * height * x * (1 - x * x);
  }

  /** -1 to 1 in the bump, at an end of it outside. */
  private static double inBump(double axial) {
    return Math.min(Math.max(axial + 1, -1), 1);
  }
}
