package io.github.ringstate.validation.figure;

import java.awt.BasicStroke;
import java.awt.Color;

/**
 * How a line is drawn: each differs from the others in dash pattern or weight as well as colour.
 */
@SuppressWarnings("ImmutableEnumChecker") // strokes and colours cannot be changed
public enum Line {
  /** The library's own model. */
  THICK(3.2f, new Color(0, 0, 0)),
  /** A theory or the first of several curves. */
  SOLID(1.5f, new Color(0x1F, 0x4E, 0x8C)),
  /** Another curve. */
  DASHED(1.9f, new Color(0xB0, 0x3A, 0x00), 9, 5),
  /** Another curve. */
  DOTTED(2.2f, new Color(0x2E, 0x6B, 0x34), 1.5f, 4.5f),
  /** Another curve. */
  DASH_DOT(1.9f, new Color(0x6A, 0x3D, 0x9A), 10, 4, 1.5f, 4),
  /** Another curve. */
  LONG_DASH(1.6f, new Color(0x00, 0x6D, 0x77), 18, 6),
  /** Another curve. */
  DASH_DOT_DOT(1.9f, new Color(0x8C, 0x2D, 0x5A), 12, 4, 1.5f, 4, 1.5f, 4),
  /** A curve beyond where it is meant to hold. */
  FAINT(1.1f, new Color(0x77, 0x77, 0x77), 2, 4),
  /** A rule or limit. */
  RULE(1.0f, new Color(0x44, 0x44, 0x44));

  private final BasicStroke stroke;
  private final Color color;

  Line(float width, Color color, float... dash) {
    this.stroke =
        dash.length == 0
            ? new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND)
            : new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 10, dash, 0);
    this.color = color;
  }

  BasicStroke stroke() {
    return stroke;
  }

  Color color() {
    return color;
  }
}
