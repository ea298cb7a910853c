package io.github.ringstate.study.sweep;

import org.hipparchus.random.SobolSequenceGenerator;

/**
 * The Sobol sequence with the direction numbers of Joe and Kuo, unscrambled, from its origin on.
 */
final class SobolPoints implements Spread {

  private final SobolSequenceGenerator generator;

  SobolPoints(int dimensions) {
    generator = new SobolSequenceGenerator(dimensions);
  }

  @Override
  public void at(int point, double[] result) {
    double[] vector =
        generator.getNextIndex() == point ? generator.nextVector() : generator.skipTo(point);
    System.arraycopy(vector, 0, result, 0, result.length);
  }
}
