package io.github.ringstate.instructor.option;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.text.RangeText;
import io.github.ringstate.files.unit.Dimension;
import io.github.ringstate.files.unit.Given;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Numbers as users type them: plain decimals, with a unit behind them if it is another than the
 * option's, and a comma between several.
 */
public final class NumberText {

  private static final Pattern DECIMAL =
      Pattern.compile("[+-]?([0-9]+\\.?[0-9]*|\\.[0-9]+)([eE][+-]?[0-9]{1,4})?");

  /** What is one number where decimals follow a comma, and two numbers here; a unit behind it. */
  private static final Pattern ONE_OR_TWO =
      Pattern.compile("([+-]?[0-9]+),([0-9]{1,2})\\s*([\\p{L}°][\\p{L}/]*)?");

  /** A number with a decimal comma, and a unit behind it. */
  private static final Pattern DECIMAL_COMMA =
      Pattern.compile("[+-]?[0-9]+,[0-9]+\\s*([\\p{L}°][\\p{L}/]*)?");

  /** Digits of the longest whole number. */
  private static final int LONGEST_WHOLE = 19;

  private NumberText() {}

  /**
   * Reads one number.
   *
   * @param option the option's name
   * @param text what was given, in the option's unit or with a unit behind it
   * @param allowed the range, in the option's unit
   * @return the number, in the option's unit
   * @throws UserError if it is no number or out of range
   */
  public static double one(String option, String text, Quantity allowed) {
    Given given = any(option, text, "a number, " + RangeText.of(allowed));
    Unit unit = unit(option, text, given, allowed);
    double value =
        unit == allowed.unit() ? given.number() : allowed.unit().fromSi(unit.toSi(given.number()));
    if (!(value >= allowed.low() && value <= allowed.high())) {
      throw UserError.option(
          option, text, RangeText.of(unit == allowed.unit() ? allowed : Ranges.in(unit, allowed)));
    }
    return value;
  }

  /** The unit that a number was given in: the option's if it says none. */
  private static Unit unit(String option, String text, Given given, Quantity allowed) {
    if (given.unit().isEmpty()) {
      return allowed.unit();
    }
    List<Unit> units =
        Dimension.of(allowed.unit()).map(Dimension::units).orElse(List.of(allowed.unit()));
    return Dimension.unit(given.unit())
        .filter(units::contains)
        .or(() -> Optional.of(allowed.unit()).filter(own -> own.symbol().equals(given.unit())))
        .orElseThrow(() -> UserError.option(option, text, RangeText.of(allowed) + others(units)));
  }

  private static String others(List<Unit> units) {
    return units.size() < 2
        ? ""
        : ", or with one of the units "
            + String.join(", ", units.stream().map(Unit::symbol).toList());
  }

  /**
   * Reads one quantity.
   *
   * @param option the option's name
   * @param text what was given, in the unit of the range
   * @param allowed the range
   * @return the quantity in SI units
   * @throws UserError if it is no number or out of range
   */
  public static double si(String option, String text, Quantity allowed) {
    return allowed.unit().toSi(one(option, text, allowed));
  }

  /**
   * Reads one whole number.
   *
   * @param option the option's name
   * @param text what was given
   * @param low the least number allowed
   * @param high the greatest number allowed
   * @return the number
   * @throws UserError if it is no whole number or out of range
   */
  public static long whole(String option, String text, long low, long high) {
    String stripped = text.strip();
    if (DECIMAL.matcher(stripped).matches()) {
      BigDecimal value = new BigDecimal(stripped);
      // a huge exponent is out of range anyhow, and would take long to write out
      if (value.precision() - value.scale() <= LONGEST_WHOLE
          && value.remainder(BigDecimal.ONE).signum() == 0
          && value.compareTo(BigDecimal.valueOf(low)) >= 0
          && value.compareTo(BigDecimal.valueOf(high)) <= 0) {
        return value.longValueExact();
      }
    }
    throw UserError.option(option, text, "a whole number, " + low + " to " + high);
  }

  /**
   * Reads several numbers.
   *
   * @param option the option's name
   * @param text what was given
   * @param allowed the range, in the option's unit
   * @return the numbers, in the option's unit and as ordered by the user; at least one, no two
   *     equal
   * @throws UserError if one is no number or out of range, or stands twice
   */
  public static List<Double> several(String option, String text, Quantity allowed) {
    List<Double> values = new ArrayList<>();
    Set<Double> seen = new HashSet<>();
    refuseDecimalComma(option, text, allowed.unit());
    for (String part : Lists.parts(option, text)) {
      double value = one(option, part, allowed);
      if (!seen.add(value)) {
        throw Lists.twice(option, text, part);
      }
      values.add(value);
    }
    return values;
  }

  /**
   * Refuses what is two numbers and looks like one with a decimal comma: {@code 0,2} may mean a
   * fifth of a second, or none and two.
   */
  private static void refuseDecimalComma(String option, String text, Unit unit) {
    Matcher typed = ONE_OR_TWO.matcher(text.strip());
    if (typed.matches()) {
      String said = typed.group(3) == null ? "" : typed.group(3);
      String own = unit.symbol().isEmpty() ? ".0" : unit.symbol();
      String behind = said.isEmpty() ? own : said;
      throw UserError.option(
          option,
          text,
          "%s.%s%s for one number, or %s%s,%s%s for two"
              .formatted(
                  typed.group(1),
                  typed.group(2),
                  said,
                  typed.group(1),
                  behind,
                  typed.group(2),
                  behind));
    }
  }

  /**
   * Whether a text may be meant as one number with a decimal comma.
   *
   * @param text what was given
   * @return true for {@code 0,5} and {@code 1,5kg}, false for {@code 520,600}
   */
  static boolean hasDecimalComma(String text) {
    return ONE_OR_TWO.matcher(text.strip()).matches();
  }

  /**
   * Reads one number of any size.
   *
   * @param option the option's name
   * @param text what was given
   * @param allowed what is allowed, for the message
   * @return the number, finite, with its unit
   * @throws UserError if it is no number
   */
  static Given any(String option, String text, String allowed) {
    return Given.of(text)
        .orElseThrow(
            () -> {
              String stripped = text.strip();
              boolean comma = DECIMAL_COMMA.matcher(stripped).matches();
              return UserError.option(
                  option,
                  text,
                  allowed + (comma ? ", with a point: " + stripped.replace(',', '.') : ""));
            });
  }
}
