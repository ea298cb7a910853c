package io.github.ringstate.craft;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.air.Air;
import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.quantity.OutOfRangeException;
import io.github.ringstate.quantity.Parameter;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class HelicopterTest {

  private static final Helicopter CRAFT = DemoCraft.TRAINER;

  static Stream<Parameter> parameters() {
    return Helicopter.STANDARD_NUMBERS.parameters().stream();
  }

  @Test
  void aMassAboveTheCraftsGreatestIsRefusedWithThatBound() {
    OutOfRangeException refusal =
        assertThrows(OutOfRangeException.class, () -> CRAFT.with(Helicopter.MASS, 621));
    assertEquals(620, refusal.quantity().high());
    assertEquals(621, refusal.value());
    String message = String.valueOf(refusal.getMessage());
    assertTrue(message.startsWith("mass 621.0 kg" + OutOfRangeException.OUTSIDE), message);
    assertTrue(message.endsWith(" kg"), message);
  }

  @ParameterizedTest
  @ValueSource(doubles = {419, Double.NaN, -600, 0, Double.POSITIVE_INFINITY})
  void aMassBelowTheCraftsLeastOrNoMassAtAllIsRefused(double mass) {
    assertThrows(OutOfRangeException.class, () -> CRAFT.with(Helicopter.MASS, mass));
  }

  static Stream<Arguments> outOfOrder() {
    return Stream.of(
        Arguments.of(Helicopter.MAXIMUM_MASS, 400),
        Arguments.of(Helicopter.MINIMUM_MASS, 610),
        Arguments.of(Helicopter.CONTINUOUS_POWER, 200),
        Arguments.of(Helicopter.TAKE_OFF_POWER, 30),
        Arguments.of(Helicopter.SEA_LEVEL_POWER, 30),
        Arguments.of(CraftLimits.MINIMUM_COLLECTIVE, 31),
        Arguments.of(CraftBody.TAIL_ARM, 0));
  }

  @ParameterizedTest
  @MethodSource("outOfOrder")
  void limitsInTheWrongOrderAreRefused(Parameter parameter, double value) {
    assertThrows(OutOfRangeException.class, () -> CRAFT.with(parameter, value));
  }

  @Test
  void aGreatestValueBelowTheLeastIsRefusedAsSuch() {
    OutOfRangeException refusal =
        assertThrows(OutOfRangeException.class, () -> CRAFT.with(Helicopter.MAXIMUM_MASS, 400));
    assertEquals(Helicopter.MAXIMUM_MASS.name(), refusal.quantity().name());
    Helicopter least = CRAFT.with(CraftLimits.MINIMUM_COLLECTIVE, 9);
    assertThrows(OutOfRangeException.class, () -> least.with(CraftLimits.MAXIMUM_COLLECTIVE, 8.5));
  }

  @Test
  void theTextOfACraftHoldsItsNameAndItsNumbers() {
    assertTrue(CRAFT.toString().startsWith(CRAFT.name()));
    assertTrue(CRAFT.toString().contains(CRAFT.numbers().toString()));
  }

  @ParameterizedTest
  @MethodSource("parameters")
  void aCopyDiffersInTheChangedNumberAlone(Parameter parameter) {
    double value = CRAFT.numbers().get(parameter);
    double other = value + 1e-6 * (parameter.quantity().high() - value);
    Helicopter changed = CRAFT.with(parameter, other);
    assertEquals(other, changed.numbers().get(parameter));
    assertEquals(CRAFT, changed.with(parameter, value));
    assertNotEquals(CRAFT, changed);
    assertEquals(CRAFT.hashCode(), changed.with(parameter, value).hashCode());
    assertNotEquals(CRAFT.hashCode(), changed.hashCode());
  }

  @ParameterizedTest
  @MethodSource("parameters")
  void noNumberOfACraftMayBeNanOrInfinite(Parameter parameter) {
    for (double value :
        new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
      assertThrows(OutOfRangeException.class, () -> CRAFT.with(parameter, value));
    }
  }

  /** Rotor over the tail boom: common practice; a tail rotor counters the main rotor's torque. */
  @Test
  void theTailRotorPushesToTheRightOfACounterClockwiseRotorAndToTheLeftOfAClockwiseOne() {
    assertEquals(1, RotationSense.COUNTER_CLOCKWISE.tailPush());
    assertEquals(-1, RotationSense.CLOCKWISE.tailPush());
    Helicopter turned = CRAFT.with(RotationSense.CLOCKWISE);
    assertEquals(RotationSense.CLOCKWISE, turned.sense());
    assertEquals(CRAFT, turned.with(CRAFT.sense()));
    assertNotEquals(CRAFT, turned);
  }

  /** 9.80665 m/s2: 3rd General Conference on Weights and Measures, 1901. */
  @Test
  void weightDiscLoadingAndHoverInducedVelocityFollowFromTheMass() {
    Air air = StandardAtmosphere.at(0);
    double weight = 600 * 9.80665;
    double area = Math.PI * 3.9 * 3.9;
    Helicopter craft = CRAFT.with(Helicopter.MASS, 600);
    assertEquals(weight, craft.weight(), 1e-9);
    assertEquals(weight / area, craft.discLoading(), 1e-9);
    double vh = craft.hoverInducedVelocity(air);
    assertEquals(weight, 2 * air.density() * area * vh * vh, 1e-8);
  }

  @Test
  void theEngineGivesItsRatedPowerUntilThinAirTakesIt() {
    Helicopter craft =
        CRAFT
            .with(Helicopter.CONTINUOUS_POWER, 80)
            .with(Helicopter.TAKE_OFF_POWER, 90)
            .with(Helicopter.SEA_LEVEL_POWER, 100);
    Air low = StandardAtmosphere.at(0);
    assertEquals(80_000, craft.continuousPower(low), 1e-6);
    assertEquals(90_000, craft.takeOffPower(low), 1e-6);
    // the drive train bears a tenth more than the take-off power, a fifth more than there is
    assertEquals(99_000, craft.with(Helicopter.DRIVE_TRAIN_LIMIT, 110).maximumPower(low), 1e-6);
    assertEquals(100_000, craft.with(Helicopter.DRIVE_TRAIN_LIMIT, 120).maximumPower(low), 1e-3);
    Air thin = new Air(3000, 268.66, 70_121, 0.7385 * 1.225);
    assertEquals(0.7040 * 100_000, craft.continuousPower(thin), 5);
    assertEquals(0.7040 * 100_000, craft.takeOffPower(thin), 5);
  }

  @Test
  void aTurbineLosesPowerByTheExponentOfItsCraft() {
    Air half = new Air(6700, 244.6, 43_000, 0.5 * 1.225);
    Helicopter turbine = DemoCraft.UTILITY.with(Helicopter.SEA_LEVEL_POWER, 400);
    assertEquals(
        400_000 * 0.659754,
        turbine.with(Helicopter.TURBINE_LAPSE, 0.6).continuousPower(half),
        1,
        "0.5^0.6 = 0.659754");
    assertEquals(200_000, turbine.with(Helicopter.TURBINE_LAPSE, 1).takeOffPower(half), 1e-6);
    Helicopter piston = DemoCraft.TRAINER;
    assertEquals(
        piston.takeOffPower(half),
        piston.with(Helicopter.TURBINE_LAPSE, 1).takeOffPower(half),
        "a piston engine does not heed it");
  }
}
