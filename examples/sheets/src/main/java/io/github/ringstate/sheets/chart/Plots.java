package io.github.ringstate.sheets.chart;

import io.github.ringstate.sheets.page.Pictured.Picture;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.util.List;

/**
 * Plots one below the other, each above what its lines and marks mean.
 *
 * @param description what they show, for those who cannot see them
 * @param parts the plots, all of one width
 */
public record Plots(String description, List<Part> parts) implements Picture {

  /** Width of each plot, in pixels. */
  public static final int WIDTH = 680;

  /** Width of each legend, in pixels. */
  public static final int LEGEND = WIDTH - 20;

  private static final int EDGE = 10;
  private static final int GAP = 8;

  /** Copies the plots. */
  public Plots {
    parts = List.copyOf(parts);
  }

  /**
   * A plot with its legend.
   *
   * @param plot the plot
   * @param legend what its lines and marks mean
   */
  public record Part(Plot plot, Legend legend) {}

  @Override
  public int width() {
    return WIDTH;
  }

  @Override
  public int height() {
    return parts.stream()
        .mapToInt(part -> part.plot().height() + part.legend().height() + GAP)
        .sum();
  }

  @Override
  public void paint(Graphics2D graphics) {
    AffineTransform before = graphics.getTransform();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, WIDTH, height());
    for (Part part : parts) {
      part.plot().paint(graphics);
      graphics.translate(EDGE, part.plot().height());
      part.legend().paint(graphics);
      graphics.translate(-EDGE, part.legend().height() + GAP);
    }
    graphics.setTransform(before);
  }
}
