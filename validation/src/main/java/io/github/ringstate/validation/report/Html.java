package io.github.ringstate.validation.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/** Text and numbers for a page. */
final class Html {

  private Html() {}

  /** Text with what means something to a browser taken out. */
  static String escape(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("'", "&#39;");
  }

  /** A number with as many significant digits as asked for, trailing zeros left out. */
  static String number(double value, int digits) {
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
        + "&#8239;&times;&#8239;10<sup>"
        + minus(Integer.toString(Integer.parseInt(parts[1])))
        + "</sup>";
  }

  private static String minus(String number) {
    return number.replace("-", "&minus;");
  }
}
