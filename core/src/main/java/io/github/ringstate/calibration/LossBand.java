package io.github.ringstate.calibration;

import io.github.ringstate.chance.Drawing;
import io.github.ringstate.chance.RandomStream;
import java.util.Arrays;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * The band of a loss over drawn numbers.
 *
 * @param middle half of the draws lose less, m
 * @param low 2.5 in 100 lose less, m
 * @param high 2.5 in 100 lose more, m
 */
public record LossBand(double middle, double low, double high) {

  private static final NormalDistribution NORMAL = new NormalDistribution();
  private static final double TAIL = 0.025;

  /**
   * Draws.
   *
   * @param draws how many
   * @param size how many normal numbers each takes
   * @param seed the seed
   * @return the normal numbers of each draw
   */
  static double[][] normals(int draws, int size, long seed) {
    double[][] normals = new double[draws][size];
    for (int n = 0; n < draws; n++) {
      RandomStream stream = Drawing.SOBOL.stream(seed, n);
      for (int i = 0; i < size; i++) {
        normals[n][i] = NORMAL.inverseCumulativeProbability(stream.uniform());
      }
    }
    return normals;
  }

  /**
   * The band of drawn losses.
   *
   * @param losses the losses, m; NaN for one that cannot be flown
   * @return the band; of all losses, with no middle, if fewer than half of them can be flown
   */
  static LossBand of(double... losses) {
    double[] flown = Arrays.stream(losses).filter(one -> !Double.isNaN(one)).sorted().toArray();
    if (2 * flown.length < losses.length) {
      return new LossBand(Double.NaN, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }
    return new LossBand(at(flown, 0.5), at(flown, TAIL), at(flown, 1 - TAIL));
  }

  private static double at(double[] sorted, double share) {
    return sorted[(int) Math.min(sorted.length - 1, Math.max(0, share * sorted.length))];
  }
}
