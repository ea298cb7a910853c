package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What is given in other units is the same. By definition 1 lb = 0.45359237 kg, 1 ft = 0.3048 m, 1
 * kt = 1852/3600 m/s, and F = 1.8 C + 32.
 */
class UnitsOfInputTest {

  private static final String SHORT = " --delays 1 --recovery lateral --format csv";

  @TempDir private Path folder;

  private static CSVRecord row(String command) throws IOException {
    return Run.line(command + SHORT).records().get(0);
  }

  @ParameterizedTest
  @CsvSource({
    "--mass-kg 1234.58867lb, --mass-kg 560",
    "--mass 560kg, --mass-kg 560",
    "--mass=560 --units=si, --mass-kg 560",
    "--mass-kg 560 --units us, --mass-kg 560",
    "--mass 1234.58867 --units us, --mass-kg 560",
    "--oat 86 --units us, --oat-c 30",
    "--oat 86F, --oat-c 30",
    "--oat-c 303.15K, --oat-c 30",
    "--pressure-altitude 609.6m, --pressure-altitude-ft 2000",
    "--height 30.48m, --height-ft 100",
    "--wind 18.52km/h, --wind-kt 10",
    "--elevation 2000ft --altimeter 1013.25hPa, --pressure-altitude-ft 2000",
    "--elevation-ft 2000 --altimeter-hpa 29.92126inHg, --pressure-altitude-ft 2000",
  })
  void theSameInOtherUnitsIsTheSame(String one, String other) throws IOException {
    CSVRecord given = row("loss " + one);
    CSVRecord meant = row("loss " + other);
    for (String column : List.of("mass_kg", "pressure_altitude_ft", "oat_c", "forward_ft")) {
      if (meant.isMapped(column)) {
        assertEquals(
            Double.parseDouble(meant.get(column)), Double.parseDouble(given.get(column)), 0.1);
      }
    }
    assertEquals(meant.size(), given.size());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // the limits of the trainer are 420 and 620 kg, which is 925.94 and 1366.86 lb
        "--mass-kg 1500lb | --mass-kg cannot be '1500lb'; allowed: 926 to 1366.8 lb",
        "--mass 600 | --mass cannot be '600'; allowed: a unit behind each number",
        "--mass 600ft | --mass cannot be '600ft'; allowed: a unit of --mass-kg",
        "--mass-kg 600stone | '600stone'; allowed: 420 to 620 kg, or with one of the units kg, lb",
        "--oat 200F | --oat-c cannot be '200F'; allowed: -49 to 166.9 F",
        "--elevation-ft 100 | need each other",
        "--altimeter-hpa 1013 | need each other",
        "--altimeter 25inHg --elevation 0ft | '25inHg'; allowed: 26.6 to 32 inHg",
        "--altimeter-hpa 1013 --elevation-ft 0 --pressure-altitude-ft 0 | exclude each other",
        "--delays 2ft | '2ft'; allowed: 0 to 60 s",
      })
  void theMessageNamesWhatWasGiven(String options, String message) {
    Run.assertRefused("loss " + options, message);
  }

  @Test
  void aMarginOfTwoKindsIsToldByItsUnit() {
    Run.assertRefused("runs --calm --margin 100", "--margin-ft or --margin-fpm");
    Run.assertRefused("runs --calm --margin 5000ft", "--margin-ft cannot be '5000ft'");
  }

  @Test
  void sheetsSpeakPoundsAndFahrenheit() {
    // 600 kg is 1322.77 lb and 30 C is 86 F
    String text = Run.line("loss --delays 1 --mass-kg 600 --oat-c 30 --units us").out();
    assertTrue(text.contains("1322.8 lb, pressure altitude 0 ft, OAT 86.0 F"), text);
  }

  @Test
  void aPlanHoldsUnitsToo() throws IOException {
    Path plan =
        Files.writeString(
            folder.resolve("plan.toml"),
            """
            [conditions]
            mass = "1234.58867 lb"
            oat_c = "86F"
            elevation = "609.6 m"
            altimeter_hpa = "1013.25"
            [agreed]
            least_height_ft = "91.44 m"
            """);
    String text = Run.line("loss --delays 1 --plan " + plan).out();
    assertTrue(text.contains("560 kg, pressure altitude 2000 ft, OAT 30.0 C"), text);
    String page = Run.line("loss --pilots 8 --delays 1 --format html --plan " + plan).out();
    assertTrue(page.contains("not below 300 ft"), page);
  }

  @Test
  void aPlanIsWrittenWithTheUnitsThatWereGiven() throws IOException {
    Path plan = folder.resolve("plan.toml");
    Run.line("plan --mass 1235lb --oat 77F --agreed-height 100m --output " + plan);
    String written = Files.readString(plan);
    assertTrue(written.contains("mass_kg = \"1235lb\""), written);
    assertTrue(written.contains("oat_c = \"77F\""), written);
    assertTrue(written.contains("least_height_ft = 328.084"), written);
    String text = Run.line("loss --delays 1 --plan " + plan + " --units us").out();
    assertTrue(text.contains("1235 lb, pressure altitude 0 ft, OAT 77.0 F"), text);
  }

  @Test
  void aManualsNumbersMayBeInPoundsAndHorsepower() {
    String rest =
        " --blades 3 --rotor-rpm 386 --engine turbine --rotation counter-clockwise"
            + " --hover-ceiling-ft 6000 --climb-fpm 1500 --climb-speed-kt 60 --name mine";
    assertEquals(
        Run.line(
                "manual --empty-mass-kg 950 --maximum-mass-kg 1800 --rotor-diameter-m 10.668"
                    + " --chord-m 0.254 --continuous-kw 335.5649422071203"
                    + " --take-off-kw 372.8499357911351 --hover-ceiling-mass-kg 1800"
                    + " --hover-ceiling-oat-c 20"
                    + rest)
            .out(),
        Run.line(
                "manual --empty-mass 2094.39lb --maximum-mass 3968.321lb --rotor-diameter 35ft"
                    + " --chord 10in --continuous 450hp --take-off 500hp"
                    + " --hover-ceiling-mass 3968.32lb --hover-ceiling-oat 68F"
                    + rest)
            .out());
  }
}
