package io.github.ringstate.instructor.conditions;

import io.github.ringstate.files.text.Caution;
import io.github.ringstate.files.text.Wrapping;
import io.github.ringstate.sheets.chart.Plot;
import io.github.ringstate.sheets.page.Pictured.Picture;
import io.github.ringstate.sheets.page.SheetFont;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.List;

/**
 * A picture that stands alone: it says above what it shows, and has the caution below.
 *
 * @param picture the picture
 * @param title what it shows
 * @param warning what is said before the caution; may be empty
 */
public record Captioned(Picture picture, String title, String warning) implements Picture {

  private static final int HEAD = 26;
  private static final int FOOT = 8;
  private static final int FOOT_LINE = 13;
  private static final int CAUTION_COLUMNS = 140;

  /**
   * A picture with nothing but the caution below.
   *
   * @param picture the picture
   * @param title what it shows
   */
  public Captioned(Picture picture, String title) {
    this(picture, title, "");
  }

  private List<String> foot() {
    List<String> lines = new ArrayList<>();
    if (!warning.isEmpty()) {
      lines.addAll(Wrapping.lines(warning, CAUTION_COLUMNS));
    }
    lines.addAll(Wrapping.lines(Caution.TEXT, CAUTION_COLUMNS));
    return lines;
  }

  @Override
  public int width() {
    return picture.width();
  }

  @Override
  public int height() {
    return HEAD + picture.height() + FOOT + FOOT_LINE * foot().size();
  }

  @Override
  public String description() {
    return picture.description();
  }

  @Override
  public void paint(Graphics2D graphics) {
    AffineTransform before = graphics.getTransform();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, width(), height());
    graphics.setColor(Plot.INK);
    graphics.setFont(SheetFont.SEMIBOLD.sized(14));
    graphics.drawString(title, 12, 18);
    graphics.setFont(SheetFont.REGULAR.sized(10));
    int line = HEAD + picture.height() + FOOT_LINE;
    for (String text : foot()) {
      graphics.drawString(text, 12, line);
      line += FOOT_LINE;
    }
    graphics.translate(0, HEAD);
    picture.paint(graphics);
    graphics.setTransform(before);
  }
}
