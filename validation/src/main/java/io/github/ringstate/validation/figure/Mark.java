package io.github.ringstate.validation.figure;

import java.awt.Color;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;

/** How points are drawn: by shape first and by colour second. */
@SuppressWarnings("ImmutableEnumChecker") // markers and colours are not changed
public enum Mark {
  /** A filled circle. */
  CIRCLE(SeriesMarkers.CIRCLE, new Color(0, 0, 0)),
  /** A filled square. */
  SQUARE(SeriesMarkers.SQUARE, new Color(0xB0, 0x3A, 0x00)),
  /** A diamond. */
  DIAMOND(SeriesMarkers.DIAMOND, new Color(0x1F, 0x4E, 0x8C)),
  /** A triangle. */
  TRIANGLE(SeriesMarkers.TRIANGLE_UP, new Color(0x2E, 0x6B, 0x34)),
  /** A cross. */
  CROSS(SeriesMarkers.CROSS, new Color(0x6A, 0x3D, 0x9A));

  private final Marker marker;
  private final Color color;

  Mark(Marker marker, Color color) {
    this.marker = marker;
    this.color = color;
  }

  Marker marker() {
    return marker;
  }

  Color color() {
    return color;
  }
}
