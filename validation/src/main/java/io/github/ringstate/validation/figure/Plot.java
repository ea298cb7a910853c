package io.github.ringstate.validation.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import org.knowm.xchart.AnnotationText;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.XYSeries.XYSeriesRenderStyle;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.markers.SeriesMarkers;

/** Lines, points, shaded regions and labels on a pair of axes, black on white. */
public final class Plot {

  private static final Color INK = new Color(0x11, 0x11, 0x11);
  private static final Color FAINT = new Color(0xEE, 0xEE, 0xEE);
  private static final int CURVE_POINTS = 241;

  /** A tick that lies on the very edge of the axis would be left out. */
  private static final double EDGE = 0.002;

  private final XYChart chart;
  private final List<Key> keys = new ArrayList<>();
  private int unnamed;

  private Plot(XYChart chart) {
    this.chart = chart;
  }

  /**
   * Empty axes.
   *
   * @param xTitle the title of the horizontal axis, with unit
   * @param yTitle the title of the vertical axis, with unit
   * @return the plot
   */
  public static Plot of(String xTitle, String yTitle) {
    return of(xTitle, yTitle, 720, 460);
  }

  /**
   * Empty axes of a given size.
   *
   * @param xTitle the title of the horizontal axis, with unit
   * @param yTitle the title of the vertical axis, with unit
   * @param width width of the drawing, px
   * @param height height of the drawing, px
   * @return the plot
   */
  public static Plot of(String xTitle, String yTitle, int width, int height) {
    XYChart chart =
        new XYChartBuilder()
            .width(width)
            .height(height)
            .xAxisTitle(xTitle)
            .yAxisTitle(yTitle)
            .build();
    style(chart.getStyler());
    return new Plot(chart);
  }

  private static void style(XYStyler styler) {
    Font plain = new Font(Font.SANS_SERIF, Font.PLAIN, 13);
    styler.setLocale(Locale.ROOT);
    styler.setChartTitleVisible(false);
    styler.setChartBackgroundColor(Color.WHITE);
    styler.setPlotBackgroundColor(Color.WHITE);
    styler.setChartFontColor(INK);
    styler.setBaseFont(plain);
    styler.setPlotBorderVisible(true);
    styler.setPlotBorderColor(INK);
    styler.setPlotGridLinesVisible(true);
    styler.setPlotGridLinesColor(new Color(0xDD, 0xDD, 0xDD));
    styler.setPlotGridLinesStroke(new BasicStroke(0.7f));
    styler.setAxisTicksLineVisible(false);
    styler.setAxisTickLabelsFont(plain);
    styler.setAxisTitleFont(plain.deriveFont(14f));
    styler.setAxisTickMarksColor(INK);
    styler.setAxisTickLabelsColor(INK);
    styler.setAxisTitlePadding(8);
    styler.setLegendVisible(false);
    styler.setAnnotationTextFont(plain);
    styler.setAnnotationTextFontColor(INK);
    styler.setMarkerSize(8);
    styler.setAntiAlias(true);
    styler.setPlotContentSize(1);
    styler.setXAxisTickMarkSpacingHint(90);
    styler.setXAxisDecimalPattern("#,##0.###");
    styler.setYAxisDecimalPattern("#,##0.###");
    styler.setXAxisLogarithmicDecadeOnly(true);
    styler.setYAxisLogarithmicDecadeOnly(true);
    styler.setYAxisTickMarkSpacingHint(50);
    styler.setChartPadding(6);
  }

  /**
   * The range of the horizontal axis.
   *
   * @param low its left end
   * @param high its right end
   * @return this plot
   */
  public Plot x(double low, double high) {
    double edge = EDGE * (high - low);
    chart.getStyler().setXAxisMin(low - edge).setXAxisMax(high + edge);
    return this;
  }

  /**
   * The range of the vertical axis.
   *
   * @param low its lower end
   * @param high its upper end
   * @return this plot
   */
  public Plot y(double low, double high) {
    double edge = EDGE * (high - low);
    chart.getStyler().setYAxisMin(low - edge).setYAxisMax(high + edge);
    return this;
  }

  /**
   * Makes the horizontal axis logarithmic.
   *
   * @param low its left end, positive
   * @param high its right end
   * @return this plot
   */
  public Plot logarithmicX(double low, double high) {
    chart.getStyler().setXAxisMin(low).setXAxisMax(high);
    chart.getStyler().setXAxisLogarithmic(true);
    chart.getStyler().setPlotGridLinesColor(FAINT);
    chart.getStyler().setXAxisTickLabelsFormattingFunction(Plot::power);
    return this;
  }

  /**
   * Makes the vertical axis logarithmic.
   *
   * @param low its lower end, positive
   * @param high its upper end
   * @return this plot
   */
  public Plot logarithmicY(double low, double high) {
    chart.getStyler().setYAxisMin(low).setYAxisMax(high);
    chart.getStyler().setYAxisLogarithmic(true);
    chart.getStyler().setYAxisTickLabelsFormattingFunction(Plot::power);
    return this;
  }

  /** Whole powers of ten; nothing between them. */
  private static String power(double value) {
    double exponent = Math.rint(Math.log10(value));
    double nearest = Math.pow(10, exponent);
    if (!(Math.abs(value - nearest) < 1e-6 * nearest)) {
      return "";
    }
    return exponent >= 0 && exponent <= 4
        ? String.format(Locale.ROOT, "%.0f", nearest)
        : String.format(Locale.ROOT, "1e%.0f", exponent);
  }

  /**
   * Shades a rectangle.
   *
   * @param x0 its left edge
   * @param x1 its right edge
   * @param y0 its lower edge
   * @param y1 its upper edge
   * @param grey how light, 0 black to 255 white
   * @return this plot
   */
  public Plot shade(double x0, double x1, double y0, double y1, int grey) {
    return shade(new double[] {x0, x1, x1, x0}, new double[] {y0, y0, y1, y1}, grey);
  }

  /**
   * Shades a polygon.
   *
   * @param xs its corners
   * @param ys its corners
   * @param grey how light, 0 black to 255 white
   * @return this plot
   */
  public Plot shade(double[] xs, double[] ys, int grey) {
    XYSeries series = chart.addSeries("region " + unnamed++, xs, ys);
    series.setXYSeriesRenderStyle(XYSeriesRenderStyle.PolygonArea);
    series.setFillColor(new Color(grey, grey, grey));
    series.setLineColor(new Color(grey, grey, grey));
    series.setLineStyle(new BasicStroke(0));
    series.setMarker(SeriesMarkers.NONE);
    return this;
  }

  /**
   * Draws a line that the legend names.
   *
   * @param name its name
   * @param line how it looks
   * @param xs its points
   * @param ys its points
   * @return this plot
   */
  public Plot line(String name, Line line, double[] xs, double[] ys) {
    draw(name, line, xs, ys);
    keys.add(Key.of(name, line));
    return this;
  }

  /**
   * Draws a line that the legend does not name.
   *
   * @param line how it looks
   * @param xs its points
   * @param ys its points
   * @return this plot
   */
  public Plot line(Line line, double[] xs, double[] ys) {
    draw("line " + unnamed++, line, xs, ys);
    return this;
  }

  /**
   * Draws a function as a line that the legend names.
   *
   * @param name its name
   * @param line how it looks
   * @param from where it begins
   * @param to where it ends
   * @param function the function
   * @return this plot
   */
  public Plot curve(String name, Line line, double from, double to, DoubleUnaryOperator function) {
    double[] xs = spaced(from, to);
    return line(name, line, xs, Arrays.stream(xs).map(function).toArray());
  }

  /**
   * Draws a function as a line that the legend does not name.
   *
   * @param line how it looks
   * @param from where it begins
   * @param to where it ends
   * @param function the function
   * @return this plot
   */
  public Plot curve(Line line, double from, double to, DoubleUnaryOperator function) {
    double[] xs = spaced(from, to);
    return line(line, xs, Arrays.stream(xs).map(function).toArray());
  }

  private static double[] spaced(double from, double to) {
    double[] xs = new double[CURVE_POINTS];
    for (int i = 0; i < CURVE_POINTS; i++) {
      double t = (double) i / (CURVE_POINTS - 1);
      xs[i] = (1 - t) * from + t * to;
    }
    return xs;
  }

  private void draw(String name, Line line, double[] xs, double[] ys) {
    XYSeries series = chart.addSeries(name, xs, ys);
    series.setXYSeriesRenderStyle(XYSeriesRenderStyle.Line);
    series.setLineStyle(line.stroke());
    series.setLineColor(line.color());
    series.setMarker(SeriesMarkers.NONE);
  }

  /**
   * Draws points.
   *
   * @param name what the legend calls them
   * @param mark how they look
   * @param xs their places
   * @param ys their places
   * @return this plot
   */
  public Plot points(String name, Mark mark, double[] xs, double[] ys) {
    XYSeries series = chart.addSeries(name, xs, ys);
    series.setXYSeriesRenderStyle(XYSeriesRenderStyle.Scatter);
    series.setMarker(mark.marker());
    series.setMarkerColor(mark.color());
    keys.add(Key.of(name, mark));
    return this;
  }

  /**
   * Writes a label, centred on a point.
   *
   * @param text the label
   * @param x where
   * @param y where
   * @return this plot
   */
  public Plot label(String text, double x, double y) {
    chart.addAnnotation(new AnnotationText(text, x, y, false));
    return this;
  }

  XYChart chart() {
    return chart;
  }

  /** What the lines and points mean, in the order in which they were drawn. */
  List<Key> keys() {
    return keys;
  }
}
