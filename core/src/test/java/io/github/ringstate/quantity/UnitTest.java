package io.github.ringstate.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class UnitTest {

  /**
   * Exact by definition: foot 0.3048 m (international yard and pound agreement, 1959), knot 1852 m
   * per 3600 s (international nautical mile, 1929), a turn of 360 degrees is 2 pi.
   */
  @ParameterizedTest
  @CsvSource({
    "FOOT, 10000, 3048",
    "FOOT_PER_MINUTE, 1000, 5.08",
    "KNOT, 900, 463",
    "DEGREE, 360, 6.283185307179586",
    "DEGREE_PER_SECOND, 180, 3.141592653589793",
    "DEGREE_PER_SECOND_SQUARED, 90, 1.5707963267948966",
    "KILOWATT, 1.5, 1500",
    "PERCENT, 105, 1.05",
    "METRE, 3, 3",
    "KELVIN, 288.15, 288.15",
  })
  void numbersConvertByTheirExactDefinitions(Unit unit, double value, double si) {
    assertEquals(si, unit.toSi(value), 2 * Math.ulp(si));
    assertEquals(value, unit.fromSi(si), 2 * Math.ulp(value));
  }

  @ParameterizedTest
  @EnumSource
  void aSuffixCanEndAKeyInAFile(Unit unit) {
    assertTrue(unit.suffix().matches("[a-z0-9_]*"), unit.suffix());
    assertEquals(unit.symbol().isEmpty(), unit.suffix().isEmpty());
  }

  @Test
  void noTwoUnitsReadAlike() {
    assertEquals(
        Unit.values().length, Arrays.stream(Unit.values()).map(Unit::symbol).distinct().count());
    assertEquals(
        Unit.values().length, Arrays.stream(Unit.values()).map(Unit::suffix).distinct().count());
  }
}
