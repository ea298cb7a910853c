package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.files.unit.UnitSystem;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class LossSheetTest {

  private static final String FLIGHTS =
      "loss --pilots 50 --seed 4 --delays 1,3.0 --recovery forward,lateral";

  private static final Pattern FIELD =
      Pattern.compile("<td class=\"(?:gap|most)(?: mark)?\">(?:<span>)?([^<]*)<");

  private static String page(String command) {
    return Documents.text(command + " --format html");
  }

  /** All fields of all tables of losses, in the order of the page. */
  private static List<String> fields(String page) {
    List<String> fields = new ArrayList<>();
    Matcher matcher = FIELD.matcher(page);
    while (matcher.find()) {
      fields.add(matcher.group(1));
    }
    return fields;
  }

  /** A number of the file as people read it, no finer than half of its interval. */
  private static String loss(CSVRecord record, String column, UnitSystem units) {
    double value = Run.number(record, column + "_ft");
    String high = record.get(column + "_high_ft");
    double within =
        high.isEmpty()
            ? value - Run.number(record, column + "_low_ft")
            : 0.5 * (Double.parseDouble(high) - Run.number(record, column + "_low_ft"));
    return units.loss(0.3048 * value, 0.3048 * within);
  }

  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void theSheetShowsTheNumbersOfTheCsv(UnitSystem units) throws IOException {
    List<CSVRecord> records = Run.csv(FLIGHTS);
    String page = page(FLIGHTS + " --units " + units.label());
    assertEquals(4, records.size());
    for (CSVRecord record : records) {
      String fields =
          "<td class=\"one\">"
              + units.loss(0.3048 * Run.number(record, "altitude_loss_ft"))
              + "</td><td class=\"gap\">"
              + loss(record, "p50", units)
              + "</td><td class=\"most\">"
              + loss(record, "p95", units)
              + "</td>";
      assertTrue(page.contains(fields), fields);
    }
  }

  @ParameterizedTest
  @CsvSource({"120", "400"})
  void withAPlannedHeightTheSheetShowsTheNumbersOfTheCsvAndMarksWhatTheCsvLeavesOut(int height)
      throws IOException {
    String command = FLIGHTS + " --height-ft " + height;
    List<String> fields = fields(page(command));
    List<String> expected = new ArrayList<>();
    List<CSVRecord> records = Run.csv(command);
    // the page goes by delay, the file by recovery
    for (String delay : List.of("1.0", "3.0")) {
      for (CSVRecord record : records) {
        if (record.get("delay_s").equals(delay)) {
          for (String column : List.of("p50", "p95")) {
            expected.add(
                record.get(column + "_ft").isEmpty()
                    ? "&gt; " + height
                    : loss(record, column, UnitSystem.AVIATION));
          }
        }
      }
    }
    assertEquals(expected, fields);
  }

  @Test
  void aSheetOfPilotsWithDelaysOfTheirOwnShowsTheNumbersOfTheCsv() throws IOException {
    String command = "loss --state distracted --recovery forward,lateral --pilots 40";
    List<String> expected = new ArrayList<>();
    for (CSVRecord record : Run.csv(command)) {
      expected.add(loss(record, "p50", UnitSystem.AVIATION));
      expected.add(loss(record, "p95", UnitSystem.AVIATION));
    }
    String page = page(command);
    assertEquals(expected, fields(page));
    assertTrue(page.contains("<th scope=\"row\">distracted</th>"), "no line for the state");
  }

  @Test
  void withoutPilotsTheSheetAsksForAStandardNumber() throws IOException {
    String one = "loss --delays 1 --recovery lateral";
    List<String> fields = fields(page(one));
    CSVRecord record = Run.csv(one + " --pilots 512").get(0);
    assertEquals(
        List.of(loss(record, "p50", UnitSystem.AVIATION), loss(record, "p95", UnitSystem.AVIATION)),
        fields);
  }

  @Test
  void aLossAboveThePlannedHeightIsMarkedByWordAndPattern() {
    // a recovery in less than 20 ft after 3 s is out of reach of any technique (arithmetic: the
    // descent at onset alone covers more)
    String page = page(FLIGHTS + " --height-ft 20");
    assertTrue(page.contains("<td class=\"most mark\"><span>&gt; 20</span>"), "no mark");
    assertFalse(page(FLIGHTS).contains("class=\"most mark\""), "a mark without a height");
  }

  @Test
  void theSheetHasTheTakeAwayOfTheTextAndTheWayOverTheGround() {
    String text = Run.words(FLIGHTS);
    String page = page(FLIGHTS);
    Matcher inShort =
        Pattern.compile("What 95 % of the simulated pilots lost[^.]*\\.").matcher(text);
    assertTrue(inShort.find(), text);
    assertTrue(page.contains(inShort.group()), page);
    assertTrue(
        page.matches("(?s).*<b>lateral</b> [0-9]+ ft ahead and [0-9]+ ft to the right.*"), page);
  }

  @Test
  void aWorseDayStandsBesideThePlannedOne() throws IOException {
    String planned = "loss --mass-kg 520 --oat-c 15 --delays 1.0,2 --recovery lateral";
    List<CSVRecord> both = Run.csv(planned + " --compare 60,10,0.5");
    List<CSVRecord> worse =
        Run.csv(planned.replace("520", "580").replace("15", "25").replace("1.0,2", "1.5,2.5"));
    List<CSVRecord> alone = Run.csv(planned);
    for (int i = 0; i < 2; i++) {
      assertEquals(alone.get(i).toList(), both.get(i).toList());
      assertEquals(worse.get(i).toList(), both.get(i + 2).toList());
    }
    String page = page(planned + " --pilots 20 --compare 60,10,0.5");
    assertTrue(page.contains("As planned: 520 kg"), page);
    assertTrue(page.contains("Heavier, hotter, 0.5 s later: 580 kg"), page);
    Run.assertRefused(planned + " --compare 600,10,0.5", "--compare");
  }

  @Test
  void emptyPlotsExplainThemselves() {
    // in so much wind from ahead a hover has airspeed enough to keep out of the ring
    String page = page("loss --entry settling --wind-kt 30 --delays 1 --pilots 4");
    assertTrue(page.contains("Nothing to draw"), page);
  }

  @Test
  void modelsHaveNoPlaceOnASheet() {
    Run.assertRefused(FLIGHTS + " --models 2 --format html", "--models");
  }

  @Test
  void aSheetForACraftShortOfPowerWarns() {
    String page = page("loss --pressure-altitude-ft 12000 --delays 1 --pilots 4");
    assertTrue(page.toLowerCase(Locale.ROOT).contains("warning: more than there is"), "no warning");
  }
}
