package io.github.ringstate.calibration;

import io.github.ringstate.chance.Drawing;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.encounter.FlightLimits;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.UncertainNumbers;
import io.github.ringstate.recording.EncounterFinder;
import io.github.ringstate.recording.Estimate;
import io.github.ringstate.recording.FoundEncounter;
import io.github.ringstate.recording.Instruments;
import io.github.ringstate.recording.Movement;
import io.github.ringstate.recording.Noise;
import io.github.ringstate.recording.Recording;
import io.github.ringstate.recording.Verdict;
import io.github.ringstate.recording.VerticalMotion;
import io.github.ringstate.study.model.OpenNumbers;
import java.util.List;
import java.util.Optional;
import org.hipparchus.util.FastMath;

/** Invented demonstrations for the tests of a fit. */
final class Flights {

  static final Helicopter CRAFT = DemoCraft.TRAINER;

  /** Twice a second, with attitude and lever; the noise is that of {@link Instruments#receiver}. */
  static final Instruments SLOW =
      new Instruments(2, Noise.of(1, 1, 0.3, 0.2), 0.1, FastMath.toRadians(0.3), 0.1, true);

  private static final double WIND_DEVIATION = 0.5;

  private Flights() {}

  static UncertainNumbers prior(List<Parameter> parameters) {
    return Prior.of(
        parameters,
        CRAFT,
        OpenNumbers.accepted(10 * parameters.size(), 1, Drawing.INDEPENDENT).kept());
  }

  /** Away from the ground, and kept until well after the arrest. */
  static Encounter encounter(Helicopter craft) {
    return Encounter.of(craft)
        .withLimits(FlightLimits.STANDARD.with(FlightLimits.TIME_PAST_ARREST, 3));
  }

  /** The recording of an encounter, looked at with the craft as it is thought to be. */
  static Optional<Demonstration> demonstration(
      Encounter flown, Technique technique, Instruments instruments, long seed) {
    return demonstration(instruments.record(flown, seed), flown, technique, "invented " + seed);
  }

  /** Empty if the finder sees no encounter in the recording. */
  static Optional<Demonstration> demonstration(
      Recording recording, Encounter flown, Technique technique, String name) {
    VerticalMotion motion = VerticalMotion.of(recording);
    Encounter thought = encounter(CRAFT).withAir(flown.air());
    List<FoundEncounter> found =
        EncounterFinder.like(thought, flown.entry().wind(), WIND_DEVIATION, 0.1).find(motion);
    EntryKind entry = EntryKind.named(flown.entry().name()).orElseThrow();
    return found.stream()
        .findFirst()
        .map(
            one ->
                new Demonstration(
                    name, motion, one, thought, entry, entry.numbers(), 1, technique));
  }

  /** The encounter with another movement of the pilot, and another arrest. */
  static FoundEncounter with(
      FoundEncounter found, Optional<Movement> movement, Optional<Estimate> arrest) {
    return new FoundEncounter(
        found.descentTime(),
        found.onsetTime(),
        found.onsetHeight(),
        found.sinkTime(),
        movement,
        arrest,
        found.altitudeLoss(),
        found.peakDescent(),
        arrest.isPresent() ? found.verdict() : Verdict.NO_END);
  }
}
