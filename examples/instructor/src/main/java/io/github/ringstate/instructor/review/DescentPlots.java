package io.github.ringstate.instructor.review;

import io.github.ringstate.encounter.FlightQuantity;
import io.github.ringstate.encounter.Instant;
import io.github.ringstate.encounter.RecordedFlight;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.recording.FoundEncounter;
import io.github.ringstate.recording.Recording;
import io.github.ringstate.recording.VerticalMotion;
import io.github.ringstate.sheets.chart.Legend;
import io.github.ringstate.sheets.chart.Pen;
import io.github.ringstate.sheets.chart.Plot;
import io.github.ringstate.sheets.chart.Points;
import io.github.ringstate.sheets.page.Pictured.Picture;
import java.awt.Color;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * Height and rate of descent of one descent against the time since its onset, with what the errors
 * of the data make of them, and the model's flight laid over.
 */
final class DescentPlots {

  private static final int WIDTH = 330;
  private static final int HEIGHT = 214;

  /** From where before the onset to where after the arrest a descent is shown, s. */
  private static final double BEFORE = 8;

  private static final double AFTER = 6;

  /** A descent that is not arrested is shown for so long, s. */
  private static final double LONGEST = 40;

  /** The band holds 95 of 100 if the errors are normal. */
  private static final double DEVIATIONS = 1.96;

  private static final double STEP = 0.1;

  private static final Pen FLOWN = Pen.of(0);
  private static final Pen MODEL = Pen.of(2);
  private static final Color BAND = new Color(0xDADADA);
  private static final Marker ONSET = SeriesMarkers.DIAMOND;
  private static final Marker ACTS = SeriesMarkers.TRIANGLE_UP;
  private static final Marker ARREST = SeriesMarkers.SQUARE;

  private final VerticalMotion motion;
  private final Recording recording;
  private final FoundEncounter found;
  private final ModelledDescent model;
  private final ReviewRequest request;
  private final UnitSystem units;
  private final int number;
  private final int from;
  private final int to;
  private final int onset;

  DescentPlots(Debrief debrief, FlownDescent descent, UnitSystem units) {
    motion = debrief.motion();
    recording = motion.recording();
    found = descent.found();
    model = descent.model();
    number = descent.number();
    request = debrief.request();
    this.units = units;
    double begin = found.onsetTime().value();
    double end = found.arrestTime().map(time -> time.value() + AFTER).orElse(begin + LONGEST);
    from = recording.indexAt(begin - BEFORE);
    onset = Math.min(recording.size() - 1, recording.indexAt(begin));
    to = Math.min(recording.size(), recording.indexAt(end) + 1);
  }

  /** What lines and marks mean. */
  static Legend legend(int width) {
    return new Legend(
        width,
        List.of(
            new Legend.Entry("flown (band: 95 %)", FLOWN, true, false),
            new Legend.Entry("model", MODEL, true, false),
            mark("onset", ONSET),
            mark("first movement", ACTS),
            mark("arrest", ARREST)));
  }

  private static Legend.Entry mark(String name, Marker marker) {
    return new Legend.Entry(name, new Pen(Plot.INK, Pen.line(1), marker), false, true);
  }

  Picture height() {
    Plot plot = plot("height, " + units.length().symbol(), "height");
    draw(
        plot,
        k -> units.length().fromSi(request.shown(motion.height(k))),
        k ->
            units
                .length()
                .fromSi(motion.heightDifferenceDeviation(Math.min(k, onset), Math.max(k, onset))));
    double offset = found.onsetHeight();
    model(
        plot,
        FlightQuantity.HEIGHT,
        (flown, atOnset) -> units.length().fromSi(request.shown(offset + flown - atOnset)));
    return plot;
  }

  Picture sink() {
    Unit unit = units.verticalSpeed();
    Plot plot = plot("rate of descent, " + unit.symbol(), "rate of descent");
    draw(
        plot,
        k -> unit.fromSi(-motion.verticalSpeed(k)),
        k -> unit.fromSi(motion.verticalSpeedDeviation(k)));
    model(plot, FlightQuantity.VERTICAL_SPEED, (speed, atOnset) -> unit.fromSi(-speed));
    return plot;
  }

  private Plot plot(String up, String what) {
    return Plot.of(
        WIDTH,
        HEIGHT,
        "time since onset, s",
        up,
        "descent " + number + ": " + what + " against time since onset, flown and by the model");
  }

  private double since(int k) {
    return recording.time(k) - found.onsetTime().value();
  }

  private void draw(Plot plot, IntToDoubleFunction value, IntToDoubleFunction deviation) {
    Points line = new Points();
    Points band = new Points();
    for (int k = from; k < to; k++) {
      line.add(since(k), value.applyAsDouble(k));
      band.add(since(k), value.applyAsDouble(k) + DEVIATIONS * deviation.applyAsDouble(k));
    }
    for (int k = to - 1; k >= from; k--) {
      band.add(since(k), value.applyAsDouble(k) - DEVIATIONS * deviation.applyAsDouble(k));
    }
    plot.area(band, BAND);
    plot.line(line, FLOWN, false);
    DoubleUnaryOperator at = time -> between(value, time);
    mark(plot, ONSET, found.onsetTime().value(), at);
    found.movement().ifPresent(moved -> mark(plot, ACTS, moved.time().value(), at));
    found.arrestTime().ifPresent(arrest -> mark(plot, ARREST, arrest.value(), at));
  }

  private void mark(Plot plot, Marker marker, double time, DoubleUnaryOperator at) {
    Points points = new Points();
    points.add(time - found.onsetTime().value(), at.applyAsDouble(time));
    plot.marks(points, marker, Plot.INK);
  }

  /** What a value is between two readings, on a straight line. */
  private double between(IntToDoubleFunction value, double time) {
    int k = Math.max(1, Math.min(recording.size() - 1, recording.indexAt(time)));
    double share = (time - recording.time(k - 1)) / (recording.time(k) - recording.time(k - 1));
    return value.applyAsDouble(k - 1)
        + share * (value.applyAsDouble(k) - value.applyAsDouble(k - 1));
  }

  /** A value of the model's flight, and that at its onset, as drawn. */
  @FunctionalInterface
  private interface Drawn {
    double of(double value, double atOnset);
  }

  private void model(Plot plot, FlightQuantity quantity, Drawn drawn) {
    RecordedFlight flight = model.flight().orElse(null);
    if (flight == null || flight.outcome().onsetTime().isEmpty()) {
      return;
    }
    double start = model.onset();
    double atOnset = flight.history().at(start).get(quantity);
    Points line = new Points();
    for (Instant instant : flight.history().sampled(STEP)) {
      double time = instant.time() - start;
      if (time >= since(from) && time <= since(to - 1)) {
        line.add(time, drawn.of(instant.get(quantity), atOnset));
      }
    }
    plot.line(line, MODEL, false);
  }
}
