package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.study.ModelRevision;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ReviewTest {

  private static final String DEMO = "review --demo instruments";

  @TempDir private Path folder;

  @Test
  void theTableHasALineForEachEncounter() {
    List<String> lines = Run.line(DEMO + " --format csv").lines();
    assertEquals(
        "encounter,onset_time_s,onset_height_ft,recognition_delay_s,altitude_loss_ft,"
            + "altitude_loss_sd_ft,peak_descent_fpm,time_to_arrest_s,recovery,verdict",
        lines.get(0));
    assertEquals(2, lines.size());
    assertTrue(lines.get(1).endsWith(",forward,ring state"), lines.get(1));
  }

  @Test
  void whatIsNotRecordedIsEmpty() {
    List<String> lines = Run.line("review --demo gnss-5hz --format csv").lines();
    assertTrue(lines.get(1).matches("1,[0-9.]+,[0-9.]+,,[0-9.,]+,,ring state"), lines.get(1));
  }

  @Test
  void eachSecondMoreCostsMoreByTheModel() throws IOException {
    JsonNode row = Run.json(DEMO).path("encounters").path(0);
    double flown = row.path("model_loss_ft").doubleValue();
    double one = row.path("model_loss_1_s_more_ft").doubleValue();
    double two = row.path("model_loss_2_s_more_ft").doubleValue();
    assertTrue(0 < flown && flown < one && one < two, row::toString);
    assertEquals("recorded-onset", row.path("model_begins").textValue());
    // a tenth of the loss at the least, and the miss of the flight itself, in parts of the loss
    double miss = (flown - row.path("altitude_loss_ft").doubleValue()) / flown;
    assertEquals(
        Math.hypot(0.1, miss) * two, row.path("model_loss_2_s_more_sd_ft").doubleValue(), 0.5);
  }

  @Test
  void theDoubtAboutTheWindIsSaidInOneSentence() {
    String said = Run.words("review --demo gnss-5hz --wind-from-deg 180 --wind-kt 8");
    assertTrue(
        said.matches(
            ".*The wind is known to 2 kt\\. With 2 kt more from behind: \\d+ ft lost; with as much"
                + " less: \\d+ ft lost .*"),
        said);
  }

  @ParameterizedTest
  @ValueSource(strings = {"instruments", "gnss-1hz"})
  void theSheetHasPlotsCautionAndRevisionAndSaysWhatIsInvented(String demo) {
    String page = Documents.text("review --format html --demo " + demo).replaceAll("\\s+", " ");
    assertTrue(page.contains(Caution.TEXT));
    assertTrue(page.contains(ModelRevision.current()));
    assertTrue(page.contains("INVENTED DEMO RECORDING"));
    assertTrue(page.contains("descent 1: height against time since onset"));
  }

  @Test
  void inAWindFromAheadTheSameFlightMeetsNothing() {
    Run run = Run.line("review --demo gnss-5hz --wind-kt 8 --wind-from-deg 360");
    assertTrue(run.out().contains("No descent in this recording"), run.out());
    assertTrue(run.out().contains("8 kt from 360 deg, given"), run.out());
  }

  @Test
  void whatWasBriefedStandsBesideWhatWasFlown() throws IOException {
    Path plan = folder.resolve("plan.toml");
    Run.line(
        "plan --technique lateral --agreed-height-ft 1000 --pilots 20 --state primed --wind-kt 20"
            + " --output "
            + plan);
    String bare = Run.words(DEMO + " --plan " + plan);
    assertTrue(bare.contains("briefed lateral; flown forward: NOT AS BRIEFED"), bare);
    assertTrue(bare.contains("(--ground-ft) is needed to compare"), bare);
    // a wind that was planned is not the one that blew
    assertTrue(bare.contains("estimated from airspeed and heading"), bare);
    String low = Run.words(DEMO + " --ground-ft 600 --plan " + plan);
    assertTrue(low.contains("BELOW WHAT WAS BRIEFED"), low);
    assertFalse(low.contains("BELOW THE GROUND"), low);
  }

  @Test
  void aDescentBelowTheGroundIsNotBelieved() {
    String said = Run.words(DEMO + " --ground-ft 1700");
    assertTrue(said.matches(".* A DESCENT GOES 2\\d\\d ft BELOW THE GROUND: .*"), said);
  }

  @Test
  void aFileIsReadWithAMapAndMadeAgainFromItsProvenance() throws IOException {
    StringBuilder csv = new StringBuilder("t;alt;v;c\n");
    for (int k = 0; k < 60; k++) {
      csv.append(k).append(";").append(500 - k).append(";20;90\n");
    }
    Path file = folder.resolve("log.csv");
    Files.writeString(file, csv);
    Path first = folder.resolve("first.json");
    String map = "time=t:s,height=alt:m,ground_speed=v:m/s,track=c:deg";
    Run.line("review " + file + " --columns " + map + " --format json --output " + first);
    Path again = folder.resolve("again.json");
    Run.line("rerun " + first + " --output " + again);
    assertEquals(Files.readString(first), Files.readString(again));
    Files.writeString(file, csv + "60;1;20;90\n");
    assertEquals(UserError.FILE, Run.of("rerun", first.toString()).status());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "review",
        "review x.csv --demo instruments",
        "review --demo other",
        "review --demo instruments --wind-kt 5",
        "review --demo instruments --wind-from-deg 5",
        "review --demo instruments --wind-from-deg 5 --wind-kt -5",
        "review --demo instruments --entry none",
        "review x.csv --columns time=t:h",
      })
  void aWrongCommandIsAnErrorOfUse(String command) {
    assertFalse(Run.refused(command).isBlank());
  }

  @Test
  void oneRepairIsSaidInTheSingular() throws IOException {
    StringBuilder csv = new StringBuilder("time_s,height_m,ground_speed_kt,track_deg\n");
    for (int k = 0; k < 60; k++) {
      csv.append(k == 30 ? "x" : String.valueOf(k)).append(',').append(500 - k).append(",20,90\n");
    }
    Path file = folder.resolve("one.csv");
    Files.writeString(file, csv);
    String said = Run.line("review " + file).out();
    assertTrue(said.contains("reading without a time, left out"), said);
  }

  @Test
  void aFileWithoutGroundSpeedIsRefusedWithAReason() throws IOException {
    Path file = folder.resolve("heights.csv");
    Files.writeString(file, "time_s,height_ft\n1,500\n2,490\n");
    Run.assertFileRefused("review " + file, "ground speed");
  }

  @Test
  void feetTakenForMetresAreSaid() throws IOException {
    // 2000 ft/min down for 60 s: an autorotation, written in feet
    StringBuilder csv = new StringBuilder("t,alt,v,c\n");
    for (int k = 0; k < 450; k++) {
      csv.append(k / 5.0)
          .append(',')
          .append(3000 - Math.min(1, Math.max(0, (k - 100) / 300.0)) * 2000)
          .append(",60,90\n");
    }
    Path file = folder.resolve("feet.csv");
    Files.writeString(file, csv);
    String map = "time=t:s,height=alt:%s,ground_speed=v:kt,track=c:deg";
    String review = "review " + file + " --columns " + map;
    String wrong = Run.words(review.formatted("m"));
    assertTrue(wrong.contains("KEPT: check its unit"), wrong);
    assertTrue(wrong.contains("height=alt:m"), wrong);
    String right = Run.words(review.formatted("ft"));
    assertFalse(right.contains("KEPT"), right);
    assertTrue(right.contains("height=alt:ft"), right);
  }

  /** Level flight, and 300 ft more from half the way on: an altimeter setting that was changed. */
  @ParameterizedTest
  @ValueSource(strings = {"", " --ground-ft 400"})
  void aLevelThatSteppedIsSaidWithTheHeights(String ground) throws IOException {
    StringBuilder csv = new StringBuilder("time_s,height_ft,ground_speed_kt,track_deg\n");
    for (int k = 0; k < 240; k++) {
      int wavers = k * 7 % 5 - 2;
      csv.append(k).append(',').append((k < 120 ? 1500 : 1800) + wavers).append(",40,90\n");
    }
    Path file = folder.resolve("stepped.csv");
    Files.writeString(file, csv);
    String said = Run.words("review " + file + ground);
    assertTrue(
        said.matches(
            ".*THE LEVEL STEPPED, by (29[5-9]|30[0-5]) ft up at 120.0 s: heights"
                + (ground.isEmpty() ? "" : ", and that of the ground,")
                + " count from the level before the first step.*"),
        said);
    assertFalse(Run.words(DEMO).contains("THE LEVEL STEPPED"));
  }

  /** A descent of 40 s by hand, in heights as a cheap instrument writes them. */
  @ParameterizedTest
  @CsvSource({
    "10, ' 33 ft, with no vertical speed: no loss is known better than to 13 ft'",
    "30, ' 98 ft, with no vertical speed: no loss is known better than to 40 ft'",
    "7, ''"
  })
  void heightsInCoarseStepsAreSaidToBe(int step, String said) throws IOException {
    StringBuilder csv = new StringBuilder("time_s,height_m,ground_speed_kt,track_deg,climb_fpm\n");
    for (int k = 0; k < 600; k++) {
      double height = 400 - 3 * Math.min(Math.max(k / 5.0 - 40, 0), 40);
      csv.append(k / 5.0).append(',').append(step * Math.round(height / step)).append(",20,90,");
      csv.append(k / 5.0 > 40 && k / 5.0 < 80 ? "-590\n" : "0\n");
    }
    Path file = folder.resolve("coarse.csv");
    Files.writeString(file, csv);
    String map = " --columns time=time_s:s,height=height_m:m,ground_speed=ground_speed_kt:kt";
    String review = "review " + file + map + ",track=track_deg:deg";
    String words = Run.words(review);
    String expected = "HEIGHTS ARE WRITTEN IN STEPS OF" + said + " (sd).";
    assertEquals(!said.isEmpty(), words.contains(expected), words);
    assertEquals(!said.isEmpty(), words.contains("HEIGHTS ARE WRITTEN IN STEPS"), words);
    // the vertical speed shows what the heights do not
    String more = Run.words(review + ",vertical_speed=climb_fpm:fpm");
    assertFalse(more.contains("HEIGHTS ARE WRITTEN IN STEPS"), more);
  }
}
