package io.github.ringstate.sheets.chart;

import io.github.ringstate.sheets.page.Pictured.Picture;
import io.github.ringstate.sheets.page.SheetFont;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.knowm.xchart.style.markers.Marker;

/**
 * What the lines and marks of charts mean, drawn once for all charts that share it.
 *
 * @param width its width, in pixels
 * @param entries the lines and marks, in order
 */
public record Legend(int width, List<Entry> entries) implements Picture {

  private static final int LINE = 34;
  private static final int GAP = 7;
  private static final int BETWEEN = 13;
  private static final int ROW = 19;
  private static final int MARK = 7;
  private static final double LETTERS = 12;

  /** Copies the entries. */
  public Legend {
    entries = List.copyOf(entries);
  }

  /**
   * One line or mark.
   *
   * @param name what it means
   * @param pen how it is drawn
   * @param lined whether a line is drawn
   * @param marked whether a mark is drawn
   */
  public record Entry(String name, Pen pen, boolean lined, boolean marked) {

    private int sample() {
      return lined ? LINE : 2 * MARK;
    }
  }

  private record Placed(Entry entry, int x, int y) {}

  private static Font font() {
    return SheetFont.REGULAR.sized(LETTERS);
  }

  private List<Placed> placed() {
    FontRenderContext measure = new FontRenderContext(null, true, true);
    Font font = font();
    List<Placed> placed = new ArrayList<>();
    int x = 2;
    int y = ROW / 2;
    for (Entry entry : entries) {
      int taken =
          entry.sample()
              + GAP
              + (int) Math.ceil(font.getStringBounds(entry.name(), measure).getWidth());
      if (x + taken > width && x > 2) {
        x = 2;
        y += ROW;
      }
      placed.add(new Placed(entry, x, y));
      x += taken + BETWEEN;
    }
    return placed;
  }

  @Override
  public int height() {
    return placed().stream().mapToInt(Placed::y).max().orElse(0) + ROW / 2 + 1;
  }

  @Override
  public String description() {
    return "Legend: " + entries.stream().map(Entry::name).collect(Collectors.joining(", "));
  }

  @Override
  public void paint(Graphics2D graphics) {
    Font font = font();
    for (Placed place : placed()) {
      Entry entry = place.entry();
      graphics.setColor(entry.pen().color());
      if (entry.lined()) {
        graphics.setStroke(entry.pen().stroke());
        graphics.draw(
            new Line2D.Double(place.x(), place.y(), place.x() + entry.sample(), place.y()));
      }
      if (entry.marked()) {
        Marker marker = entry.pen().marker();
        marker.paint(graphics, place.x() + entry.sample() / 2.0, place.y(), MARK);
      }
      graphics.setColor(Plot.INK);
      graphics.setFont(font);
      graphics.drawString(entry.name(), place.x() + entry.sample() + GAP, place.y() + 4);
    }
    graphics.setColor(Color.BLACK);
  }
}
