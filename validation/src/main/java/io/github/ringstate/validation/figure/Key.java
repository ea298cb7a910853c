package io.github.ringstate.validation.figure;

import java.awt.Color;
import java.util.Locale;

/**
 * An entry of a legend.
 *
 * @param name what it is
 * @param sample how it looks: a small {@code svg} element
 */
public record Key(String name, String sample) {

  static Key of(String name, Line line) {
    StringBuilder dash = new StringBuilder();
    float[] pattern = line.stroke().getDashArray();
    if (pattern != null) {
      for (float part : pattern) {
        dash.append(dash.length() == 0 ? "" : " ").append(part);
      }
    }
    String drawn =
        "<line x1=\"2\" y1=\"6\" x2=\"54\" y2=\"6\" stroke=\""
            + hex(line.color())
            + "\" stroke-width=\""
            + line.stroke().getLineWidth()
            + "\""
            + (dash.length() == 0
                ? ""
                : " stroke-linecap=\"round\" stroke-dasharray=\"" + dash + "\"")
            + "/>";
    return new Key(name, sample(56, drawn));
  }

  static Key of(String name, Mark mark) {
    return new Key(name, sample(14, mark.shape().replace("COLOUR", hex(mark.color()))));
  }

  private static String sample(int width, String drawn) {
    return "<svg class=\"key\" width=\""
        + width
        + "\" height=\"12\" viewBox=\"0 0 "
        + width
        + " 12\" aria-hidden=\"true\">"
        + drawn
        + "</svg>";
  }

  private static String hex(Color color) {
    return String.format(
        Locale.ROOT, "#%02x%02x%02x", color.getRed(), color.getGreen(), color.getBlue());
  }
}
