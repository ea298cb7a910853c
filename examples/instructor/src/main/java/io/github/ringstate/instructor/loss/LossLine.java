package io.github.ringstate.instructor.loss;

import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.pilot.Technique;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * One line of a loss table for machines: the standard technique, many pilots, or both.
 *
 * @param conditions craft, mass and air
 * @param entry the entry's name
 * @param recovery what was done
 * @param delayS the delay, s; empty if each pilot had one of their own
 * @param standard the flight of the standard technique; empty if the line has no one delay
 * @param pilots the flights of the pilots; empty without pilots
 */
record LossLine(
    Conditions conditions,
    String entry,
    Technique recovery,
    OptionalDouble delayS,
    Optional<LossRow> standard,
    Optional<PilotRow> pilots) {

  static LossLine of(LossRow row, Optional<PilotRow> pilots) {
    return new LossLine(
        row.conditions(),
        row.entry(),
        row.recovery(),
        OptionalDouble.of(row.delayS()),
        Optional.of(row),
        pilots);
  }

  static LossLine of(PilotRow row) {
    return new LossLine(
        row.conditions(),
        row.entry(),
        row.recovery(),
        row.delayS(),
        Optional.empty(),
        Optional.of(row));
  }

  /** A number of the standard technique; empty if that was not flown. */
  OptionalDouble ofStandard(Function<LossRow, OptionalDouble> number) {
    return standard.map(number).orElse(OptionalDouble.empty());
  }
}
