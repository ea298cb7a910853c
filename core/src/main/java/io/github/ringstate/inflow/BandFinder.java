package io.github.ringstate.inflow;

import io.github.ringstate.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;
import org.hipparchus.optim.univariate.UnivariatePointValuePair;

/**
 * Finds where a criterion's margin is negative: a fine scan over the descent, a search for the
 * least margin beside every dip of the scan so that no pocket thinner than its step is missed, and
 * a bracketed root on every change of sign.
 */
final class BandFinder {

  /** Deeper than this every rotor is far in the windmill brake state. */
  private static final double DEEPEST = -4;

  private static final double AXIAL_STEP = 0.005;
  private static final double EDGEWISE_STEP = 0.02;
  private static final double ACCURACY = 1e-13;
  private static final int MOST_EVALUATIONS = 300;

  private final BoundaryCriterion criterion;
  private final double top;
  private final double bottom;

  /**
   * Creates the finder.
   *
   * @param criterion whose margin is searched
   * @param axial the axial speeds in which the margin is defined
   */
  BandFinder(BoundaryCriterion criterion, Quantity axial) {
    this.criterion = criterion;
    this.top = Math.min(0, axial.high());
    this.bottom = Math.max(DEEPEST, axial.low());
  }

  /** A descent's axial speeds from slow to fast, with the margin at each. */
  private record Scan(List<Double> axial, List<Double> margin) {
    void add(double z, double m) {
      axial.add(z);
      margin.add(m);
    }

    double least() {
      return margin.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
    }
  }

  private Scan scan(double edgewise) {
    int steps = (int) Math.ceil((top - bottom) / AXIAL_STEP);
    double[] z = new double[steps + 1];
    double[] m = new double[steps + 1];
    for (int i = 0; i <= steps; i++) {
      z[i] = top + (bottom - top) * i / steps;
      m[i] = criterion.margin(edgewise, z[i]);
    }
    Scan scan = new Scan(new ArrayList<>(), new ArrayList<>());
    for (int i = 0; i <= steps; i++) {
      boolean dip = i > 0 && i < steps && m[i] >= 0 && m[i] < m[i - 1] && m[i] <= m[i + 1];
      if (dip) {
        UnivariatePointValuePair least = least(edgewise, z[i + 1], z[i - 1]);
        scan.add(least.getPoint(), least.getValue());
      } else {
        scan.add(z[i], m[i]);
      }
    }
    return scan;
  }

  private UnivariatePointValuePair least(double edgewise, double from, double to) {
    UnivariateFunction margin = z -> criterion.margin(edgewise, z);
    return new BrentOptimizer(1e-10, 1e-12)
        .optimize(
            new MaxEval(MOST_EVALUATIONS),
            new UnivariateObjectiveFunction(margin),
            GoalType.MINIMIZE,
            new SearchInterval(from, to));
  }

  /** The bands of negative margin, from slow to fast descent. */
  List<RingBand> bands(double edgewise) {
    Scan scan = scan(edgewise);
    List<RingBand> bands = new ArrayList<>();
    boolean inside = scan.margin().get(0) < 0;
    double onset = top;
    for (int i = 1; i < scan.axial().size(); i++) {
      if (scan.margin().get(i) < 0 != inside) {
        double crossing = crossing(edgewise, scan.axial().get(i), scan.axial().get(i - 1));
        if (inside) {
          bands.add(new RingBand(onset, OptionalDouble.of(crossing)));
        }
        onset = crossing;
        inside = !inside;
      }
    }
    if (inside) {
      bands.add(new RingBand(onset, OptionalDouble.empty()));
    }
    return bands;
  }

  private double crossing(double edgewise, double from, double to) {
    return root(z -> criterion.margin(edgewise, z), from, to);
  }

  /**
   * The greatest edgewise speed with a band.
   *
   * @param limit where the search ends, in hover induced velocities
   * @param ends whether the model ends at the limit; if not, a ring state there counts as unbounded
   */
  OptionalDouble reach(double limit, boolean ends) {
    int steps = (int) Math.ceil(limit / EDGEWISE_STEP);
    if (scan(limit).least() < 0) {
      return OptionalDouble.of(ends ? limit : Double.POSITIVE_INFINITY);
    }
    for (int i = steps - 1; i >= 0; i--) {
      double x = limit * i / steps;
      if (scan(x).least() < 0) {
        double beyond = limit * (i + 1) / steps;
        return OptionalDouble.of(root(edge -> scan(edge).least(), x, beyond));
      }
    }
    return OptionalDouble.empty();
  }

  private static double root(UnivariateFunction f, double from, double to) {
    return new BracketingNthOrderBrentSolver(ACCURACY, ACCURACY, 5)
        .solve(MOST_EVALUATIONS, f, from, to, AllowedSolution.ANY_SIDE);
  }
}
