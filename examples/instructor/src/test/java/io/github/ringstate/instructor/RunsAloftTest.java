package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RunsAloftTest {

  private static JsonNode conditions(String args) throws IOException {
    return Run.json(String.join(" ", RunsTest.runs(args))).get("conditions");
  }

  @ParameterizedTest
  @CsvSource({
    // Vector arithmetic. Half-way between 30 kt from the north and 40 kt from the east: half of
    // each, the hypotenuse of 15 and 20, 90 deg - atan(15/20) = 53.1 deg.
    "750, 500:360/30 1000:90/40, 25.0, 53.1",
    "500, 500:360/30 1000:90/40, 30.0, 0.0",
    "1000, 500:360/30 1000:90/40, 40.0, 90.0",
    // below the lowest level the line begins at the ground's 20 kt from the north, 32.81 ft up:
    // half-way to 467.19 ft above it
    "500, 967.1916:90/20, 14.1, 45.0"
  })
  void theWindAtTheHeightIsOnALineBetweenTheVectors(
      String height, String aloft, double speed, double from) throws IOException {
    JsonNode said =
        conditions(
            "--wind-from-deg 0 --wind-kt 20 --gust-kt 20 --wind-exponent 0 --height-ft "
                + height
                + " --wind-aloft "
                + aloft.replace(' ', ','));
    assertEquals(speed, said.get("wind_at_height_kt").doubleValue(), 0.051);
    assertEquals(speed, said.get("gust_at_height_kt").doubleValue(), 0.051);
    assertEquals(from, said.get("wind_at_height_from_deg").doubleValue() % 360, 0.051);
  }

  @Test
  void gustsStandOverItAsThePowerLawHasThem() throws IOException {
    // (100/10)^0.5 = 3.162 times the 6 kt that gusts exceed the mean by at 10 m
    JsonNode said =
        conditions(
            "--wind-from-deg 0 --wind-kt 4 --gust-kt 10 --wind-exponent 0.5 --height-ft 328.084"
                + " --wind-aloft 328.084:30/20");
    assertEquals(20 + 6 * Math.sqrt(10), said.get("gust_at_height_kt").doubleValue(), 0.051);
  }

  @Test
  void theSheetNamesTheForecast() {
    String line = "--height-ft 600 --wind-aloft 500:240/18,1000:250/25";
    String said = Run.of(RunsTest.runs(line)).out().replaceAll("\\s+", " ");
    assertTrue(said.contains("500 ft: 240 deg, 18 kt; 1000 ft: 250 deg, 25 kt"), said);
    assertTrue(said.contains("from 243 deg, 19 kt"), said);
  }
}
