package io.github.ringstate.embedding;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Outcome;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ProgramsTest {

  private static final Path SOURCES = Path.of("src", "main", "java");
  private static final Pattern JAVA_BLOCK = Pattern.compile("```java\n(.*?)```", Pattern.DOTALL);

  static List<String> lines(Consumer<PrintStream> program) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    program.accept(new PrintStream(bytes, true, UTF_8));
    return bytes.toString(UTF_8).lines().toList();
  }

  /**
   * Range: a prompt lateral recovery loses 20 to 50 ft, common practice, no source; this one is
   * late.
   */
  @Test
  void oneEncounterPrintsItsLossInFeet() {
    List<String> lines = lines(OneEncounter::run);
    assertEquals(1, lines.size());
    double feet = Double.parseDouble(lines.get(0).replace(" ft", ""));
    assertTrue(feet > 50 && feet < 150, lines.get(0));
  }

  @Test
  void aRecoveryOfOnesOwnIsFlown() {
    Outcome outcome = Encounter.of(DemoCraft.TRAINER).withRecovery(new OwnRecovery()).fly();
    assertEquals(Ending.ARRESTED, outcome.ending());
    assertTrue(outcome.altitudeLoss().orElseThrow() > 3);
  }

  @Test
  void theBandOfPilotsHoldsItsQuantile() {
    List<String> lines = lines(PilotBand::run);
    Matcher numbers = Pattern.compile("(\\d+) ft \\((\\d+) to (\\d+) ft\\)").matcher(lines.get(0));
    assertTrue(numbers.matches(), lines.get(0));
    int value = Integer.parseInt(numbers.group(1));
    assertTrue(Integer.parseInt(numbers.group(2)) <= value);
    assertTrue(Integer.parseInt(numbers.group(3)) >= value);
  }

  /** Source: hover is the unit; momentum theory gives 1 at z = -2 (windmill brake, closed form). */
  @Test
  void theInflowCurveBeginsAtOneAndTheBoundaryIsPrinted() {
    List<String> lines = lines(InflowAtSpeeds::run);
    assertEquals("0.00 1.000", lines.get(0).replace("-0.00", "0.00"));
    assertEquals(6, lines.size());
    assertEquals("-0.50 to -1.45", lines.get(5));
  }

  /** An own wind, an own inflow: of the size of what the built-in ones lose, and not the same. */
  @Test
  void ownPartsAreFlown() {
    for (Consumer<PrintStream> program :
        List.<Consumer<PrintStream>>of(OwnWind::run, OwnInflow::run)) {
      double metres = Double.parseDouble(lines(program).get(0).replace(" m", ""));
      assertTrue(metres > 10 && metres < 150, metres + " m");
    }
  }

  /** Range: a light two-seater hovers with some 60 to 110 kW, common practice, no source. */
  @Test
  void anOwnCraftIsTrimmedInAHover() {
    Matcher said =
        Pattern.compile("collective (\\d+\\.\\d) deg, (\\d+) kW")
            .matcher(lines(OwnCraft::run).get(0));
    assertTrue(said.matches());
    double kilowatts = Double.parseDouble(said.group(2));
    assertTrue(kilowatts > 60 && kilowatts < 110, kilowatts + " kW");
  }

  @Test
  void aFlightIsKeptWithItsEventAndGoesOnPastItsArrest() {
    List<String> lines = lines(TimeHistory::run);
    assertTrue(lines.get(0).startsWith("0 s  entry"), lines.get(0));
    assertTrue(lines.stream().anyMatch(line -> line.endsWith("  ten metres a second")));
    assertTrue(lines.stream().anyMatch(line -> line.endsWith("  descent arrested")));
  }

  @Test
  void aSweepOfDelaysLosesMoreWithEachAndASensitivityIsPositive() {
    double before = 0;
    for (String line : lines(SweepOwnRecovery::run)) {
      double loss = Double.parseDouble(line.split(" ", -1)[2]);
      assertTrue(loss > before, line);
      before = loss;
    }
    String sensitivity = lines(LossSensitivity::run).get(0);
    assertTrue(Double.parseDouble(sensitivity.split(" ", -1)[0]) > 0, sensitivity);
  }

  static Stream<Path> pages() {
    return Stream.of(Path.of("GUIDE.md"), Path.of("..", "..", "README.md"));
  }

  @ParameterizedTest
  @MethodSource("pages")
  void everyPieceOfJavaOnThePageStandsInAProgram(Path page) throws IOException {
    String programs;
    try (Stream<Path> files = Files.walk(SOURCES)) {
      programs =
          files
              .filter(file -> file.toString().endsWith(".java"))
              .map(ProgramsTest::unindented)
              .collect(Collectors.joining("\n"));
    }
    List<String> blocks = new ArrayList<>();
    Matcher matcher = JAVA_BLOCK.matcher(Files.readString(page));
    while (matcher.find()) {
      blocks.add(matcher.group(1));
    }
    assertTrue(!blocks.isEmpty(), "no Java on " + page);
    for (String block : blocks) {
      assertTrue(
          programs.contains(unindented(block)), () -> page + " shows Java of its own:\n" + block);
    }
  }

  private static String unindented(Path file) {
    try {
      return unindented(Files.readString(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String unindented(String text) {
    return text.lines().map(String::strip).collect(Collectors.joining("\n")).strip();
  }
}
