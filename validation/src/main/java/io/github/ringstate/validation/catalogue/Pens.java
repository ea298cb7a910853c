package io.github.ringstate.validation.catalogue;

import io.github.ringstate.sheets.chart.Pen;
import io.github.ringstate.sheets.chart.Plot;
import java.awt.BasicStroke;
import java.awt.Color;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * The lines and marks of the report. Lines differ in dashes or weight as well as in colour, marks
 * in shape.
 */
final class Pens {

  private static final Color BLUE = new Color(0x1F4E8C);
  private static final Color ORANGE = new Color(0xB03A00);
  private static final Color GREEN = new Color(0x2E6B34);
  private static final Color VIOLET = new Color(0x6A3D9A);

  /** The library's own model. */
  static final Pen THICK = line(Color.BLACK, SeriesMarkers.CIRCLE, 3.2f);

  /** A theory, or the first of several curves. */
  static final Pen SOLID = line(BLUE, SeriesMarkers.DIAMOND, 1.5f);

  static final Pen DASHED = line(ORANGE, SeriesMarkers.SQUARE, 1.9f, 9, 5);
  static final Pen DOTTED = line(GREEN, SeriesMarkers.TRIANGLE_UP, 2.2f, 2.2f, 3.8f);
  static final Pen DASH_DOT = line(VIOLET, SeriesMarkers.TRIANGLE_DOWN, 1.9f, 10, 4, 2, 4);
  static final Pen LONG_DASH = line(new Color(0x006D77), SeriesMarkers.NONE, 1.6f, 18, 6);
  static final Pen DASH_DOT_DOT =
      line(new Color(0x8C2D5A), SeriesMarkers.NONE, 1.9f, 12, 4, 2, 4, 2, 4);

  /** A curve beyond where it is meant to hold. */
  static final Pen FAINT = line(new Color(0x777777), SeriesMarkers.NONE, 1.1f, 2, 4);

  /** A rule or limit. */
  static final Pen RULE = line(new Color(0x444444), SeriesMarkers.NONE, 1);

  static final Pen CIRCLE = mark(Plot.INK, SeriesMarkers.CIRCLE);
  static final Pen SQUARE = mark(ORANGE, SeriesMarkers.SQUARE);
  static final Pen DIAMOND = mark(BLUE, SeriesMarkers.DIAMOND);
  static final Pen TRIANGLE = mark(GREEN, SeriesMarkers.TRIANGLE_UP);
  static final Pen TRIANGLE_DOWN = mark(VIOLET, SeriesMarkers.TRIANGLE_DOWN);

  private Pens() {}

  private static Pen line(Color color, Marker marker, float width, float... dashes) {
    return new Pen(color, Pen.line(width, dashes), marker);
  }

  private static Pen mark(Color color, Marker marker) {
    return new Pen(color, new BasicStroke(1), marker);
  }
}
