package io.github.ringstate.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ParameterSetTest {

  private static final Parameter SPEED =
      Parameter.of("exit speed", Unit.KNOT, 0, 60, 24, "invented");
  private static final Parameter ANGLE =
      Parameter.of("nose-down", Unit.DEGREE, 5, 30, 15, "invented");
  private static final ParameterSet STANDARD = ParameterSet.standard(List.of(SPEED, ANGLE));

  @Test
  void aSetStartsAtTheStandardValues() {
    assertEquals(24, STANDARD.get(SPEED));
    assertEquals(15, STANDARD.get(ANGLE));
    assertEquals(List.of(SPEED, ANGLE), STANDARD.parameters());
  }

  /** International nautical mile and degree, exact: 24 kt = 24 x 1852 / 3600 m/s. */
  @Test
  void siValuesAreConvertedOnceFromTheParametersUnit() {
    assertEquals(24 * 1852.0 / 3600, STANDARD.si(SPEED), 1e-14);
    assertEquals(Math.PI / 12, STANDARD.si(ANGLE), 1e-16);
  }

  @Test
  void changingAValueLeavesTheSetItCameFromAlone() {
    ParameterSet changed = STANDARD.with(SPEED, 30);
    assertEquals(30, changed.get(SPEED));
    assertEquals(24, STANDARD.get(SPEED));
    assertNotEquals(STANDARD, changed);
  }

  @Test
  void setsOfTheSameParametersAndValuesAreEqual() {
    ParameterSet same = STANDARD.with("exit speed", 30).with(SPEED, 24);
    assertEquals(STANDARD, same);
    assertEquals(STANDARD.hashCode(), same.hashCode());
    assertNotEquals(STANDARD.hashCode(), STANDARD.with(SPEED, 30).hashCode());
    assertEquals(STANDARD.with(SPEED, 0), STANDARD.with(SPEED, -0.0), "nothing has no sign");
    assertNotEquals(STANDARD, ParameterSet.standard(List.of(ANGLE, SPEED)));
    assertNotEquals(STANDARD, ParameterSet.standard(List.of(SPEED)));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, -0.1, 60.1, Double.POSITIVE_INFINITY})
  void aValueOutsideTheParametersRangeIsRefusedByItsName(double value) {
    OutOfRangeException refusal =
        assertThrows(OutOfRangeException.class, () -> STANDARD.with(SPEED, value));
    assertEquals("exit speed", refusal.quantity().name());
    assertThrows(OutOfRangeException.class, () -> STANDARD.with("exit speed", value));
  }

  @Test
  void anUnknownNameIsRefusedAndNamed() {
    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> STANDARD.with("speed", 3));
    assertTrue(String.valueOf(refusal.getMessage()).contains("'speed'"), refusal::toString);
    Parameter stranger = Parameter.of("stranger", Unit.ONE, 0, 1, 0, "invented");
    assertThrows(IllegalArgumentException.class, () -> STANDARD.get(stranger));
    assertThrows(IllegalArgumentException.class, () -> STANDARD.si(stranger));
  }

  @Test
  void anotherParameterOfTheSameNameIsNotTakenForTheOneHeld() {
    Parameter otherUnit = Parameter.of("exit speed", Unit.METRE_PER_SECOND, 0, 60, 24, "invented");
    assertThrows(IllegalArgumentException.class, () -> STANDARD.get(otherUnit));
    assertThrows(IllegalArgumentException.class, () -> STANDARD.si(otherUnit));
    assertThrows(IllegalArgumentException.class, () -> STANDARD.with(otherUnit, 3));
  }

  @Test
  void twoParametersOfOneNameAreRefused() {
    assertThrows(
        IllegalArgumentException.class, () -> ParameterSet.standard(List.of(SPEED, ANGLE, SPEED)));
  }

  @Test
  void aParametersStandardValueLiesInItsRange() {
    assertThrows(
        OutOfRangeException.class, () -> Parameter.of("x", Unit.KNOT, 0, 60, 61, "invented"));
    assertThrows(
        OutOfRangeException.class,
        () -> Parameter.of("x", Unit.KNOT, 0, 60, Double.NaN, "invented"));
  }

  @Test
  void aKeyIsTheNameAndTheUnitInLowerCaseAndUnderscores() {
    assertEquals("exit_speed_kt", SPEED.key());
    assertEquals("nose_down_deg", ANGLE.key());
    assertEquals("factor", Parameter.of("factor", Unit.ONE, 0, 1, 1, "invented").key());
  }

  @Test
  void theTextOfASetNamesEachKeyWithItsValue() {
    assertEquals("exit_speed_kt = 24.0, nose_down_deg = 15.0", STANDARD.toString());
  }
}
