package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.study.model.Accepted;
import io.github.ringstate.study.model.OpenNumbers;
import java.io.IOException;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables about many pilots, from the outside. */
class PilotTablesTest {

  private static final List<String> PILOTS =
      List.of(
          "p50_ft", "p90_ft", "p95_ft", "p95_low_ft", "p95_high_ft", "arrested_share", "samples");

  private static final List<String> STANDARD =
      List.of(
          "outcome",
          "altitude_loss_ft",
          "loss_after_recognition_ft",
          "peak_descent_fpm",
          "time_to_arrest_s");

  @Test
  void withoutPilotsTheirFieldsAreEmpty() throws IOException {
    for (CSVRecord record : Run.csv("loss --delays 0,1.0")) {
      PILOTS.forEach(column -> assertEquals("", record.get(column), column));
    }
  }

  @Test
  void withPilotsTheStandardTechniqueStaysAsItWas() throws IOException {
    List<CSVRecord> without = Run.csv("loss --delays 0,2.0 --height-ft 150");
    List<CSVRecord> with =
        Run.csv("loss --delays 0,2.0 --height-ft 150 --pilots 30 --turbulence 15 --shaking-pct 5");
    assertEquals(without.size(), with.size());
    for (int i = 0; i < with.size(); i++) {
      for (String column : STANDARD) {
        assertEquals(without.get(i).get(column), with.get(i).get(column), column);
      }
      assertEquals("32", with.get(i).get("samples"));
    }
  }

  @Test
  void pilotsWithDelaysOfTheirOwnMakeOneLineARecoveryWithoutDelay() throws IOException {
    List<CSVRecord> records =
        Run.csv("loss --pilots 30 --state attentive --recovery lateral,forward");
    assertEquals(2, records.size());
    for (CSVRecord record : records) {
      assertEquals("", record.get("delay_s"));
      STANDARD.forEach(column -> assertEquals("", record.get(column), column));
      assertTrue(Run.number(record, "p50_ft") <= Run.number(record, "p90_ft"));
      assertTrue(Run.number(record, "p90_ft") <= Run.number(record, "p95_ft"));
      assertEquals("1.0000", record.get("arrested_share"));
      assertEquals("32", record.get("samples"));
    }
  }

  @Test
  void endlessLossesAndBandsAreEmpty() throws IOException {
    CSVRecord none = Run.csv("loss --pilots 20 --recovery none --delays 1").get(0);
    List.of("p50_ft", "p90_ft", "p95_ft", "p95_low_ft", "p95_high_ft")
        .forEach(column -> assertEquals("", none.get(column), column));
    assertEquals("0.0000", none.get("arrested_share"));
    // The greatest of 20 lies below the 95 % point with probability 0.95^20 = 0.36: no upper end.
    CSVRecord few = Run.csv("loss --pilots 20 --recovery lateral --delays 1").get(0);
    assertTrue(Run.number(few, "p95_ft") > 0);
    assertEquals("", few.get("p95_high_ft"));
  }

  @Test
  void whoMeetsNoRingStateIsNotInTheSample() throws IOException {
    // A hover headed into 40 kt flies at 40 kt airspeed, above the 24 kt to which the handbooks
    // put the end of effective translational lift.
    String windy = " --entry settling --wind-kt 40 --pilots 5 --recovery lateral";
    CSVRecord record = Run.csv("loss --delays 1" + windy).get(0);
    assertEquals("0", record.get("samples"));
    PILOTS.stream()
        .filter(column -> !column.equals("samples"))
        .forEach(column -> assertEquals("", record.get(column), column));
    assertEquals("0", Run.csv("floor" + windy).get(0).get("samples"));
    assertTrue(
        Run.line("floor --height-ft 200" + windy).out().contains("do not lead into the ring"));
    assertTrue(Run.line("loss" + windy).out().contains("do not lead into the ring state"));
  }

  @Test
  void whatMostOfThoseWithoutArrestCameToStandsInTheTable() {
    assertTrue(
        Run.line("loss --pilots 8 --recovery none --delays 1").out().contains("  not arrested  "));
    assertTrue(
        Run.line("loss --pilots 8 --recovery none --delays 1 --height-ft 300")
            .out()
            .contains("  ground  "));
  }

  @Test
  void aFloorIsTheLossOfTheSharePlusTheMarginAndNeverLower() throws IOException {
    List<CSVRecord> losses = Run.csv("loss --pilots 60 --state distracted");
    List<CSVRecord> floors = Run.csv("floor --pilots 60 --state distracted --margin-ft 50");
    assertEquals(losses.size(), floors.size());
    for (int i = 0; i < floors.size(); i++) {
      if (losses.get(i).get("p95_ft").isEmpty()) {
        assertEquals("", floors.get(i).get("floor_ft"));
        continue;
      }
      double added = Run.number(floors.get(i), "floor_ft") - Run.number(losses.get(i), "p95_ft");
      // the loss is rounded to the nearest tenth of a foot, the floor up to the next
      assertTrue(added >= 50 - 0.05 && added <= 50 + 0.15, floors.get(i).toString());
      assertEquals("0.95", floors.get(i).get("share"));
    }
  }

  @Test
  void everyStateGivenHasItsLinesInTheOrderGiven() throws IOException {
    List<CSVRecord> records =
        Run.csv("floor --pilots 5 --share 0.5 --state startled,primed --recovery lateral,none");
    assertEquals(
        List.of("startled", "startled", "primed", "primed"),
        records.stream().map(record -> record.get("state")).toList());
  }

  @Test
  void theSeedDecides() {
    String command = "loss --pilots 20 --delays 1 --format csv";
    assertEquals(Run.line(command).out(), Run.line(command + " --seed 1").out());
    assertNotEquals(Run.line(command).out(), Run.line(command + " --seed 2").out());
  }

  @ParameterizedTest
  @ValueSource(strings = {"settling", "steep", "downwind"})
  void aClockThatStartsLaterNeverGainsHeight(String entry) throws IOException {
    // More delay never gains height: the collective stays lowered for longer.
    String table = "loss --delays 0,1,2 --recovery forward,lateral --entry " + entry;
    List<CSVRecord> boundary = Run.csv(table);
    List<CSVRecord> cue = Run.csv(table + " --clock cue");
    for (int i = 0; i < cue.size(); i++) {
      assertTrue(
          Run.number(cue.get(i), "altitude_loss_ft")
              >= Run.number(boundary.get(i), "altitude_loss_ft") - 0.11,
          cue.get(i).toString());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "loss --delays 0",
        "loss --delays 0 --pilots 3",
        "loss --pilots 3 --state primed",
        "floor --pilots 3 --state primed"
      })
  void everyTableSaysWhichClockItUses(String command) throws IOException {
    assertTrue(Run.line(command).out().contains("  Clock       delays count from the boundary"));
    assertTrue(
        Run.line(command + " --clock cue").out().contains("  Clock       delays count from a cue"));
    assertEquals("cue", Run.json(command + " --clock cue").at("/conditions/clock").asText());
  }

  @Test
  void peopleAndModelsHaveABandEach() throws IOException {
    JsonNode cell =
        Run.json("loss --pilots 100 --models 4 --delays 1 --recovery lateral").at("/cells/0");
    double low = cell.get("p95_models_low_ft").asDouble();
    double middle = cell.get("p95_models_ft").asDouble();
    double high = cell.get("p95_models_high_ft").asDouble();
    assertTrue(0 < low && low <= middle && middle <= high && low < high, cell.toString());
    assertTrue(cell.get("p95_low_ft").asDouble() <= cell.get("p95_ft").asDouble());
    String text = Run.line("loss --pilots 100 --models 4 --delays 1 --recovery lateral").out();
    assertTrue(text.contains("and model"), text);
    Accepted<RingStateInflow> models = OpenNumbers.accepted(4, 1);
    assertTrue(
        text.replaceAll("\\s+", " ").contains("Of " + models.draws() + " draws 4 were kept"), text);
    JsonNode conditions =
        Run.json("loss --pilots 100 --models 4 --delays 1 --recovery lateral").at("/conditions");
    assertEquals(4, conditions.get("models").asInt());
    assertEquals(models.draws(), conditions.get("model_draws").asLong());
    assertEquals(models.share(), conditions.get("model_draws_kept_share").asDouble(), 5e-7);
    // the CSV file stays as it is
    assertEquals(
        Run.line("loss --pilots 30 --delays 1 --format csv").out(),
        Run.line("loss --pilots 30 --delays 1 --models 2 --format csv").out());
  }

  @Test
  void gustsAndShakingMoveTheOneFlightOfASeed() {
    String flight = "loss --delays 1 --recovery lateral --format csv";
    String calm = Run.line(flight).out();
    String gusty = Run.line(flight + " --turbulence light --seed 3").out();
    assertNotEquals(calm, gusty);
    assertEquals(gusty, Run.line(flight + " --turbulence light --seed 3").out());
    assertNotEquals(gusty, Run.line(flight + " --turbulence light --seed 4").out());
    assertNotEquals(calm, Run.line(flight + " --shaking-pct 5 --seed 3").out());
  }

  @Test
  void theBriefingForAHeightAgreesWithTheShareThatLostIt() throws IOException {
    JsonNode json = Run.json("floor --pilots 128 --state distracted --height-ft 600");
    String text = Run.words("floor --pilots 128 --state distracted --height-ft 600");
    for (JsonNode cell : json.get("cells")) {
      String recovery = cell.get("recovery").asText();
      long down = Math.round(128 * cell.get("ground_share").asDouble());
      assertTrue(text.contains(down == 0 ? "none of 128" : down + " of 128"), recovery);
    }
    assertEquals(3, json.get("latest_moments").size());
  }

  @Test
  void aRunWhoseThreadIsInterruptedEndsWithTheStatusOfAnInterrupt() throws InterruptedException {
    AtomicReference<Run> result = new AtomicReference<>(new Run(-1, "", ""));
    Thread thread =
        new Thread(() -> result.set(Run.of("loss", "--pilots", "1000000", "--delays", "1")));
    thread.start();
    Thread.sleep(300);
    thread.interrupt();
    thread.join(20_000);
    Run run = result.get();
    assertEquals(130, run.status(), run.err());
    assertEquals("", run.out());
    assertTrue(run.err().contains("interrupted; nothing was written"), run.err());
  }

  @Test
  void asManyPilotsAreFlownAsAPrecisionTakesAndWhatIsReachedIsSaid() throws IOException {
    String command = "loss --state attentive --recovery lateral,forward --precision-ft ";
    double samples = 0;
    for (double asked : new double[] {30, 10}) {
      double most = 0;
      for (CSVRecord record : Run.csv(command + asked)) {
        double half = 0.5 * (Run.number(record, "p95_high_ft") - Run.number(record, "p95_low_ft"));
        assertTrue(half <= asked, record.toString());
        most = Math.max(most, Run.number(record, "samples"));
      }
      assertTrue(most > samples, most + " pilots for " + asked + " ft");
      samples = most;
    }
    String said = Run.words(command + "10");
    assertTrue(said.contains("10 ft was asked for"), said);
    assertTrue(said.contains("as many simulated pilots a line as the precision takes"), said);
  }

  @Test
  void independentPilotsAreAsManyAsAreAskedFor() throws IOException {
    String command = "loss --delays 1 --recovery lateral --pilots 30";
    assertEquals("30", Run.csv(command + " --draws independent").get(0).get("samples"));
    assertEquals("32", Run.csv(command).get(0).get("samples"));
    String said = Run.words(command);
    assertTrue(said.contains("32 simulated pilots a line (30 rounded up to full sets)"), said);
  }
}
