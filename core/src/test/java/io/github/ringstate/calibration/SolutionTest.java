package io.github.ringstate.calibration;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.UncertainNumbers;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SolutionTest {

  private static final List<Parameter> TWO =
      List.of(RingStateInflow.ONSET_TOTAL, RingStateInflow.LOSSES);

  private static final double DEVIATION = 0.3;

  private static final UncertainNumbers PRIOR =
      new UncertainNumbers(TWO, new double[] {0.4, -0.2}, new double[][] {{1.2, 0.5}, {0.5, 0.8}});

  private static final UncertainNumbers ONE =
      new UncertainNumbers(List.of(RingStateInflow.LOSSES), new double[] {0}, new double[][] {{1}});

  /**
   * Readings y = a logits + b own with errors that hang together: a line through them is linear in
   * all that is asked for.
   */
  @SuppressWarnings("ArrayRecordComponent") // of this test alone
  private record Line(RealMatrix a, double[] b, double[] y) implements Observed {

    static Line drawn(int size, SplittableRandom random) {
      double[][] a = new double[size][2];
      double[] b = new double[size];
      double[] y = new double[size];
      for (int i = 0; i < size; i++) {
        a[i][0] = random.nextGaussian();
        a[i][1] = random.nextGaussian();
        b[i] = random.nextGaussian();
        y[i] = a[i][0] - 0.5 * a[i][1] + 0.7 * b[i] + DEVIATION * random.nextGaussian();
      }
      return new Line(MatrixUtils.createRealMatrix(a), b, y);
    }

    @Override
    public int numbers() {
      return 1;
    }

    @Override
    public int size() {
      return y.length;
    }

    @Override
    public Series[] series() {
      Series[] all = new Series[y.length];
      Arrays.fill(all, Series.HEIGHT);
      return all;
    }

    @Override
    public Map<Series, Double> deviations() {
      return Map.of(Series.HEIGHT, DEVIATION);
    }

    @Override
    public Map<Series, Whitening> whitenings(Map<Series, Double> deviations) {
      return Map.of(Series.HEIGHT, new Whitening(errors(y.length).getData()));
    }

    @Override
    public double[] residuals(
        double[] values, double[] normals, int from, Map<Series, Whitening> whitenings) {
      double[] left = y.clone();
      for (int i = 0; i < left.length; i++) {
        for (int j = 0; j < 2; j++) {
          left[i] -= a.getEntry(i, j) * UncertainNumbers.logit(TWO.get(j), values[j]);
        }
        left[i] -= b[i] * normals[from];
      }
      whitenings.get(Series.HEIGHT).whiten(left, 0);
      return left;
    }
  }

  private static RealMatrix errors(int size) {
    RealMatrix errors = MatrixUtils.createRealMatrix(size, size);
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        errors.setEntry(
            i, j, (i == j ? DEVIATION * DEVIATION : 0) + 0.04 * FastMath.pow(0.8, Math.abs(i - j)));
      }
    }
    return errors;
  }

  @Test
  void aLinearProblemIsSolvedAsTheNormalEquationsSolveIt() {
    // second method: (A' S^-1 A + P^-1)^-1 (A' S^-1 y + P^-1 m), the closed form of a Gaussian
    // prior and Gaussian errors (A. Gelman et al., Bayesian Data Analysis, 3rd ed. 2013, section
    // 14.8; from memory)
    SplittableRandom random = new SplittableRandom(11);
    List<Line> lines = List.of(Line.drawn(30, random), Line.drawn(20, random));
    RealMatrix information = MatrixUtils.createRealIdentityMatrix(4);
    information.setSubMatrix(
        MatrixUtils.inverse(MatrixUtils.createRealMatrix(PRIOR.covariance())).getData(), 0, 0);
    double[] right = information.operate(new double[] {PRIOR.mean()[0], PRIOR.mean()[1], 0, 0});
    for (int d = 0; d < 2; d++) {
      Line line = lines.get(d);
      RealMatrix all = MatrixUtils.createRealMatrix(line.size(), 4);
      all.setSubMatrix(line.a().getData(), 0, 0);
      all.setColumn(2 + d, line.b());
      RealMatrix weighed = all.transposeMultiply(MatrixUtils.inverse(errors(line.size())));
      information = information.add(weighed.multiply(all));
      double[] more = weighed.operate(line.y());
      for (int i = 0; i < 4; i++) {
        right[i] += more[i];
      }
    }
    RealMatrix covariance = MatrixUtils.inverse(information);
    double[] mean = covariance.operate(right);
    Residuals residuals = new Residuals(PRIOR, lines);
    Solution solution = Solution.solve(residuals, new double[4]);
    UncertainNumbers posterior = solution.posterior(PRIOR);
    assertArrayEquals(new double[] {mean[0], mean[1]}, posterior.mean(), 1e-6);
    assertEquals(mean[2], solution.unknown()[2], 1e-6);
    assertEquals(mean[3], solution.unknown()[3], 1e-6);
    for (int i = 0; i < 2; i++) {
      for (int j = 0; j < 2; j++) {
        assertEquals(covariance.getEntry(i, j), posterior.covariance()[i][j], 1e-8);
      }
    }
    // of four unit variances each reading took what is left of none; the first two are shared
    RealMatrix left = solution.covariance();
    double shared = (2 - left.getEntry(0, 0) - left.getEntry(1, 1)) / 2;
    double[] spent = {shared + 1 - left.getEntry(2, 2), shared + 1 - left.getEntry(3, 3)};
    assertArrayEquals(spent, solution.spent(2), 1e-12);
    // slopes of a straight line are the same across as at the minimum
    RealMatrix across = OpenSpread.of(residuals, solution.unknown(), solution.covariance());
    assertEquals(0, across.subtract(solution.covariance()).getNorm1(), 1e-6);
    // readings of chi-square 4 per degree of freedom are readings of twice the deviation: a
    // quarter of the information
    RealMatrix identity = MatrixUtils.createRealIdentityMatrix(4);
    RealMatrix fewer = MatrixUtils.inverse(solution.weakened(4).covariance()).subtract(identity);
    RealMatrix all = MatrixUtils.inverse(solution.covariance()).subtract(identity);
    assertEquals(0, fewer.scalarMultiply(4).subtract(all).getNorm1(), 1e-6 * all.getNorm1());
  }

  /**
   * The second number asked for follows a wave; steps that hardly leave it are too short for all.
   */
  @Test
  void aLongBentValleyHasNoMinimumInReachAndIsGoneAlongForAStart() {
    Observed valley = new OneReading(0, all -> 300 * (all[1] - 0.5 * FastMath.sin(10 * all[0])));
    Residuals residuals = new Residuals(PRIOR, List.of(valley));
    double[] far = {-4, 0.5 * FastMath.sin(-40)};
    UnsupportedFitException refused =
        assertThrows(UnsupportedFitException.class, () -> Solution.solve(residuals, far));
    assertEquals(UnsupportedFitException.Reason.NO_MINIMUM, refused.reason());
    assertTrue(refused.getMessage().endsWith("given up after 200 tries"), refused.getMessage());
    double[] nearer = Solution.near(residuals, far, 50).unknown();
    double before = residuals.computeValue(far).getNorm();
    assertTrue(residuals.computeValue(nearer).getNorm() < 0.98 * before, Arrays.toString(nearer));
  }

  /**
   * A reading that misses by 100 whatever its own number is, but for those near one place: there is
   * no slope that leads there, and it is looked for from several starts. By hand, the least of u^2
   * + (100 (u - at))^2 is at 10,000 / 10,001 of the way.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0, -1, 1, -2, 2})
  void aNumberOfAReadingIsLookedForFromSeveralStarts(double at) {
    Observed hidden =
        new OneReading(1, all -> Math.abs(all[1] - at) < 0.4 ? 100 * (all[1] - at) : 100);
    Solution solution = Solution.of(ONE, List.of(hidden));
    assertEquals(10_000 * at / 10_001, solution.unknown()[1], 1e-4);
    assertEquals(0, solution.unknown()[0], 1e-4);
  }
}
