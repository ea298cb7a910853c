package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.study.ModelRevision;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A plan written, read by the commands, and briefed. Every name in it is invented. */
class PlanTest {

  @TempDir private Path folder;
  private Path plan = Path.of("");

  @BeforeEach
  void write() {
    plan = folder.resolve("plan.toml");
    String typed =
        "plan|--place|Example Field (invented)|--registration|X-DEMO|--crew|A. Pilot,B. Observer|"
            + "--craft|utility|--mass-kg|1600|--technique|forward|--agreed-height-ft|400|--pilots|20|"
            + "--state|primed|--output|"
            + plan;
    Run written = Run.of(typed.split("\\|", -1));
    assertEquals(0, written.status(), written.err());
  }

  private String html(String command) {
    return Run.words(command + " --format html --plan " + plan);
  }

  @Test
  void optionsOfThePlanHoldUnlessOthersAreTyped() {
    assertEquals(
        Run.line("floor --craft utility --mass-kg 1600 --pilots 20 --state primed --format csv")
            .out(),
        Run.line("floor --format csv --plan " + plan).out());
    for (String typed :
        List.of("--mass-kg=1500 --plan " + plan, "--plan=" + plan + " --mass-kg 1500")) {
      assertTrue(Run.line("floor --format csv " + typed).out().contains("utility,1500"), typed);
    }
  }

  @Test
  void everySheetNamesThePlan() {
    for (String command : List.of("floor", "card", "lesson")) {
      String page = html(command);
      for (String said :
          List.of(
              "Example Field (invented)",
              "X-DEMO",
              "A. Pilot and B. Observer",
              "not below 400 ft")) {
        assertTrue(page.contains(said), command + " lacks " + said);
      }
      assertTrue(page.contains("1600 kg"), command);
      assertFalse(page.contains("VOID?"), command);
    }
    assertTrue(html("card").contains("<p class=\"big\">forward"));
  }

  @Test
  void aCardWithEveryAgreedHeightKeepsToItsTwoSides() throws IOException {
    Path card = folder.resolve("card.pdf");
    Run.line(
        "card --pilots 16 --craft heavy --mass-kg 8800 --recovery lateral --start-height-ft 3000"
            + " --abort-height-ft 1500 --format pdf --plan "
            + plan
            + " --output "
            + card);
    try (PDDocument document = Loader.loadPDF(card.toFile())) {
      assertEquals(2, document.getNumberOfPages());
    }
  }

  @Test
  void aPlanOfAnotherRevisionIsCalledInQuestion() throws IOException {
    Files.writeString(plan, Files.readString(plan).replace(ModelRevision.current(), "00000000"));
    String page = html("card");
    assertTrue(page.contains("VOID?") && page.contains("model revision 00000000"), page);
  }

  /**
   * A height at which pilots of the model would not have recovered is not printed without a word.
   */
  @Test
  void aLessonBelowTheHeightNeededIsWarnedOf() {
    String lesson = "lesson --pilots 16 --state primed --recovery lateral";
    assertFalse(Run.words(lesson + " --start-height-ft 3000").contains("WARNING"));
    assertTrue(
        Run.words(lesson + " --start-height-ft 60").contains("60 ft above the ground. WARNING"));
  }

  @Test
  void aSlipOfThePenIsRefused() throws IOException {
    Files.writeString(plan, Files.readString(plan).replace("mass_kg", "mas_kg"));
    Run.assertFileRefused("floor --plan " + plan, "'conditions.mas_kg'");
  }

  /** A plan comes from somebody else; what is written where is said by whoever types. */
  @Test
  void aPlanNamesNoFileToWrite() throws IOException {
    Path written = folder.resolve("written.csv");
    String text = Files.readString(plan);
    for (String line : List.of("output = \"" + written + "\"", "format = \"csv\"")) {
      Files.writeString(plan, text.replace("\n[conditions]\n", "\n[conditions]\n" + line + "\n"));
      Run.assertFileRefused("floor --plan " + plan, "unknown key 'conditions.");
    }
    assertFalse(Files.exists(written));
  }

  @Test
  void whatNoCommandWouldFlyIsNotWrittenDown() {
    Run.assertRefused("plan --craft trainer --mass-kg 6000", "--mass-kg");
  }

  @Test
  void oneCommandMakesAllSheets() {
    Run.line("brief " + plan + " --folder " + folder + " --format html");
    for (String sheet : List.of("floor", "loss", "card", "lesson")) {
      assertTrue(Files.isRegularFile(folder.resolve(sheet + ".html")), sheet);
    }
    // no run was planned
    assertFalse(Files.exists(folder.resolve("runs.html")));
  }
}
