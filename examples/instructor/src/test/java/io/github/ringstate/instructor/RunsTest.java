package io.github.ringstate.instructor;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RunsTest {

  /** A wind for what has none, since there is no standard one. */
  static String[] runs(String args) {
    String wind = args.contains("--calm") || args.contains("--wind-kt") ? "" : " --wind-kt 12";
    String from =
        args.contains("--calm") || args.contains("--wind-from") ? "" : " --wind-from-deg 240";
    return ("runs --pilots 8 --recovery lateral " + args + wind + from).strip().split(" +", -1);
  }

  static List<CSVRecord> records(String args) throws IOException {
    return Run.shared(runs("--format csv " + args)).records();
  }

  private static String page(String args) {
    return new String(Documents.shared(runs("--format html " + args)), UTF_8);
  }

  static String text(String args) {
    Run run = Run.shared(runs(args));
    assertEquals(0, run.status(), run.err());
    return run.out();
  }

  private static final String PLAIN_WIND = "--wind-exponent 0 --gust-kt 20 --wind-kt 20";

  @ParameterizedTest
  @CsvSource({
    // Wind from the north 20 kt at all heights, 30 kt over the ground: arithmetic.
    "0, -20.0, 0.0, 50.0",
    "9, 0.0, 20.0, 36.1",
    "18, 20.0, 0.0, 10.0",
    "27, 0.0, -20.0, 36.1"
  })
  void theWindTriangleIsAsArithmeticSays(int row, double tail, double cross, double airspeed)
      throws IOException {
    CSVRecord record = records("--wind-from-deg 0 --ground-speed-kt 30 " + PLAIN_WIND).get(row);
    assertEquals(10.0 * row, Run.number(record, "track_deg"));
    assertEquals(tail, Run.number(record, "tailwind_kt"), 0.05);
    assertEquals(cross, Run.number(record, "crosswind_kt"), 0.05);
    assertEquals(airspeed, Run.number(record, "airspeed_kt"), 0.05);
  }

  @Test
  void theWindGrowsWithThePowerOfHeight() throws IOException {
    // One-seventh law (from memory) from 10 m to 100 m: 10^(1/7) = 1.3895. 100 m are 328.084 ft.
    CSVRecord record =
        records("--wind-from-deg 0 --wind-kt 10 --gust-kt 10 --height-ft 328.084").get(18);
    assertEquals(13.9, Run.number(record, "tailwind_kt"), 0.05);
  }

  @Test
  void everyRowHasAVerdictAndOneSentenceAndNothingIsCalledSafe() throws IOException {
    Set<String> verdicts = Set.of("fly", "fly with a limit", "not as planned", "do not fly");
    for (String args : List.of("", "--craft heavy --height-ft 200", "--calm")) {
      List<CSVRecord> records = records(args);
      assertEquals(36, records.size());
      for (CSVRecord record : records) {
        assertTrue(verdicts.contains(record.get("verdict")), record.toString());
        String reason = record.get("reason");
        assertTrue(reason.matches("[A-Z][^.]*(\\.[0-9][^.]*)*\\."), reason);
        assertTrue(!reason.contains("safe"), reason);
      }
    }
  }

  @Test
  void withoutARingStateTheTechniqueIsThatOfTheCard() throws IOException {
    JsonNode calm = Run.json("runs --calm --pilots 8");
    assertTrue(calm.at("/tracks/0/loss_p95_ft").isNull(), "the ring state is met");
    assertEquals(
        Run.json("card --pilots 8").at("/conditions/technique").asText(),
        calm.at("/conditions/technique").asText());
  }

  @Test
  void aRunOnAWorseDayIsTheRunOfThatDay() throws IOException {
    // the same by hand: so much heavier, and 10 K over the 15 C of the standard day
    String wind = "runs --wind-from-deg 360 --wind-kt 15 --pilots 8 --mass-kg ";
    JsonNode worse = Run.json(wind + "560 --compare 40,10,0").get("tracks_if_worse");
    assertEquals(Run.json(wind + "600 --oat-c 25").get("tracks"), worse);
  }

  @Test
  void aRunInCalmAirIsTheSameOnEveryTrack() throws IOException {
    Set<String> rows =
        records("--calm").stream()
            .map(
                record ->
                    Stream.of("airspeed_kt", "power_margin_pct", "loss_p95_ft", "verdict")
                        .map(record::get)
                        .collect(Collectors.joining(",")))
            .collect(Collectors.toSet());
    assertEquals(1, rows.size(), rows.toString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"--calm --ground-speed-kt 10", "--units si", "--wind-kt 30"})
  void theRingsOfThePlotReachTheAirspeedToKeep(String args) {
    String page = page(args);
    // tracks have three digits, the rings one or two
    double outermost =
        Pattern.compile(">([0-9]{1,2})</text>")
            .matcher(page)
            .results()
            .mapToDouble(ring -> Double.parseDouble(ring.group(1)))
            .max()
            .orElseThrow();
    // 24 kt, the upper end of effective translational lift; 12.3 m/s
    assertTrue(outermost >= (args.contains("si") ? 12.3 : 24), args + ": " + outermost);
  }

  @Test
  void withTheWindBehindASlowLowRunIsNotFlown() throws IOException {
    // A fresh wind behind a slow run: the classic way in (common practice, no source).
    CSVRecord low = records("--craft heavy --height-ft 200 --wind-from-deg 0").get(18);
    assertEquals("do not fly", low.get("verdict"));
    CSVRecord behind = records("--craft heavy --height-ft 2000 --wind-from-deg 0").get(18);
    assertEquals("not as planned", behind.get("verdict"));
    CSVRecord ahead = records("--craft heavy --height-ft 2000 --wind-from-deg 0").get(0);
    assertEquals("fly with a limit", ahead.get("verdict"));
  }

  @Test
  void whatIsFlownInsteadKeepsTheAirspeedByArithmetic() throws IOException {
    // 8 kt from the north at all heights, no gusts, 3 kt of allowance: with it behind, 24 kt of air
    // take 24 + 8 + 3 = 35 kt over the ground, in place of 25
    String wind = "--wind-from-deg 0 --wind-kt 8 --gust-kt 8 --wind-exponent 0 --height-ft 1000 ";
    JsonNode behind = RunsJsonTest.json(wind).get("tracks").get(18);
    assertEquals("not as planned", behind.get("verdict").asText());
    assertEquals(35, behind.get("ground_speed_instead_kt").asDouble(), 1e-9);
    String reason = behind.get("reason").asText();
    assertTrue(reason.contains("35 kt over the ground") && reason.contains("25 kt"), reason);
    JsonNode there = RunsJsonTest.json(wind + "--ground-speed-kt 35").get("tracks").get(18);
    assertEquals("fly", there.get("verdict").asText());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "--height-ft 400 --lowest-height-ft 300",
        "--height-ft 350 --margin-ft 0 --lowest-height-ft 300",
        "--height-ft 600 --margin-ft 250",
        "--craft heavy --height-ft 800 --mass-kg 9000 --oat-c 35",
        "--craft utility --height-ft 700 --units si"
      })
  void whatIsSaidOfTheHeightIsArithmetic(String args) throws IOException {
    Matcher given = Pattern.compile("--margin-ft ([0-9]+)").matcher(args);
    double margin = given.find() ? Double.parseDouble(given.group(1)) : 50;
    double lowest = args.contains("--lowest") ? 300 : 500;
    JsonNode tracks = RunsJsonTest.json(args).get("tracks");
    double worst = 0;
    for (JsonNode track : tracks) {
      worst = Math.max(worst, track.get("own_loss_p95_ft").asDouble());
    }
    assertTrue(worst > 0, args);
    for (JsonNode track : tracks) {
      // losses are written in tenths of a foot
      assertEquals(worst, track.get("loss_p95_ft").asDouble(), 0.05);
      assertEquals(
          Math.max(lowest, worst + margin), track.get("height_needed_ft").asDouble(), 0.11);
      assertEquals(
          worst + margin <= track.get("height_ft").asDouble() ? "covered" : "not-covered",
          track.get("loss_covered").asText());
    }
  }

  @ParameterizedTest
  @CsvSource({
    "'--calm --ground-speed-kt 40 --height-ft 30', do not fly",
    "'--calm --ground-speed-kt 40 --height-ft 499', do not fly",
    "'--calm --ground-speed-kt 40 --height-ft 500', fly",
    "'--calm --ground-speed-kt 40 --height-ft 200 --lowest-height-ft 200', fly",
    // 3 kt of allowance: 22 kt are less than the 24 asked for, ring state or not
    "'--calm --ground-speed-kt 25', not as planned",
    "'--calm --ground-speed-kt 25 --allowance-kt 1', fly",
    "'--calm --ground-speed-kt 40 --height-ft 5000 --pressure-altitude-ft 8000 --oat-c 20', do not fly"
  })
  void heightAirspeedAndHoverAreJudgedInCalmAirToo(String args, String verdict) throws IOException {
    for (CSVRecord record : records(args)) {
      assertEquals(verdict, record.get("verdict"), record.toString());
      assertEquals("", record.get("loss_p95_ft"));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "'', --wind-from-deg",
    "--wind-kt 10, --wind-from-deg",
    "--wind-from-deg 100, --wind-kt",
    "--calm --wind-kt 10, --calm",
    "--calm --gust-kt 10, --gust-kt"
  })
  void withoutAWindNothingIsPlanned(String args, String named) {
    Run.assertRefused(("runs " + args).strip(), named);
  }

  @Test
  void tracksThatAreAlikeShareARow() {
    // 36 tracks: one against the wind, one with it behind, 17 pairs of mirror images
    Pattern row = Pattern.compile("\n +(every|[0-9]{3}( [0-9]{3})?) +-?[0-9]+ +[0-9]+ +[0-9]+ ");
    assertEquals(19, row.matcher(text("--wind-from-deg 243")).results().count());
    assertTrue(text("--wind-from-deg 243").contains("253 233"));
    assertEquals(1, row.matcher(text("--calm")).results().count());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "--craft utility --mass-kg 1800 --pressure-altitude-ft 8000 --oat-c 30 --height-ft 300",
        "--craft twin --wind-kt 30 --gust-kt 33 --ground-speed-kt 40 --height-ft 500",
        "--craft heavy --wind-kt 20 --gust-kt 30 --ground-speed-kt 40 --height-ft 300"
      })
  void theMoreWindIsBehindTheStricterIsTheVerdict(String args) throws IOException {
    List<String> fromMild = List.of("fly", "fly with a limit", "not as planned", "do not fly");
    List<CSVRecord> records = records("--wind-from-deg 0 " + args);
    for (int i = 1; i <= 18; i++) {
      assertTrue(
          fromMild.indexOf(records.get(i - 1).get("verdict"))
              <= fromMild.indexOf(records.get(i).get("verdict")),
          records.get(i).toString());
    }
  }

  @Test
  void inCalmAirNoDirectionIsBestOrWorst() throws IOException {
    JsonNode conditions = RunsJsonTest.json("--calm --ground-speed-kt 40").get("conditions");
    assertEquals("every track is alike; fly", conditions.get("best_direction").asText());
    assertEquals("every track is alike; fly", conditions.get("worst_direction").asText());
    assertTrue(
        RunsJsonTest.json("").get("conditions").get("best_direction").asText().contains("(240)"));
  }

  @ParameterizedTest
  @CsvSource({"60, true", "500, false"})
  void whereNoTrackIsToBeFlownThePilotSaysNoToTheRun(int heightFt, boolean no) {
    String page = page("--height-ft " + heightFt);
    assertEquals(no, page.contains("This run as planned, on whatever track."));
  }

  @Test
  void theTextSaysWhetherTheHeightCoversTheLoss() throws IOException {
    for (int height : new int[] {500, 280}) {
      String args = "--lowest-height-ft 200 --height-ft " + height;
      double needed =
          RunsJsonTest.json(args).get("tracks").get(0).get("height_needed_ft").asDouble();
      assertEquals(
          needed <= height,
          text(args).replaceAll("\\s+", " ").contains("to be left below: covered by the height"));
    }
  }

  @Test
  void noSlowRunIsFlownWithAStrongWindBehind() throws IOException {
    // 40 kt from the north: on these tracks more than 5 kt of it are from behind, by arithmetic
    List<CSVRecord> records =
        records(
            "--wind-from-deg 0 --wind-kt 40 --gust-kt 44 --wind-exponent 0 --ground-speed-kt 5"
                + " --height-ft 2000");
    for (CSVRecord record : records.subList(10, 27)) {
      assertNotEquals("fly", record.get("verdict"), record.toString());
      assertTrue(
          record.get("reason").startsWith("In gusts the wind from behind is faster than the run"),
          record.toString());
    }
  }

  @Test
  void anAirspeedThatIsTooLowDoesNotReadAsEnough() throws IOException {
    // 47.6 kt over the ground less 24 kt of wind behind: 23.6 kt, which are 24 if rounded
    String behind =
        records(
                "--wind-from-deg 0 --wind-kt 24 --gust-kt 24 --wind-exponent 0 --height-ft 2000"
                    + " --ground-speed-kt 47.6 --allowance-kt 0")
            .get(18)
            .get("reason");
    assertTrue(behind.contains("falls to just under 24 kt; 24 kt or more take 48 kt"), behind);
  }

  @Test
  void aLossThatIsNotCoveredDoesNotReadAsIfItWere() throws IOException {
    Pattern numbers =
        Pattern.compile(
            "(more than |)([0-9]+) ft of the ([0-9]+) ft, which leaves less than ([0-9]+) ft");
    boolean just = false;
    double loss = RunsJsonTest.json("").get("tracks").get(0).get("loss_p95_ft").asDouble();
    for (double height = Math.rint(loss) + 48; height <= Math.rint(loss) + 51; height++) {
      for (CSVRecord record : records("--lowest-height-ft 100 --height-ft " + (int) height)) {
        Matcher said = numbers.matcher(record.get("reason"));
        if (said.find()) {
          boolean reads =
              Integer.parseInt(said.group(2)) + Integer.parseInt(said.group(4))
                  <= Integer.parseInt(said.group(3));
          assertEquals(reads, !said.group(1).isEmpty(), record.toString());
          just |= reads;
        }
      }
    }
    assertTrue(just);
  }

  @Test
  void theSheetShowsTheNumbersOfTheCsv() throws IOException {
    String args = "--wind-from-deg 30";
    String page = page(args);
    List<CSVRecord> records = records(args);
    for (int turn = 0; turn <= 18; turn++) {
      CSVRecord right = records.get((3 + turn) % 36);
      CSVRecord left = records.get((3 - turn + 36) % 36);
      String tracks =
          String.format(Locale.ROOT, "%03.0f", Run.number(right, "track_deg"))
              + (turn % 18 == 0
                  ? ""
                  : String.format(Locale.ROOT, " %03.0f", Run.number(left, "track_deg")));
      String start =
          "<tr><th scope=\"row\">"
              + tracks
              + "</th><td>"
              + Math.round(Run.number(right, "tailwind_kt"))
              + "</td><td>"
              + Math.round(Math.abs(Run.number(right, "crosswind_kt")))
              + "</td><td>"
              + Math.round(Run.number(right, "airspeed_kt"))
              + "</td>";
      // a half rounds either way once it has been rounded to a tenth
      assertTrue(page.contains(start) || isHalf(right), () -> "missing: " + start);
      assertEquals(right.get("verdict"), left.get("verdict"));
      assertEquals(right.get("airspeed_kt"), left.get("airspeed_kt"));
    }
  }

  private static boolean isHalf(CSVRecord record) {
    return Stream.of("tailwind_kt", "crosswind_kt", "airspeed_kt")
        .anyMatch(column -> record.get(column).endsWith(".5"));
  }
}
