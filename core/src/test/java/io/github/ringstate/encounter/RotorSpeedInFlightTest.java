package io.github.ringstate.encounter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.air.Air;
import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.pilot.Autorotation;
import io.github.ringstate.pilot.CollectiveOnly;
import io.github.ringstate.pilot.CollectiveRaised;
import io.github.ringstate.pilot.Forward;
import io.github.ringstate.pilot.Lateral;
import io.github.ringstate.pilot.PowerSetting;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.quantity.ParameterSet;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** Common practice, no source: pulling more than the engine gives slows the rotor. */
class RotorSpeedInFlightTest {

  private static Recovery pull(double percent) {
    return new CollectiveOnly(
        ParameterSet.standard(CollectiveOnly.PARAMETERS).with(CollectiveOnly.POWER, percent));
  }

  private static Recovery raise(double degrees) {
    return new CollectiveRaised(
        ParameterSet.standard(CollectiveRaised.PARAMETERS)
            .with(CollectiveRaised.COLLECTIVE_RAISED, degrees));
  }

  private static DoubleSummaryStatistics rotorSpeeds(Encounter encounter) {
    DoubleSummaryStatistics speeds = new DoubleSummaryStatistics();
    Trajectory trajectory =
        new Trajectory(0.02, (phase, motion) -> speeds.accept(motion.rotorSpeed()));
    encounter.fly(Simulator.precise(), trajectory);
    return speeds;
  }

  @ParameterizedTest
  @FieldSource("io.github.ringstate.craft.DemoCraft#ALL")
  void raisingTheLeverBeyondThePowerThereIsSlowsTheRotorBelowItsWarning(Helicopter craft) {
    Encounter encounter = Encounter.of(craft).withRecovery(raise(10)).withDelay(4);
    Outcome outcome = encounter.fly();
    Occurrence warning =
        outcome.occurrences().stream()
            .filter(seen -> seen.kind() == EventKind.LOW_ROTOR_SPEED)
            .findFirst()
            .orElseThrow();
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
        assertTrue(
            encounter.fly().occurrences().stream()
                .noneMatch(seen -> seen.kind() == EventKind.LOW_ROTOR_SPEED));
      }
    }
  }

  /** The trainer's take-off power is 106 per cent of its continuous power. */
  @Test
  void whoWantsMorePowerThanThereIsGetsWhatThereIsAndKeepsTheRotorSpeed() {
    for (Air air : List.of(StandardAtmosphere.at(0), StandardAtmosphere.at(1500))) {
      Encounter encounter = Encounter.of(DemoCraft.TRAINER).withAir(air).withDelay(2);
      for (double percent : new double[] {107, 110}) {
        Encounter forward =
            encounter.withRecovery(
                new Forward(
                    ParameterSet.standard(Forward.PARAMETERS)
                        .with(PowerSetting.CLIMB_POWER, percent)));
        assertTrue(rotorSpeeds(forward).getMin() > 0.95, "at " + air);
        Encounter lateral =
            encounter.withRecovery(
                new Lateral(
                    ParameterSet.standard(Lateral.PARAMETERS)
                        .with(PowerSetting.CLIMB_POWER, percent)));
        assertTrue(rotorSpeeds(lateral).getMin() > 0.95, "at " + air);
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
    DoubleSummaryStatistics idle = new DoubleSummaryStatistics();
    double[] began = {Double.NaN};
    Trajectory trajectory =
        new Trajectory(
            0.02,
            (phase, motion) -> {
              if (phase.equals("glide") && Double.isNaN(began[0])) {
                began[0] = motion.time();
              }
              if (phase.equals("glide") && motion.time() > began[0] + 4) {
                idle.accept(motion.loads().enginePower());
              }
            });
    Encounter.of(DemoCraft.TRAINER)
        .withRecovery(new Autorotation())
        .fly(Simulator.precise(), trajectory);
    assertTrue(idle.getCount() > 50, "samples " + idle.getCount());
    assertTrue(idle.getMin() >= 0);
    assertTrue(idle.getAverage() < 5000, "engine gives " + idle.getAverage() + " W");
  }
}
