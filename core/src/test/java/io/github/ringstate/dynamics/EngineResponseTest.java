package io.github.ringstate.dynamics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.air.Air;
import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.EngineKind;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.rotor.Rotor;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The engine's answer to what is asked of it, and what the rotor gives while it waits. */
class EngineResponseTest {

  private static final Air AIR = StandardAtmosphere.at(0);
  private static final double STEP = 0.01;

  private record Sample(double time, double engine, double shaft, double rotorSpeed) {}

  /** A hover in which the collective is raised far beyond what the engine gives. */
  private static List<Sample> overpitched(Helicopter craft, double end) {
    EquationsOfMotion motion = AtSeaLevel.calm(craft);
    Trim hover = Trim.find(motion, 0, 0);
    double[] state = hover.state(motion, 0, 0);
    state[State.COLLECTIVE] += Math.toRadians(3);
    List<Sample> samples = new ArrayList<>();
    motion.commandedBy((seen, controls) -> controls.collective(state[State.COLLECTIVE], 1));
    Leg.sampled(
        motion,
        0,
        state,
        end,
        STEP,
        m ->
            samples.add(
                new Sample(
                    m.time(),
                    m.loads().enginePower(),
                    m.loads().shaftPower(),
                    m.state(State.ROTOR_SPEED))));
    return samples;
  }

  /** Source: the exact solution of a first-order lag whose input is held at the limit. */
  @ParameterizedTest
  @ValueSource(doubles = {0.2, 0.5, 1.5})
  void askedForMoreThanThereIsTheEngineFollowsExponentially(double time) {
    Helicopter craft = DemoCraft.TRAINER.with(Helicopter.ENGINE_TIME, time);
    List<Sample> samples = overpitched(craft, 1);
    double most = craft.maximumPower(AIR);
    double first = samples.get(0).engine();
    assertTrue(first < 0.95 * most, "power of the hover " + first);
    for (Sample at : samples) {
      double expected = most + (first - most) * Math.exp(-at.time() / time);
      assertEquals(expected, at.engine(), 1e-6 * most, "at " + at.time() + " s");
    }
  }

  /** Source: conservation of energy; the rotor gives what the engine does not. */
  @ParameterizedTest
  @FieldSource("io.github.ringstate.craft.DemoCraft#ALL")
  void theRotorDroopsByTheEnergyThatIsMissing(Helicopter craft) {
    List<Sample> samples = overpitched(craft, 0.8);
    int last = (samples.size() - 1) / 2 * 2;
    double missing = 0;
    for (int i = 0; i <= last; i++) {
      double weight = i == 0 || i == last ? 1 : i % 2 == 1 ? 4 : 2;
      missing += weight * (samples.get(i).shaft() - samples.get(i).engine()) * STEP / 3;
    }
    double inertia = craft.si(Rotor.INERTIA);
    double before = samples.get(0).rotorSpeed();
    double expected = Math.sqrt(before * before - 2 * missing / inertia);
    double after = samples.get(last).rotorSpeed();
    assertTrue(after < 0.98 * before, "droop to " + after / before);
    assertEquals(expected, after, 1e-4 * before);
  }

  /** By hand: the missing energy of a lag behind a step, power step times time constant. */
  @Test
  void aSlowerEngineLetsTheRotorDroopMore() {
    double least = 1;
    for (double time : new double[] {0, 0.3, 1, 2}) {
      List<Sample> samples = overpitched(DemoCraft.UTILITY.with(Helicopter.ENGINE_TIME, time), 1.5);
      double droop = samples.get(samples.size() - 1).rotorSpeed() / samples.get(0).rotorSpeed();
      assertTrue(droop < least, time + " s: " + droop);
      least = droop;
    }
  }

  @ParameterizedTest
  @FieldSource("io.github.ringstate.craft.DemoCraft#ALL")
  void aHoverStaysAsItIs(Helicopter craft) {
    EquationsOfMotion motion = AtSeaLevel.calm(craft);
    double[] state = AtSeaLevel.hover(motion);
    Motion at = motion.at(0, state);
    assertEquals(at.loads().shaftPower(), at.loads().enginePower(), 1e-9 * at.loads().shaftPower());
    assertEquals(0, at.rate(State.ENGINE), 1e-12);
    assertEquals(0, at.rate(State.ROTOR_SPEED), 1e-12);
  }

  /** An engine without a time constant gives what is asked of it, whatever its state says. */
  @Test
  void anEngineWithoutDelayAnswersAtOnce() {
    EquationsOfMotion prompt = AtSeaLevel.calm(DemoCraft.TRAINER.with(Helicopter.ENGINE_TIME, 0));
    double[] state = AtSeaLevel.hover(prompt);
    state[State.ENGINE] = 0.1;
    Motion at = prompt.at(0, state);
    assertEquals(at.loads().shaftPower(), at.loads().enginePower(), 1e-9 * at.loads().shaftPower());
    assertEquals(0, at.rate(State.ENGINE), 0.0);
  }

  @Test
  void theDriveTrainMayBearMoreThanTheTakeOffPowerIfTheEngineHasIt() {
    Helicopter heavy = DemoCraft.HEAVY;
    assertEquals(2_700_000, heavy.maximumPower(AIR), 1e-6);
    Helicopter strong = heavy.with(Helicopter.DRIVE_TRAIN_LIMIT, 115);
    assertEquals(1.15 * 2_700_000, strong.maximumPower(AIR), 1e-6);
    assertEquals(2_700_000, strong.takeOffPower(AIR), 1e-6);
    Helicopter most = heavy.with(Helicopter.DRIVE_TRAIN_LIMIT, 150);
    assertEquals(3_300_000, most.maximumPower(AIR), 0.01);
    assertEquals(
        2_700_000 / heavy.continuousPower(AIR),
        AtSeaLevel.calm(strong).at(0, AtSeaLevel.hover(AtSeaLevel.calm(strong))).takeOffPower());
  }

  @Test
  void demoCraftAnswerAsTheirKindOfEngine() {
    for (Helicopter craft : DemoCraft.ALL) {
      assertEquals(craft.engine().responseTime(), craft.si(Helicopter.ENGINE_TIME), craft.name());
    }
    assertTrue(EngineKind.TURBINE.responseTime() > EngineKind.PISTON.responseTime());
  }
}
