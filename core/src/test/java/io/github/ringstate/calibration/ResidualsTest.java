package io.github.ringstate.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.quantity.UncertainNumbers;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Residuals that are known, and what is made of them by hand. */
class ResidualsTest {

  private static final UncertainNumbers PRIOR =
      new UncertainNumbers(List.of(RingStateInflow.LOSSES), new double[] {0}, new double[][] {{1}});

  /** Ten heights and two attitudes that miss by so much, whatever the numbers. */
  @SuppressWarnings("ArrayRecordComponent") // of this test alone
  private record Missed(double... by) implements Observed {

    @Override
    public int numbers() {
      return 1;
    }

    @Override
    public int size() {
      return 12;
    }

    @Override
    public Series[] series() {
      Series[] all = new Series[12];
      Arrays.fill(all, Series.HEIGHT);
      Arrays.fill(all, 10, 12, Series.PITCH);
      return all;
    }

    @Override
    public Map<Series, Double> deviations() {
      return new EnumMap<>(Map.of(Series.HEIGHT, 1.0, Series.PITCH, 1.0));
    }

    @Override
    public Map<Series, Whitening> whitenings(Map<Series, Double> deviations) {
      Map<Series, Whitening> all = new EnumMap<>(Series.class);
      deviations.forEach(
          (series, deviation) -> {
            double[] variances = new double[series == Series.HEIGHT ? 10 : 2];
            Arrays.fill(variances, deviation * deviation);
            all.put(
                series, new Whitening(MatrixUtils.createRealDiagonalMatrix(variances).getData()));
          });
      return all;
    }

    @Override
    public double[] residuals(
        double[] values, double[] normals, int from, Map<Series, Whitening> whitenings) {
      double[] left = by.clone();
      whitenings.get(Series.HEIGHT).whiten(left, 0);
      whitenings.get(Series.PITCH).whiten(left, 10);
      return left;
    }
  }

  /**
   * Nine heights off by 1 and one by 10, which counts as 3: 18 squares over 10 readings, of which a
   * tenth is spent, are a variance of 2. The one is then 10 / sqrt 2 deviations off, and its weight
   * such that its square is 3 of these (P. J. Huber, 1964; from memory).
   */
  @Test
  void aReadingFarOffCountsLessAndTheOthersSayHowFarOffTheyAre() {
    double[] by = new double[12];
    Arrays.fill(by, 1);
    by[4] = 10;
    Residuals residuals = new Residuals(PRIOR, List.of(new Missed(by)));
    residuals.reweigh(new double[2], new double[] {1.2});
    double[] now = residuals.computeValue(new double[] {0.3, -0.7}).toArray();
    assertEquals(1 / FastMath.sqrt(2.0), now[0], 1e-12);
    assertEquals(FastMath.sqrt(3 * 10 / FastMath.sqrt(2.0)), now[4], 1e-12);
    // two attitudes off by 1, a tenth spent
    assertEquals(FastMath.sqrt(0.9), now[10], 1e-12);
    // the unknowns are residuals of the prior
    assertEquals(0.3, now[12]);
    assertEquals(-0.7, now[13]);
    // of the heights alone, in expected deviations: nine squares of 1, and one of 100 by its weight
    double sum = 9 + 100 * 3 / (10 / FastMath.sqrt(2.0));
    assertEquals(sum / 10 / 0.9, residuals.misfit(0, new double[2], 1.2), 1e-12);
    // of which no more than four fifths are spent
    assertEquals(sum / 10 / 0.2, residuals.misfit(0, new double[2], 11), 1e-12);
    // readings that follow to a hundredth are not thought better than three tenths of what is known
    Arrays.fill(by, 0.01);
    Residuals close = new Residuals(PRIOR, List.of(new Missed(by)));
    close.reweigh(new double[2], new double[] {0});
    assertEquals(0.01 / 0.3, close.computeValue(new double[2]).toArray()[0], 1e-12);
  }

  /** The variance of the number that belongs to the reading, from that of the prior on. */
  private static double open(DoubleUnaryOperator miss) {
    Residuals residuals =
        new Residuals(PRIOR, List.of(new OneReading(1, all -> miss.applyAsDouble(all[1]))));
    RealMatrix one = MatrixUtils.createRealIdentityMatrix(2);
    RealMatrix open = OpenSpread.of(residuals, new double[2], one);
    assertEquals(1, open.getEntry(0, 0), 1e-12);
    return open.getEntry(1, 1);
  }

  /**
   * By hand, for s u where u is positive and nothing elsewhere: one deviation, sqrt v, either way
   * the slope is s / 2 and the bend s sqrt v, of which half the square is the variance of an error:
   * the information is 1 + (s / 2)^2 / (1 + s^2 v / 2). Worked out twice, from v = 1.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.5, 1, 3, 20})
  void aNumberThatMattersOnOneSideIsToldByTheSlopeAcross(double s) {
    double first = 1 / (1 + s * s / 4 / (1 + s * s / 2));
    double second = 1 / (1 + s * s / 4 / (1 + s * s * first / 2));
    assertEquals(second, open(u -> s * Math.max(0, u)), 1e-9);
  }

  /** A line is told by its slope, and a shorter way is tried where it cannot be flown. */
  @Test
  void whatCannotBeFlownIsTriedCloserBy() {
    assertEquals(1 / (1 + 0.16), open(u -> 0.4 * u), 1e-9);
    assertEquals(1 / (1 + 0.16), open(u -> Math.abs(u) < 0.6 ? 0.4 * u : 1000), 1e-9);
    assertEquals(1 / (1 + 0.16), open(u -> u > -0.2 ? 0.4 * u : -1000), 1e-9);
    // nowhere but at the middle: nothing is told
    assertEquals(1, open(u -> u == 0 ? 0 : 1000), 1e-6);
  }
}
