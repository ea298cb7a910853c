package io.github.ringstate.instructor.runs;

import io.github.ringstate.air.Wind;
import io.github.ringstate.air.WindTriangle;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.run.Escape;
import io.github.ringstate.study.run.RunPlan;
import java.util.EnumSet;
import java.util.stream.Collectors;

/** Directions in words: the way out, and the tail rotor's sectors. */
final class EscapeWords {

  private EscapeWords() {}

  /** Ahead, right or left; a hyphen where the ring state is not met or not left. */
  static String way(RunRow row) {
    return row.escape().map(EscapeWords::side).orElse("-");
  }

  private static String side(Escape way) {
    if (way.turn() == 0) {
      return "ahead";
    }
    return way.turn() > 0 ? "right" : "left";
  }

  /** Where the way out leads, deg clockwise from north, the nose being on the track. */
  static double bearingDeg(RunRow row, Escape way) {
    double bearing = row.trackDeg() + Math.rint(Unit.DEGREE.fromSi(way.turn()));
    return bearing - 360 * Math.floor(bearing / 360);
  }

  /** The way out as it is briefed. */
  static String brief(RunRow row) {
    return row.escape().map(way -> side(way) + " " + threeDigits(bearingDeg(row, way))).orElse("-");
  }

  /** The tail rotor's sectors that the relative wind lies in: in the mean wind, gusts or lulls. */
  static String sectors(RunsRequest request, RunRow row) {
    EnumSet<TailRotorSector> met = met(request, row);
    return met.isEmpty()
        ? "none"
        : met.stream().map(TailRotorSector::label).collect(Collectors.joining(", "));
  }

  /** A star if the relative wind lies in one of these sectors. */
  static String mark(RunsRequest request, RunRow row) {
    return met(request, row).isEmpty() ? "" : "*";
  }

  private static EnumSet<TailRotorSector> met(RunsRequest request, RunRow row) {
    RunPlan plan = request.plan();
    EnumSet<TailRotorSector> met = EnumSet.noneOf(TailRotorSector.class);
    for (double wind : new double[] {plan.lull(), plan.windSpeed(), plan.gust()}) {
      WindTriangle triangle =
          new WindTriangle(
              Wind.from(plan.windFrom(), wind), row.track().triangle().track(), plan.groundSpeed());
      met.addAll(
          TailRotorSector.of(plan.craft().sense(), triangle.relativeWind(), triangle.airspeed()));
    }
    return met;
  }

  /** A direction as it is spoken. */
  static String threeDigits(double degrees) {
    String digits = Decimals.fixed(degrees, 0);
    return "0".repeat(Math.max(0, 3 - digits.length())) + digits;
  }
}
