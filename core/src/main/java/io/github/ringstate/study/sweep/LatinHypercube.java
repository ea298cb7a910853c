package io.github.ringstate.study.sweep;

import io.github.ringstate.chance.IndependentStream;
import io.github.ringstate.chance.RandomStream;

/**
 * Latin hypercube sampling (McKay, Beckman and Conover, Technometrics 21(2), 1979): with n points
 * each coordinate's range is cut in n equal strata, every stratum holds one point, at random within
 * it, and the strata are paired at random.
 */
final class LatinHypercube implements Spread {

  private final int points;
  private final Permutation[] strata;
  private final long[] within;

  LatinHypercube(int dimensions, int points, long seed) {
    this.points = points;
    strata = new Permutation[dimensions];
    within = new long[dimensions];
    for (int i = 0; i < dimensions; i++) {
      RandomStream draws = new IndependentStream(seed ^ SAMPLE_DRAWS, i);
      strata[i] = new Permutation(points, draws);
      within[i] = draws.seed();
    }
  }

  @Override
  public void at(int point, double[] result) {
    for (int i = 0; i < result.length; i++) {
      double u = new IndependentStream(within[i], point).uniform();
      result[i] = (strata[i].at(point) + u) / points;
    }
  }
}
