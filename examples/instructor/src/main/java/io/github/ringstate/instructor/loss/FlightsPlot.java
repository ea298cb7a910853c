package io.github.ringstate.instructor.loss;

import io.github.ringstate.encounter.Occurrence;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.pilots.ShownFlight;
import io.github.ringstate.sheets.chart.Legend;
import io.github.ringstate.sheets.chart.Pen;
import io.github.ringstate.sheets.chart.Plot;
import io.github.ringstate.sheets.chart.Points;
import java.util.ArrayList;
import java.util.List;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;

/** Height against time for each recovery at one delay, with what happens marked. */
final class FlightsPlot {

  /** The line of the planned height. */
  static final Pen PLANNED = new Pen(Plot.INK, Pen.line(1.2f, 3, 3), SeriesMarkers.NONE);

  /** From where before onset to where after it a flight is shown, s. */
  private static final double BEFORE = 2;

  /** A descent that nothing arrests would press the others flat. */
  private static final double AFTER = 25;

  private static final Marker ACTS = SeriesMarkers.DIAMOND;
  private static final Marker PHASES = SeriesMarkers.PLUS;
  private static final Marker ENDS = SeriesMarkers.SQUARE;

  private final LossRequest request;
  private final UnitSystem units;
  private final Points acts = new Points();
  private final Points phases = new Points();
  private final Points ends = new Points();

  FlightsPlot(LossRequest request, UnitSystem units) {
    this.request = request;
    this.units = units;
  }

  /** What lines and marks mean, here and in the plot of losses. */
  static Legend legend(LossRequest request, int width) {
    List<Legend.Entry> entries = new ArrayList<>();
    for (int i = 0; i < request.recoveries().size(); i++) {
      entries.add(new Legend.Entry(request.recoveries().get(i).shown(), Pen.of(i), true, true));
    }
    if (request.approach().height().isPresent()) {
      entries.add(new Legend.Entry("planned height", PLANNED, true, false));
    }
    entries.add(mark("pilot acts", ACTS));
    entries.add(mark("phase ends", PHASES));
    entries.add(mark("lowest or ground", ENDS));
    return new Legend(width, entries);
  }

  private static Legend.Entry mark(String name, Marker marker) {
    return new Legend.Entry(name, new Pen(Plot.INK, Pen.line(1), marker), false, true);
  }

  Plot plot(List<ShownFlight> flights, int width, int height) {
    Plot plot =
        Plot.of(
            width,
            height,
            "time since onset, s",
            (request.approach().height().isPresent() ? "height, " : "height from onset, ")
                + units.length().symbol(),
            LossMessages.SAY.flights(
                Decimals.brief(request.shownDelay()), request.clock().start()));
    for (int i = 0; i < flights.size(); i++) {
      plot.line(shown(flights.get(i)), Pen.of(i), false);
    }
    plot.marks(phases, PHASES, Plot.INK);
    plot.marks(ends, ENDS, Plot.INK);
    plot.marks(acts, ACTS, Plot.INK);
    return plot;
  }

  private Points shown(ShownFlight flight) {
    Points shown = new Points();
    flight
        .outcome()
        .onsetTime()
        .ifPresent(
            onset -> {
              for (ShownFlight.Point at : flight.path()) {
                if (at.time() - onset >= -BEFORE && at.time() - onset <= AFTER) {
                  shown.add(at.time() - onset, units.length().fromSi(at.height()));
                }
              }
              flight.outcome().occurrences().forEach(seen -> mark(seen, onset));
            });
    return shown;
  }

  private void mark(Occurrence seen, double onset) {
    double since = seen.time() - onset;
    if (since > AFTER) {
      return;
    }
    double height = units.length().fromSi(seen.height());
    switch (seen.kind()) {
      case RECOGNITION -> acts.add(since, height);
      case PHASE_END -> phases.add(since, height);
      case ARREST, GROUND -> ends.add(since, height);
      default -> {
        // the others are no matter of the recovery
      }
    }
  }
}
