package io.github.ringstate.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.quantity.OutOfRangeException;
import io.github.ringstate.quantity.Unit;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class StandardAtmosphereTest {

  private static final double GAS_CONSTANT = 8314.32 / 28.964420;

  static Stream<List<String>> table() throws IOException {
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(
                StandardAtmosphereTest.class.getResourceAsStream("standard_atmosphere_1976.csv"),
                StandardCharsets.UTF_8))) {
      return reader.lines().skip(2).map(line -> List.of(line.split(","))).toList().stream();
    }
  }

  static DoubleStream altitudes() {
    return new SplittableRandom(1976).doubles(100, -1000, 11_000);
  }

  /** Computed from the defining constants, printed table at 1, 2, 3 and 5 km. */
  @ParameterizedTest
  @MethodSource("table")
  void theAtmosphereAgreesWithTheTableToItsPrintedDigits(List<String> row) {
    Air air = StandardAtmosphere.at(Double.parseDouble(row.get(0)));
    assertPrinted(row.get(1), air.temperature());
    assertPrinted(row.get(2), air.pressure());
    assertPrinted(row.get(3), air.density());
  }

  private static void assertPrinted(String printed, double value) {
    // the table drops trailing zeros of pressures of two decimals and of six-digit densities
    int decimals = value < 10 ? 6 - (value < 1 ? 0 : 1) : 2;
    int given = new BigDecimal(printed).scale();
    double halfUnit = 0.5 * Math.pow(10, -Math.max(decimals, given));
    assertEquals(Double.parseDouble(printed), value, halfUnit * (1 + 1e-9), printed);
  }

  /** USSA 1976, table I, by geopotential altitude (from memory). */
  @ParameterizedTest
  @CsvSource({"11000, 216.65, 22632, 0.36392", "-1000, 294.65, 113929, 1.3470"})
  void theAtmosphereEndsInThePrintedValues(
      double altitude, double temperature, double pressure, double density) {
    Air air = StandardAtmosphere.at(altitude);
    assertEquals(temperature, air.temperature(), 1e-9);
    assertEquals(pressure, air.pressure(), 0.5);
    assertEquals(density, air.density(), altitude > 0 ? 0.5e-5 : 0.5e-4);
  }

  /** USSA 1976 equation 1, integrated nowhere in the library. */
  @ParameterizedTest
  @MethodSource("altitudes")
  void thePressureIsInHydrostaticEquilibrium(double altitude) {
    double h = 1;
    double middle = Math.min(10_999, Math.max(-999, altitude));
    double gradient =
        (StandardAtmosphere.at(middle + h).pressure()
                - StandardAtmosphere.at(middle - h).pressure())
            / (2 * h);
    double weight = StandardAtmosphere.at(middle).density() * 9.80665;
    assertEquals(-weight, gradient, 1e-7 * weight);
  }

  @ParameterizedTest
  @MethodSource("altitudes")
  void airObeysTheGasLawOnAnyDay(double altitude) {
    double offset = new SplittableRandom(Double.doubleToLongBits(altitude)).nextDouble(-60, 60);
    Air air = StandardAtmosphere.at(altitude, offset);
    assertEquals(
        air.pressure(), air.density() * GAS_CONSTANT * air.temperature(), 1e-9 * air.pressure());
    assertEquals(StandardAtmosphere.at(altitude).pressure(), air.pressure());
    assertEquals(StandardAtmosphere.at(altitude).temperature() + offset, air.temperature(), 1e-12);
  }

  @ParameterizedTest
  @MethodSource("altitudes")
  void densityAltitudeOnAStandardDayIsThePressureAltitude(double altitude) {
    Air air = StandardAtmosphere.at(altitude);
    assertEquals(altitude, air.densityAltitude(), 1e-8);
    assertEquals(altitude, StandardAtmosphere.pressureAltitude(air.pressure()), 1e-8);
  }

  @ParameterizedTest
  @MethodSource("altitudes")
  void theStandardDayAtTheDensityAltitudeHasTheSameDensity(double altitude) {
    Air hot = StandardAtmosphere.at(altitude, 20);
    double densityAltitude = hot.densityAltitude();
    assertTrue(densityAltitude > altitude);
    if (densityAltitude <= 11_000) {
      double same = StandardAtmosphere.at(densityAltitude).density();
      assertEquals(hot.density(), same, 1e-12);
    }
  }

  /** USSA 1976, table I: 0.31083 kg/m3 at 12 km, in the isothermal layer (from memory). */
  @Test
  void densityAltitudeContinuesIntoTheIsothermalLayer() {
    assertEquals(12_000, StandardAtmosphere.densityAltitude(0.31083), 0.1);
    double edge = StandardAtmosphere.at(11_000).density();
    assertEquals(
        11_000, StandardAtmosphere.densityAltitude(Math.nextDown(edge)), 1e-8, "continuous");
  }

  /** Common practice, no source: 120 ft of density altitude for each degree Celsius. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 2000, 5000})
  void aDegreeIsAbout120FeetOfDensityAltitude(double feet) {
    double altitude = Unit.FOOT.toSi(feet);
    double slope = StandardAtmosphere.at(altitude, 1).densityAltitude() - altitude;
    assertEquals(120, Unit.FOOT.fromSi(slope), 3);
  }

  /** Closed form of USSA 1976 by hand for 5000 ft and 30 degrees Celsius: 7801 ft. */
  @Test
  void aHotDayAtFiveThousandFeetIsThinAirOfSevenThousandEightHundred() {
    Air air = StandardAtmosphere.withTemperature(Unit.FOOT.toSi(5000), 303.15);
    assertEquals(0.968825, air.density(), 0.5e-6);
    assertEquals(7801, Unit.FOOT.fromSi(air.densityAltitude()), 0.5);
  }

  @Test
  void temperatureReadAndTemperatureOffsetAreTheSameDay() {
    assertEquals(
        StandardAtmosphere.at(1000, 10).density(),
        StandardAtmosphere.withTemperature(1000, 291.65).density(),
        1e-15);
  }

  @ParameterizedTest
  @MethodSource("altitudes")
  void theHottestAndColdestDayCanBeReadOffAThermometer(double altitude) {
    for (double offset : new double[] {-60, 60}) {
      Air air = StandardAtmosphere.at(altitude, offset);
      assertEquals(air, StandardAtmosphere.withTemperature(altitude, air.temperature()));
    }
  }

  @Test
  void theDensityRatioIsThatToTheStandardSeaLevel() {
    Air air = StandardAtmosphere.at(0);
    assertEquals(1, air.densityRatio(), 2e-9);
    Air thin = new Air(2000, 144.075 * 2 * 0.9, 101325 * 0.75, 1.225 * 0.8);
    assertEquals(0.8, thin.densityRatio(), 1e-15);
  }

  @Test
  void everyDayHasADensityAltitudeAndEveryPressureAnAltitudeToItsVeryEnds() {
    for (double altitude : new double[] {-1000, 11_000}) {
      for (double offset : new double[] {-60, 60}) {
        Air air = StandardAtmosphere.at(altitude, offset);
        assertTrue(Double.isFinite(air.densityAltitude()));
        StandardAtmosphere.at(StandardAtmosphere.pressureAltitude(air.pressure()));
      }
    }
  }

  /**
   * The table of corrections to elevation that handbooks print for altimeter settings in inches of
   * mercury, to whole feet (FAA-H-8083-25, Pilot's Handbook of Aeronautical Knowledge, from
   * memory).
   */
  @ParameterizedTest
  @CsvSource({
    "28.0, 1824",
    "28.5, 1340",
    "29.0, 863",
    "29.5, 392",
    "29.92, 0",
    "30.0, -73",
    "30.5, -531",
    "31.0, -983"
  })
  void anAltimeterSettingShiftsTheElevation(double inches, double feet) {
    double correction =
        StandardAtmosphere.pressureAltitude(Unit.FOOT.toSi(2000), Unit.INCH_OF_MERCURY.toSi(inches))
            - Unit.FOOT.toSi(2000);
    assertEquals(feet, Unit.FOOT.fromSi(correction), 1.5); // the table is rounded, 29.92 is 29.921
  }

  @Test
  void altimeterSettingsThatNoneShowsAreRefused() {
    assertRefused(() -> StandardAtmosphere.pressureAltitude(0, 29.92));
    assertRefused(() -> StandardAtmosphere.pressureAltitude(0, Double.NaN));
    assertRefused(() -> StandardAtmosphere.pressureAltitude(Double.NaN, 101_325));
    assertRefused(() -> StandardAtmosphere.pressureAltitude(11_000, 90_000));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, -1000.1, 11_000.1, Double.POSITIVE_INFINITY})
  void altitudesOutsideTheTroposphereAreRefused(double altitude) {
    assertRefused(() -> StandardAtmosphere.at(altitude));
    assertRefused(() -> StandardAtmosphere.at(altitude, 0));
    assertRefused(() -> StandardAtmosphere.withTemperature(altitude, 288));
    assertRefused(() -> new Air(altitude, 288, 101_325, 1.225));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, -60.1, 60.1})
  void temperaturesFarFromStandardAreRefused(double offset) {
    assertRefused(() -> StandardAtmosphere.at(0, offset));
    assertRefused(() -> StandardAtmosphere.withTemperature(0, 288.15 + offset));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, 0, -1, 0.28, 1.71})
  void densitiesOfNoDayAreRefused(double density) {
    assertRefused(() -> StandardAtmosphere.densityAltitude(density));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, 0, -1, 22_632 - 1, 113_931})
  void pressuresOutsideTheTroposphereAreRefused(double pressure) {
    assertRefused(() -> StandardAtmosphere.pressureAltitude(pressure));
  }

  @Test
  void airOfImpossibleStateIsRefused() {
    assertRefused(() -> new Air(0, Double.NaN, 101_325, 1.225));
    assertRefused(() -> new Air(0, 15, 101_325, 1.225));
    assertRefused(() -> new Air(0, 288.15, 1013.25, 1.225));
    assertRefused(() -> new Air(0, 288.15, Double.NaN, 1.225));
    assertRefused(() -> new Air(0, 288.15, 101_325, 0));
    assertRefused(() -> new Air(0, 288.15, 101_325, Double.NaN));
  }

  private static void assertRefused(org.junit.jupiter.api.function.Executable call) {
    OutOfRangeException refusal = assertThrows(OutOfRangeException.class, call);
    assertTrue(refusal.getMessage().contains(OutOfRangeException.OUTSIDE));
  }

  @Test
  void theTextOfAirHoldsItsNumbers() {
    String text = new Air(1250, 271.5, 87_125, 1.125).toString();
    for (String number : new String[] {"1250.0 m", "271.5 K", "87125.0 Pa", "1.125 kg/m3"}) {
      assertTrue(text.contains(number), text);
    }
  }
}
