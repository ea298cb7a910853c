package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a craft brings into the planning of runs. */
class RunsCraftTest {

  @Test
  void theTailRotorsSectorsAreMirroredForARotorThatTurnsTheOtherWay() {
    // FAA AC 90-95 (from memory): 210 to 330 deg from the nose for a rotor turning
    // counter-clockwise seen from above; for the other sense the mirror image, 30 to 150.
    assertTrue(RunsTest.text("").replaceAll("\\s+", " ").contains("210 to 330 deg"));
    assertTrue(RunsTest.text("--craft utility").replaceAll("\\s+", " ").contains("30 to 150 deg"));
  }

  @Test
  void theHeightVelocityCurveOfACraftFileIsJudgedBesideTheRun(@TempDir Path folder)
      throws IOException {
    Path file = folder.resolve("craft.toml");
    Files.writeString(
        file,
        Run.of("craft", "trainer")
            .out()
            .replaceFirst(
                "description =", "height_velocity_kt_ft = [[0, 400], [45, 90]]\ndescription ="));
    String args = "--calm --ground-speed-kt 35 --lowest-height-ft 100 --craft " + file;
    String said = RunsTest.text(args).replaceAll("\\s+", " ");
    assertTrue(said.contains("0 kt at 400 ft, 45 kt at 90 ft"), said);
    // 32 kt at the least in calm air; by the chord from 400 to 90 ft the area to avoid reaches to
    // 29.03 kt at 200 ft, 36.3 at 150 ft, and not to 500 ft
    assertEquals("fly", RunsTest.records(args + " --height-ft 200").get(0).get("verdict"));
    CSVRecord low = RunsTest.records(args + " --height-ft 150").get(0);
    assertEquals("not as planned", low.get("verdict"));
    assertTrue(low.get("reason").contains("37 kt or more take 40 kt"), low.get("reason"));
    assertTrue(RunsTest.text(args + " --height-ft 150").contains("height-velocity area"));
    assertEquals("fly", RunsTest.records(args + " --height-ft 500").get(0).get("verdict"));
    assertTrue(RunsTest.text("").contains("NOT JUDGED"));
  }
}
