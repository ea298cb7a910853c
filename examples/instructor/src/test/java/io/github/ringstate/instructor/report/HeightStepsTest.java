package io.github.ringstate.instructor.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FeetTest {

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
  void areRoundedToWhatTheModelDeserves(double feet, String text) {
    assertEquals(text, Feet.text(feet));
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
  void areRoundedDownAndUpToTheSamePrecision(double feet, double down, double up) {
    assertEquals(down, Feet.down(feet));
    assertEquals(up, Feet.up(feet));
  }

  @ParameterizedTest
  @ValueSource(doubles = {55, 100, 105, 990, 1000, 2000})
  void aRoundHeightThatCameThroughMetresStaysWhatItWas(double feet) {
    // The international foot is 0.3048 m exactly (international yard and pound agreement, 1959).
    assertEquals(feet, Feet.up(feet * 0.3048 / 0.3048));
    assertEquals(feet, Feet.down(feet * 0.3048 / 0.3048));
    assertEquals(feet, Feet.up(Math.nextUp(feet)));
    assertEquals(feet, Feet.down(Math.nextDown(feet)));
  }
}
