package io.github.ringstate.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.ringstate.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The units against their definitions, in decimal arithmetic. The international foot is 0.3048 m
 * (international yard and pound agreement, 1959); the nautical mile is 1852 m (International
 * Extraordinary Hydrographic Conference, 1929); the minute is 60 s, the hour 3600 s and the degree
 * pi/180 rad (BIPM, The International System of Units, 9th edition, table 8). The pound is
 * 0.45359237 kg and the foot 12 inches (the agreement of 1959), the statute mile 5280 ft, the
 * horsepower 550 foot-pounds-force a second; the conventional inch of mercury is 3386.389 Pa (NIST
 * SP 811, 2008, appendix B.8, from memory).
 */
class UnitDefinitionsTest {

  /** Pi to 34 digits (NIST Digital Library of Mathematical Functions, 3.12.1). */
  private static final BigDecimal PI = new BigDecimal("3.141592653589793238462643383279503");

  @ParameterizedTest
  @CsvSource({
    "FOOT, 0.3048, 1",
    "KNOT, 1852, 3600",
    "FOOT_PER_MINUTE, 0.3048, 60",
    "PERCENT, 1, 100",
    "KILOWATT, 1000, 1",
    "INCH, 0.3048, 12",
    "POUND, 0.45359237, 1",
    "KILOMETRE_PER_HOUR, 1000, 3600",
    "MILE_PER_HOUR, 1609.344, 3600",
    "HORSEPOWER, 745.69987158227022, 1",
    "HECTOPASCAL, 100, 1",
    "INCH_OF_MERCURY, 3386.389, 1",
  })
  void oneOfTheUnitIsItsDefinitionInSiUnits(
      Unit unit, BigDecimal numerator, BigDecimal denominator) {
    double defined = numerator.divide(denominator, MathContext.DECIMAL128).doubleValue();
    assertEquals(defined, unit.toSi(1), Math.ulp(defined));
  }

  @ParameterizedTest
  @EnumSource(names = {"DEGREE", "DEGREE_PER_SECOND", "DEGREE_PER_SECOND_SQUARED"})
  void aDegreeIsPiOver180Radians(Unit unit) {
    double defined = PI.divide(new BigDecimal(180), MathContext.DECIMAL128).doubleValue();
    assertEquals(defined, unit.toSi(1), Math.ulp(defined));
  }

  @ParameterizedTest
  @EnumSource(
      names = {
        "ONE",
        "METRE",
        "SECOND",
        "KILOGRAM",
        "METRE_PER_SECOND",
        "RADIAN",
        "PER_RADIAN",
        "PER_SQUARE_RADIAN",
        "RADIAN_SECOND_PER_METRE",
        "SQUARE_METRE",
        "KILOGRAM_SQUARE_METRE",
        "KILOGRAM_PER_CUBIC_METRE",
        "KELVIN",
        "PASCAL",
        "METRE_PER_SECOND_SQUARED",
        "RADIAN_PER_SECOND",
        "SQUARE_RADIAN",
        "NEWTON",
        "WATT"
      })
  void aCoherentSiUnitIsLeftAlone(Unit unit) {
    assertEquals(1, unit.toSi(1));
    assertEquals(1, unit.fromSi(1));
  }

  @ParameterizedTest
  @EnumSource
  void toSiUnitsAndBackChangesANumberByTwoRoundingsAtMost(Unit unit) {
    SplittableRandom random = new SplittableRandom(1852);
    for (int i = 0; i < 1000; i++) {
      double value = random.nextDouble(-1e4, 1e4);
      assertEquals(value, unit.fromSi(unit.toSi(value)), 2 * Math.ulp(value));
    }
  }

  @Test
  void theUnitsTestedHereAreAllThatThereAre() {
    assertEquals(12 + 3 + 19, Unit.values().length);
  }
}
