package io.github.ringstate.dynamics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.craft.CraftBody;
import io.github.ringstate.craft.CraftLimits;
import io.github.ringstate.craft.EngineKind;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.craft.RotationSense;
import io.github.ringstate.integrate.Event;
import io.github.ringstate.integrate.Propagator;
import io.github.ringstate.integrate.Sampler;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.rotor.Rotor;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Free fall with quadratic drag, w = vt tanh(g t / vt), z = (vt^2 / g) ln cosh(g t / vt), vt =
 * sqrt(2 m g / (rho f)): any textbook of mechanics.
 *
 * <p>The craft that falls is the heaviest and flattest that the ranges allow, with the smallest
 * rotor, the slowest possible to spin up. Its blades stand almost still, so the thrust is below a
 * millionth of the weight, which the test checks; nothing in the equations is bypassed.
 */
class FreeFallTest {

  private static final double GRAVITY = 9.80665;
  private static final double MASS = 20_000;
  private static final double AREA = 60;
  private static final double DENSITY = StandardAtmosphere.at(0).density();
  private static final double TERMINAL = Math.sqrt(2 * MASS * GRAVITY / (DENSITY * AREA));
  private static final double SLOW_ROTOR = 2;

  private static final Helicopter STONE =
      new Helicopter(
          "stone",
          "Invented for a fall; no real type.",
          RotationSense.COUNTER_CLOCKWISE,
          EngineKind.PISTON,
          stone(Helicopter.STANDARD_NUMBERS));

  private static ParameterSet stone(ParameterSet numbers) {
    return numbers
        .with(Helicopter.MAXIMUM_MASS, MASS)
        .with(Helicopter.MASS, MASS)
        .with(Rotor.RADIUS, 1)
        .with(Rotor.SOLIDITY, 0.01)
        .with(Rotor.TIP_SPEED, 100)
        .with(Rotor.BLADE_LOADING_LIMIT, 0.1)
        .with(Rotor.INERTIA, 100_000)
        .with(Helicopter.CONTINUOUS_POWER, 20)
        .with(Helicopter.TAKE_OFF_POWER, 20)
        .with(Helicopter.SEA_LEVEL_POWER, 20)
        .with(CraftBody.TAIL_ARM, 30)
        .with(CraftBody.DOWNLOAD, 0)
        .with(CraftBody.UNDERSIDE_AREA, AREA);
  }

  private static double[] atRest() {
    double[] state = new double[State.SIZE];
    state[State.ROTOR_SPEED] = SLOW_ROTOR;
    state[State.UP] = 1000;
    return state;
  }

  private static double fallen(double t) {
    return TERMINAL * TERMINAL / GRAVITY * Math.log(Math.cosh(GRAVITY * t / TERMINAL));
  }

  private static double timeToFall(double depth) {
    double x = Math.exp(depth * GRAVITY / (TERMINAL * TERMINAL));
    return TERMINAL / GRAVITY * Math.log(x + Math.sqrt(x * x - 1));
  }

  static Stream<Propagator<String, Motion>> propagators() {
    return Stream.of(
        Propagators.precise(), Propagators.dormandPrince(1e-11), Propagators.extrapolation(1e-10));
  }

  @ParameterizedTest
  @MethodSource("propagators")
  void aFallAgreesWithItsClosedForm(Propagator<String, Motion> propagator) {
    double[] greatestThrust = new double[1];
    Sampler<Motion> sampler =
        new Sampler<>(
            0.5,
            motion -> {
              double t = motion.time();
              greatestThrust[0] = Math.max(greatestThrust[0], Math.abs(motion.loads().thrust()));
              assertEquals(
                  -TERMINAL * Math.tanh(GRAVITY * t / TERMINAL), motion.verticalSpeed(), 2e-5);
              assertEquals(1000 - fallen(t), motion.height(), 2e-4);
            });
    propagator.sample(sampler);
    Leg leg = Leg.fly(propagator, AtSeaLevel.calm(STONE), 0, atRest(), 20, List.of());
    assertEquals(20, leg.time());
    assertTrue(sampler.due() > 20, "samples missing");
    assertTrue(greatestThrust[0] < 1e-6 * MASS * GRAVITY, "thrust " + greatestThrust[0]);
  }

  /** The instants at which height and speed pass given values have closed forms too. */
  @ParameterizedTest
  @MethodSource("propagators")
  void eventsLieWhereTheClosedFormPutsThem(Propagator<String, Motion> propagator) {
    List<Event<String, Motion>> events =
        List.of(
            Event.note(
                "half speed",
                Event.Crossing.FALLING,
                motion -> motion.verticalSpeed() + TERMINAL / 2),
            Event.note(
                "quarter speed",
                Event.Crossing.RISING,
                motion -> motion.verticalSpeed() + TERMINAL / 4),
            Event.stop("ground", Event.Crossing.FALLING, motion -> motion.height() - 400));
    Leg leg = Leg.fly(propagator, AtSeaLevel.calm(STONE), 0, atRest(), 60, events);
    double halfSpeed = TERMINAL / GRAVITY * 0.5 * Math.log((1 + 0.5) / (1 - 0.5));
    assertEquals("ground", leg.stop().orElseThrow());
    assertEquals(2, leg.log().size(), "a falling quantity does not rise");
    assertEquals(halfSpeed, leg.log().time(0), 1e-6);
    assertEquals(timeToFall(600), leg.time(), 1e-5);
    assertEquals(leg.time(), leg.log().time(1), 1e-9);
    assertEquals(400, leg.state()[State.UP], 1e-7);
  }

  @Test
  void aLegThatNothingStopsEndsWhenItsTimeRunsOut() {
    Leg leg = Leg.fly(AtSeaLevel.calm(STONE), 3, atRest(), 4);
    assertEquals(4, leg.time());
    assertTrue(leg.stop().isEmpty());
    assertEquals(1000 - fallen(1), leg.state()[State.UP], 1e-5);
  }

  @Test
  void theShownVerticalSpeedLagsByTheTimeConstantOfTheInstrument() {
    // First-order lag of a ramp: shown = g (t - T (1 - exp(-t/T))); drag is below 1e-4 at first.
    double t = 0.5;
    double lag = STONE.si(CraftLimits.VERTICAL_SPEED_LAG);
    Leg leg = Leg.fly(AtSeaLevel.calm(STONE), 0, atRest(), t);
    double expected = -GRAVITY * (t - lag * (1 - Math.exp(-t / lag)));
    assertEquals(expected, leg.state()[State.INDICATED_VERTICAL_SPEED], 2e-3 * Math.abs(expected));
  }
}
