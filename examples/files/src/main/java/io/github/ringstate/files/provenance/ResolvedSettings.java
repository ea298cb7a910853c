package io.github.ringstate.files.provenance;

import io.github.ringstate.air.Air;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.files.report.Cell;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/**
 * What was computed with, every number by a key with its unit. What has several values is listed,
 * in the order in which it first occurs.
 */
public final class ResolvedSettings {

  private final Map<String, Set<Cell>> values = new LinkedHashMap<>();

  /** Begins without any. */
  public ResolvedSettings() {}

  /**
   * The settings of encounters.
   *
   * @param encounters the encounters
   * @return values by their keys
   */
  public static Map<String, Cell> of(Collection<Encounter> encounters) {
    return new ResolvedSettings().encounters(encounters).cells();
  }

  /**
   * Adds a helicopter.
   *
   * @param craft the helicopter
   * @return these settings
   */
  public ResolvedSettings craft(Helicopter craft) {
    String name = "craft." + craft.name() + ".";
    value(name + "rotation", Cell.text(craft.sense().label()));
    value(name + "engine_kind", Cell.text(craft.engine().label()));
    numbers(name, craft.numbers());
    return this;
  }

  /**
   * Adds air.
   *
   * @param air the air
   * @return these settings
   */
  public ResolvedSettings air(Air air) {
    value("air.pressure_altitude_m", Cell.exact(air.pressureAltitude()));
    value("air.temperature_k", Cell.exact(air.temperature()));
    value("air.pressure_pa", Cell.exact(air.pressure()));
    value("air.density_kg_per_m3", Cell.exact(air.density()));
    return this;
  }

  /**
   * Adds an inflow model.
   *
   * @param inflow the model
   * @return these settings
   */
  public ResolvedSettings inflow(InflowModel inflow) {
    value("model.kind", Cell.text(inflow.name()));
    numbers("model." + inflow.name() + ".", inflow.numbers());
    return this;
  }

  /**
   * Adds a recovery.
   *
   * @param recovery the recovery
   * @return these settings
   */
  public ResolvedSettings recovery(Recovery recovery) {
    value("pilot.technique", Cell.text(recovery.name()));
    numbers("pilot." + recovery.name() + ".", recovery.numbers());
    return this;
  }

  /**
   * Adds encounters, with all that belongs to them.
   *
   * @param encounters the encounters
   * @return these settings
   */
  public ResolvedSettings encounters(Collection<Encounter> encounters) {
    encounters.forEach(this::add);
    return this;
  }

  private void add(Encounter encounter) {
    craft(encounter.craft()).air(encounter.air());
    value("entry.kind", Cell.text(encounter.entry().name()));
    numbers("entry." + encounter.entry().name() + ".", encounter.entry().numbers());
    if (encounter.height().isPresent()) {
      value("entry.height_at_onset_m", Cell.exact(encounter.height().getAsDouble()));
    }
    recovery(encounter.recovery());
    value("pilot.clock", Cell.text(encounter.recognition().clock()));
    value("pilot.delay_s", Cell.exact(encounter.delay()));
    inflow(encounter.inflow());
    value("model.boundary", Cell.text(encounter.boundary().name()));
    numbers("disturbance.", encounter.disturbances().numbers());
    if (encounter.disturbances().random()) {
      value(
          "disturbance.seed",
          new Cell(Long.toString(encounter.disturbances().seed()), Cell.Kind.NUMBER));
    }
  }

  /**
   * Adds numbers.
   *
   * @param start what their keys begin with
   * @param numbers the numbers
   * @return these settings
   */
  public ResolvedSettings numbers(String start, ParameterSet numbers) {
    for (Parameter parameter : numbers.parameters()) {
      value(start + parameter.key(), Cell.exact(numbers.get(parameter)));
    }
    return this;
  }

  /**
   * Adds a value.
   *
   * @param key its key, the unit last
   * @param value the value
   * @return these settings
   */
  public ResolvedSettings value(String key, Cell value) {
    values.computeIfAbsent(key, first -> new LinkedHashSet<>()).add(value);
    return this;
  }

  /**
   * All of them.
   *
   * @return values by their keys
   */
  public Map<String, Cell> cells() {
    Map<String, Cell> cells = new LinkedHashMap<>();
    values.forEach(
        (key, all) ->
            cells.put(
                key,
                all.size() == 1
                    ? all.iterator().next()
                    : Cell.text(String.join(", ", all.stream().map(Cell::text).toList()))));
    return cells;
  }
}
