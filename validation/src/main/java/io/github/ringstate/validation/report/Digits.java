package io.github.ringstate.validation.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.stream.Collectors;

/** Numbers rounded to significant digits. */
final class Digits {

  private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";

  private Digits() {}

  /** A number with as many significant digits as asked for, trailing zeros left out. */
  static String of(double value, int digits) {
    if (!Double.isFinite(value)) {
      return Double.isNaN(value) ? "not a number" : value > 0 ? "infinite" : "-infinite";
    }
    if (value == 0) {
      return "0";
    }
    BigDecimal rounded =
        new BigDecimal(value).round(new MathContext(digits, RoundingMode.HALF_EVEN));
    double size = Math.abs(rounded.doubleValue());
    if (size >= 1e-3 && size < 1e6) {
      return minus(rounded.stripTrailingZeros().toPlainString());
    }
    String[] parts =
        String.format(Locale.ROOT, "%." + (Math.min(digits, 3) - 1) + "e", value).split("e", 2);
    return minus(parts[0].replaceFirst("\\.?0+$", ""))
        + "\u202f×\u202f10"
        + raised(Integer.parseInt(parts[1]));
  }

  private static String minus(String number) {
    return number.replace('-', '−');
  }

  private static String raised(int power) {
    return (power < 0 ? "⁻" : "")
        + Integer.toString(Math.abs(power))
            .chars()
            .mapToObj(digit -> RAISED.substring(digit - '0', digit - '0' + 1))
            .collect(Collectors.joining());
  }
}
