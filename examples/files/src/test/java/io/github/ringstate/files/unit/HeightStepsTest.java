package io.github.ringstate.files.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.ringstate.quantity.Unit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HeightStepsTest {

  @ParameterizedTest
  @CsvSource({
    "0,0",
    "0.4,0",
    "62.6,63",
    "99.4,99",
    "99.6,100",
    "102.4,100",
    "102.6,105",
    "997.4,995",
    "997.6,1000",
    "1004,1000",
    "1326,1330"
  })
  void feetAreRoundedToWhatTheModelDeserves(double feet, String text) {
    assertEquals(text, UnitSystem.AVIATION.loss(feet * 0.3048));
  }

  @ParameterizedTest
  @CsvSource({
    "0,0,0",
    "62.1,62,63",
    "99.2,99,100",
    "100.1,100,105",
    "994,990,995",
    "996,995,1000",
    "1001,1000,1010"
  })
  void feetAreRoundedDownAndUpToTheSamePrecision(double feet, double down, double up) {
    assertEquals(down, HeightSteps.FEET.down(feet));
    assertEquals(up, HeightSteps.FEET.up(feet));
  }

  @ParameterizedTest
  @ValueSource(doubles = {55, 100, 105, 990, 1000, 2000})
  void aRoundHeightThatCameThroughMetresStaysWhatItWas(double feet) {
    // The international foot is 0.3048 m exactly (international yard and pound agreement, 1959).
    assertEquals(feet, HeightSteps.FEET.up(feet * 0.3048 / 0.3048));
    assertEquals(feet, HeightSteps.FEET.down(feet * 0.3048 / 0.3048));
    assertEquals(feet, HeightSteps.FEET.up(Math.nextUp(feet)));
    assertEquals(feet, HeightSteps.FEET.down(Math.nextDown(feet)));
  }

  @ParameterizedTest
  @CsvSource({
    // ft to m by 0.3048 (international yard and pound agreement, 1959), then to 1 m below 300 m, to
    // 5 m from there
    "0,0",
    "62.6,19",
    "326,99",
    "980,299",
    "1000,305",
    "2001,610"
  })
  void inMetresTheStepsAreAsFine(double feet, String text) {
    assertEquals(text, UnitSystem.SI.loss(feet * 0.3048));
  }

  @ParameterizedTest
  @CsvSource({
    // 1 kt = 1852/3600 m/s, 1 ft = 0.3048 m, both exact
    "KNOT, 20, 20 kt, 10.3 m/s",
    "FOOT, 300, 300 ft, 91.4 m",
    "FOOT_PER_MINUTE, 300, 300 ft/min, 1.5 m/s",
    "SECOND, 2.5, 2.5 s, 2.5 s",
    "ONE, 0.14, 0.14, 0.14"
  })
  void aGivenNumberIsToldInTheUnitsAskedFor(Unit unit, double value, String aviation, String si) {
    assertEquals(aviation, UnitSystem.AVIATION.given(unit, value));
    assertEquals(si, UnitSystem.SI.given(unit, value));
  }

  /** By hand: the first of 1, 2, 5, 10, 20, 50, ... that is no less than what is known. */
  @ParameterizedTest
  @CsvSource({
    // known better than the steps are fine
    "286, 0, 285, 290",
    "286, 4.9, 285, 290",
    // worse
    "286, 5.1, 290, 290",
    "284, 10, 280, 290",
    "284, 11, 280, 300",
    "284, 47, 300, 300",
    "62, 1.5, 62, 62",
    "62, 4, 60, 65",
    "1234, 10, 1230, 1240",
    "1234, 47, 1250, 1250",
    // in a finer one where nothing would be left
    "38, 95, 50, 100",
    "3, 95, 5, 100",
    "0, 95, 0, 0"
  })
  void aHeightIsRoundedNoFinerThanItIsKnown(
      double height, double within, double nearest, double upward) {
    assertEquals(nearest, HeightSteps.FEET.rounded(height, within));
    assertEquals(upward, HeightSteps.FEET.up(height, within));
  }
}
