package io.github.ringstate.calibration;

import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.recording.FoundEncounter;
import io.github.ringstate.recording.Recording;
import io.github.ringstate.recording.VerticalMotion;

/**
 * A recorded encounter, with what is known of how it was flown.
 *
 * @param name what people call it
 * @param motion the smoothed recording
 * @param found where in it the encounter is
 * @param flown craft at its mass, air and boundary; entry, recovery and delay play no part
 * @param entry the entry that was flown
 * @param numbers the numbers of the entry as they are thought to be, {@link EntryKind#parameters}
 * @param windDeviation standard deviation of the wind among them, in the unit of {@link
 *     EntryKind#wind}; positive
 * @param technique the recovery that was flown
 */
public record Demonstration(
    String name,
    VerticalMotion motion,
    FoundEncounter found,
    Encounter flown,
    EntryKind entry,
    ParameterSet numbers,
    double windDeviation,
    Technique technique) {

  /** Checks the numbers. */
  public Demonstration {
    numbers = numbers.only(entry.parameters());
    if (!(windDeviation > 0)) {
      throw new IllegalArgumentException(
          "the deviation of the wind must be positive, not " + windDeviation);
    }
  }

  /**
   * What was smoothed.
   *
   * @return the recording
   */
  public Recording recording() {
    return motion.recording();
  }

  /**
   * The recovery that a movement of attitude looks like.
   *
   * @param found an encounter
   * @return lateral if it banked by more than the nose went down, forward otherwise and where
   *     nothing is recorded
   */
  public static Technique recoveryOf(FoundEncounter found) {
    return found
        .movement()
        .filter(moved -> Math.abs(moved.bank()) > -moved.pitch())
        .map(moved -> Technique.LATERAL)
        .orElse(Technique.FORWARD);
  }
}
