package io.github.ringstate.files.unit;

import io.github.ringstate.quantity.Unit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Kinds of quantity for which people use more than one unit. */
public enum Dimension {
  /** Mass. */
  MASS,
  /** Heights and distances. */
  LENGTH,
  /** Speeds, vertical ones too. */
  SPEED,
  /** Power. */
  POWER,
  /** Pressure. */
  PRESSURE;

  /**
   * The units that people use.
   *
   * @return the units
   */
  public List<Unit> units() {
    return switch (this) {
      case MASS -> List.of(Unit.KILOGRAM, Unit.POUND);
      case LENGTH -> List.of(Unit.FOOT, Unit.METRE, Unit.INCH);
      case SPEED ->
          List.of(
              Unit.KNOT,
              Unit.METRE_PER_SECOND,
              Unit.KILOMETRE_PER_HOUR,
              Unit.MILE_PER_HOUR,
              Unit.FOOT_PER_MINUTE);
      case POWER -> List.of(Unit.KILOWATT, Unit.HORSEPOWER);
      case PRESSURE -> List.of(Unit.HECTOPASCAL, Unit.INCH_OF_MERCURY, Unit.PASCAL);
    };
  }

  /**
   * The dimension of a unit.
   *
   * @param unit the unit
   * @return its dimension; empty if people use but one unit for it
   */
  public static Optional<Dimension> of(Unit unit) {
    return Stream.of(values()).filter(dimension -> dimension.units().contains(unit)).findFirst();
  }

  /**
   * The unit that a word names.
   *
   * @param word a symbol or a suffix, in any case, for instance {@code ft/min} or {@code fpm}
   * @return the unit; empty if there is none of that name
   */
  public static Optional<Unit> unit(String word) {
    return Stream.of(values())
        .flatMap(dimension -> dimension.units().stream())
        .filter(
            unit -> unit.symbol().equalsIgnoreCase(word) || unit.suffix().equalsIgnoreCase(word))
        .findFirst();
  }
}
