package io.github.ringstate.files.provenance;

import io.github.ringstate.quantity.Unit;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;

/** The units that stand last in the names of columns. */
public final class ColumnUnits {

  private ColumnUnits() {}

  /**
   * The units of columns.
   *
   * @param names the names of the columns
   * @return the symbol of the unit for each name that ends in one, in order
   */
  public static Map<String, String> of(Collection<String> names) {
    Map<String, String> units = new LinkedHashMap<>();
    for (String name : names) {
      Stream.of(Unit.values())
          .filter(unit -> !unit.suffix().isEmpty() && name.endsWith("_" + unit.suffix()))
          .max(Comparator.comparingInt(unit -> unit.suffix().length()))
          .ifPresent(unit -> units.put(name, unit.symbol()));
    }
    return units;
  }
}
