package io.github.ringstate.instructor.pilots;

import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Disturbances;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.text.NotAWayOut;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Spread;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Parameter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.distribution.RealDistribution;
import org.hipparchus.distribution.continuous.UniformRealDistribution;

/** The words that tables of losses and of floors share, explained. */
public final class PilotTerms {

  /** What the onset is. */
  public static final Term ONSET =
      new Term(
          "onset",
          "the descent crosses the heave-damping boundary of the ring state; from there a faster"
              + " sink means less thrust, and the sink grows by itself");

  /** What stands beside an interval. */
  public static final String BAND =
      "among very many such pilots the figure lies in it with 95 % confidence, whatever the"
          + " distribution (order statistics). It tells how many pilots were flown, not how good the"
          + " model is";

  /** What stands beside the effect of the models. */
  public static final String MODELS =
      "the same pilots with other models, whose fitted numbers of the ring state vary within ranges"
          + " that published descriptions leave open, some of them assumed: nine models in ten give a"
          + " figure in it. That the form of the model may be wrong is not in it";

  private PilotTerms() {}

  /**
   * Who the pilots are.
   *
   * @param pool the pilots
   * @param disturbances what disturbs them
   * @param delays whether their delays vary too
   * @return the explanation
   */
  public static Term pilots(Pool pool, Disturbances disturbances, boolean delays) {
    List<String> varying = new ArrayList<>();
    varying.add("technique");
    if (delays) {
      varying.add("delay");
    }
    if (disturbances.random()) {
      varying.add("the disturbances they meet");
    }
    return new Term(
        "pilots",
        pool.pilots()
            + " simulated pilots a line, seed "
            + pool.seed()
            + ", who differ in "
            + and(varying)
            + "; the same seed gives the same pilots. No source says how much pilots differ: every"
            + " spread is assumed");
  }

  /**
   * What is done in each recovery.
   *
   * @param recoveries the recoveries
   * @param craft the craft that flies them
   * @return a line for each
   */
  public static List<Term> recoveries(List<Technique> recoveries, Helicopter craft) {
    return recoveries.stream()
        .map(kind -> new Term(kind.label(), kind.description(craft.sense())))
        .toList();
  }

  /**
   * What stands beside power alone in a file for machines.
   *
   * @param recoveries the recoveries
   * @return the words, if power alone is among them
   */
  public static Optional<Term> notAWayOut(List<Technique> recoveries) {
    return recoveries.stream().anyMatch(Technique::isMistaken)
        ? Optional.of(new Term(NotAWayOut.HEAD, NotAWayOut.TEXT))
        : Optional.empty();
  }

  /**
   * How the technique varies.
   *
   * @param recoveries the recoveries
   * @param units the units to speak in
   * @return a line for each recovery of which something varies
   */
  public static List<Term> spreads(List<Technique> recoveries, UnitSystem units) {
    return recoveries.stream()
        .filter(technique -> !technique.spreads().isEmpty())
        .map(technique -> new Term(technique.name() + " pilots", spread(technique, units)))
        .toList();
  }

  private static String spread(Technique technique, UnitSystem units) {
    return "mean +- standard deviation, or least to greatest, all assumed: "
        + String.join(", ", technique.spreads().stream().map(one -> spread(one, units)).toList());
  }

  private static String spread(Spread spread, UnitSystem units) {
    Parameter parameter = spread.parameter();
    RealDistribution distribution = spread.distribution();
    boolean uniform = distribution instanceof UniformRealDistribution;
    double first = uniform ? distribution.getSupportLowerBound() : distribution.getNumericalMean();
    double second =
        uniform
            ? distribution.getSupportUpperBound()
            : Math.sqrt(distribution.getNumericalVariance());
    return parameter.name()
        + " "
        + units.number(parameter.unit(), first)
        + (uniform ? " to " : " +- ")
        + units.given(parameter.unit(), second);
  }

  /**
   * The delays of a state.
   *
   * @param state the state
   * @return the median, the 90 per cent point, and where they come from
   */
  public static Term state(PilotState state) {
    return new Term(state.label(), delays(state) + ": " + state.origin());
  }

  /**
   * The delays of a state in short.
   *
   * @param state the state
   * @return a part of a sentence
   */
  public static String delays(PilotState state) {
    return "half of the delays are up to "
        + Decimals.brief(state.median())
        + " s, nine in ten up to "
        + Decimals.brief(state.ninetyPercent())
        + " s (log-normal)";
  }

  /**
   * What disturbs the flights.
   *
   * @param disturbances the disturbances
   * @param units the units to speak in
   * @return a part of a sentence
   */
  public static String disturbances(Disturbances disturbances, UnitSystem units) {
    List<String> parts = new ArrayList<>();
    for (Parameter parameter :
        List.of(Disturbances.SHAKING, Disturbances.GUST_WIND, Disturbances.SHEAR)) {
      double value = disturbances.numbers().get(parameter);
      if (value > 0) {
        parts.add(parameter.name() + " " + units.given(parameter.unit(), value));
      }
    }
    return parts.isEmpty() ? "none" : and(parts) + ", the strengths assumed";
  }

  /**
   * Some words in a row.
   *
   * @param parts the words; at least one
   * @return the words with commas and an "and"
   */
  public static String and(List<String> parts) {
    int last = parts.size() - 1;
    return last == 0
        ? parts.get(0)
        : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
  }
}
