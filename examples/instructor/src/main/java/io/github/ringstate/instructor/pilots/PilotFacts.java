package io.github.ringstate.instructor.pilots;

import io.github.ringstate.encounter.Disturbances;
import io.github.ringstate.files.report.Cell;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.instructor.option.Approach;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.model.Accepted;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** The part of chance in a report, as fields for machines. */
public final class PilotFacts {

  private PilotFacts() {}

  /**
   * What chance has to do with a report.
   *
   * @param disturbances what disturbs the flights
   * @param pool the pilots, if there are any
   * @return fields by name
   */
  public static Map<String, Cell> of(Disturbances disturbances, Optional<Pool> pool) {
    Map<String, Cell> facts = new LinkedHashMap<>();
    Optional<Accepted<RingStateInflow>> models = pool.flatMap(Pool::models);
    facts.put("shaking_pct", Cell.given(disturbances.numbers().get(Disturbances.SHAKING)));
    facts.put("gust_kt", Cell.given(disturbances.numbers().get(Disturbances.GUST_WIND)));
    facts.put("shear_exponent", Cell.given(disturbances.numbers().get(Disturbances.SHEAR)));
    facts.put("pilots", pool.map(drawn -> Cell.number(drawn.pilots(), 0)).orElse(Cell.NOTHING));
    facts.put(
        "precision_ft",
        pool.filter(Pool::isPrecise)
            .map(drawn -> Cell.in(Unit.FOOT, drawn.precision()))
            .orElse(Cell.NOTHING));
    facts.put("draws", pool.map(drawn -> Cell.text(drawn.drawing().label())).orElse(Cell.NOTHING));
    facts.put("models", number(models, drawn -> drawn.kept().size(), 0));
    facts.put("model_draws", number(models, Accepted::draws, 0));
    facts.put("model_draws_kept_share", number(models, Accepted::share, 6));
    facts.put(
        "seed",
        pool.isPresent() || disturbances.random()
            ? new Cell(Long.toString(disturbances.seed()), Cell.Kind.NUMBER)
            : Cell.NOTHING);
    return facts;
  }

  private static Cell number(
      Optional<Accepted<RingStateInflow>> models,
      ToDoubleFunction<Accepted<RingStateInflow>> number,
      int decimals) {
    return models
        .map(drawn -> Cell.number(number.applyAsDouble(drawn), decimals))
        .orElse(Cell.NOTHING);
  }

  /**
   * The way to the ring state.
   *
   * @param approach how the flight comes to it
   * @return fields by name
   */
  public static Map<String, Cell> of(Approach approach) {
    Map<String, Cell> facts = new LinkedHashMap<>();
    facts.put("entry", Cell.text(approach.kind().name()));
    facts.put("wind_kt", Cell.in(Unit.KNOT, approach.windSpeed()));
    facts.put("wind_from", Cell.text(approach.kind().windFrom()));
    return facts;
  }
}
