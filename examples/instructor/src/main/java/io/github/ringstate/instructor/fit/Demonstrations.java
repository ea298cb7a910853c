package io.github.ringstate.instructor.fit;

import io.github.ringstate.air.Air;
import io.github.ringstate.air.Wind;
import io.github.ringstate.air.WindField;
import io.github.ringstate.calibration.Demonstration;
import io.github.ringstate.calibration.EntryDirection;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.files.recording.FlightCheck;
import io.github.ringstate.instructor.option.Approach;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.recording.EncounterFinder;
import io.github.ringstate.recording.FoundEncounter;
import io.github.ringstate.recording.Recording;
import io.github.ringstate.recording.Verdict;
import io.github.ringstate.recording.VerticalMotion;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hipparchus.util.FastMath;

/**
 * Finds the encounters of a recording that a fit can use.
 *
 * @param craft the craft at its mass
 * @param air the air
 * @param approach the entry that was flown, with its wind along each encounter's own way over the
 *     ground
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

  /** Onsets so near each other in two winds are those of one encounter, s. */
  private static final double NEAR = 10;

  /**
   * Encounters of a recording.
   *
   * @param usable those that were arrested within the recording
   * @param skipped what was found and is of no use, a name and a verdict each
   */
  record Found(List<Demonstration> usable, List<List<String>> skipped) {}

  /** Looks through a recording. */
  Found in(String name, Recording recording) {
    FlightCheck.require(name, recording);
    VerticalMotion motion = VerticalMotion.of(recording);
    Encounter flown = approach.encounter(craft, air);
    List<Demonstration> usable = new ArrayList<>();
    List<List<String>> skipped = new ArrayList<>();
    int number = 0;
    for (FoundEncounter found : encounters(motion, flown)) {
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
    if (number == 0) {
      skipped.add(List.of(name, "no descent in it comes into the ring state or to its edge"));
    }
    return new Found(usable, skipped);
  }

  /**
   * The encounters, each in the wind along its own way. Where they are is seen at first in a wind
   * that turns with the way that is flown.
   */
  private List<FoundEncounter> encounters(VerticalMotion motion, Encounter flown) {
    List<FoundEncounter> all = new ArrayList<>();
    WindField turning = new TurningWind(motion.recording(), fromBehind());
    for (FoundEncounter about : finder(turning, flown).find(motion)) {
      double way = EntryDirection.of(motion.recording(), about);
      Wind wind = new Wind(fromBehind() * FastMath.cos(way), fromBehind() * FastMath.sin(way));
      finder(wind, flown).find(motion).stream()
          .min(Comparator.comparingDouble(one -> apart(one, about)))
          .filter(one -> apart(one, about) < NEAR && !all.contains(one))
          .ifPresent(all::add);
    }
    return all;
  }

  private EncounterFinder finder(WindField wind, Encounter flown) {
    return EncounterFinder.like(flown, wind, Unit.KNOT.toSi(windDeviation), GROUND_SPEED);
  }

  private static double apart(FoundEncounter one, FoundEncounter other) {
    return Math.abs(one.onsetTime().value() - other.onsetTime().value());
  }

  /** The wind from behind, m/s. */
  private double fromBehind() {
    return approach.kind().windFrom(1).equals("from behind")
        ? approach.windSpeed()
        : -approach.windSpeed();
  }
}
