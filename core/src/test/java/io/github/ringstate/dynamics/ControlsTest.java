package io.github.ringstate.dynamics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.CraftLimits;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.integrate.Sampler;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class ControlsTest {

  private static final Helicopter CRAFT = DemoCraft.TRAINER;

  static IntStream draws() {
    return IntStream.range(0, 20);
  }

  /** Wild commands, changed at random times, never take the craft past its own limits. */
  @ParameterizedTest
  @MethodSource("draws")
  void noRateOrAccelerationEverPassesTheCraftsLimits(int draw) {
    SplittableRandom random = new SplittableRandom(900 + draw);
    EquationsOfMotion motion = AtSeaLevel.calm(CRAFT);
    double[] state = AtSeaLevel.hover(motion);
    double time = 0;
    for (int leg = 0; leg < 6; leg++) {
      double pitch = random.nextDouble(-1.5, 1.5);
      double bank = random.nextDouble(-1.5, 1.5);
      double collective = random.nextDouble(-1, 1);
      double yaw = random.nextDouble(-2, 2);
      double rate = random.nextDouble(0.1, 2);
      motion.commandedBy(
          (seen, controls) -> {
            controls.pitch(pitch, rate);
            controls.bank(bank, rate);
            controls.collective(collective, rate);
            controls.yaw(yaw);
          });
      double end = time + random.nextDouble(0.2, 2);
      state = Leg.sampled(motion, time, state, end, 0.01, ControlsTest::assertWithinLimits).state();
      time = end;
    }
  }

  private static void assertWithinLimits(Motion at) {
    atMost(CRAFT.si(CraftLimits.PITCH_RATE), at.rate(State.PITCH));
    atMost(CRAFT.si(CraftLimits.BANK_RATE), at.rate(State.BANK));
    atMost(CRAFT.si(CraftLimits.YAW_RATE), at.rate(State.HEADING));
    atMost(CRAFT.si(CraftLimits.PITCH_ACCELERATION), at.rate(State.PITCH_RATE));
    atMost(CRAFT.si(CraftLimits.BANK_ACCELERATION), at.rate(State.BANK_RATE));
    atMost(CRAFT.si(CraftLimits.COLLECTIVE_RATE), at.rate(State.COLLECTIVE));
    double collective = at.collective();
    assertTrue(collective > CRAFT.si(CraftLimits.MINIMUM_COLLECTIVE) - 1e-9, "" + collective);
    assertTrue(collective < CRAFT.si(CraftLimits.MAXIMUM_COLLECTIVE) + 1e-9, "" + collective);
    atMost(1.05 * CRAFT.si(CraftLimits.PITCH_LIMIT), at.pitch());
    atMost(1.05 * CRAFT.si(CraftLimits.BANK_LIMIT), at.bank());
  }

  /**
   * The limit is approached as an equilibrium, so the integrator's own error, 1e-9 a step, may pass
   * it.
   */
  private static void atMost(double limit, double value) {
    assertTrue(Math.abs(value) <= limit + 1e-7, value + " beyond " + limit);
  }

  @Test
  void aSlowCommandIsFollowedSlowly() {
    EquationsOfMotion motion = AtSeaLevel.calm(CRAFT);
    double[] start = AtSeaLevel.hover(motion);
    double rate = Math.toRadians(2);
    motion.commandedBy((seen, controls) -> controls.pitch(Math.toRadians(-20), rate));
    Leg leg = Leg.sampled(motion, 0, start, 5, 0.02, at -> atMost(rate, at.rate(State.PITCH)));
    double turned = start[State.PITCH] - leg.state()[State.PITCH];
    assertTrue(turned > 0.9 * 5 * rate - 0.01, "turned by " + turned);
  }

  @Test
  void aCommanderWhoCommandsNothingLeavesTheControlsWhereTheyAre() {
    EquationsOfMotion motion = AtSeaLevel.calm(CRAFT);
    double[] start = AtSeaLevel.hover(motion);
    Leg leg = Leg.fly(motion, 0, start, 3);
    for (int place : new int[] {State.PITCH, State.BANK, State.HEADING, State.COLLECTIVE}) {
      assertEquals(start[place], leg.state()[place], 1e-12);
    }
  }

  static Stream<Commander> laws() {
    return Stream.of(
        (seen, controls) -> controls.pitch(Double.NaN, 1),
        (seen, controls) -> controls.bank(Double.NaN, 1),
        (seen, controls) -> controls.collective(Double.NaN, 1),
        (seen, controls) -> controls.yaw(Double.NaN));
  }

  @ParameterizedTest
  @MethodSource("laws")
  void aCommandThatIsNoNumberIsRefusedAndNotFlown(Commander commander) {
    EquationsOfMotion motion = AtSeaLevel.calm(CRAFT);
    double[] start = AtSeaLevel.hover(motion);
    motion.commandedBy(commander);
    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> motion.at(0, start).loads());
    assertTrue(String.valueOf(refusal.getMessage()).contains(Controls.NOT_A_NUMBER));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, 0, -1})
  void aRateThatIsNotPositiveIsRefused(double rate) {
    Controls controls = new Controls();
    for (Runnable command :
        List.<Runnable>of(
            () -> controls.pitch(0, rate),
            () -> controls.bank(0, rate),
            () -> controls.collective(0, rate))) {
      IllegalArgumentException refusal = assertThrows(IllegalArgumentException.class, command::run);
      assertTrue(String.valueOf(refusal.getMessage()).contains(Controls.NOT_POSITIVE + rate));
    }
  }

  /** Fifteen degrees, five degrees a second and so on, given where radians are meant. */
  @Test
  void degreesDoNotPassAsRadians() {
    Controls controls = new Controls();
    for (Runnable command :
        List.<Runnable>of(
            () -> controls.pitch(-15, 0.2),
            () -> controls.bank(15, 0.2),
            () -> controls.collective(8, 0.1),
            () -> controls.pitch(-0.2, 5),
            () -> controls.bank(0.2, 12),
            () -> controls.collective(0.1, 6),
            () -> controls.yaw(10),
            () -> controls.pitch(Double.POSITIVE_INFINITY, 0.2),
            () -> controls.bank(0.2, Double.POSITIVE_INFINITY))) {
      BadCommandException refusal = assertThrows(BadCommandException.class, command::run);
      assertTrue(String.valueOf(refusal.getMessage()).contains(Controls.TOO_GREAT));
    }
  }

  @ParameterizedTest
  @ValueSource(
      ints = {
        State.SPEED_NORTH,
        State.SPEED_UP,
        State.PITCH,
        State.BANK,
        State.COLLECTIVE,
        State.INDUCED,
        State.ROTOR_SPEED
      })
  void aStateThatIsNoNumberIsRefused(int place) {
    EquationsOfMotion motion = AtSeaLevel.calm(CRAFT);
    double[] state = AtSeaLevel.hover(motion);
    state[place] = Double.NaN;
    assertThrows(IllegalArgumentException.class, () -> motion.at(0, state).loads());
  }

  @Test
  void aWindThatIsNoNumberIsRefused() {
    double[] state = AtSeaLevel.hover(AtSeaLevel.calm(CRAFT));
    EquationsOfMotion motion = AtSeaLevel.in((t, n, e, h, result) -> result[2] = Double.NaN, CRAFT);
    assertThrows(IllegalArgumentException.class, () -> motion.at(0, state).loads());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN})
  void aSamplerWithoutAPositiveStepIsRefused(double step) {
    assertThrows(IllegalArgumentException.class, () -> new Sampler<Motion>(step, at -> {}));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1e-9, Double.NaN})
  void aPropagatorWithoutAPositiveToleranceIsRefused(double tolerance) {
    assertThrows(IllegalArgumentException.class, () -> Propagators.dormandPrince(tolerance));
  }
}
