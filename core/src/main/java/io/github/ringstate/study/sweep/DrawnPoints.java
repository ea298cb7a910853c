package io.github.ringstate.study.sweep;

import io.github.ringstate.chance.Drawing;
import io.github.ringstate.chance.RandomStream;

/**
 * Points that are drawn as pilots are, one number for each coordinate.
 *
 * @param drawing how the points lie to each other
 * @param seed the seed of the sweep
 */
record DrawnPoints(Drawing drawing, long seed) implements Spread {

  @Override
  public void at(int point, double[] result) {
    RandomStream draws = drawing.stream(seed ^ SAMPLE_DRAWS, point);
    for (int i = 0; i < result.length; i++) {
      result[i] = draws.uniform();
    }
  }
}
