package io.github.ringstate.instructor.best;

import io.github.ringstate.analysis.best.ControlHistory.Knot;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.sheets.chart.Legend;
import io.github.ringstate.sheets.chart.Pen;
import io.github.ringstate.sheets.chart.Plot;
import io.github.ringstate.sheets.chart.Plots;
import io.github.ringstate.sheets.chart.Points;
import io.github.ringstate.sheets.page.Pictured.Picture;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Losses against the delay, and below them the commands of the best for the last delay.
 *
 * @param conditions craft, mass and air
 * @param result what was found
 * @param units the units
 */
record BestPicture(Conditions conditions, BestResult result, UnitSystem units) {

  private static final int LOSSES = 320;
  private static final int COMMANDS = 260;

  private Legend losses() {
    List<Legend.Entry> entries = new ArrayList<>();
    entries.add(new Legend.Entry("best found", Pen.of(0), true, true));
    for (int i = 0; i < BestResult.TECHNIQUES.size(); i++) {
      entries.add(
          new Legend.Entry(BestResult.TECHNIQUES.get(i).label(), Pen.of(i + 1), true, true));
    }
    return new Legend(Plots.LEGEND, entries);
  }

  private static Legend commands() {
    return new Legend(
        Plots.LEGEND,
        List.of(
            new Legend.Entry("pitch, nose up", Pen.of(0), true, true),
            new Legend.Entry("bank, to the right", Pen.of(1), true, true),
            new Legend.Entry("collective", Pen.of(2), true, true)));
  }

  private BestResult.Case last() {
    return result.cases().get(result.cases().size() - 1);
  }

  Picture picture() {
    return new Plots(
        description(),
        List.of(new Plots.Part(lossPlot(), losses()), new Plots.Part(commandPlot(), commands())));
  }

  private String description() {
    return BestMessages.SAY.description(
        conditions.craft().name(),
        Decimals.brief(conditions.massKg()),
        units.lengthInWords(conditions.air().densityAltitude()),
        Decimals.brief(last().delay()));
  }

  private Plot lossPlot() {
    Plot plot =
        Plot.of(
            Plots.WIDTH,
            LOSSES,
            "delay, s",
            "altitude loss, " + units.length().symbol(),
            description());
    plot.reachAcross(0);
    plot.reachUp(0);
    line(plot, 0, one -> one.best().loss());
    for (int i = 0; i < BestResult.TECHNIQUES.size(); i++) {
      Technique technique = BestResult.TECHNIQUES.get(i);
      line(plot, i + 1, one -> one.loss(technique).orElse(Double.NaN));
    }
    return plot;
  }

  /** A line through those that were arrested. */
  private void line(Plot plot, int pen, ToDoubleFunction<BestResult.Case> loss) {
    Points points = new Points();
    for (BestResult.Case one : result.cases()) {
      double metres = loss.applyAsDouble(one);
      if (metres >= 0) {
        points.add(one.delay(), units.length().fromSi(metres));
      }
    }
    if (points.size() > 0) {
      plot.line(points, Pen.of(pen), true);
    }
  }

  private Plot commandPlot() {
    Plot plot =
        Plot.of(
            Plots.WIDTH,
            COMMANDS,
            "time since recognition, s, with a delay of " + Decimals.brief(last().delay()) + " s",
            "beyond the hover's, deg",
            description());
    plot.reachUp(0);
    command(plot, 0, Knot::pitch);
    command(plot, 1, Knot::bank);
    command(plot, 2, Knot::collective);
    return plot;
  }

  private void command(Plot plot, int pen, ToDoubleFunction<Knot> angle) {
    Points points = new Points();
    for (Knot knot : last().best().history().knots()) {
      points.add(knot.time(), Unit.DEGREE.fromSi(angle.applyAsDouble(knot)));
    }
    plot.line(points, Pen.of(pen), true);
  }
}
