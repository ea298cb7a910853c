package io.github.ringstate.validation.results;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import java.util.stream.DoubleStream;

/** What varies along the lower axis, all else as in the standard encounter. */
public enum Against {
  /** Seconds from onset to the pilot's action. */
  DELAY("delay", "delay, s", Unit.SECOND) {
    @Override
    List<Double> values(Helicopter craft) {
      return List.of(0.0, 0.5, 1.0, 2.0, 3.0);
    }

    @Override
    Encounter encounter(Helicopter craft, double value) {
      return Encounter.of(craft).withDelay(value);
    }
  },
  /** Mass, kg, down from the greatest of the craft. */
  MASS("mass", "mass, kg", Unit.KILOGRAM) {
    @Override
    List<Double> values(Helicopter craft) {
      double greatest = craft.si(Helicopter.MAXIMUM_MASS);
      return DoubleStream.of(0.8, 0.85, 0.9, 0.95, 1).map(part -> part * greatest).boxed().toList();
    }

    @Override
    Encounter encounter(Helicopter craft, double value) {
      return Encounter.of(craft.with(Helicopter.MASS, value)).withDelay(STANDARD_DELAY);
    }
  },
  /** Pressure altitude of a standard day, m, which is the density altitude too. */
  DENSITY_ALTITUDE("density-altitude", "density altitude, ft", Unit.FOOT) {
    @Override
    List<Double> values(Helicopter craft) {
      return DoubleStream.of(0, 2000, 4000, 6000, 8000).map(Unit.FOOT::toSi).boxed().toList();
    }

    @Override
    Encounter encounter(Helicopter craft, double value) {
      return Encounter.of(craft).withAir(StandardAtmosphere.at(value)).withDelay(STANDARD_DELAY);
    }
  };

  /** Where the delay does not vary, s. */
  public static final double STANDARD_DELAY = 1;

  private final String key;
  private final String label;
  private final Unit unit;

  Against(String key, String label, Unit unit) {
    this.key = key;
    this.label = label;
    this.unit = unit;
  }

  /** The values, in SI units, ascending. */
  abstract List<Double> values(Helicopter craft);

  /** The encounter with a value, in SI units. */
  abstract Encounter encounter(Helicopter craft, double value);

  /**
   * A name for files.
   *
   * @return lower-case words with hyphens
   */
  public String key() {
    return key;
  }

  /**
   * What stands at the axis.
   *
   * @return a word with its unit
   */
  public String label() {
    return label;
  }

  /**
   * The unit to show values in.
   *
   * @return the unit
   */
  public Unit unit() {
    return unit;
  }
}
