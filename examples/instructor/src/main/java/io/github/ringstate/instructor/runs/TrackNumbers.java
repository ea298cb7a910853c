package io.github.ringstate.instructor.runs;

import io.github.ringstate.files.unit.UnitSystem;
import java.util.List;
import java.util.OptionalDouble;

/** The numbers of a track as a table for people shows them, on paper and on a screen. */
record TrackNumbers(
    String track,
    String tail,
    String cross,
    String air,
    String minimum,
    String power,
    String takeOff,
    String ring) {

  /** The numbers of a row; where it has none, a dash of one's own choice. */
  static TrackNumbers of(RunRow row, UnitSystem units, String dash) {
    OptionalDouble margin = row.track().boundaryMargin();
    return new TrackNumbers(
        EscapeWords.threeDigits(row.trackDeg()),
        units.speed(row.track().triangle().tailwind()),
        units.speed(row.track().triangle().crosswind()),
        units.speed(row.track().triangle().airspeed()),
        units.speed(row.track().minimumAirspeed()),
        RunRow.wholePercent(row.track().continuousMargin(), dash),
        RunRow.wholePercent(row.track().takeOffMargin(), dash),
        margin.isPresent() ? units.verticalSpeed(margin.getAsDouble()) : dash);
  }

  List<String> inOrder() {
    return List.of(track, tail, cross, air, minimum, power, takeOff, ring);
  }
}
