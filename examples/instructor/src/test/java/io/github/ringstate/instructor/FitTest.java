package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.ringstate.Soak;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.FittedModel;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.FlightLimits;
import io.github.ringstate.files.craft.CraftFile;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.recording.Channel;
import io.github.ringstate.recording.Instruments;
import io.github.ringstate.recording.Noise;
import io.github.ringstate.recording.Recording;
import io.github.ringstate.study.ModelRevision;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code fit}, and what takes a craft that it wrote. */
class FitTest {

  private static final String ONE_NUMBER = " --parameters ring_exit_total_inflow";

  @TempDir private static Path folder;

  private static String report = "";

  private static String path(String name) {
    return folder.resolve(name).toString();
  }

  @BeforeAll
  static void fitsTwoInventedRecordings() throws IOException {
    write("one.csv", Technique.FORWARD, 0.8, 3);
    write("two.csv", Technique.LATERAL, 1, 4);
    Run.line(
        "fit "
            + path("one.csv")
            + " "
            + path("two.csv")
            + ONE_NUMBER
            + " --craft-file "
            + path("fitted.toml")
            + " --output "
            + path("report.txt"));
    report = Files.readString(folder.resolve("report.txt"));
  }

  /** Twice a second, the standard craft and technique; the noise is assumed. */
  private static void write(String name, Technique technique, double delay, long seed)
      throws IOException {
    Instruments instruments =
        new Instruments(2, Noise.of(1, 1, 0.3, 0.2), 0.1, FastMath.toRadians(0.3), 0.1, true);
    Recording recording =
        instruments.record(
            Encounter.of(DemoCraft.TRAINER)
                .withLimits(FlightLimits.STANDARD.with(FlightLimits.TIME_PAST_ARREST, 3))
                .withRecovery(technique.standard())
                .withDelay(delay),
            seed);
    StringBuilder text =
        new StringBuilder(
            "time_s,height_m,vertical_speed_m_per_s,ground_speed_m_per_s,track_rad,pitch_rad,"
                + "bank_rad,collective_share,rotor_speed_share\n");
    for (int k = 0; k < recording.size(); k++) {
      text.append(recording.time(k));
      for (Channel channel :
          List.of(
              Channel.HEIGHT,
              Channel.VERTICAL_SPEED,
              Channel.GROUND_SPEED,
              Channel.TRACK,
              Channel.PITCH,
              Channel.BANK,
              Channel.COLLECTIVE,
              Channel.ROTOR_SPEED)) {
        text.append(',').append(recording.value(channel, k));
      }
      text.append('\n');
    }
    Files.writeString(folder.resolve(name), text);
  }

  @Test
  void theReportSaysWhatWasFittedAndCarriesTheCaution() {
    String said = report.replaceAll("\\s+", " ");
    assertTrue(said.contains("fitted to 2 recorded encounters"), said);
    assertTrue(said.contains("ring exit total inflow"), said);
    assertTrue(said.contains(Caution.TEXT), said);
  }

  @Test
  void theCraftIsReadBackWithItsFitAndIsTheSameOnAnyDay() throws IOException {
    Helicopter craft = CraftFile.read(path("fitted.toml")).craft();
    FittedModel model = craft.fitted().orElseThrow();
    assertEquals(2, model.encounters());
    assertEquals(List.of(path("one.csv"), path("two.csv")), model.recordings());
    assertEquals(ModelRevision.current(), model.revision());
    assertEquals("none", model.date());
    assertEquals(
        model.numbers().median(0), craft.inflow().numbers().get(RingStateInflow.EXIT_TOTAL));
    assertEquals(DemoCraft.TRAINER.numbers(), craft.numbers());
    Run.line("craft " + path("fitted.toml") + " --output " + path("again.toml"));
    assertEquals(craft, CraftFile.read(path("again.toml")).craft());
  }

  private static String small(String command) {
    return command + " --craft " + path("fitted.toml") + " --recovery forward --pilots 16";
  }

  @Test
  void lossSaysWhatItsBandsInclude() throws IOException {
    String said = Run.words(small("loss --delays 1"));
    assertTrue(said.contains("fitted to 2 recorded encounters of"), said);
    assertTrue(said.contains("bands of simulated pilots include what they leave open"), said);
    assertTrue(!said.contains("NOTICE"), said);
    assertTrue(said.contains("ft by the fitted numbers alone. The rest is the form"), said);
    JsonNode json = Run.json(small("loss --delays 1"));
    assertEquals(2, json.findPath("craft_fit_encounters").intValue());
    assertTrue(feet(json, "fit_low_ft") < feet(json, "fit_numbers_low_ft"), json::toString);
    assertTrue(feet(json, "fit_numbers_low_ft") < feet(json, "fit_numbers_high_ft"));
    assertTrue(feet(json, "fit_numbers_high_ft") < feet(json, "fit_high_ft"), json::toString);
  }

  private static double feet(JsonNode json, String field) {
    return json.findPath(field).doubleValue();
  }

  @Test
  void floorTakesItAndSaysWhereTheModelIsAnother() throws IOException {
    Path other = folder.resolve("other.toml");
    Files.writeString(
        other,
        Files.readString(folder.resolve("fitted.toml"))
            .replaceAll("(?m)^revision = .*$", "revision = \"0\""));
    String line = small("floor --state primed").replace("fitted.toml", "other.toml");
    String said = Run.words(line);
    assertTrue(said.contains("NOTICE: it was fitted with model 0"), said);
    assertTrue(Run.json(line).findPath("craft_fit").asText().contains("NOTICE"));
    String lesson = Run.words("lesson --craft " + other + " --recovery forward --pilots 16");
    assertTrue(lesson.contains("NOTICE: it was fitted with model 0"), lesson);
  }

  private static void assertRefused(String command, String why) {
    Run run = Run.typed(command);
    assertTrue(run.status() == UserError.USAGE || run.status() == UserError.FILE, run.err());
    assertEquals(1, run.err().lines().count(), run.err());
    assertTrue(run.err().contains(why), run.err());
  }

  @Test
  void otherModelsWouldCountTheSameTwice() {
    assertRefused(small("loss --models 2"), "--models has no place with a fitted craft");
    assertRefused(small("floor --models 2"), "--models has no place with a fitted craft");
  }

  @Test
  void aSweepRefusesItInOneSentence() throws IOException {
    Files.writeString(
        folder.resolve("sweep.toml"), "[craft]\nname = [\"" + path("fitted.toml") + "\"]\n");
    assertRefused(
        "sweep " + path("sweep.toml") + " --output " + path("s.csv"), "is fitted to recordings");
  }

  @Test
  void whatTheDataCannotSupportIsRefusedWithTheReason() throws IOException {
    Run few = Run.typed("fit " + path("one.csv") + ONE_NUMBER);
    assertEquals(UserError.FILE, few.status(), "it is the data that are at fault");
    assertTrue(few.err().contains("support no fit: two encounters"), few.err());
    Files.copy(folder.resolve("one.csv"), folder.resolve("copy.csv"));
    assertRefused("fit " + path("one.csv") + " " + path("copy.csv") + ONE_NUMBER, "count once");
    assertRefused(
        "fit " + path("one.csv") + " --craft " + path("fitted.toml"), "--craft is fitted already");
    assertRefused(
        "fit "
            + path("one.csv")
            + " "
            + path("two.csv")
            + ONE_NUMBER
            + " --craft-file "
            + path("no.toml")
            + " --date 31.1.2030",
        "--date cannot be");
  }

  @Test
  void aFileThatCannotBeWrittenIsSaidBeforeAnyRecordingIsRead() {
    assertRefused("fit none.csv --craft-file " + path("no/folder.toml"), "folder.toml");
  }

  @Test
  void aRerunLeavesACraftFileOfAnotherContentAlone() throws IOException {
    String craft = Files.readString(folder.resolve("fitted.toml"));
    if (Soak.isWhole()) {
      Run.line("rerun " + path("report.txt"));
    }
    Files.writeString(folder.resolve("fitted.toml"), craft + "# mine\n");
    assertRefused("rerun " + path("report.txt"), "holds another craft");
    assertEquals(craft + "# mine\n", Files.readString(folder.resolve("fitted.toml")));
    Files.writeString(folder.resolve("fitted.toml"), craft);
  }

  /** A minute before the descent it went the other way, as in a circuit. */
  @Test
  @Tag("soak")
  @EnabledIfSystemProperty(named = Soak.PROPERTY, matches = "true")
  void whatWasFlownBeforeDoesNotTurnTheWindOfTheEntry() throws IOException {
    List<String> rows = Files.readAllLines(folder.resolve("one.csv"));
    List<String> circuit = new ArrayList<>();
    circuit.add(rows.get(0));
    String[] first = rows.get(1).split(",", -1);
    SplittableRandom random = new SplittableRandom(1);
    for (int k = 0; k < 120; k++) {
      String[] row = first.clone();
      row[0] = String.valueOf(0.5 * k - 130);
      // as uncertain as the instruments of the descent
      row[1] = String.valueOf(Double.parseDouble(first[1]) + random.nextGaussian());
      row[2] = String.valueOf(0.2 * random.nextGaussian());
      row[3] = "30";
      row[4] = String.valueOf(FastMath.PI);
      circuit.add(String.join(",", row));
    }
    circuit.addAll(rows.subList(1, rows.size()));
    Files.write(folder.resolve("circuit.csv"), circuit);
    String line = "fit " + path("circuit.csv") + " " + path("two.csv") + ONE_NUMBER;
    Run.line(line);
  }
}
