package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A craft from the numbers of a manual. All numbers are invented. */
class ManualTest {

  @TempDir private Path folder;

  private static final String MANUAL =
      "manual --name mine --empty-mass-kg 950 --maximum-mass-kg 1800 --rotor-diameter-m 10.4 --chord-m 0.28"
          + " --blades 3 --rotor-rpm 386 --engine turbine --rotation counter-clockwise"
          + " --continuous-kw 330 --take-off-kw 380 --hover-ceiling-ft 6000"
          + " --hover-ceiling-mass-kg 1800 --hover-ceiling-oat-c 20 --climb-fpm 1500"
          + " --climb-speed-kt 60 --autorotation-fpm 1700";

  @Test
  void atTheCeilingOfTheModelTheHoverTakesAllTakeOffPower() throws IOException {
    String craft = folder.resolve("mine.toml").toString();
    CSVRecord ceiling = Run.line(MANUAL + " --format csv --craft-file " + craft).records().get(0);
    assertEquals("hover_ceiling_ft", ceiling.get("what"));
    double feet = Double.parseDouble(ceiling.get("model"));
    // another way to the same: the power that a loss table works out in that air; the standard
    // atmosphere loses 1.9812 K in 1000 ft (U.S. Standard Atmosphere 1976), and 6000 ft at 20 C are
    // 16.887 K above it
    double celsius = 15 - 1.9812e-3 * feet + 16.887;
    JsonNode json =
        Run.json(
            "loss --mass-kg 1800 --delays 0 --craft %s --pressure-altitude-ft %s --oat-c %s"
                .formatted(craft, feet, celsius));
    assertEquals(
        json.findValue("take_off_power_kw").doubleValue(),
        json.findValue("hover_power_kw").doubleValue(),
        0.5);
  }

  @Test
  void whatDiffersComesWithWhatToAdjust() throws IOException {
    List<CSVRecord> lines = Run.csv(MANUAL);
    assertTrue(lines.get(0).get("adjust").contains("induced power factor"), lines.toString());
    assertEquals("within a tenth", lines.get(1).get("adjust"));
    List<CSVRecord> poor = Run.csv(MANUAL.replace("--climb-fpm 1500", "--climb-fpm 3000"));
    assertTrue(poor.get(1).get("adjust").contains("climbs less"), poor.toString());
  }

  @Test
  void implausibleCraftGetAWarning() {
    assertFalse(Run.line(MANUAL).out().contains("WARNING"));
    // 0.4 m of chord in place of 4 cm is a slip of the pen, and so is a rotor that turns twice as
    // fast
    for (String slip : List.of("--rotor-rpm 300", "--chord-m 0.9")) {
      String option = slip.split(" ", -1)[0];
      String out = Run.line(MANUAL.replaceFirst(option + " [0-9.]+", slip)).out();
      assertTrue(out.contains("WARNING"), slip);
    }
  }

  @Test
  void aNumberThatIsMissingIsAskedFor() {
    Run.assertRefused(MANUAL.replace("--blades 3 ", ""), "--blades");
  }
}
