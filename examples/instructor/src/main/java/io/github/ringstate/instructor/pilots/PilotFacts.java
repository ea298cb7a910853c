package io.github.ringstate.instructor.pilots;

import io.github.ringstate.encounter.Disturbances;
import io.github.ringstate.files.report.Cell;
import io.github.ringstate.instructor.option.Approach;
import io.github.ringstate.quantity.Unit;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

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
    OptionalInt models = pool.map(Pool::models).orElse(OptionalInt.empty());
    facts.put("shaking_pct", Cell.given(disturbances.numbers().get(Disturbances.SHAKING)));
    facts.put("gust_kt", Cell.given(disturbances.numbers().get(Disturbances.GUST_WIND)));
    facts.put("shear_exponent", Cell.given(disturbances.numbers().get(Disturbances.SHEAR)));
    facts.put("pilots", pool.map(drawn -> Cell.number(drawn.pilots(), 0)).orElse(Cell.NOTHING));
    facts.put("models", models.isPresent() ? Cell.number(models.getAsInt(), 0) : Cell.NOTHING);
    facts.put(
        "seed",
        pool.isPresent() || disturbances.random()
            ? new Cell(Long.toString(disturbances.seed()), Cell.Kind.NUMBER)
            : Cell.NOTHING);
    return facts;
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
