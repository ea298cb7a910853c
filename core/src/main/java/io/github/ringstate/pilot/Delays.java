package io.github.ringstate.pilot;

import io.github.ringstate.quantity.OutOfRangeException;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.distribution.RealDistribution;
import org.hipparchus.distribution.continuous.GammaDistribution;
import org.hipparchus.distribution.continuous.LogNormalDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.util.FastMath;

/**
 * Distributions of delays, given as people give them: the median, and what nine in ten do not
 * exceed.
 */
public final class Delays {

  /** Medians that are accepted. */
  public static final Quantity MEDIAN = new Quantity("median delay", Unit.SECOND, 0.01, 30);

  /** Ratios of the 90 per cent point to the median that are accepted. */
  public static final Quantity RATIO =
      new Quantity("90 per cent point over median", Unit.ONE, 1.01, 30);

  private static final double NINE_IN_TEN = 0.9;

  private Delays() {}

  /**
   * The log-normal distribution with this median and 90 per cent point.
   *
   * @param median half of the people do not exceed it, s
   * @param ninety nine in ten do not exceed it, s
   * @return the distribution, in s
   * @throws OutOfRangeException if a value is outside {@link #MEDIAN} or {@link #RATIO}
   */
  public static RealDistribution logNormal(double median, double ninety) {
    check(median, ninety);
    double z = new NormalDistribution().inverseCumulativeProbability(NINE_IN_TEN);
    return new LogNormal(FastMath.log(median), FastMath.log(ninety / median) / z);
  }

  /** With the inverse in closed form, where Hipparchus searches. */
  private static final class LogNormal extends LogNormalDistribution {

    private static final long serialVersionUID = 1L;

    private static final NormalDistribution STANDARD = new NormalDistribution();

    LogNormal(double location, double shape) {
      super(location, shape);
    }

    @Override
    public double inverseCumulativeProbability(double share) {
      return FastMath.exp(
          getLocation() + getShape() * STANDARD.inverseCumulativeProbability(share));
    }
  }

  /**
   * The gamma distribution with this median and 90 per cent point.
   *
   * @param median half of the people do not exceed it, s
   * @param ninety nine in ten do not exceed it, s
   * @return the distribution, in s
   * @throws OutOfRangeException if a value is outside {@link #MEDIAN} or {@link #RATIO}
   */
  public static RealDistribution gamma(double median, double ninety) {
    check(median, ninety);
    double ratio = ninety / median;
    // the ratio falls steadily as the shape grows; the shape is looked for in its logarithm
    double logShape =
        new BracketingNthOrderBrentSolver(1e-12, 5)
            .solve(200, s -> ratio(FastMath.exp(s)) - ratio, FastMath.log(0.05), FastMath.log(5e4));
    double shape = FastMath.exp(logShape);
    double scale = median / new GammaDistribution(shape, 1).inverseCumulativeProbability(0.5);
    return new GammaDistribution(shape, scale);
  }

  private static double ratio(double shape) {
    GammaDistribution unit = new GammaDistribution(shape, 1);
    return unit.inverseCumulativeProbability(NINE_IN_TEN) / unit.inverseCumulativeProbability(0.5);
  }

  private static void check(double median, double ninety) {
    MEDIAN.check(median);
    RATIO.check(ninety / median);
  }
}
