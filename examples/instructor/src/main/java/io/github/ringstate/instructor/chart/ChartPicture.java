package io.github.ringstate.instructor.chart;

import io.github.ringstate.instructor.sheet.Pictured.Picture;
import io.github.ringstate.instructor.sheet.SheetFont;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.util.Locale;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * A chart in the look of the sheets.
 *
 * @param chart the chart
 * @param description what it shows, for those who cannot see it
 */
public record ChartPicture(XYChart chart, String description) implements Picture {

  /** Colour of letters and axes. */
  public static final Color INK = new Color(0x111111);

  /** Colour of the grid. */
  static final Color HAIR = new Color(0xD0D0D0);

  private static final double LETTERS = 12;

  /**
   * An empty chart: white, a hair grid, letters of the sheets.
   *
   * @param width its width, in pixels
   * @param height its height
   * @param across what is along the lower axis, with its unit
   * @param up what is along the left axis, with its unit
   * @return the chart
   */
  public static XYChart empty(int width, int height, String across, String up) {
    XYChart chart =
        new XYChartBuilder().width(width).height(height).xAxisTitle(across).yAxisTitle(up).build();
    XYStyler look = chart.getStyler();
    look.setBaseFont(SheetFont.REGULAR.sized(LETTERS));
    look.setAxisTitleFont(SheetFont.REGULAR.sized(LETTERS));
    look.setAxisTickLabelsFont(SheetFont.REGULAR.sized(LETTERS - 1));
    look.setAnnotationTextFont(SheetFont.REGULAR.sized(LETTERS));
    look.setChartFontColor(INK);
    look.setAnnotationTextFontColor(INK);
    look.setAxisTickLabelsColor(INK);
    look.setAxisTickMarksColor(INK);
    look.setChartBackgroundColor(Color.WHITE);
    look.setPlotBackgroundColor(Color.WHITE);
    look.setPlotBorderVisible(false);
    look.setPlotGridLinesColor(HAIR);
    look.setPlotGridLinesStroke(new BasicStroke(0.6f));
    look.setAxisTickMarksStroke(new BasicStroke(1f));
    look.setChartTitleVisible(false);
    look.setChartPadding(8);
    look.setAxisTitlePadding(9);
    look.setLegendVisible(false);
    look.setMarkerSize(7);
    look.setLocale(Locale.ROOT);
    look.setXAxisDecimalPattern("0.###");
    look.setYAxisDecimalPattern("0.###");
    look.setXAxisTickMarkSpacingHint(60);
    look.setYAxisTickMarkSpacingHint(40);
    return chart;
  }

  /**
   * A line through points.
   *
   * @param chart the chart
   * @param name tells it from the other lines
   * @param across the points along the lower axis
   * @param up the points along the left axis
   * @param pen how it is drawn
   * @param marked whether the points are marked
   */
  public static void line(
      XYChart chart, String name, double[] across, double[] up, Pen pen, boolean marked) {
    XYSeries line = chart.addSeries(name, across, up);
    line.setLineColor(pen.color());
    line.setLineStyle(pen.stroke());
    line.setMarker(marked ? pen.marker() : SeriesMarkers.NONE);
    line.setMarkerColor(pen.color());
    // only a smooth line is drawn in one stroke, so that its dashes do not begin again at each
    // point; it waves between points that are far apart
    line.setSmooth(!marked && across.length > 2 && pen.stroke().getDashArray() != null);
  }

  @Override
  public int width() {
    return chart.getWidth();
  }

  @Override
  public int height() {
    return chart.getHeight();
  }

  @Override
  public void paint(Graphics2D graphics) {
    chart.paint(graphics, chart.getWidth(), chart.getHeight());
  }
}
