package io.github.ringstate.analysis.best;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleBounds;
import org.hipparchus.optim.SimpleValueChecker;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.BOBYQAOptimizer;
import org.hipparchus.optim.nonlinear.scalar.noderiv.CMAESOptimizer;
import org.hipparchus.random.Well19937c;

/**
 * A search for the least value of a function of many numbers between -1 and 1, without derivatives:
 * Hipparchus's CMA-ES, which gets over small bumps and finds the valley, then BOBYQA (Powell,
 * report DAMTP 2009/NA06) in its bottom.
 *
 * @param evaluations how often the function may be asked by CMA-ES from each start
 * @param seed the seed of CMA-ES
 */
public record DirectSearch(int evaluations, long seed) {

  /** First standard deviation of CMA-ES. */
  private static final double SIGMA = 0.3;

  /** First and last radius of BOBYQA. */
  private static final double FIRST_RADIUS = 0.05;

  private static final double LAST_RADIUS = 1e-4;

  /** Generations that differ by less than this in value end CMA-ES. */
  private static final double SAME = 1e-4;

  /** Parts of the evaluations of CMA-ES that BOBYQA may take. */
  private static final double LOCAL_PART = 0.5;

  /**
   * Where a search ended.
   *
   * @param point the numbers
   * @param value the value there
   */
  @SuppressWarnings("ArrayRecordComponent") // an answer, read once
  public record End(double[] point, double value) {}

  /** Checks the number of evaluations. */
  public DirectSearch {
    if (!(evaluations >= 100)) {
      throw new IllegalArgumentException("a search needs 100 evaluations, not " + evaluations);
    }
  }

  /**
   * Searches from each of some starts.
   *
   * @param function the function; finite
   * @param confirmed whether a point with a low value counts, by a dearer look that is taken at the
   *     end, from the lowest value of a search up
   * @param twins how another point follows from the one at which a search ends, that may be near it
   *     in value and far off, as a mirror image is; each search tries BOBYQA from there too
   * @param starts where to begin, each number between -1 and 1
   * @return where each ended, the least first; a search of which no point counts is left out
   */
  public List<End> minimise(
      ToDoubleFunction<double[]> function,
      Predicate<double[]> confirmed,
      List<UnaryOperator<double[]>> twins,
      List<double[]> starts) {
    List<End> ends = new ArrayList<>();
    for (int i = 0; i < starts.size(); i++) {
      List<End> lows = from(function, twins, starts.get(i), seed + i);
      for (int low = lows.size() - 1; low >= 0; low--) {
        if (confirmed.test(lows.get(low).point().clone())) {
          ends.add(lows.get(low));
          break;
        }
      }
    }
    ends.sort(Comparator.comparingDouble(End::value));
    return List.copyOf(ends);
  }

  /** Each point that was lower than all before it. */
  private List<End> from(
      ToDoubleFunction<double[]> function,
      List<UnaryOperator<double[]>> twins,
      double[] start,
      long ownSeed) {
    List<End> lows = new ArrayList<>();
    lows.add(new End(start.clone(), function.applyAsDouble(start.clone())));
    ObjectiveFunction objective =
        new ObjectiveFunction(
            point -> {
              double value = function.applyAsDouble(point.clone());
              if (value < lows.get(lows.size() - 1).value()) {
                lows.add(new End(point.clone(), value));
              }
              return value;
            });
    try {
      byCmaEs(objective, start, ownSeed);
    } catch (MathIllegalStateException spent) {
      // the least value so far goes on
    }
    byBobyqa(objective, lows.get(lows.size() - 1).point());
    for (UnaryOperator<double[]> twin : twins) {
      byBobyqa(objective, twin.apply(lows.get(lows.size() - 1).point().clone()));
    }
    return lows;
  }

  private void byCmaEs(ObjectiveFunction objective, double[] start, long ownSeed) {
    int n = start.length;
    double[] sigma = new double[n];
    Arrays.fill(sigma, SIGMA);
    new CMAESOptimizer(
            evaluations,
            Double.NEGATIVE_INFINITY,
            true,
            0,
            0,
            new Well19937c(ownSeed),
            false,
            new SimpleValueChecker(-1, SAME))
        .optimize(
            new MaxEval(evaluations),
            objective,
            GoalType.MINIMIZE,
            new InitialGuess(start),
            bounds(n),
            new CMAESOptimizer.Sigma(sigma),
            new CMAESOptimizer.PopulationSize(4 + 2 * n));
  }

  private void byBobyqa(ObjectiveFunction objective, double[] start) {
    int n = start.length;
    try {
      new BOBYQAOptimizer(2 * n + 1, FIRST_RADIUS, LAST_RADIUS)
          .optimize(
              new MaxEval((int) (LOCAL_PART * evaluations)),
              objective,
              GoalType.MINIMIZE,
              new InitialGuess(start),
              bounds(n));
    } catch (MathIllegalStateException spent) {
      // the least value so far is kept
    }
  }

  private static SimpleBounds bounds(int n) {
    double[] low = new double[n];
    double[] high = new double[n];
    Arrays.fill(low, -1);
    Arrays.fill(high, 1);
    return new SimpleBounds(low, high);
  }
}
