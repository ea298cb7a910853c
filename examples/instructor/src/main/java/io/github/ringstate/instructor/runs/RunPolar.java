package io.github.ringstate.instructor.runs;

import io.github.ringstate.instructor.chart.ChartPicture;
import io.github.ringstate.instructor.chart.Legend;
import io.github.ringstate.instructor.chart.Pen;
import io.github.ringstate.instructor.sheet.UnitSystem;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.RunVerdict;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hipparchus.util.FastMath;
import org.knowm.xchart.AnnotationText;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.XYSeries.XYSeriesRenderStyle;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * The verdicts over track, north up: the distance from the middle is the least airspeed in gusts,
 * the shape of the mark the verdict; an arrow flies with the wind.
 */
final class RunPolar {

  private static final int SIZE = 330;
  private static final int RINGS = 4;

  private static final Pen RING = new Pen(new Color(0xB8B8B8), Pen.line(0.7f), SeriesMarkers.NONE);
  private static final Pen LEAST =
      new Pen(ChartPicture.INK, Pen.line(1.2f, 3, 3), SeriesMarkers.NONE);
  private static final Pen TRACE = new Pen(new Color(0x6A6A6A), Pen.line(0.8f), SeriesMarkers.NONE);
  private static final Pen WIND = new Pen(new Color(0x0B4F8A), Pen.line(2.4f), SeriesMarkers.NONE);

  private final RunsRequest request;
  private final RunAnalysis analysis;
  private final UnitSystem units;

  RunPolar(RunsRequest request, RunAnalysis analysis, UnitSystem units) {
    this.request = request;
    this.analysis = analysis;
    this.units = units;
  }

  private static Marker marker(RunVerdict verdict) {
    return switch (verdict) {
      case FLY -> SeriesMarkers.CIRCLE;
      case FLY_WITH_A_LIMIT -> SeriesMarkers.TRIANGLE_UP;
      case DO_NOT_FLY -> SeriesMarkers.CROSS;
    };
  }

  private static Pen pen(RunVerdict verdict) {
    Color color =
        switch (verdict) {
          case FLY -> new Color(0x0B4F8A);
          case FLY_WITH_A_LIMIT -> new Color(0xB4530A);
          case DO_NOT_FLY -> ChartPicture.INK;
        };
    return new Pen(color, Pen.line(1), marker(verdict));
  }

  /** What the marks mean. */
  Legend legend() {
    List<Legend.Entry> entries = new ArrayList<>();
    for (RunVerdict verdict : RunVerdict.values()) {
      entries.add(new Legend.Entry(verdict.label(), pen(verdict), false, true));
    }
    entries.add(new Legend.Entry("least airspeed to keep", LEAST, true, false));
    entries.add(new Legend.Entry("wind", WIND, true, false));
    return new Legend(SIZE, entries);
  }

  /** The plot. */
  ChartPicture plot() {
    double step = step();
    double reach = RINGS * step;
    XYChart chart = ChartPicture.empty(SIZE, SIZE, "", "");
    chart.getStyler().setAxisTicksVisible(false);
    chart.getStyler().setAxisTitlesVisible(false);
    chart.getStyler().setPlotGridLinesVisible(false);
    chart.getStyler().setPlotContentSize(1);
    chart.getStyler().setMarkerSize(9);
    double edge = 1.16 * reach;
    chart.getStyler().setXAxisMin(-edge).setXAxisMax(edge).setYAxisMin(-edge).setYAxisMax(edge);
    for (int ring = 1; ring <= RINGS; ring++) {
      circle(chart, "ring " + ring, ring * step, RING);
    }
    for (int track = 0; track < 180; track += 30) {
      spoke(chart, track, reach);
    }
    for (int track = 0; track < 360; track += 30) {
      at(chart, EscapeWords.threeDigits(track), track, 1.085 * reach);
    }
    // with the wind behind the airspeed is low, so that the scale has room there
    double free = Unit.DEGREE.fromSi(request.plan().downwind()) + 15;
    for (int ring = 1; ring <= RINGS; ring++) {
      at(chart, String.format(Locale.ROOT, "%.0f", ring * step), free, ring * step - 0.07 * reach);
    }
    analysis
        .limits()
        .ifPresent(
            limits ->
                circle(
                    chart, "least", units.speed().fromSi(Unit.KNOT.toSi(limits.leastKt())), LEAST));
    wind(chart, reach);
    tracks(chart);
    return new ChartPicture(chart, description());
  }

  private String description() {
    Directions directions = new Directions(analysis);
    return "Verdicts over track, north up. Best "
        + directions.best()
        + ". Worst "
        + directions.worst()
        + ". Wind "
        + request.reported().inWords()
        + ". The numbers stand in the table.";
  }

  /** Least airspeed from ring to ring: a round number that leaves all tracks inside. */
  private double step() {
    double most =
        analysis.rows().stream()
            .mapToDouble(row -> units.speed().fromSi(row.track().leastAirspeed()))
            .max()
            .orElse(0);
    double round = units == UnitSystem.AVIATION ? 5 : 2;
    return round * Math.max(1, Math.ceil(most / RINGS / round));
  }

  private static double east(double trackDeg, double distance) {
    return distance * FastMath.sin(Unit.DEGREE.toSi(trackDeg));
  }

  private static double north(double trackDeg, double distance) {
    return distance * FastMath.cos(Unit.DEGREE.toSi(trackDeg));
  }

  private static void circle(XYChart chart, String name, double radius, Pen pen) {
    double[] across = new double[73];
    double[] up = new double[73];
    for (int i = 0; i < across.length; i++) {
      across[i] = east(5.0 * i, radius);
      up[i] = north(5.0 * i, radius);
    }
    ChartPicture.line(chart, name, across, up, pen, false);
  }

  private static void spoke(XYChart chart, double track, double reach) {
    ChartPicture.line(
        chart,
        "spoke " + track,
        new double[] {east(track, reach), -east(track, reach)},
        new double[] {north(track, reach), -north(track, reach)},
        RING,
        false);
  }

  private static void at(XYChart chart, String text, double track, double distance) {
    chart.addAnnotation(
        new AnnotationText(text, east(track, distance), north(track, distance), false));
  }

  private void wind(XYChart chart, double reach) {
    if (request.plan().gust() == 0) {
      return;
    }
    double to = request.reported().fromDeg() + 180;
    double tail = -0.98 * reach;
    double head = -0.62 * reach;
    double barb = -0.72 * reach;
    double[] across = {
      east(to, tail), east(to, head), east(to - 6, barb), east(to, head), east(to + 6, barb)
    };
    double[] up = {
      north(to, tail), north(to, head), north(to - 6, barb), north(to, head), north(to + 6, barb)
    };
    ChartPicture.line(chart, "wind", across, up, WIND, false);
  }

  private void tracks(XYChart chart) {
    int count = analysis.rows().size();
    double[] across = new double[count + 1];
    double[] up = new double[count + 1];
    for (int i = 0; i <= count; i++) {
      RunRow row = analysis.rows().get(i % count);
      double airspeed = units.speed().fromSi(row.track().leastAirspeed());
      across[i] = east(row.trackDeg(), airspeed);
      up[i] = north(row.trackDeg(), airspeed);
    }
    ChartPicture.line(chart, "trace", across, up, TRACE, false);
    for (RunVerdict verdict : RunVerdict.values()) {
      List<RunRow> rows =
          analysis.rows().stream().filter(row -> row.judgement().verdict() == verdict).toList();
      if (rows.isEmpty()) {
        continue;
      }
      XYSeries marks =
          chart.addSeries(
              verdict.label(),
              rows.stream()
                  .mapToDouble(
                      row ->
                          east(row.trackDeg(), units.speed().fromSi(row.track().leastAirspeed())))
                  .toArray(),
              rows.stream()
                  .mapToDouble(
                      row ->
                          north(row.trackDeg(), units.speed().fromSi(row.track().leastAirspeed())))
                  .toArray());
      marks.setXYSeriesRenderStyle(XYSeriesRenderStyle.Scatter);
      marks.setMarker(marker(verdict));
      marks.setMarkerColor(pen(verdict).color());
    }
  }
}
