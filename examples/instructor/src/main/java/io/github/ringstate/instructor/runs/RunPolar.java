package io.github.ringstate.instructor.runs;

import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.sheets.chart.Legend;
import io.github.ringstate.sheets.chart.Pen;
import io.github.ringstate.sheets.chart.Plot;
import io.github.ringstate.sheets.chart.Points;
import io.github.ringstate.study.run.RunLimits;
import io.github.ringstate.study.run.RunVerdict;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.util.FastMath;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * The verdicts over track, north up: the distance from the middle is the minimum airspeed in gusts,
 * the shape of the mark the verdict; an arrow flies with the wind.
 */
record RunPolar(RunsRequest request, RunAnalysis analysis, UnitSystem units) {

  private static final int SIZE = 210;
  private static final int RINGS = 4;

  /** The arrow of the wind on its way to the middle, over the outermost ring. */
  private static final double TAIL = -0.98;

  private static final double HEAD = -0.62;
  private static final double BARB = -0.72;

  private static final Pen RING = new Pen(new Color(0xB8B8B8), Pen.line(0.7f), SeriesMarkers.NONE);
  private static final Pen MINIMUM = new Pen(Plot.INK, Pen.line(1.2f, 3, 3), SeriesMarkers.NONE);
  private static final Pen TRACE = new Pen(new Color(0x6A6A6A), Pen.line(0.8f), SeriesMarkers.NONE);
  private static final Pen WIND = new Pen(new Color(0x0B4F8A), Pen.line(2.4f), SeriesMarkers.NONE);

  private static Marker marker(RunVerdict verdict) {
    return switch (verdict) {
      case FLY -> SeriesMarkers.CIRCLE;
      case FLY_WITH_A_LIMIT -> SeriesMarkers.TRIANGLE_UP;
      case NOT_AS_PLANNED -> SeriesMarkers.SQUARE;
      case DO_NOT_FLY -> SeriesMarkers.CROSS;
    };
  }

  private static Pen pen(RunVerdict verdict) {
    Color color =
        switch (verdict) {
          case FLY -> new Color(0x0B4F8A);
          case FLY_WITH_A_LIMIT -> new Color(0xB4530A);
          case NOT_AS_PLANNED, DO_NOT_FLY -> Plot.INK;
        };
    return new Pen(color, Pen.line(1), marker(verdict));
  }

  /** What the marks mean. */
  Legend legend() {
    List<Legend.Entry> entries = new ArrayList<>();
    for (RunVerdict verdict : RunVerdict.values()) {
      entries.add(new Legend.Entry(verdict.label(), pen(verdict), false, true));
    }
    entries.add(new Legend.Entry("minimum airspeed to keep", MINIMUM, true, false));
    entries.add(new Legend.Entry("wind", WIND, true, false));
    return new Legend(SIZE, entries);
  }

  /** The plot. */
  Plot plot() {
    double step = step();
    double reach = RINGS * step;
    Plot plot = Plot.square(SIZE, 1.24 * reach, description());
    for (int ring = 1; ring <= RINGS; ring++) {
      plot.line(circle(ring * step), RING, false);
    }
    for (int track = 0; track < 180; track += 30) {
      plot.line(along(track, -reach, reach), RING, false);
    }
    for (int track = 0; track < 360; track += 30) {
      at(plot, Headings.threeDigits(track), track, 1.12 * reach);
    }
    double free = clearest(step);
    for (int ring = 1; ring <= RINGS; ring++) {
      at(plot, Decimals.fixed(ring * step, 0), free, scale(ring, step));
    }
    analysis.limits().ifPresent(limits -> plot.line(circle(least(limits)), MINIMUM, false));
    wind(plot, reach);
    tracks(plot);
    return plot;
  }

  /** Just inside its ring. */
  private static double scale(int ring, double step) {
    return (ring - 0.28) * step;
  }

  /** Between which spokes the numbers of the rings stand farthest from marks and arrow. */
  private double clearest(double step) {
    double clearest = 0;
    double farthest = -1;
    for (double track = 15; track < 360; track += 30) {
      double nearest = Double.POSITIVE_INFINITY;
      for (int ring = 1; ring <= RINGS; ring++) {
        for (double[] mark : marks(step)) {
          double east = east(track, scale(ring, step)) - mark[0];
          double north = north(track, scale(ring, step)) - mark[1];
          nearest = Math.min(nearest, Math.sqrt(east * east + north * north));
        }
      }
      if (nearest > farthest) {
        farthest = nearest;
        clearest = track;
      }
    }
    return clearest;
  }

  private List<double[]> marks(double step) {
    List<double[]> marks = new ArrayList<>();
    for (RunRow row : analysis.rows()) {
      double airspeed = units.speed().fromSi(row.track().minimumAirspeed());
      marks.add(new double[] {east(row.trackDeg(), airspeed), north(row.trackDeg(), airspeed)});
    }
    for (double along = TAIL; along <= HEAD; along += 0.06) {
      double from = Unit.DEGREE.fromSi(request.plan().wind().from());
      double distance = -along * RINGS * step;
      marks.add(new double[] {east(from, distance), north(from, distance)});
    }
    return marks;
  }

  private String description() {
    return RunsMessages.SAY.polar(RunsFacts.of(request, analysis, units));
  }

  /** Least airspeed from ring to ring: a round number that leaves all tracks inside. */
  private double step() {
    double flown =
        analysis.rows().stream()
            .mapToDouble(row -> units.speed().fromSi(row.track().minimumAirspeed()))
            .max()
            .orElse(0);
    double most = Math.max(flown, analysis.limits().map(this::least).orElse(0.0));
    double round = units.isMetric() ? 2 : 5;
    return round * Math.max(1, Math.ceil(most / RINGS / round));
  }

  private double least(RunLimits limits) {
    return units.speed().fromSi(limits.minimum());
  }

  private static double east(double trackDeg, double distance) {
    return distance * FastMath.sin(Unit.DEGREE.toSi(trackDeg));
  }

  private static double north(double trackDeg, double distance) {
    return distance * FastMath.cos(Unit.DEGREE.toSi(trackDeg));
  }

  private static Points circle(double radius) {
    Points circle = new Points();
    for (int i = 0; i <= 72; i++) {
      circle.add(east(5.0 * i, radius), north(5.0 * i, radius));
    }
    return circle;
  }

  private static Points along(double track, double from, double to) {
    Points line = new Points();
    line.add(east(track, from), north(track, from));
    line.add(east(track, to), north(track, to));
    return line;
  }

  private static void at(Plot plot, String text, double track, double distance) {
    plot.label(text, east(track, distance), north(track, distance));
  }

  private void wind(Plot plot, double reach) {
    if (request.plan().wind().isCalm()) {
      return;
    }
    double to = Unit.DEGREE.fromSi(request.plan().wind().from()) + 180;
    plot.line(along(to, TAIL * reach, HEAD * reach), WIND, false);
    Points barbs = new Points();
    barbs.add(east(to - 6, BARB * reach), north(to - 6, BARB * reach));
    barbs.add(east(to, HEAD * reach), north(to, HEAD * reach));
    barbs.add(east(to + 6, BARB * reach), north(to + 6, BARB * reach));
    plot.line(barbs, WIND, false);
  }

  private void tracks(Plot plot) {
    Points trace = new Points();
    int count = analysis.rows().size();
    for (int i = 0; i <= count; i++) {
      add(trace, analysis.rows().get(i % count));
    }
    plot.line(trace, TRACE, false);
    for (RunVerdict verdict : RunVerdict.values()) {
      Points marks = new Points();
      analysis.rows().stream()
          .filter(row -> row.verdict() == verdict)
          .forEach(row -> add(marks, row));
      plot.marks(marks, marker(verdict), pen(verdict).color());
    }
  }

  private void add(Points points, RunRow row) {
    double airspeed = units.speed().fromSi(row.track().minimumAirspeed());
    points.add(east(row.trackDeg(), airspeed), north(row.trackDeg(), airspeed));
  }
}
