package io.github.ringstate.files.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DecimalsTest {

  @ParameterizedTest
  @CsvSource({
    "0,0.0",
    "-0.0,0.0",
    "-0.04,0.0",
    "-0.06,-0.1",
    "12345.67,12345.7",
    "1e9,1000000000.0"
  })
  void oneDecimalWithoutGroupingOrMinusZero(double value, String text) {
    assertEquals(text, Decimals.fixed(value, 1));
  }

  @ParameterizedTest
  @CsvSource({"0,0.0", "0.5,0.5", "0.25,0.25", "600,600.0", "1.2346,1.235"})
  void aGivenNumberKeepsItsDecimalsUpToThree(double value, String text) {
    assertEquals(text, Decimals.given(value));
  }

  @ParameterizedTest
  @CsvSource({"0,0", "2,2", "0.5,0.5", "600,600", "1000000,1000000"})
  void inASentenceNoNeedlessDecimalsStand(double value, String text) {
    assertEquals(text, Decimals.brief(value));
  }

  @Test
  void whatIsNoNumberIsNeverPrinted() {
    assertThrows(NumberFormatException.class, () -> Decimals.fixed(Double.NaN, 1));
    assertThrows(NumberFormatException.class, () -> Decimals.fixed(Double.POSITIVE_INFINITY, 1));
  }
}
