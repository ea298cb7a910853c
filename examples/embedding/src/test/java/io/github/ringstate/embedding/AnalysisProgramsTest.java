package io.github.ringstate.embedding;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.inflow.RingStateInflow;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The programs of the guide to analysis run, and say what the page says that they say. */
class AnalysisProgramsTest {

  private static final Path SOURCES =
      Path.of("src", "main", "java", "io", "github", "ringstate", "embedding");

  private static double number(String line, String before) {
    String rest = line.substring(line.indexOf(before) + before.length()).strip();
    return Double.parseDouble(rest.split("[ ,]", 2)[0]);
  }

  @Test
  void theFoldsStandBehindTheDescents() {
    List<String> lines = ProgramsTest.lines(FoldData::run);
    assertEquals(2, lines.stream().filter(line -> line.endsWith("fold")).count());
    assertTrue(lines.get(lines.size() - 1).endsWith("fold"));
    assertTrue(lines.stream().anyMatch(line -> line.endsWith("unstable")));
  }

  @Test
  void theSinkJumpsBackAtMoreCollectiveThanItJumpsDown() {
    List<String> lines = ProgramsTest.lines(FlownHysteresis::run);
    assertTrue(number(lines.get(1), "back at") > number(lines.get(0), "down at") + 1);
  }

  @Test
  void theTornadoHasTheLongestBarFirst() {
    List<String> lines = ProgramsTest.lines(LossTornado::run);
    assertEquals(5, lines.size());
    for (int i = 1; i < lines.size(); i++) {
      assertTrue(number(lines.get(i), ":") <= number(lines.get(i - 1), ":"), lines.get(i));
    }
  }

  @Test
  void theSharesAreShares() {
    for (String line : ProgramsTest.lines(SobolShares::run)) {
      assertTrue(number(line, ": total") >= 0, line);
      assertTrue(number(line, ": total") <= 1 + number(line, "+-"), line);
    }
  }

  @Test
  void theLateralRecoveryLosesMoreThanTheBest() {
    String line = ProgramsTest.lines(LeastLoss::run).get(0);
    assertTrue(number(line, "lateral") > 0, line);
  }

  @Test
  void theSinkGrowsOnEitherSideOfTheRing() {
    List<String> lines = ProgramsTest.lines(LinearModes::run);
    for (String side : List.of("DEEPENING, heave:", "DISSOLVING, heave:")) {
      String heave = lines.stream().filter(line -> line.startsWith(side)).findFirst().orElseThrow();
      assertTrue(number(heave, ":") > 0, heave);
    }
  }

  /** What the guide says of other physics is what the program prints. */
  @Test
  void otherPhysicsLosesWhatTheGuideSays() throws IOException {
    List<String> lines = ProgramsTest.lines(OtherPhysics::run);
    assertEquals(12, lines.size());
    String guide = Files.readString(Path.of("GUIDE.md"), UTF_8);
    assertTrue(guide.contains(String.join("\n", lines) + "\n"), String.join("\n", lines));
  }

  @Test
  void twoInventedRecordingsTellOfTheRingsEnd() {
    String line = ProgramsTest.lines(FitRecordings::run).get(0);
    assertTrue(line.startsWith("2 encounters: ring_exit_total_inflow about "), line);
    // they were flown with the standard number; wide, since it is one draw of noise
    assertEquals(
        RingStateInflow.EXIT_TOTAL.standard(),
        number(line, "about"),
        0.2 * RingStateInflow.EXIT_TOTAL.standard());
  }

  @Test
  void eachIsShortAndStandsWholeInTheGuide() throws IOException {
    String guide = Files.readString(Path.of("GUIDE.md"), UTF_8);
    for (String program :
        List.of(
            "FoldData",
            "FlownHysteresis",
            "LossTornado",
            "SobolShares",
            "LeastLoss",
            "LinearModes",
            "OtherPhysics",
            "FitRecordings")) {
      String source = Files.readString(SOURCES.resolve(program + ".java"), UTF_8);
      assertTrue(source.lines().count() < 60, program);
      assertTrue(guide.contains("```java\n" + source + "```\n"), program);
    }
  }
}
