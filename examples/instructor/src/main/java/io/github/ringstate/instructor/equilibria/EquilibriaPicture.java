package io.github.ringstate.instructor.equilibria;

import io.github.ringstate.analysis.equilibrium.Equilibrium;
import io.github.ringstate.analysis.equilibrium.HysteresisLoop;
import io.github.ringstate.files.text.Decimals;
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
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * Vertical speed of the steady descents against the collective.
 *
 * @param conditions craft, mass and air
 * @param result the descents
 * @param units the units
 */
record EquilibriaPicture(Conditions conditions, EquilibriaResult result, UnitSystem units) {

  private static final int PLOT = 430;

  private static final Pen STABLE = new Pen(Plot.INK, Pen.line(2.4f), SeriesMarkers.NONE);
  private static final Pen UNSTABLE = new Pen(Plot.INK, Pen.line(1.8f, 5, 5), SeriesMarkers.NONE);
  private static final Pen FOLD = new Pen(Plot.INK, Pen.line(1), SeriesMarkers.CIRCLE);
  private static final Pen DOWN =
      new Pen(new Color(0x0B4F8A), Pen.line(1.4f, 9, 3), SeriesMarkers.NONE);
  private static final Pen UP =
      new Pen(new Color(0xB4530A), Pen.line(1.4f, 2, 3), SeriesMarkers.NONE);

  private Legend legend() {
    List<Legend.Entry> entries = new ArrayList<>();
    entries.add(new Legend.Entry("stable", STABLE, true, false));
    if (!result.folds().isEmpty()) {
      entries.add(new Legend.Entry("unstable", UNSTABLE, true, false));
      entries.add(new Legend.Entry("fold", FOLD, false, true));
    }
    if (result.loop().isPresent()) {
      entries.add(new Legend.Entry("flown, lowering", DOWN, true, false));
      entries.add(new Legend.Entry("flown, raising", UP, true, false));
    }
    return new Legend(Plots.LEGEND, entries);
  }

  Picture picture() {
    return new Plots(description(), List.of(new Plots.Part(plot(), legend())));
  }

  private String description() {
    return EquilibriaMessages.SAY.description(
        conditions.craft().name(),
        Decimals.brief(conditions.massKg()),
        units.lengthInWords(conditions.air().densityAltitude()),
        units.typed(Unit.KNOT, result.descents().airspeed()),
        result.loop().isPresent());
  }

  private Plot plot() {
    Plot plot =
        Plot.of(
            Plots.WIDTH,
            PLOT,
            "collective, deg",
            "vertical speed, " + units.verticalSpeed().symbol(),
            description());
    plot.reachUp(0);
    result
        .loop()
        .ifPresent(
            loop -> {
              plot.line(flown(loop.lowering()), DOWN, false);
              plot.line(flown(loop.raising()), UP, false);
            });
    descents(plot);
    Points folds = new Points();
    result.folds().forEach(fold -> add(folds, fold));
    if (folds.size() > 0) {
      plot.marks(folds, FOLD.marker(), FOLD.color());
    }
    return plot;
  }

  /** Each part of the curve between two folds with its own pen. */
  private void descents(Plot plot) {
    Points part = new Points();
    boolean stable = true;
    for (EquilibriaResult.Row row : result.rows()) {
      add(part, row.descent());
      if (!row.fold().isEmpty()) {
        plot.line(part, stable ? STABLE : UNSTABLE, false);
        part = new Points();
        add(part, row.descent());
      } else {
        stable = row.descent().stable();
      }
    }
    plot.line(part, stable ? STABLE : UNSTABLE, false);
  }

  private void add(Points points, Equilibrium at) {
    points.add(
        Unit.DEGREE.fromSi(at.collective()), units.verticalSpeed().fromSi(at.verticalSpeed()));
  }

  private Points flown(List<HysteresisLoop.Sample> samples) {
    Points points = new Points();
    for (HysteresisLoop.Sample at : samples) {
      points.add(
          Unit.DEGREE.fromSi(at.collective()), units.verticalSpeed().fromSi(at.verticalSpeed()));
    }
    return points;
  }
}
