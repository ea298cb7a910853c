package io.github.ringstate.encounter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.air.Air;
import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.pilot.Autorotation;
import io.github.ringstate.pilot.CollectiveOnly;
import io.github.ringstate.pilot.CollectiveRaised;
import io.github.ringstate.pilot.Forward;
import io.github.ringstate.pilot.Lateral;
import io.github.ringstate.pilot.PowerSetting;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.pilot.Technique;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** Common practice, no source: pulling more than the engine gives slows the rotor. */
class RotorSpeedInFlightTest {

  private static Recovery pull(double percent) {
    return Technique.COLLECTIVE.with(CollectiveOnly.POWER, percent);
  }

  private static Recovery raise(double degrees) {
    return Technique.COLLECTIVE_RAISED.with(CollectiveRaised.COLLECTIVE_RAISED, degrees);
  }

  private static DoubleSummaryStatistics rotorSpeeds(Encounter encounter) {
    return Samples.of(encounter, 0.02, Motion::rotorSpeed).stream()
        .mapToDouble(speed -> speed)
        .summaryStatistics();
  }

  @ParameterizedTest
  @FieldSource("io.github.ringstate.craft.DemoCraft#ALL")
  void raisingTheLeverBeyondThePowerThereIsSlowsTheRotorBelowItsWarning(Helicopter craft) {
    Encounter encounter = Encounter.of(craft).withRecovery(raise(10)).withDelay(4);
    Outcome outcome = encounter.fly();
    Occurrence warning = outcome.first(EventKind.LOW_ROTOR_SPEED).orElseThrow();
    assertTrue(warning.time() > outcome.onsetTime().orElseThrow() + 4);
    assertTrue(rotorSpeeds(encounter).getMin() < 0.95);
  }

  /** What the engine's own time costs is less than the margin to the warning, 5 per cent. */
  @ParameterizedTest
  @FieldSource("io.github.ringstate.craft.DemoCraft#ALL")
  void withinThePowerThereIsTheRotorKeepsItsSpeed(Helicopter craft) {
    for (Recovery recovery : List.of(new Forward(), new Lateral(), pull(95))) {
      for (double delay : new double[] {0, 1, 3, 6}) {
        Encounter encounter = Encounter.of(craft).withRecovery(recovery).withDelay(delay);
        DoubleSummaryStatistics speeds = rotorSpeeds(encounter);
        assertTrue(speeds.getMin() > 0.95, recovery.name() + " " + speeds.getMin());
        assertTrue(speeds.getMax() < 1.03, recovery.name() + " " + speeds.getMax());
        assertFalse(encounter.fly().happened(EventKind.LOW_ROTOR_SPEED));
      }
    }
  }

  /** The trainer's take-off power is 106 per cent of its continuous power. */
  @Test
  void whoWantsMorePowerThanThereIsGetsWhatThereIsAndKeepsTheRotorSpeed() {
    for (Air air : List.of(StandardAtmosphere.at(0), StandardAtmosphere.at(1500))) {
      Encounter encounter = Encounter.of(DemoCraft.TRAINER).withAir(air).withDelay(2);
      for (double percent : new double[] {107, 110}) {
        for (Technique technique : List.of(Technique.FORWARD, Technique.LATERAL)) {
          Recovery strong = technique.with(PowerSetting.CLIMB_POWER, percent);
          assertTrue(rotorSpeeds(encounter.withRecovery(strong)).getMin() > 0.95, "at " + air);
        }
      }
      assertEquals(
          encounter.withRecovery(pull(100)).fly(), encounter.withRecovery(pull(120)).fly());
    }
  }

  /** Rotor speed in autorotation, 90 to 110 per cent for most craft; common practice, no source. */
  @ParameterizedTest
  @FieldSource("io.github.ringstate.craft.DemoCraft#ALL")
  void autorotationKeepsTheRotorWithinItsPowerOffRange(Helicopter craft) {
    for (Entry entry :
        List.of(new Settling(), new Steep(), new Downwind(), new TailwindApproach())) {
      for (double delay : new double[] {0, 1, 3, 6}) {
        Encounter encounter =
            Encounter.of(craft).withEntry(entry).withRecovery(new Autorotation()).withDelay(delay);
        DoubleSummaryStatistics speeds = rotorSpeeds(encounter);
        assertTrue(speeds.getMin() > 0.9, entry.name() + " " + speeds.getMin());
        assertTrue(speeds.getMax() < 1.1, entry.name() + " " + speeds.getMax());
        assertEquals(Ending.ARRESTED, encounter.fly().ending());
      }
    }
  }

  /** In a glide the air drives the rotor: the engine idles. */
  @Test
  void inTheGlideOfAnAutorotationTheEngineGivesNextToNothing() {
    DoubleSummaryStatistics idle =
        Samples.in(
                "glide",
                Encounter.of(DemoCraft.TRAINER).withRecovery(new Autorotation()),
                0.02,
                motion -> motion.loads().enginePower())
            .stream()
            .skip(201)
            .mapToDouble(power -> power)
            .summaryStatistics();
    assertTrue(idle.getCount() > 50, "samples " + idle.getCount());
    assertTrue(idle.getMin() >= 0);
    assertTrue(idle.getAverage() < 5000, "engine gives " + idle.getAverage() + " W");
  }
}
