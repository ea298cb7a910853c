package io.github.ringstate.study.sweep;

import java.io.Serializable;
import java.util.List;
import org.hipparchus.distribution.RealDistribution;
import org.hipparchus.distribution.continuous.GammaDistribution;
import org.hipparchus.distribution.continuous.LogNormalDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TriangularDistribution;
import org.hipparchus.distribution.continuous.UniformRealDistribution;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.util.FastMath;

/** How the values of a sampled setting are spread. */
public sealed interface Law extends Serializable permits Law.Span, Law.Drawn {

  /** The share of a distribution that its second number says for a log-normal one. */
  double NINE_IN_TEN = 0.9;

  /**
   * Evenly from one end to the other, by differences or by ratios.
   *
   * @param from one end, in the unit of the setting
   * @param to the other end
   * @param scale how the points lie between the ends
   */
  record Span(double from, double to, Scale scale) implements Law {}

  /**
   * By a distribution of probability, cut off at two bounds: of all that it draws only what lies
   * between them is kept.
   *
   * @param family the kind of distribution
   * @param numbers its numbers in the order of {@link Family#numbers}, in the unit of the setting
   * @param low the lower bound; minus infinity for that of the setting's range
   * @param high the upper bound; infinity for that of the setting's range
   */
  record Drawn(Family family, List<Double> numbers, double low, double high) implements Law {

    /** Copies the numbers. */
    public Drawn {
      numbers = List.copyOf(numbers);
    }

    /** The distribution without its bounds. */
    RealDistribution distribution(String key) {
      try {
        if (numbers.stream().allMatch(Double::isFinite) && family.mayBe(numbers)) {
          return family.made(numbers);
        }
      } catch (MathRuntimeException impossible) {
        // refused below
      }
      throw new SettingException(
          key,
          "has a " + family.label + " distribution with " + family.numbers() + " " + numbers,
          family.allowed);
    }
  }

  /** The kinds of distributions. */
  enum Family {
    /** Normal, by mean and standard deviation. */
    NORMAL("normal", "a positive sd"),
    /** Log-normal, by the median and what nine in ten do not exceed. */
    LOG_NORMAL("log-normal", "a positive median and a p90 above it"),
    /** Gamma, by mean and standard deviation. */
    GAMMA("gamma", "a positive mean and a positive sd"),
    /** Uniform, by its ends. */
    UNIFORM("uniform", "a from below to"),
    /** Triangular, by its ends and the most likely value. */
    TRIANGULAR("triangular", "a from below to, and a mode between them");

    private final String label;
    private final String allowed;

    Family(String label, String allowed) {
      this.label = label;
      this.allowed = allowed;
    }

    /**
     * The distribution in a word.
     *
     * @return lower case
     */
    public String label() {
      return label;
    }

    /**
     * What the distribution is given by.
     *
     * @return the names of its numbers, in order
     */
    public List<String> numbers() {
      return switch (this) {
        case NORMAL, GAMMA -> List.of("mean", "sd");
        case LOG_NORMAL -> List.of("median", "p90");
        case UNIFORM -> List.of("from", "to");
        case TRIANGULAR -> List.of("from", "mode", "to");
      };
    }

    /** What the distribution that is made of the numbers would not refuse itself. */
    private boolean mayBe(List<Double> n) {
      return switch (this) {
        case LOG_NORMAL -> n.get(0) > 0 && n.get(1) > n.get(0);
        case GAMMA -> n.get(0) > 0 && n.get(1) > 0;
        case NORMAL, UNIFORM, TRIANGULAR -> true;
      };
    }

    private RealDistribution made(List<Double> n) {
      double first = n.get(0);
      double second = n.get(1);
      return switch (this) {
        case NORMAL -> new NormalDistribution(first, second);
        case LOG_NORMAL -> {
          double z = new NormalDistribution().inverseCumulativeProbability(NINE_IN_TEN);
          yield new LogNormalDistribution(FastMath.log(first), FastMath.log(second / first) / z);
        }
        case GAMMA -> {
          double ratio = first / second;
          yield new GammaDistribution(ratio * ratio, second / ratio);
        }
        case UNIFORM -> new UniformRealDistribution(first, second);
        case TRIANGULAR -> new TriangularDistribution(first, second, n.get(2));
      };
    }
  }
}
