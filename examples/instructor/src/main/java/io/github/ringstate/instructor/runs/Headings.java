package io.github.ringstate.instructor.runs;

import io.github.ringstate.air.Wind;
import io.github.ringstate.air.WindTriangle;
import io.github.ringstate.craft.RotationSense;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.run.RunPlan;
import java.util.EnumSet;
import java.util.stream.Collectors;

/** Directions in words: tracks, the way that the technique leads, and the tail rotor's sectors. */
final class Headings {

  private static final double QUARTER_DEG = 90;
  private static final double TURN_DEG = 360;

  private Headings() {}

  /** A direction as it is spoken. */
  static String threeDigits(double degrees) {
    String digits = Decimals.fixed(degrees, 0);
    return "0".repeat(Math.max(0, 3 - digits.length())) + digits;
  }

  /**
   * Where a wind comes from as it is reported: in whole degrees, north as 360.
   *
   * @param from rad clockwise from north
   */
  static String windFrom(double from) {
    String digits = threeDigits(Unit.DEGREE.fromSi(from));
    return digits.equals("000") ? "360" : digits;
  }

  /** Ahead, right or left: the side on which the technique leaves the ring state. */
  static String side(Technique technique, RotationSense sense) {
    if (!technique.equals(Technique.LATERAL)) {
      return "ahead";
    }
    return sense.tailPush() > 0 ? "right" : "left";
  }

  /** Where the technique leads, deg clockwise from north, the nose being on the track. */
  static double escapeDeg(Technique technique, RotationSense sense, double trackDeg) {
    double turn = technique.equals(Technique.LATERAL) ? QUARTER_DEG * sense.tailPush() : 0;
    double bearing = trackDeg + turn;
    return bearing - TURN_DEG * Math.floor(bearing / TURN_DEG);
  }

  /** The tail rotor's sectors that the relative wind lies in: in the mean wind, gusts or lulls. */
  static String sectors(RunPlan plan, RunRow row) {
    EnumSet<TailRotorSector> met = met(plan, row);
    return met.isEmpty()
        ? "none"
        : met.stream().map(TailRotorSector::label).collect(Collectors.joining(", "));
  }

  /** A star if the relative wind lies in one of these sectors. */
  static String mark(RunPlan plan, RunRow row) {
    return met(plan, row).isEmpty() ? "" : "*";
  }

  private static EnumSet<TailRotorSector> met(RunPlan plan, RunRow row) {
    EnumSet<TailRotorSector> met = EnumSet.noneOf(TailRotorSector.class);
    double track = row.track().triangle().track();
    for (double speed :
        new double[] {plan.wind().lull(), plan.wind().speed(), plan.wind().gust()}) {
      WindTriangle triangle =
          new WindTriangle(Wind.from(plan.wind().from(), speed), track, plan.groundSpeed());
      met.addAll(
          TailRotorSector.of(plan.craft().sense(), triangle.relativeWind(), triangle.airspeed()));
    }
    return met;
  }
}
