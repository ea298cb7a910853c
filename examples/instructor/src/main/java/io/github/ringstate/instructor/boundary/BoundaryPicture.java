package io.github.ringstate.instructor.boundary;

import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.sheets.chart.Legend;
import io.github.ringstate.sheets.chart.Pen;
import io.github.ringstate.sheets.chart.Plot;
import io.github.ringstate.sheets.chart.Plots;
import io.github.ringstate.sheets.chart.Points;
import io.github.ringstate.sheets.page.Pictured.Picture;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * The ring state in the units of the cockpit, and the way of a flight through it.
 *
 * @param result the boundaries, drawn ones among them
 * @param units the units
 */
record BoundaryPicture(BoundaryResult result, UnitSystem units) {

  private static final int PLOT = 430;

  private static final Color SHADE = new Color(0xE6E6E6);

  private static final Pen PATH = new Pen(new Color(0x7A1F6B), Pen.line(2.4f), SeriesMarkers.NONE);
  private static final List<Marker> MARKS =
      List.of(SeriesMarkers.CIRCLE, SeriesMarkers.DIAMOND, SeriesMarkers.SQUARE);

  private Chart chart() {
    return result.drawn().orElseThrow();
  }

  private Legend legend() {
    List<Legend.Entry> entries = new ArrayList<>();
    for (int i = 0; i < chart().criteria().size(); i++) {
      entries.add(
          new Legend.Entry(
              i == 0
                  ? BoundaryMessages.SAY.shaded(chart().criteria().get(i))
                  : chart().criteria().get(i),
              Pen.of(i),
              true,
              false));
    }
    result
        .path()
        .ifPresent(
            flown -> {
              entries.add(
                  new Legend.Entry(BoundaryMessages.SAY.drawn(flown.inWords()), PATH, true, false));
              for (int i = 0; i < flown.marks().size(); i++) {
                entries.add(
                    new Legend.Entry(
                        flown.marks().get(i).mark(),
                        new Pen(Plot.INK, Pen.line(1), MARKS.get(i % MARKS.size())),
                        false,
                        true));
              }
            });
    return new Legend(Plots.LEGEND, entries);
  }

  Picture picture() {
    return new Plots(description(), List.of(new Plots.Part(plot(), legend())));
  }

  private String description() {
    Conditions conditions = chart().conditions();
    return BoundaryMessages.SAY.description(
        conditions.craft().name(),
        units.given(Unit.KILOGRAM, conditions.massKg()),
        units.lengthInWords(conditions.air().densityAltitude()),
        String.join(", ", chart().criteria()),
        result.path().map(FlightPath::inWords).orElse(""));
  }

  private Plot plot() {
    Plot plot =
        Plot.of(
            Plots.WIDTH,
            PLOT,
            BoundaryMessages.SAY.edgewise(units.speed().symbol()),
            BoundaryMessages.SAY.axial(units.verticalSpeed().symbol()),
            description());
    plot.reachUp(0);
    plot.area(outline(chart().criteria().get(0)), SHADE);
    for (int i = 0; i < chart().criteria().size(); i++) {
      plot.line(outline(chart().criteria().get(i)), Pen.of(i), false);
    }
    result.path().ifPresent(flown -> flight(plot, flown));
    return plot;
  }

  /** Down the onset and back up the exit, where there is one. */
  private Points outline(String criterion) {
    Points points = new Points();
    List<BoundaryRow> rows =
        chart().rows().stream().filter(row -> row.criterion().equals(criterion)).toList();
    for (BoundaryRow row : rows) {
      add(points, row.airspeed(), row.onset());
    }
    for (int i = rows.size() - 1; i >= 0; i--) {
      BoundaryRow row = rows.get(i);
      row.exit().ifPresent(exit -> add(points, row.airspeed(), exit));
    }
    return points;
  }

  private void add(Points points, double airspeed, double sink) {
    points.add(units.speed().fromSi(airspeed), -units.verticalSpeed().fromSi(sink));
  }

  private void flight(Plot plot, FlightPath flown) {
    plot.line(points(flown.points()), PATH, false);
    for (int i = 0; i < flown.marks().size(); i++) {
      plot.marks(points(List.of(flown.marks().get(i))), MARKS.get(i % MARKS.size()), Plot.INK);
    }
  }

  private Points points(List<FlightPath.Point> flown) {
    Points points = new Points();
    flown.forEach(
        p ->
            points.add(
                units.speed().fromSi(p.edgewise()), units.verticalSpeed().fromSi(p.axial())));
    return points;
  }
}
