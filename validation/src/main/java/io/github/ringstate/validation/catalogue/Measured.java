package io.github.ringstate.validation.catalogue;

import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.Obtained;
import io.github.ringstate.validation.check.Question;
import io.github.ringstate.validation.check.Source;
import io.github.ringstate.validation.reference.ReferenceTable;
import java.util.List;

/**
 * A value that others measured or state, and to which nothing in the library was fitted.
 *
 * @param value the value, in its unit
 * @param uncertainty how far the truth may be from it, in the same unit
 * @param unit the unit
 * @param why what the uncertainty is made of
 * @param statement what was read
 */
record Measured(double value, double uncertainty, String unit, String why, String statement) {

  private static final ReferenceTable TABLE = ReferenceTable.read("measured.csv");

  static Measured of(String key) {
    List<String> keys = TABLE.words("key");
    int row = keys.indexOf(key);
    if (row < 0) {
      throw new IllegalArgumentException("there is no measured value by the name of " + key);
    }
    return new Measured(
        TABLE.numbers("value")[row],
        TABLE.numbers("uncertainty")[row],
        TABLE.words("unit").get(row),
        sentence(TABLE.words("uncertainty_from").get(row)),
        TABLE.words("statement").get(row));
  }

  /** Expects the value within its uncertainty. */
  Check near(String name, String quantity, Source source, double actual) {
    return question(name, quantity, source).near(value, uncertainty, actual, why);
  }

  /** Asks the library for it: a validation. */
  Question question(String name, String quantity, Source source) {
    return question(name, quantity, unit, source);
  }

  /** Asks the library for something that the value bounds, in another unit. */
  Question question(String name, String quantity, String otherUnit, Source source) {
    return source
        .at(statement)
        .published(name, quantity, otherUnit)
        .as(Obtained.PRINTED)
        .validation();
  }

  private static String sentence(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
  }
}
