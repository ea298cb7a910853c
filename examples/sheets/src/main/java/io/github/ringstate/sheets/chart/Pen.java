package io.github.ringstate.sheets.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.List;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * How one line of a chart is drawn: told from the others by dashes and mark before colour, so that
 * a copier and any eye can tell them. The colours differ in lightness as well.
 *
 * @param color the colour
 * @param stroke the line
 * @param marker the mark at its points
 */
public record Pen(Color color, BasicStroke stroke, Marker marker) {

  /** The pens, in the order in which to take them. */
  public static final List<Pen> ALL =
      List.of(
          new Pen(new Color(0x111111), line(2f), SeriesMarkers.CIRCLE),
          new Pen(new Color(0x0B4F8A), line(2f, 8, 4), SeriesMarkers.SQUARE),
          new Pen(new Color(0xB4530A), line(2f, 2, 3), SeriesMarkers.TRIANGLE_UP),
          new Pen(new Color(0x6A6A6A), line(2f, 9, 3, 2, 3), SeriesMarkers.DIAMOND),
          new Pen(new Color(0x7A1F6B), line(2f, 14, 4), SeriesMarkers.CROSS));

  /**
   * The pen of the thing at a place in a list.
   *
   * @param place the place, from 0
   * @return a pen; after the last the first again
   */
  public static Pen of(int place) {
    return ALL.get(place % ALL.size());
  }

  /**
   * The same colour, so light that lines show through.
   *
   * @return a colour without transparency, for printers
   */
  public Color wash() {
    return new Color(washed(color.getRed()), washed(color.getGreen()), washed(color.getBlue()));
  }

  private static int washed(int part) {
    return 255 - (255 - part) / 9;
  }

  /**
   * A line.
   *
   * @param width its width, in pixels
   * @param dashes lengths of dash and gap in turn; none for a whole line
   * @return the line
   */
  public static BasicStroke line(float width, float... dashes) {
    return dashes.length == 0
        ? new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND)
        : new BasicStroke(
            width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dashes.clone(), 0);
  }
}
