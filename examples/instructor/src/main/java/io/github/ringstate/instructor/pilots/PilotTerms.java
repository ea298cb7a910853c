package io.github.ringstate.instructor.pilots;

import io.github.ringstate.chance.Drawing;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Disturbances;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.instructor.option.Clock;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Spread;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.sheets.message.Words;
import io.github.ringstate.study.Quantile;
import io.github.ringstate.study.Share;
import io.github.ringstate.study.model.Accepted;
import io.github.ringstate.study.model.ModelSpread;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.distribution.RealDistribution;
import org.hipparchus.distribution.continuous.UniformRealDistribution;

/** The words that tables of losses and of floors share, explained. */
public final class PilotTerms {

  /** What the onset is. */
  public static final String ONSET = PilotMessages.SAY.onset();

  private PilotTerms() {}

  /**
   * What the onset is by a clock.
   *
   * @param clock the clock
   * @param units the units to speak in
   * @return a part of a sentence
   */
  public static String onset(Clock clock, UnitSystem units) {
    return clock.isLimits() ? clock.onset(units) : ONSET;
  }

  /**
   * Who the pilots are.
   *
   * @param pool the pilots
   * @param disturbances what disturbs them
   * @param delays whether their delays vary too
   * @return the explanation
   */
  public static String pilots(Pool pool, Disturbances disturbances, boolean delays) {
    List<String> varying = new ArrayList<>();
    varying.add("technique");
    if (delays) {
      varying.add("delay");
    }
    if (disturbances.random()) {
      varying.add("the disturbances they meet");
    }
    return PilotMessages.SAY.pilots(
        Integer.toString(pool.pilots()),
        pool.isPrecise() || pool.asked() == pool.pilots() ? "" : Integer.toString(pool.asked()),
        pool.isPrecise(),
        Long.toString(pool.seed()),
        Words.and(varying),
        isEven(pool),
        disturbances.random());
  }

  private static boolean isEven(Pool pool) {
    return pool.drawing() == Drawing.SOBOL;
  }

  /**
   * What stands beside an interval.
   *
   * @param pool the pilots
   * @return the explanation
   */
  public static String interval(Pool pool) {
    return PilotMessages.SAY.interval(isEven(pool));
  }

  /**
   * How finely the lines of a table are known.
   *
   * @param pool the pilots
   * @param quantiles the figures of the lines
   * @param units the units to speak in
   * @return half of the narrowest and of the widest interval, in words
   */
  public static String reached(Pool pool, List<Quantile> quantiles, UnitSystem units) {
    List<Double> halves =
        quantiles.stream()
            .filter(quantile -> Double.isFinite(quantile.value()))
            .map(Quantile::halfWidth)
            .sorted()
            .toList();
    List<Double> closed = halves.stream().filter(Double::isFinite).toList();
    long missed =
        pool.isPrecise() ? halves.stream().filter(half -> half > pool.precision()).count() : 0;
    return PilotMessages.SAY.reached(
        closed.isEmpty() ? "" : fine(closed.get(0), units),
        closed.isEmpty() ? "" : fine(closed.get(closed.size() - 1), units),
        units.length().symbol(),
        halves.size() > closed.size(),
        pool.isPrecise() ? units.typed(Unit.FOOT, pool.precision()) : "",
        missed == 0 ? "" : Long.toString(missed));
  }

  private static String fine(double half, UnitSystem units) {
    return Decimals.fixed(units.length().fromSi(half), 1);
  }

  /**
   * What stands beside the effect of the models, as a file for machines explains it.
   *
   * @return the explanation, whatever models were flown
   */
  public static String models() {
    return PilotMessages.SAY.models("", "", "", "", "");
  }

  /**
   * What stands beside the effect of the models.
   *
   * @param models the models that were flown
   * @return the explanation, with how many were drawn and kept
   */
  public static String models(Accepted<RingStateInflow> models) {
    Share held = ModelSpread.held(models.kept().size());
    return PilotMessages.SAY.models(
        Long.toString(models.draws()),
        Integer.toString(models.kept().size()),
        Decimals.fixed(Unit.PERCENT.fromSi(models.share()), 2),
        Decimals.fixed(Unit.PERCENT.fromSi(held.low()), 0),
        Decimals.fixed(Unit.PERCENT.fromSi(held.high()), 0));
  }

  /**
   * What is done in each recovery.
   *
   * @param recoveries the recoveries
   * @param craft the craft that flies them
   * @return a line for each
   */
  public static List<Term> recoveries(List<Technique> recoveries, Helicopter craft) {
    return recoveries.stream().map(kind -> new Term(kind.label(), done(kind, craft))).toList();
  }

  /**
   * What stands where a way would, if there is none.
   *
   * @return a part of a sentence
   */
  public static String noWay() {
    return PilotMessages.SAY.noWay();
  }

  /**
   * Why a way over the ground matters.
   *
   * @return one sentence, without its full stop
   */
  public static String obstacles() {
    return PilotMessages.SAY.obstacles();
  }

  /**
   * What is not said of the pedals in the lateral recovery.
   *
   * @return one sentence, without its full stop
   */
  public static String pedals() {
    return PilotMessages.SAY.pedals();
  }

  /**
   * Which of two conditions a table shows.
   *
   * @param second whether it is the worse one
   * @param later by how much pilots act later in it, s
   * @return a heading with its colon
   */
  public static String compared(boolean second, double later) {
    return PilotMessages.SAY.compared(second, Decimals.brief(later));
  }

  private static String done(Technique technique, Helicopter craft) {
    String done = technique.description(craft.sense());
    return technique.equals(Technique.LATERAL) ? done + ". " + pedals() : done;
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
    return PilotMessages.SAY.spread(
        String.join(", ", technique.spreads().stream().map(one -> spread(one, units)).toList()));
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
    return PilotMessages.SAY.delays(
        Decimals.brief(state.median()), Decimals.brief(state.ninetyPercent()));
  }

  /**
   * What disturbs the flights.
   *
   * @param disturbances the disturbances, one at least
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
    return PilotMessages.SAY.disturbances(
        Words.and(parts), disturbances.numbers().get(Disturbances.GUST_WIND) > 0);
  }
}
