package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A craft from the numbers of a manual. All numbers are invented. */
class ManualTest {

  @TempDir private Path folder;

  private static final String NUMBERS =
      "--name mine --empty-mass-kg 950 --maximum-mass-kg 1800 --rotor-diameter-m 10.4 --chord-m 0.28"
          + " --blades 3 --rotor-rpm 386 --engine turbine --rotation counter-clockwise"
          + " --continuous-kw 330 --take-off-kw 380 --hover-ceiling-ft 6000"
          + " --hover-ceiling-mass-kg 1800 --hover-ceiling-oat-c 20 --climb-fpm 1500"
          + " --climb-speed-kt 60 --autorotation-fpm 1700";

  private static Run manual(String numbers, String... more) {
    List<String> args = new ArrayList<>(List.of("manual"));
    args.addAll(List.of(numbers.split(" ", -1)));
    args.addAll(List.of(more));
    return Run.of(args.toArray(String[]::new));
  }

  @Test
  void atTheCeilingOfTheModelTheHoverTakesAllTakeOffPower() throws IOException {
    String craft = folder.resolve("mine.toml").toString();
    CSVRecord ceiling = manual(NUMBERS, "--craft-file", craft, "--format", "csv").records().get(0);
    assertEquals("hover_ceiling_ft", ceiling.get("what"));
    double feet = Double.parseDouble(ceiling.get("model"));
    // another way to the same: the power that a loss table works out in that air; the standard
    // atmosphere loses 1.9812 K in 1000 ft (U.S. Standard Atmosphere 1976), and 6000 ft at 20 C are
    // 16.887 K above it
    double celsius = 15 - 1.9812e-3 * feet + 16.887;
    String json =
        Run.of(
                "loss",
                "--craft",
                craft,
                "--mass-kg",
                "1800",
                "--pressure-altitude-ft",
                Double.toString(feet),
                "--oat-c",
                Double.toString(celsius),
                "--delays",
                "0",
                "--format",
                "json")
            .out();
    double needed =
        Double.parseDouble(json.replaceAll("(?s).*\"hover_power_kw\" *: *([0-9.]+).*", "$1"));
    double there =
        Double.parseDouble(json.replaceAll("(?s).*\"take_off_power_kw\" *: *([0-9.]+).*", "$1"));
    assertEquals(there, needed, 0.5);
  }

  @Test
  void whatDiffersComesWithWhatToAdjust() throws IOException {
    List<CSVRecord> lines = manual(NUMBERS, "--format", "csv").records();
    assertTrue(lines.get(0).get("adjust").contains("induced power factor"), lines.toString());
    assertEquals("within a tenth", lines.get(1).get("adjust"));
    List<CSVRecord> poor =
        manual(NUMBERS.replace("--climb-fpm 1500", "--climb-fpm 3000"), "--format", "csv")
            .records();
    assertTrue(poor.get(1).get("adjust").contains("climbs less"), poor.toString());
  }

  @Test
  void implausibleCraftGetAWarning() {
    assertFalse(manual(NUMBERS).out().contains("WARNING"));
    // 0.4 m of chord in place of 4 cm is a slip of the pen, and so is a rotor that turns twice as
    // fast
    for (String slip : List.of("--rotor-rpm 300", "--chord-m 0.9")) {
      String option = slip.split(" ", -1)[0];
      String out = manual(NUMBERS.replaceFirst(option + " [0-9.]+", slip)).out();
      assertTrue(out.contains("WARNING"), slip);
    }
  }

  @Test
  void aNumberThatIsMissingIsAskedFor() {
    Run refused = manual(NUMBERS.replace("--blades 3 ", ""));
    assertEquals(2, refused.status());
    assertTrue(refused.err().contains("--blades"), refused.err());
  }
}
