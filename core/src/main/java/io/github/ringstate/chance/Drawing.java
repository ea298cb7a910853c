package io.github.ringstate.chance;

import java.util.Arrays;
import java.util.Optional;

/** How the random numbers of many samples are drawn. */
public enum Drawing {
  /** Evenly spread: eight sets of scrambled Sobol points. */
  SOBOL("sobol") {
    @Override
    public RandomStream stream(long seed, long sample) {
      return new SobolStream(seed, sample);
    }

    @Override
    public int samples(int wished) {
      int samples = SobolStream.SETS;
      while (samples < wished) {
        samples = Math.multiplyExact(samples, 2);
      }
      return samples;
    }
  },

  /** Each by itself; the yardstick. */
  INDEPENDENT("independent") {
    @Override
    public RandomStream stream(long seed, long sample) {
      return new IndependentStream(seed, sample);
    }

    @Override
    public int samples(int wished) {
      return wished;
    }
  };

  private final String label;

  Drawing(String label) {
    this.label = label;
  }

  /**
   * Finds a way of drawing.
   *
   * @param label its word
   * @return the way, or empty if there is none of that word
   */
  public static Optional<Drawing> named(String label) {
    return Arrays.stream(values()).filter(drawing -> drawing.label.equals(label)).findFirst();
  }

  /**
   * The way in a word.
   *
   * @return lower case
   */
  public String label() {
    return label;
  }

  /**
   * The numbers of one sample.
   *
   * @param seed the seed of the whole study
   * @param sample the number of the sample, from 0
   * @return its numbers, from the first on
   */
  public abstract RandomStream stream(long seed, long sample);

  /**
   * How many samples make full sets: eight times a power of two for {@link #SOBOL}, since a part of
   * a net is not spread as evenly.
   *
   * @param wished a number of samples, at least 1
   * @return the least such number that is not below it
   */
  public abstract int samples(int wished);
}
