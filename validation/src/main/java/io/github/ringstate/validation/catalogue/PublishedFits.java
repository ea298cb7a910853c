package io.github.ringstate.validation.catalogue;

import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.sheets.chart.Graph;
import java.util.function.BiFunction;

/** The published curves of axial flow, written out from their formulas. */
final class PublishedFits {

  private PublishedFits() {}

  /** Leishman's quartic, chapter 2 (from memory). */
  static double quartic(double k, double z) {
    return k - 1.125 * z - 1.372 * z * z - 1.718 * Math.pow(z, 3) - 0.655 * Math.pow(z, 4);
  }

  /** Young's two segments, RAE TR 78125 (from memory). */
  static double twoSegment(double k, double z) {
    return z > -1.5 ? k * (1 - z) : k * (7 + 3 * z);
  }

  /** Momentum theory in climb, and its continuation into the descent. */
  static double climb(double z) {
    return -z / 2 + Math.sqrt(z * z / 4 + 1);
  }

  /** Momentum theory in the windmill brake state, z at most -2. */
  static double windmill(double z) {
    return -z / 2 - Math.sqrt(z * z / 4 - 1);
  }

  /** Draws the curves that are published from z = -2 to 0, the cubic bridge up to an end. */
  static Graph draw(
      Graph plot, Models models, double end, BiFunction<InflowModel, Double, Double> quantity) {
    InflowModel ideal = models.quartic(1);
    InflowModel measured = models.quartic(1.15);
    InflowModel lines = models.twoSegment(1);
    InflowModel cubic = models.cubic();
    return plot.curve("quartic, k = 1", Pens.DASHED, -2, 0, z -> quantity.apply(ideal, z))
        .curve("quartic, k = 1.15", Pens.DASH_DOT_DOT, -2, 0, z -> quantity.apply(measured, z))
        .curve("two segments, k = 1", Pens.DOTTED, -2, 0, z -> quantity.apply(lines, z))
        .curve("cubic bridge", Pens.DASH_DOT, -2, end, z -> quantity.apply(cubic, z));
  }
}
