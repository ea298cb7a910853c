package io.github.ringstate.instructor.sensitivity;

import io.github.ringstate.analysis.sensitivity.Tornado;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.sheets.chart.Plot;
import io.github.ringstate.sheets.page.Pictured.Picture;
import io.github.ringstate.sheets.page.SheetFont;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * A tornado plot: bars about the loss of the base, the longest on top. The part toward the low end
 * of a number's range is hollow, that toward the high end filled, so that a copier tells them.
 *
 * @param base the altitude loss of the base, m
 * @param bars the bars to draw, in order
 * @param units the units
 * @param description what it shows, for those who cannot see it
 */
record TornadoPicture(double base, List<Tornado.Bar> bars, UnitSystem units, String description)
    implements Picture {

  private static final int WIDTH = 680;
  private static final int NAMES = 250;
  private static final int LINE = 22;
  private static final int HEAD = 30;
  private static final int FOOT = 44;
  private static final int EDGE = 34;
  private static final int ARROW = 9;

  /** Part of a line that a bar fills. */
  private static final double THICK = 0.62;

  private static final Color FILL = new Color(0x0B4F8A);
  private static final Color HAIR = new Color(0xC8C8C8);

  @Override
  public int width() {
    return WIDTH;
  }

  @Override
  public int height() {
    return HEAD + LINE * bars.size() + FOOT;
  }

  private DoubleStream ends() {
    return bars.stream()
        .flatMap(bar -> Stream.of(bar.low(), bar.high()))
        .flatMapToDouble(OptionalDouble::stream);
  }

  private double least() {
    return Math.min(base, ends().min().orElse(base));
  }

  private double greatest() {
    double most = Math.max(base, ends().max().orElse(base));
    return most > least() ? most : least() + 1;
  }

  private double across(double loss) {
    return NAMES + EDGE + (WIDTH - NAMES - 2 * EDGE) * (loss - least()) / (greatest() - least());
  }

  @Override
  public void paint(Graphics2D graphics) {
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, WIDTH, height());
    graphics.setStroke(new BasicStroke(1f));
    for (int i = 0; i < bars.size(); i++) {
      bar(graphics, bars.get(i), HEAD + LINE * i);
    }
    double at = across(base);
    double bottom = HEAD + LINE * (double) bars.size();
    graphics.setColor(Plot.INK);
    graphics.setStroke(new BasicStroke(1.2f));
    graphics.draw(new Line2D.Double(at, HEAD - 6, at, bottom + 4));
    Font letters = SheetFont.REGULAR.sized(12);
    graphics.setFont(letters);
    middle(graphics, letters, "base " + loss(base), at, HEAD - 11);
    middle(
        graphics,
        letters,
        "altitude loss, " + units.length().symbol(),
        (NAMES + WIDTH) / 2.0,
        bottom + 18);
    double key = bottom + 34;
    graphics.draw(new Rectangle2D.Double(NAMES + 60, key - 9, 22, 10));
    graphics.drawString("low end", NAMES + 88, (float) key);
    graphics.setColor(FILL);
    graphics.fill(new Rectangle2D.Double(NAMES + 190, key - 9, 22, 10));
    graphics.setColor(Plot.INK);
    graphics.drawString("high end of the range", NAMES + 218, (float) key);
  }

  private void bar(Graphics2D graphics, Tornado.Bar bar, double top) {
    double middle = top + LINE / 2.0;
    Font letters = SheetFont.REGULAR.sized(12);
    graphics.setFont(letters);
    graphics.setColor(Plot.INK);
    String name = bar.input().name();
    graphics.drawString(name, (float) (NAMES - 8 - wide(letters, name)), (float) middle + 4);
    graphics.setColor(HAIR);
    graphics.setStroke(new BasicStroke(0.6f));
    graphics.draw(new Line2D.Double(NAMES, middle, WIDTH - 8, middle));
    end(graphics, bar.high(), middle, true);
    end(graphics, bar.low(), middle, false);
    graphics.setFont(SheetFont.REGULAR.sized(10));
    graphics.setColor(Plot.INK);
    number(graphics, bar.low(), bar.high(), middle);
    number(graphics, bar.high(), bar.low(), middle);
  }

  private void end(Graphics2D graphics, OptionalDouble loss, double middle, boolean filled) {
    double from = across(base);
    double to = loss.isPresent() ? across(loss.getAsDouble()) : WIDTH - 8.0;
    double half = THICK * LINE / 2;
    double left = Math.min(from, to);
    double right = Math.max(from, to);
    Path2D outline = new Path2D.Double();
    double square = loss.isPresent() ? right : right - ARROW;
    outline.moveTo(left, middle - half);
    outline.lineTo(square, middle - half);
    if (loss.isEmpty()) {
      outline.lineTo(right, middle);
    }
    outline.lineTo(square, middle + half);
    outline.lineTo(left, middle + half);
    outline.closePath();
    graphics.setColor(filled ? FILL : Color.WHITE);
    graphics.fill(outline);
    graphics.setColor(filled ? FILL : Plot.INK);
    graphics.setStroke(new BasicStroke(1f));
    graphics.draw(outline);
  }

  /** The loss at one end, on the side on which it lies. */
  private void number(Graphics2D graphics, OptionalDouble loss, OptionalDouble other, double at) {
    if (loss.isEmpty()) {
      return;
    }
    double here = loss.getAsDouble();
    boolean right = here > base || (here == base && other.orElse(base) < base);
    if (other.isPresent()
        && here > base == other.getAsDouble() > base
        && Math.abs(other.getAsDouble() - base) > Math.abs(here - base)) {
      return; // both on one side: the farther one is written
    }
    String text = loss(here);
    Font letters = graphics.getFont();
    double x = across(here) + (right ? 4 : -4 - wide(letters, text));
    graphics.drawString(text, (float) x, (float) at + 4);
  }

  private String loss(double metres) {
    return units.loss(metres);
  }

  private static double wide(Font letters, String text) {
    return letters.getStringBounds(text, new FontRenderContext(null, true, true)).getWidth();
  }

  private static void middle(Graphics2D graphics, Font letters, String text, double x, double y) {
    graphics.drawString(text, (float) (x - wide(letters, text) / 2), (float) y);
  }
}
