package io.github.ringstate.instructor.fit;

import io.github.ringstate.air.Air;
import io.github.ringstate.air.Wind;
import io.github.ringstate.calibration.Demonstration;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.instructor.option.Approach;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.recording.Channel;
import io.github.ringstate.recording.EncounterFinder;
import io.github.ringstate.recording.FoundEncounter;
import io.github.ringstate.recording.Recording;
import io.github.ringstate.recording.Verdict;
import io.github.ringstate.recording.VerticalMotion;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.util.FastMath;

/**
 * Finds the encounters of a recording that a fit can use.
 *
 * @param craft the craft at its mass
 * @param air the air
 * @param approach the entry that was flown, with its wind along the way over the ground
 * @param windDeviation standard deviation of that wind, in the unit of the entry's wind
 * @param technique the recovery; empty if attitude says
 */
record Demonstrations(
    Helicopter craft,
    Air air,
    Approach approach,
    double windDeviation,
    Optional<Technique> technique) {

  /** Standard deviation of a recorded ground speed, m/s. Assumed (common practice, no source). */
  private static final double GROUND_SPEED = 0.1;

  /**
   * Encounters of a recording.
   *
   * @param usable those that were arrested within the recording
   * @param skipped what was found and is of no use, a name and a verdict each
   */
  record Found(List<Demonstration> usable, List<List<String>> skipped) {}

  /** Looks through a recording. */
  Found in(String name, Recording recording) {
    VerticalMotion motion = VerticalMotion.of(recording);
    Encounter flown = approach.encounter(craft, air);
    double track = track(recording);
    double behind =
        approach.kind().windFrom(1).equals("from behind")
            ? approach.windSpeed()
            : -approach.windSpeed();
    Wind wind = new Wind(behind * FastMath.cos(track), behind * FastMath.sin(track));
    EncounterFinder finder =
        new EncounterFinder(
            craft, air, wind, Unit.KNOT.toSi(windDeviation), GROUND_SPEED, flown.boundary());
    List<Demonstration> usable = new ArrayList<>();
    List<List<String>> skipped = new ArrayList<>();
    int number = 0;
    for (FoundEncounter found : finder.find(motion)) {
      String label = name + " " + ++number;
      if (found.arrestTime().isEmpty() || found.verdict() == Verdict.POWER_ONLY) {
        skipped.add(List.of(label, found.verdict().label()));
      } else {
        usable.add(
            new Demonstration(
                label,
                motion,
                found,
                flown,
                approach.kind(),
                approach.kind().numbers().with(approach.kind().wind(), approach.wind()),
                windDeviation,
                technique.orElseGet(() -> Demonstration.recoveryOf(found))));
      }
    }
    return new Found(usable, skipped);
  }

  /** The mean direction of flight over the ground. */
  private static double track(Recording recording) {
    double north = 0;
    double east = 0;
    for (int k = 0; k < recording.size(); k++) {
      double speed = recording.value(Channel.GROUND_SPEED, k);
      double track = recording.value(Channel.TRACK, k);
      if (!Double.isNaN(speed + track)) {
        north += speed * FastMath.cos(track);
        east += speed * FastMath.sin(track);
      }
    }
    return FastMath.atan2(east, north);
  }
}
