package io.github.ringstate.study.sweep;

import java.io.Serializable;
import java.util.List;
import java.util.function.Function;
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
        if (numbers.stream().allMatch(Double::isFinite)) {
          return family.made.apply(numbers);
        }
      } catch (MathRuntimeException impossible) {
        // refused below
      }
      throw new SettingException(
          key,
          "has a " + family.label + " distribution with " + family.names + " " + numbers,
          family.allowed);
    }
  }

  /** The kinds of distributions. */
  enum Family {
    /** Normal, by mean and standard deviation. */
    NORMAL(
        "normal",
        List.of("mean", "sd"),
        "a positive sd",
        n -> new NormalDistribution(n.get(0), n.get(1))),
    /** Log-normal, by the median and what nine in ten do not exceed. */
    LOG_NORMAL(
        "log-normal",
        List.of("median", "p90"),
        "a positive median and a p90 above it",
        n -> logNormal(n.get(0), n.get(1))),
    /** Gamma, by mean and standard deviation. */
    GAMMA(
        "gamma",
        List.of("mean", "sd"),
        "a positive mean and a positive sd",
        n ->
            new GammaDistribution(
                (n.get(0) / n.get(1)) * (n.get(0) / n.get(1)), n.get(1) * n.get(1) / n.get(0))),
    /** Uniform, by its ends. */
    UNIFORM(
        "uniform",
        List.of("from", "to"),
        "a from below to",
        n -> new UniformRealDistribution(n.get(0), n.get(1))),
    /** Triangular, by its ends and the most likely value. */
    TRIANGULAR(
        "triangular",
        List.of("from", "mode", "to"),
        "a from below to, and a mode between them",
        n -> new TriangularDistribution(n.get(0), n.get(1), n.get(2)));

    private final String label;
    private final List<String> names;
    private final String allowed;
    private final Function<List<Double>, RealDistribution> made;

    Family(
        String label,
        List<String> names,
        String allowed,
        Function<List<Double>, RealDistribution> made) {
      this.label = label;
      this.names = names;
      this.allowed = allowed;
      this.made = made;
    }

    private static RealDistribution logNormal(double median, double ninety) {
      double z = new NormalDistribution().inverseCumulativeProbability(NINE_IN_TEN);
      return new LogNormalDistribution(FastMath.log(median), FastMath.log(ninety / median) / z);
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
      return names;
    }
  }
}
