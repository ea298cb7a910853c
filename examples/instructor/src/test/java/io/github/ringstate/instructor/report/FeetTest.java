package io.github.ringstate.instructor.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
}
