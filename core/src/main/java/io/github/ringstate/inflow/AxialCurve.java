package io.github.ringstate.inflow;

/**
 * The total inflow of a rotor in axial flow from hover through the ring state to the windmill brake
 * state, with a fold: it falls from hover to the onset, rises to the exit and falls again.
 *
 * <p>The shape holds for every onset and exit that the constructor accepts. From hover to the onset
 * the curve is the rational quadratic of Gregory and Delbourgo (IMA Journal of Numerical Analysis
 * 2, 1982), which is monotonic for any two points and slopes; a cubic there turns over as soon as
 * the onset inflow exceeds 1 + z/6. From onset to exit it is the cubic with zero slopes at both
 * ends, and from the exit to momentum theory a cubic whose end slope stays below three times its
 * chord.
 */
final class AxialCurve {

  private static final double HOVER_TOTAL = 1;
  private static final double HOVER_SLOPE = 0.5;

  private final double onset;
  private final double onsetTotal;
  private final double chord;
  private final double exit;
  private final double exitTotal;
  private final double join;
  private final double joinTotal;
  private final double joinSlope;

  AxialCurve(double onset, double onsetTotal, double exit, double exitTotal, double join) {
    this.onset = onset;
    this.onsetTotal = onsetTotal;
    this.chord = (onsetTotal - HOVER_TOTAL) / onset;
    this.exit = exit;
    this.exitTotal = exitTotal;
    this.join = join;
    double v = MomentumRoots.axialWindmill(join);
    this.joinTotal = join + v;
    this.joinSlope = MomentumTheory.slopeAt(join, v);
  }

  /** Total inflow, for z between the lower join and 0. */
  double value(double z) {
    if (z >= onset) {
      double t = 1 - z / onset;
      double u = z / onset;
      return onsetTotal
          + (HOVER_TOTAL - onsetTotal)
              * (chord * t * t)
              / (chord + (HOVER_SLOPE - 2 * chord) * t * u);
    }
    if (z >= exit) {
      return Hermite.value(exit, exitTotal, 0, onset, onsetTotal, 0, z);
    }
    return Hermite.value(join, joinTotal, joinSlope, exit, exitTotal, 0, z);
  }

  /** Slope of the total inflow, for z between the lower join and 0. */
  double slope(double z) {
    if (z >= onset) {
      double t = 1 - z / onset;
      double u = z / onset;
      double below = chord + (HOVER_SLOPE - 2 * chord) * t * u;
      return chord * chord * t * (HOVER_SLOPE * t + 2 * chord * u) / (below * below);
    }
    if (z >= exit) {
      return Hermite.slope(exit, exitTotal, 0, onset, onsetTotal, 0, z);
    }
    return Hermite.slope(join, joinTotal, joinSlope, exit, exitTotal, 0, z);
  }
}
