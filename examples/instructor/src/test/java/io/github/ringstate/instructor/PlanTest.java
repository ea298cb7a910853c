package io.github.ringstate.instructor;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.study.ModelRevision;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
    Run written =
        Run.of(
            "plan",
            "--place",
            "Example Field (invented)",
            "--registration",
            "X-DEMO",
            "--crew",
            "A. Pilot,B. Observer",
            "--craft",
            "utility",
            "--mass-kg",
            "1600",
            "--technique",
            "forward",
            "--agreed-height-ft",
            "400",
            "--pilots",
            "20",
            "--state",
            "primed",
            "--output",
            plan.toString());
    assertEquals(0, written.status(), written.err());
  }

  private String html(String command, String... more) {
    List<String> args = new ArrayList<>(List.of(command, "--plan", plan.toString()));
    args.addAll(List.of("--format", "html"));
    args.addAll(List.of(more));
    return new String(Documents.of(args.toArray(String[]::new)), UTF_8).replaceAll("\\s+", " ");
  }

  @Test
  void optionsOfThePlanHoldUnlessOthersAreTyped() {
    String csv = Run.of("floor", "--plan", plan.toString(), "--format", "csv").out();
    assertEquals(
        Run.of(
                "floor",
                "--craft",
                "utility",
                "--mass-kg",
                "1600",
                "--pilots",
                "20",
                "--state",
                "primed",
                "--format",
                "csv")
            .out(),
        csv);
    assertTrue(
        Run.of("floor", "--mass-kg=1500", "--plan", plan.toString(), "--format", "csv")
            .out()
            .contains("utility,1500"));
    assertTrue(
        Run.of("floor", "--plan=" + plan, "--mass-kg", "1500", "--format", "csv")
            .out()
            .contains("utility,1500"));
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
  void aPlanOfAnotherRevisionIsCalledInQuestion() throws IOException {
    Files.writeString(plan, Files.readString(plan).replace(ModelRevision.current(), "00000000"));
    String page = html("card");
    assertTrue(page.contains("VOID?") && page.contains("model revision 00000000"), page);
  }

  @Test
  void aSlipOfThePenIsRefused() throws IOException {
    Files.writeString(plan, Files.readString(plan).replace("mass_kg", "mas_kg"));
    Run refused = Run.of("floor", "--plan", plan.toString());
    assertEquals(1, refused.status());
    assertTrue(refused.err().contains("'conditions.mas_kg'"), refused.err());
  }

  /** A plan comes from somebody else; what is written where is said by whoever types. */
  @Test
  void aPlanNamesNoFileToWrite() throws IOException {
    Path written = folder.resolve("written.csv");
    String text = Files.readString(plan);
    for (String line : List.of("output = \"" + written + "\"", "format = \"csv\"")) {
      Files.writeString(plan, text.replace("\n[conditions]\n", "\n[conditions]\n" + line + "\n"));
      Run refused = Run.of("floor", "--plan", plan.toString());
      assertEquals(1, refused.status());
      assertTrue(refused.err().contains("unknown key 'conditions."), refused.err());
      assertEquals("", refused.out());
    }
    assertFalse(Files.exists(written));
  }

  @Test
  void whatNoCommandWouldFlyIsNotWrittenDown() {
    Run refused = Run.of("plan", "--craft", "trainer", "--mass-kg", "6000");
    assertEquals(2, refused.status());
    assertEquals("", refused.out());
    assertTrue(refused.err().contains("--mass-kg"), refused.err());
  }

  @Test
  void oneCommandMakesAllSheets() {
    Run brief = Run.of("brief", plan.toString(), "--folder", folder.toString(), "--format", "html");
    assertEquals(0, brief.status(), brief.err());
    for (String sheet : List.of("floor", "loss", "card", "lesson")) {
      assertTrue(Files.isRegularFile(folder.resolve(sheet + ".html")), sheet);
    }
    // no run was planned
    assertFalse(Files.exists(folder.resolve("runs.html")));
  }
}
