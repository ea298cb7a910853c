package io.github.ringstate.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The contract of a range is this library's own: both bounds belong to it, NaN never does. */
class QuantityTest {

  private static final Quantity SINK = new Quantity("sink", Unit.FOOT_PER_MINUTE, -100, 2500);

  @ParameterizedTest
  @ValueSource(doubles = {-100, 2500, 0, -0.0, 1e-300})
  void aValueInTheRangeAndBothBoundsPassUnchanged(double value) {
    assertEquals(value, SINK.check(value));
  }

  @ParameterizedTest
  @ValueSource(
      doubles = {
        Double.NaN,
        Double.POSITIVE_INFINITY,
        Double.NEGATIVE_INFINITY,
        -100.00000000000001,
        2500.0000000000005
      })
  void aValueOutsideTheRangeAndNanAreRefused(double value) {
    OutOfRangeException refusal = assertThrows(OutOfRangeException.class, () -> SINK.check(value));
    assertEquals(SINK, refusal.quantity());
    assertEquals(value, refusal.value());
  }

  @Test
  void theRefusalNamesQuantityValueBoundsAndUnit() {
    OutOfRangeException refusal = assertThrows(OutOfRangeException.class, () -> SINK.check(2600.5));
    String message = String.valueOf(refusal.getMessage());
    assertTrue(message.contains(OutOfRangeException.OUTSIDE), message);
    assertTrue(message.startsWith("sink 2600.5 ft/min"), message);
    assertTrue(message.contains("-100 to 2500 ft/min"), message);
  }

  @Test
  void aPureNumbersRefusalHasNoUnitAndNoDoubleSpace() {
    Quantity factor = new Quantity("factor", Unit.ONE, 0.9, 1);
    String message =
        String.valueOf(
            assertThrows(OutOfRangeException.class, () -> factor.check(Double.NaN)).getMessage());
    assertEquals("factor NaN" + OutOfRangeException.OUTSIDE + "0.9 to 1", message);
  }

  @Test
  void theRefusalReadsTheSameUnderAnyLocale() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      String message =
          String.valueOf(
              assertThrows(OutOfRangeException.class, () -> SINK.check(1e7 + 0.5)).getMessage());
      assertTrue(message.contains("1.00000005E7"), message);
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void everyRandomValueIsEitherInTheRangeOrRefused() {
    SplittableRandom random = new SplittableRandom(7);
    for (int i = 0; i < 1000; i++) {
      double value = random.nextDouble(-3000, 6000);
      if (value >= -100 && value <= 2500) {
        assertEquals(value, SINK.check(value));
      } else {
        assertThrows(OutOfRangeException.class, () -> SINK.check(value));
      }
    }
  }

  @Test
  void anEmptyRangeAndOneWithoutABoundAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Quantity("x", Unit.ONE, 2, 1));
    assertThrows(IllegalArgumentException.class, () -> new Quantity("x", Unit.ONE, Double.NaN, 1));
    assertThrows(IllegalArgumentException.class, () -> SINK.within(0, Double.NaN));
  }

  @Test
  void aRangeOfOneValueTakesThatValueAlone() {
    Quantity fixed = SINK.within(3, 3);
    assertEquals(3, fixed.check(3));
    assertThrows(OutOfRangeException.class, () -> fixed.check(Math.nextUp(3.0)));
    assertEquals(Unit.FOOT_PER_MINUTE, fixed.unit());
  }
}
