package io.github.ringstate.validation.figure;

import java.awt.Color;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;

/** How points are drawn: by shape first and by colour second. */
@SuppressWarnings("ImmutableEnumChecker") // markers and colours are not changed
public enum Mark {
  /** A filled circle. */
  CIRCLE(SeriesMarkers.CIRCLE, new Color(0, 0, 0), "<circle cx='7' cy='6' r='4' fill='COLOUR'/>"),
  /** A filled square. */
  SQUARE(
      SeriesMarkers.SQUARE,
      new Color(0xB0, 0x3A, 0x00),
      "<rect x='3' y='2' width='8' height='8' fill='COLOUR'/>"),
  /** A diamond. */
  DIAMOND(
      SeriesMarkers.DIAMOND,
      new Color(0x1F, 0x4E, 0x8C),
      "<path d='M7 1L12 6L7 11L2 6Z' fill='COLOUR'/>"),
  /** A triangle. */
  TRIANGLE(
      SeriesMarkers.TRIANGLE_UP,
      new Color(0x2E, 0x6B, 0x34),
      "<path d='M7 2L11 10L3 10Z' fill='COLOUR'/>"),
  /** A cross. */
  CROSS(
      SeriesMarkers.CROSS,
      new Color(0x6A, 0x3D, 0x9A),
      "<path d='M3 2L11 10M11 2L3 10' stroke='COLOUR' stroke-width='2'/>");

  private final Marker marker;
  private final Color color;
  private final String shape;

  Mark(Marker marker, Color color, String shape) {
    this.marker = marker;
    this.color = color;
    this.shape = shape;
  }

  Marker marker() {
    return marker;
  }

  Color color() {
    return color;
  }

  /** The mark as an element of SVG, 14 by 12, with COLOUR for its colour. */
  String shape() {
    return shape;
  }
}
