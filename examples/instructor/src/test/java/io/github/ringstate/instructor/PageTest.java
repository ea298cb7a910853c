package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.Soak;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.EntryKind;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Text output as it lies on a page: 100 columns of plain characters. */
class PageTest {

  private static final int WIDTH = 100;
  private static final String ALL = "forward,lateral,autorotation,collective,none";

  /** Nothing is called safe; the safety briefing that is quoted is none of that. */
  private static final Pattern SAFE =
      Pattern.compile("\\b(un)?safe(ly|r|st)?\\b", Pattern.CASE_INSENSITIVE);

  /** Every craft in every entry in the long run, else each craft once and each entry once. */
  static Stream<Arguments> craftAndEntries() {
    return Soak.isWhole()
        ? DemoCraft.ALL.stream()
            .flatMap(
                craft ->
                    EntryKind.ALL.stream().map(entry -> Arguments.of(craft.name(), entry.name())))
        : everyCraftAndEveryEntry();
  }

  @Tag("soak")
  @ParameterizedTest
  @MethodSource("craftAndEntries")
  void everyTableFitsThePage(String craft, String entry) {
    String base = "loss --craft " + craft + " --entry " + entry + " --delays 0,3.0 --recovery ";
    for (String more :
        List.of(ALL, ALL + " --height-ft 100", "none --pressure-altitude-ft 0,12000")) {
      assertFitsThePage(Run.line(base + more));
    }
  }

  /** Each craft once and each entry once: pilots are dear. */
  static Stream<Arguments> everyCraftAndEveryEntry() {
    return IntStream.range(0, Math.max(DemoCraft.ALL.size(), EntryKind.ALL.size()))
        .mapToObj(
            i ->
                Arguments.of(
                    DemoCraft.ALL.get(i % DemoCraft.ALL.size()).name(),
                    EntryKind.ALL.get(i % EntryKind.ALL.size()).name()));
  }

  @ParameterizedTest
  @MethodSource("everyCraftAndEveryEntry")
  void everyTableOfPilotsFitsThePage(String craft, String entry) {
    assertTableOfPilotsFits(craft, entry, "loss --pilots 8 --state distracted --height-ft 60");
  }

  /** Floors take the pilots of every state. */
  static Stream<Arguments> everyCraftInAnEntryOfItsOwn() {
    return everyCraftAndEveryEntry().limit(DemoCraft.ALL.size());
  }

  @ParameterizedTest
  @MethodSource("everyCraftInAnEntryOfItsOwn")
  void everyTableOfFloorsFitsThePage(String craft, String entry) {
    assertTableOfPilotsFits(
        craft, entry, "floor --pilots 8 --share 0.5 --height-ft 9000 --clock cue");
  }

  /** Sets of numbers that meet the published ranges are rare: of one entry alone. */
  @ParameterizedTest
  @CsvSource({
    "trainer, floor --pilots 8 --models 2 --clock cue",
    "heavy, loss --pilots 8 --models 2 --delays 0;60.0"
  })
  void everyTableOfModelsFitsThePage(String craft, String command) {
    assertTableOfPilotsFits(craft, "tailwind-approach", command.replace(';', ','));
  }

  private static void assertTableOfPilotsFits(String craft, String entry, String command) {
    Run run = Run.line(command + " --craft " + craft + " --entry " + entry + " --recovery " + ALL);
    assertFitsThePage(run);
    assertFalse(SAFE.matcher(run.out()).find(), run.out());
  }

  @Tag("soak")
  @ParameterizedTest
  @MethodSource("craftAndEntries")
  void everyTimeHistoryFitsThePage(String craft, String entry) {
    for (String recovery : List.of("autorotation", "lateral")) {
      assertFitsThePage(
          Run.line(
              "fly --craft %s --entry %s --recovery %s --height-ft 9000 --step 1.25"
                  .formatted(craft, entry, recovery)));
    }
  }

  @Test
  void everyCraftAndItsBoundaryFitThePage() {
    for (var craft : DemoCraft.ALL) {
      assertFitsThePage(Run.of("craft", craft.name()));
      assertFitsThePage(Run.of("boundary", "--craft", craft.name()));
      assertFitsThePage(Run.of("runs", "--calm", "--craft", craft.name(), "--pilots", "8"));
    }
  }

  @Test
  void aHoverThatNeedsMorePowerThanThereIsIsWarnedOf() {
    // A piston engine without supercharger loses power with density: common practice, no source.
    Run high = Run.of("loss", "--pressure-altitude-ft", "12000", "--delays", "1");
    Run low = Run.of("loss", "--delays", "1");
    assertTrue(high.out().contains("WARNING"), high.out());
    assertTrue(!low.out().contains("WARNING"), low.out());
  }

  @Test
  void aFlightThatMeetsNoRingStateSaysSo() {
    // A hover headed into 40 kt flies at 40 kt airspeed, above the 24 kt to which the handbooks
    // put the end of effective translational lift.
    Run run = Run.of("loss", "--entry", "settling", "--wind-kt", "40", "--delays", "0,1.0");
    assertTrue(run.out().contains("no ring state  no ring state"), run.out());
    assertTrue(run.out().contains("These conditions do not lead into the ring state"), run.out());
  }

  @Test
  void aFlightWithoutRingStateHasNoEventsAndNoRecoveryBegun() {
    Run run = Run.of("fly", "--entry", "settling", "--wind-kt", "40", "--step", "10");
    assertTrue(run.out().contains("forward, never begun: "), run.out());
    assertTrue(run.out().contains("None: the pilot had nothing to recover from."), run.out());
    assertFalse(run.out().contains("begun 1 s after onset"), run.out());
    assertTrue(Run.of("fly", "--step", "10").out().contains("begun 1 s after onset"));
  }

  @Test
  void aTimeHistorySaysWhereTheGroundIsAndWhatItsWordsMean() {
    Run run = Run.of("fly", "--height-ft", "300", "--step", "1");
    assertTrue(run.out().contains("300 ft below the craft at onset"), run.out());
    for (String word :
        List.of("time", "ring state begins", "recognition", "phase ends", "rotor", "v/s")) {
      assertTrue(
          Pattern.compile("(?m)^  " + word + " +[a-z]+:? .*[a-z]").matcher(run.out()).find(), word);
    }
  }

  @Test
  void aCellThatEndsOnTheGroundSaysHowFast() {
    Run run = Run.of("loss", "--height-ft", "30", "--delays", "2", "--recovery", "none");
    assertTrue(run.out().matches("(?s).*GROUND [0-9]{3,4}\n.*"), run.out());
  }

  @Test
  void theLateralRecoveryNamesTheSideThatTheTailRotorPushesTo() {
    // A tail rotor that balances a rotor turning counter-clockwise (from above) pushes to the
    // right:
    // the craft drifts right in the hover. Common practice, no source.
    assertTrue(Run.words("loss --delays 0").contains("pushes to (right)"));
    assertTrue(Run.words("loss --craft utility --delays 0").contains("pushes to (left)"));
  }

  /** At most 100 columns, plain ASCII without control characters, nothing behind the last word. */
  static void assertFitsThePage(Run run) {
    assertAll(
        run.lines().stream()
            .map(
                line ->
                    () -> {
                      assertTrue(line.length() <= WIDTH, line);
                      assertTrue(line.chars().allMatch(c -> c >= ' ' && c <= '~'), line);
                      assertEquals(line.stripTrailing(), line);
                    }));
    assertTrue(!run.out().contains("\r"), "carriage returns");
  }
}
