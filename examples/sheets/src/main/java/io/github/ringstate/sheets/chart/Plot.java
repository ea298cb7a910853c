package io.github.ringstate.sheets.chart;

import io.github.ringstate.sheets.page.Pictured.Picture;
import io.github.ringstate.sheets.page.SheetFont;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.XYSeries.XYSeriesRenderStyle;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * A plot in the look of the sheets: white, a hair grid, letters of the sheets.
 *
 * <p>The charting library draws what is in the plot. What stands around it is drawn here, letters
 * as letters: the library draws them as outlines, which nobody could search, copy or have read out.
 */
public final class Plot implements Picture {

  /** Colour of letters and axes. */
  public static final Color INK = new Color(0x111111);

  private static final Color HAIR = new Color(0xD0D0D0);
  private static final double LETTERS = 12;
  private static final double TICK_LETTERS = 11;
  private static final int EDGE = 8;
  private static final int TICK = 5;
  private static final int GAP = 4;
  private static final int LINE = 15;

  /** Room that a tick's number takes along its axis, in pixels. */
  private static final int ROOM_ACROSS = 32;

  private static final int ROOM_UP = 26;

  private final int width;
  private final int height;
  private final String across;
  private final String up;
  private final String description;
  private final boolean framed;
  private final Extent x = new Extent();
  private final Extent y = new Extent();
  private final List<BiConsumer<XYChart, Frame>> series = new ArrayList<>();
  private final List<Label> labels = new ArrayList<>();

  private Plot(
      int width, int height, String across, String up, String description, boolean framed) {
    this.width = width;
    this.height = height;
    this.across = across;
    this.up = up;
    this.description = description;
    this.framed = framed;
  }

  /** A text in the plot, its middle at a point. */
  private record Label(String text, double x, double y) {}

  /**
   * An empty plot with axes that grow with what is drawn.
   *
   * @param width its width, in pixels
   * @param height its height
   * @param across what is along the lower axis, with its unit
   * @param up what is along the left axis, with its unit
   * @param description what it shows, for those who cannot see it
   * @return the plot
   */
  public static Plot of(int width, int height, String across, String up, String description) {
    return new Plot(width, height, across, up, description, true);
  }

  /**
   * An empty square plot without axes, its middle at the origin.
   *
   * @param size width and height, in pixels
   * @param reach from the middle to each edge
   * @param description what it shows, for those who cannot see it
   * @return the plot
   */
  public static Plot square(int size, double reach, String description) {
    Plot plot = new Plot(size, size, "", "", description, false);
    plot.x.give(-reach, reach, false);
    plot.y.give(-reach, reach, false);
    return plot;
  }

  /**
   * Makes the lower axis reach a value.
   *
   * @param value the value
   */
  public void reachAcross(double value) {
    x.add(value);
  }

  /**
   * Makes the left axis reach a value.
   *
   * @param value the value
   */
  public void reachUp(double value) {
    y.add(value);
  }

  /**
   * Gives the ends of the lower axis, whatever the data.
   *
   * @param low its left end
   * @param high its right end, above the left
   * @param logarithmic whether equal lengths stand for equal ratios; the ends are then positive
   */
  public void across(double low, double high, boolean logarithmic) {
    x.give(low, high, logarithmic);
  }

  /**
   * Gives the ends of the left axis, whatever the data.
   *
   * @param low its lower end
   * @param high its upper end, above the lower
   * @param logarithmic whether equal lengths stand for equal ratios; the ends are then positive
   */
  public void up(double low, double high, boolean logarithmic) {
    y.give(low, high, logarithmic);
  }

  /**
   * A line through points.
   *
   * @param points the points
   * @param pen how it is drawn
   * @param marked whether the points are marked
   */
  public void line(Points points, Pen pen, boolean marked) {
    add(
        points,
        line -> {
          line.setLineColor(pen.color());
          line.setLineStyle(pen.stroke());
          line.setMarker(marked ? pen.marker() : SeriesMarkers.NONE);
          line.setMarkerColor(pen.color());
          // only a smooth line is drawn in one stroke, so that its dashes do not begin again at
          // each point; it waves between points that are far apart
          line.setSmooth(!marked && points.size() > 2 && pen.stroke().getDashArray() != null);
        });
  }

  /**
   * An area.
   *
   * @param outline the points of its outline, in turn
   * @param color its colour
   */
  public void area(Points outline, Color color) {
    add(
        outline,
        area -> {
          area.setXYSeriesRenderStyle(XYSeriesRenderStyle.PolygonArea);
          area.setFillColor(color);
          area.setLineColor(color);
          area.setMarker(SeriesMarkers.NONE);
        });
  }

  /**
   * Marks at points.
   *
   * @param points the points
   * @param marker the mark
   * @param color its colour
   */
  public void marks(Points points, Marker marker, Color color) {
    add(
        points,
        marks -> {
          marks.setXYSeriesRenderStyle(XYSeriesRenderStyle.Scatter);
          marks.setMarker(marker);
          marks.setMarkerColor(color);
        });
  }

  private void add(Points points, Consumer<XYSeries> look) {
    if (points.size() == 0) {
      return;
    }
    x.add(points.x());
    y.add(points.y());
    String name = "series " + series.size();
    series.add(
        (chart, frame) ->
            look.accept(
                chart.addSeries(name, frame.x().even(points.x()), frame.y().even(points.y()))));
  }

  /**
   * A text.
   *
   * @param text the text
   * @param atX where its middle stands
   * @param atY where its middle stands
   */
  public void label(String text, double atX, double atY) {
    labels.add(new Label(text, atX, atY));
  }

  @Override
  public int width() {
    return width;
  }

  @Override
  public int height() {
    return height;
  }

  @Override
  public String description() {
    return description;
  }

  private static double widest(Font font, Axis axis) {
    FontRenderContext measure = new FontRenderContext(null, true, true);
    return axis.ticks().stream()
        .mapToDouble(tick -> font.getStringBounds(axis.text(tick), measure).getWidth())
        .max()
        .orElse(0);
  }

  private Frame frame() {
    if (!framed) {
      return new Frame(0, 0, width, height, x.axis(ROOM_UP), y.axis(ROOM_UP));
    }
    int bottom = EDGE + 2 * LINE + TICK;
    int tall = height - bottom - EDGE;
    Axis left = y.axis(Math.max(2, tall / ROOM_UP));
    int start =
        EDGE
            + LINE
            + GAP
            + (int) Math.ceil(widest(SheetFont.REGULAR.sized(TICK_LETTERS), left))
            + GAP
            + TICK;
    int wide = width - start - EDGE;
    return new Frame(start, EDGE, wide, tall, x.axis(Math.max(2, wide / ROOM_ACROSS)), left);
  }

  /** The chart of the library, grid first, without anything around it. */
  private XYChart chart(Frame frame) {
    XYChart chart = new XYChartBuilder().width(frame.width()).height(frame.height()).build();
    XYStyler look = chart.getStyler();
    look.setChartBackgroundColor(Color.WHITE);
    look.setPlotBackgroundColor(Color.WHITE);
    look.setPlotBorderVisible(false);
    look.setPlotGridLinesVisible(false);
    look.setChartTitleVisible(false);
    look.setLegendVisible(false);
    look.setAxisTicksVisible(false);
    look.setAxisTitlesVisible(false);
    look.setChartPadding(0);
    look.setPlotMargin(0);
    look.setPlotContentSize(1);
    look.setMarkerSize(framed ? 7 : 9);
    double[] wide = frame.x().even(new double[] {frame.x().low(), frame.x().high()});
    double[] tall = frame.y().even(new double[] {frame.y().low(), frame.y().high()});
    look.setXAxisMin(wide[0]).setXAxisMax(wide[1]);
    look.setYAxisMin(tall[0]).setYAxisMax(tall[1]);
    if (framed) {
      for (double tick : frame.x().ticks()) {
        double at = frame.x().even(tick);
        hair(chart.addSeries("across " + tick, new double[] {at, at}, tall));
      }
      for (double tick : frame.y().ticks()) {
        double at = frame.y().even(tick);
        hair(chart.addSeries("up " + tick, wide, new double[] {at, at}));
      }
    }
    series.forEach(one -> one.accept(chart, frame));
    return chart;
  }

  private static void hair(XYSeries line) {
    line.setLineColor(HAIR);
    line.setLineStyle(new BasicStroke(0.6f));
    line.setMarker(SeriesMarkers.NONE);
  }

  @Override
  public void paint(Graphics2D graphics) {
    Frame frame = frame();
    AffineTransform before = graphics.getTransform();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, width, height);
    graphics.translate(frame.left(), frame.top());
    chart(frame).paint(graphics, frame.width(), frame.height());
    graphics.setTransform(before);
    graphics.setColor(INK);
    if (framed) {
      axes(graphics, frame);
    }
    graphics.setFont(SheetFont.REGULAR.sized(LETTERS));
    for (Label label : labels) {
      middle(graphics, label.text(), frame.across(label.x()), frame.down(label.y()) + GAP);
    }
  }

  private void axes(Graphics2D graphics, Frame frame) {
    graphics.setStroke(new BasicStroke(1f));
    int bottom = frame.top() + frame.height();
    int right = frame.left() + frame.width();
    graphics.draw(new Line2D.Double(frame.left(), frame.top(), frame.left(), bottom));
    graphics.draw(new Line2D.Double(frame.left(), bottom, right, bottom));
    graphics.setFont(SheetFont.REGULAR.sized(TICK_LETTERS));
    for (double tick : frame.x().ticks()) {
      double at = frame.across(tick);
      graphics.draw(new Line2D.Double(at, bottom, at, bottom + TICK));
      middle(graphics, frame.x().text(tick), at, bottom + TICK + LINE - 2.0);
    }
    for (double tick : frame.y().ticks()) {
      double at = frame.down(tick);
      String text = frame.y().text(tick);
      graphics.draw(new Line2D.Double(frame.left() - TICK, at, frame.left(), at));
      graphics.drawString(
          text, (float) (frame.left() - TICK - GAP - wide(graphics, text)), (float) at + GAP);
    }
    graphics.setFont(SheetFont.REGULAR.sized(LETTERS));
    middle(graphics, across, frame.left() + frame.width() / 2.0, height - EDGE);
    AffineTransform before = graphics.getTransform();
    graphics.translate(EDGE + LINE - GAP, frame.top() + frame.height() / 2.0);
    graphics.rotate(-Math.PI / 2);
    middle(graphics, up, 0, 0);
    graphics.setTransform(before);
  }

  private static double wide(Graphics2D graphics, String text) {
    return graphics
        .getFont()
        .getStringBounds(text, new FontRenderContext(null, true, true))
        .getWidth();
  }

  private static void middle(Graphics2D graphics, String text, double x, double y) {
    graphics.drawString(text, (float) (x - wide(graphics, text) / 2), (float) y);
  }
}
