package io.github.ringstate.study.sweep;

import java.io.Serializable;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Points that fill the space of several settings together, in place of a grid of them.
 *
 * @param method how the points are spread
 * @param points how many points there are, 1 to {@link #MOST_POINTS}
 * @param dimensions the settings; none for a sweep without a sample
 */
public record Sample(Method method, int points, List<Dimension> dimensions)
    implements Serializable {

  /** The most points of a sample. */
  public static final int MOST_POINTS = 1_000_000_000;

  /** No sample: one point that sets nothing. */
  public static final Sample NONE = new Sample(Method.LATIN_HYPERCUBE, 1, List.of());

  /** How points are spread. */
  public enum Method {
    /** Each setting's range is cut in as many strata as there are points, each met once. */
    LATIN_HYPERCUBE("latin-hypercube"),
    /**
     * Eight sets of scrambled Sobol points, to which the points belong in turn; the sets are
     * independent of each other, so that they tell how far chance goes.
     */
    SOBOL("sobol"),
    /** Each point by itself; the yardstick. */
    INDEPENDENT("independent");

    private final String label;

    Method(String label) {
      this.label = label;
    }

    /**
     * The method in a word.
     *
     * @return lower case
     */
    public String label() {
      return label;
    }
  }

  /**
   * A setting that is sampled.
   *
   * @param key the setting
   * @param law how its values are spread
   */
  public record Dimension(String key, Law law) implements Serializable {

    /** Checks the ends. */
    public Dimension {
      if (law instanceof Law.Span span) {
        span.scale().check(key, span.from(), span.to());
      }
    }

    /**
     * A setting whose values lie evenly between two ends.
     *
     * @param key the setting
     * @param from one end, in the unit of the setting
     * @param to the other end
     * @param scale how the points lie between the ends
     */
    public Dimension(String key, double from, double to, Scale scale) {
      this(key, new Law.Span(from, to, scale));
    }
  }

  /** Checks the number of points and that no setting comes twice. */
  public Sample {
    dimensions = List.copyOf(dimensions);
    if (points < 1 || points > MOST_POINTS) {
      throw SettingException.cannotBe("sample.points", points, "1 to " + MOST_POINTS);
    }
    Set<String> seen = new HashSet<>();
    for (Dimension dimension : dimensions) {
      if (!seen.add(dimension.key())) {
        throw new SettingException(dimension.key(), "is sampled twice", "each setting once");
      }
    }
  }
}
