package io.github.ringstate.instructor.loss;

import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.flight.EventKind;
import io.github.ringstate.flight.History;
import io.github.ringstate.flight.Occurrence;
import io.github.ringstate.flight.PreciseFlyer;
import io.github.ringstate.instructor.chart.ChartPicture;
import io.github.ringstate.instructor.chart.Legend;
import io.github.ringstate.instructor.chart.Pen;
import io.github.ringstate.instructor.option.RecoveryKind;
import io.github.ringstate.instructor.report.Decimals;
import io.github.ringstate.instructor.sheet.UnitSystem;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.XYSeries.XYSeriesRenderStyle;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;

/** The two plots of a loss sheet. */
final class LossCharts {

  private static final int WIDTH = 331;

  /** The delay shown in the plot of height is the one nearest to this, s. */
  private static final double SHOWN_DELAY = 2;

  private static final double STEP = 0.1;

  private static final Pen PLANNED =
      new Pen(ChartPicture.INK, Pen.line(1.2f, 3, 3), SeriesMarkers.NONE);
  private static final Marker ACTS = SeriesMarkers.DIAMOND;
  private static final Marker PHASES = SeriesMarkers.PLUS;
  private static final Marker ENDS = SeriesMarkers.SQUARE;

  private final LossRequest request;
  private final UnitSystem units;

  private final int height;

  /**
   * Creates the plots.
   *
   * @param request what is asked for
   * @param units the units
   * @param height height of each plot, in pixels
   */
  LossCharts(LossRequest request, UnitSystem units, int height) {
    this.height = height;
    this.request = request;
    this.units = units;
  }

  /** What the lines and marks of both plots mean. */
  Legend legend() {
    List<Legend.Entry> entries = new ArrayList<>();
    for (int i = 0; i < request.recoveries().size(); i++) {
      entries.add(new Legend.Entry(request.recoveries().get(i).label(), Pen.of(i), true, true));
    }
    if (request.approach().heightFt().isPresent()) {
      entries.add(new Legend.Entry("planned height", PLANNED, true, false));
    }
    entries.add(mark("pilot acts", ACTS));
    entries.add(mark("phase ends", PHASES));
    entries.add(mark("lowest or ground", ENDS));
    return new Legend(2 * WIDTH + 24, entries);
  }

  private static Legend.Entry mark(String name, Marker marker) {
    return new Legend.Entry(name, new Pen(ChartPicture.INK, Pen.line(1), marker), false, true);
  }

  /** The delay of the plot of height. */
  double shownDelay() {
    return request.delays().stream()
        .min(Comparator.comparingDouble(delay -> Math.abs(delay - SHOWN_DELAY)))
        .orElseThrow();
  }

  /** Loss against delay: the line at 50 per cent, the band up to 95 per cent. */
  ChartPicture lossAgainstDelay(LossBands bands) {
    XYChart chart =
        ChartPicture.empty(WIDTH, height, "delay, s", "altitude loss, " + units.length().symbol());
    chart.getStyler().setYAxisMin(0.0);
    List<Double> delays = request.delays().stream().sorted().toList();
    for (int i = 0; i < request.recoveries().size(); i++) {
      band(chart, bands, request.recoveries().get(i), delays, Pen.of(i));
    }
    for (int i = 0; i < request.recoveries().size(); i++) {
      RecoveryKind recovery = request.recoveries().get(i);
      Pen pen = Pen.of(i);
      Points median = new Points();
      Points most = new Points();
      for (double delay : delays) {
        LossBands.Cell cell = bands.cell(recovery, delay);
        median.add(delay, cell.median());
        most.add(delay, cell.most());
      }
      if (median.isAny()) {
        ChartPicture.line(chart, recovery.label(), median.x(), median.y(), pen, true);
      }
      if (most.isAny()) {
        ChartPicture.line(
            chart,
            "most " + recovery.label(),
            most.x(),
            most.y(),
            new Pen(pen.color(), Pen.line(0.8f), pen.marker()),
            false);
      }
    }
    heightLine(chart, delays.get(0), delays.get(delays.size() - 1));
    return new ChartPicture(
        chart,
        "Altitude loss against delay for each recovery: the line is the loss that half of the"
            + " pilots do not exceed, the band reaches up to the loss that 95 in 100 do not exceed."
            + " The numbers stand in the table.");
  }

  private void heightLine(XYChart chart, double from, double to) {
    OptionalDouble planned = request.approach().heightFt();
    if (planned.isPresent() && to > from) {
      double at = units.length().fromSi(Unit.FOOT.toSi(planned.getAsDouble()));
      ChartPicture.line(
          chart, "planned height", new double[] {from, to}, new double[] {at, at}, PLANNED, false);
    }
  }

  private void band(
      XYChart chart, LossBands bands, RecoveryKind recovery, List<Double> delays, Pen pen) {
    Points around = new Points();
    List<Double> both =
        delays.stream().filter(delay -> isFinite(bands.cell(recovery, delay).most())).toList();
    both.forEach(delay -> around.add(delay, bands.cell(recovery, delay).most()));
    for (int i = both.size() - 1; i >= 0; i--) {
      around.add(both.get(i), bands.cell(recovery, both.get(i)).median());
    }
    if (both.size() > 1) {
      XYSeries area = chart.addSeries("band " + recovery.label(), around.x(), around.y());
      area.setXYSeriesRenderStyle(XYSeriesRenderStyle.PolygonArea);
      area.setFillColor(pen.wash());
      area.setLineColor(pen.wash());
      area.setMarker(SeriesMarkers.NONE);
    }
  }

  private static boolean isFinite(OptionalDouble value) {
    return value.isPresent() && !Double.isInfinite(value.getAsDouble());
  }

  /** Height against time for each recovery at one delay, with what happens marked. */
  ChartPicture heightAgainstTime(LossBands bands) {
    XYChart chart =
        ChartPicture.empty(
            WIDTH,
            height,
            "time since onset, s",
            (request.approach().heightFt().isPresent() ? "height, " : "height from onset, ")
                + units.length().symbol());
    Points acts = new Points();
    Points phases = new Points();
    Points ends = new Points();
    for (int i = 0; i < request.recoveries().size(); i++) {
      flight(chart, bands, i, acts, phases, ends);
    }
    marks(chart, "pilot acts", acts, ACTS);
    marks(chart, "phase ends", phases, PHASES);
    marks(chart, "lowest or ground", ends, ENDS);
    return new ChartPicture(
        chart,
        "Height against time for each recovery, begun "
            + Decimals.brief(shownDelay())
            + " s after onset, with the pilot's action, the ends of the recovery's phases and the"
            + " lowest point marked.");
  }

  private void flight(
      XYChart chart, LossBands bands, int place, Points acts, Points phases, Points ends) {
    RecoveryKind recovery = request.recoveries().get(place);
    Encounter encounter =
        Encounter.of(bands.conditions().craft())
            .withAir(bands.conditions().air())
            .withEntry(request.approach().entry())
            .withRecovery(recovery.recovery())
            .withDelay(shownDelay());
    if (request.approach().heightFt().isPresent()) {
      encounter = encounter.withHeight(Unit.FOOT.toSi(request.approach().heightFt().getAsDouble()));
    }
    Points path = new Points();
    History history =
        new History(STEP, (phase, motion) -> path.add(motion.time(), length(motion.height())));
    Outcome outcome = encounter.fly(PreciseFlyer.standard(), history);
    if (outcome.onsetTime().isEmpty()) {
      return;
    }
    double onset = outcome.onsetTime().getAsDouble();
    // a descent that nothing arrests would press the others flat
    Points shown = path.between(onset - 2, onset + 25, onset);
    ChartPicture.line(chart, recovery.label(), shown.x(), shown.y(), Pen.of(place), false);
    for (Occurrence seen : outcome.occurrences()) {
      if (seen.time() - onset <= 25) {
        double above = length(seen.height());
        EventKind kind = seen.kind();
        if (kind == EventKind.RECOGNITION) {
          acts.add(seen.time() - onset, above);
        } else if (kind == EventKind.PHASE_END) {
          phases.add(seen.time() - onset, above);
        } else if (kind == EventKind.ARREST || kind == EventKind.GROUND) {
          ends.add(seen.time() - onset, above);
        }
      }
    }
  }

  private static void marks(XYChart chart, String name, Points points, Marker marker) {
    if (points.isAny()) {
      XYSeries marks = chart.addSeries(name, points.x(), points.y());
      marks.setXYSeriesRenderStyle(XYSeriesRenderStyle.Scatter);
      marks.setMarker(marker);
      marks.setMarkerColor(ChartPicture.INK);
    }
  }

  private double length(double si) {
    return units.length().fromSi(si);
  }

  /** Points of a line as they come up. */
  private final class Points {

    private final List<Double> across = new ArrayList<>();
    private final List<Double> up = new ArrayList<>();

    void add(double x, double y) {
      across.add(x);
      up.add(y);
    }

    /** A length in m; one that is not finite has no place in a plot. */
    void add(double x, OptionalDouble si) {
      if (isFinite(si)) {
        add(x, length(si.getAsDouble()));
      }
    }

    boolean isAny() {
      return !across.isEmpty();
    }

    Points between(double from, double to, double zero) {
      Points some = new Points();
      for (int i = 0; i < across.size(); i++) {
        if (across.get(i) >= from && across.get(i) <= to) {
          some.add(across.get(i) - zero, up.get(i));
        }
      }
      return some;
    }

    double[] x() {
      return across.stream().mapToDouble(Double::doubleValue).toArray();
    }

    double[] y() {
      return up.stream().mapToDouble(Double::doubleValue).toArray();
    }
  }
}
