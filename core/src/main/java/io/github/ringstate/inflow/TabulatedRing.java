package io.github.ringstate.inflow;

/**
 * A ring whose own part in axial flow is read off a table: a cubic Hermite polynomial through its
 * values and slopes at even spacing, beyond which there is none.
 */
final class TabulatedRing implements VortexRing {

  private static final double MINIMUM_AXIAL = -2.5;
  private static final int PER_AXIAL = 160;
  private static final int ROWS = (int) (-MINIMUM_AXIAL * PER_AXIAL);

  /** Half of the interval over which slopes are taken. */
  private static final double DIFFERENCE = 1e-5;

  private final VortexRing exact;
  // for each node: the ring's own part and its slope times the spacing
  private final double[] nodes = new double[2 * (ROWS + 1)];

  TabulatedRing(VortexRing exact) {
    this.exact = exact;
    for (int i = 0; i <= ROWS; i++) {
      double z = MINIMUM_AXIAL + (double) i / PER_AXIAL;
      nodes[2 * i] = exact.own(z);
      nodes[2 * i + 1] =
          (exact.own(z + DIFFERENCE) - exact.own(z - DIFFERENCE)) / (2 * DIFFERENCE) / PER_AXIAL;
    }
  }

  @Override
  public RingMemory memory() {
    return exact.memory();
  }

  @Override
  public double losses() {
    return exact.losses();
  }

  @Override
  public double feeding(InflowModel inflow, double edgewise, double axial) {
    return exact.feeding(inflow, edgewise, axial);
  }

  @Override
  public double own(double axial) {
    if (!(axial > MINIMUM_AXIAL && axial < 0)) {
      return exact.own(axial);
    }
    double z = (axial - MINIMUM_AXIAL) * PER_AXIAL;
    int i = Math.min((int) z, ROWS - 1);
    double t = z - i;
    double u = 1 - t;
    int at = 2 * i;
    return u * u * ((1 + 2 * t) * nodes[at] + t * nodes[at + 1])
        + t * t * ((1 + 2 * u) * nodes[at + 2] - u * nodes[at + 3]);
  }

  @Override
  public double left(double edgewise) {
    return exact.left(edgewise);
  }
}
