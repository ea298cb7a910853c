package io.github.ringstate.study.sweep;

import io.github.ringstate.chance.Drawing;

/** Where the points of a sample lie in the unit cube; any point is found without the others. */
interface Spread {

  /**
   * One point.
   *
   * @param point its number, from 0
   * @param result where to put its coordinates, each from 0 to 1
   */
  void at(int point, double[] result);

  /** Keeps the draws apart from those of pilots of the same seed. */
  long SAMPLE_DRAWS = 0x73616D706C65L;

  /** The spread of a sample; not to be shared between threads. */
  static Spread of(Sample sample, long seed) {
    if (sample.dimensions().isEmpty()) {
      return (point, result) -> {};
    }
    return switch (sample.method()) {
      case LATIN_HYPERCUBE -> new LatinHypercube(sample.dimensions().size(), sample.points(), seed);
      case SOBOL -> new DrawnPoints(Drawing.SOBOL, seed);
      case INDEPENDENT -> new DrawnPoints(Drawing.INDEPENDENT, seed);
    };
  }
}
