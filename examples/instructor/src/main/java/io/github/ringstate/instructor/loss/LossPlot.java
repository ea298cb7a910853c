package io.github.ringstate.instructor.loss;

import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.sheets.chart.Pen;
import io.github.ringstate.sheets.chart.Plot;
import io.github.ringstate.sheets.chart.Points;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What pilots lose: against their delay, or, where each has a delay of their own, how the losses
 * spread over them.
 *
 * @param block the pilots
 * @param request what was asked for
 * @param units the units to speak in
 * @param width its width, in pixels
 * @param height its height
 */
record LossPlot(LossBlock block, LossRequest request, UnitSystem units, int width, int height) {

  /** Steps of the share of pilots in a plot of the spread, per cent. */
  private static final int SHARE_STEP = 2;

  Plot plot() {
    return request.state().isPresent() ? spread() : againstDelay();
  }

  private String loss() {
    return "altitude loss, " + units.length().symbol();
  }

  /** The line at 50 per cent, the band up to 95 per cent. */
  private Plot againstDelay() {
    Plot plot = Plot.of(width, height, "delay, s", loss(), LossMessages.SAY.againstDelay());
    plot.reachUp(0);
    List<Double> delays = request.delays().stream().sorted().toList();
    List<Technique> recoveries = request.recoveries();
    for (int i = 0; i < recoveries.size(); i++) {
      Points outline = band(recoveries.get(i), delays);
      if (outline.size() > 2) {
        plot.area(outline, Pen.of(i).wash());
      }
    }
    for (int i = 0; i < recoveries.size(); i++) {
      Pen pen = Pen.of(i);
      Points median = new Points();
      Points most = new Points();
      for (double delay : delays) {
        add(median, delay, loss(recoveries.get(i), delay, LossPage.MEDIAN));
        add(most, delay, loss(recoveries.get(i), delay, LossPage.MOST));
      }
      plot.line(median, pen, true);
      plot.line(most, new Pen(pen.color(), Pen.line(0.8f), pen.marker()), false);
    }
    request
        .approach()
        .height()
        .ifPresent(
            height ->
                plot.line(
                    level(delays.get(0), delays.get(delays.size() - 1), height),
                    FlightsPlot.PLANNED,
                    false));
    return plot;
  }

  private Points level(double from, double to, double si) {
    Points level = new Points();
    level.add(from, units.length().fromSi(si));
    level.add(to, units.length().fromSi(si));
    return level;
  }

  private static void add(Points points, double x, OptionalDouble y) {
    y.ifPresent(value -> points.add(x, value));
  }

  /** Along the 50 per cent and back along the 95 per cent, as far as both are numbers. */
  private Points band(Technique recovery, List<Double> delays) {
    Points outline = new Points();
    List<Double> both =
        delays.stream().filter(d -> loss(recovery, d, LossPage.MOST).isPresent()).toList();
    both.forEach(delay -> add(outline, delay, loss(recovery, delay, LossPage.MEDIAN)));
    for (int i = both.size() - 1; i >= 0; i--) {
      add(outline, both.get(i), loss(recovery, both.get(i), LossPage.MOST));
    }
    return outline;
  }

  /** A quantile in the unit of the plot; empty where so many did not arrest the descent. */
  private OptionalDouble loss(Technique recovery, double delay, double share) {
    return finite(block.pilots(recovery, OptionalDouble.of(delay)), share);
  }

  private OptionalDouble finite(PilotRow row, double share) {
    return row.losses()
        .loss(share)
        .filter(quantile -> !Double.isInfinite(quantile.value()))
        .map(quantile -> units.length().fromSi(quantile.value()))
        .map(OptionalDouble::of)
        .orElse(OptionalDouble.empty());
  }

  /** The share of the pilots who lost no more than a height. */
  private Plot spread() {
    Plot plot =
        Plot.of(width, height, loss(), "pilots who lost no more, %", LossMessages.SAY.spread());
    plot.reachAcross(0);
    plot.reachUp(0);
    plot.reachUp(100);
    for (int i = 0; i < request.recoveries().size(); i++) {
      PilotRow row = block.pilots(request.recoveries().get(i), OptionalDouble.empty());
      Points line = new Points();
      for (int percent = SHARE_STEP; percent < 100; percent += SHARE_STEP) {
        int at = percent;
        finite(row, Unit.PERCENT.toSi(percent)).ifPresent(loss -> line.add(loss, at));
      }
      plot.line(line, Pen.of(i), false);
      Points marks = new Points();
      for (double share : new double[] {LossPage.MEDIAN, LossPage.MOST}) {
        finite(row, share).ifPresent(loss -> marks.add(loss, Unit.PERCENT.fromSi(share)));
      }
      plot.marks(marks, Pen.of(i).marker(), Pen.of(i).color());
    }
    request
        .approach()
        .height()
        .ifPresent(
            height -> {
              Points upright = new Points();
              double at = units.length().fromSi(height);
              upright.add(at, 0);
              upright.add(at, 100);
              plot.line(upright, FlightsPlot.PLANNED, false);
            });
    return plot;
  }
}
