package io.github.ringstate.instructor.sweep;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.Soak;
import io.github.ringstate.files.row.ParquetTable;
import io.github.ringstate.instructor.Interrupts;
import io.github.ringstate.instructor.JarRun;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Runs of the jar that are killed by the system, and go on. */
@Tag("soak")
class SweepKillIT {

  /**
   * 64,000 rows in four chunks. Nine in ten are quick to come by, their mass beyond the craft's
   * limits, so that there is a kill in the middle of every kind of work.
   */
  private static final String SWEEP =
      """
      seed = 5
      [craft]
      mass_kg = { from = 600, to = 800, values = 800 }
      [pilot]
      technique = ["forward", "lateral"]
      delay_s = { from = 0, to = 2, values = 40 }
      """;

  private static final int ROWS = 64_000;

  /** In all, over both forms of output, 50 in the long run. */
  private static final int KILLS = Soak.isWhole() ? 25 : 1;

  @TempDir static Path folder = Path.of("");

  @BeforeAll
  static void writeSweep() throws IOException {
    Files.writeString(folder.resolve("sweep.toml"), SWEEP);
  }

  private static Process start(Path spec, Path out, String... more) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(JarRun.QUICK_START);
    command.add("-Xmx256m");
    command.addAll(List.of("-jar", requireNonNull(System.getProperty("ringstate.jar"))));
    command.addAll(List.of("sweep", spec.toString(), "--output", out.toString()));
    command.addAll(List.of(more));
    return new ProcessBuilder(command)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .redirectError(folder.resolve("err.txt").toFile())
        .start();
  }

  private static void assertEnds(Process process) throws IOException, InterruptedException {
    assertEquals(0, process.waitFor(), Files.readString(folder.resolve("err.txt")));
  }

  private static long size(Path file) {
    return file.toFile().length();
  }

  /**
   * Kills a run soon after it has put another chunk in its journal; true if it was still at work.
   */
  private static boolean kill(Process process, Path journal, SplittableRandom random)
      throws InterruptedException {
    long before = size(journal);
    while (process.isAlive() && size(journal) <= before) {
      TimeUnit.MILLISECONDS.sleep(1);
    }
    TimeUnit.MILLISECONDS.sleep(random.nextInt(150));
    boolean atWork = process.isAlive();
    process.destroyForcibly(); // SIGKILL
    process.waitFor();
    return atWork;
  }

  @ParameterizedTest
  @ValueSource(strings = {"csv", "parquet"})
  void aRunKilledAgainAndAgainEndsWithTheRowsOfAnUndisturbedOne(String ending)
      throws IOException, InterruptedException {
    Path spec = folder.resolve("sweep.toml");
    Path undisturbed = folder.resolve("undisturbed." + ending);
    assertEnds(start(spec, undisturbed));
    SplittableRandom random = new SplittableRandom(ending.length());
    int killed = 0;
    while (killed < KILLS) {
      Path out = folder.resolve("killed." + ending);
      Files.deleteIfExists(out);
      int more = killed(spec, out, random, KILLS - killed);
      assertTrue(more > 0, "no run was killed at work");
      killed += more;
      if (ending.equals("csv")) {
        assertArrayEquals(Files.readAllBytes(undisturbed), Files.readAllBytes(out));
      } else {
        assertSameRows(ParquetTable.read(undisturbed), ParquetTable.read(out));
      }
    }
  }

  /** Runs a sweep to its end over so many kills at most; returns how many there were. */
  private static int killed(Path spec, Path out, SplittableRandom random, int most)
      throws IOException, InterruptedException {
    Path journal = out.resolveSibling(out.getFileName() + ".journal");
    int killed = 0;
    while (killed < most && !Files.exists(out)) {
      // another number of threads each time: the rows do not depend on it
      String[] more = {"--resume", "--threads", String.valueOf(1 + killed % 3)};
      if (kill(start(spec, out, more), journal, random)) {
        killed++;
        assertTrue(Files.exists(journal) || Files.exists(out));
      }
    }
    if (!Files.exists(out) || Files.exists(journal)) {
      assertEnds(start(spec, out, "--resume"));
    }
    assertFalse(Files.exists(journal));
    return killed;
  }

  private static long chunks(Path journal) throws IOException {
    return Files.exists(journal)
        ? Files.readAllLines(journal).stream().filter(line -> line.startsWith("chunk ")).count()
        : 0;
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void anInterruptedRunSaysHowManyRowsAreKeptAndGoesOnWithResume()
      throws IOException, InterruptedException {
    Interrupts.assumeHeard();
    Path spec = folder.resolve("sweep.toml");
    Path undisturbed = folder.resolve("whole.csv");
    assertEnds(start(spec, undisturbed));
    Path out = folder.resolve("interrupted.csv");
    Path journal = folder.resolve("interrupted.csv.journal");
    Process process = start(spec, out);
    // a second chunk in the journal means that the first is there for good
    while (process.isAlive() && chunks(journal) < 2) {
      TimeUnit.MILLISECONDS.sleep(1);
    }
    new ProcessBuilder("kill", "-INT", Long.toString(process.pid())).start().waitFor();
    // 128 and the number of SIGINT: common practice, no source
    assertEquals(130, process.waitFor());
    String message = Files.readString(folder.resolve("err.txt"));
    assertTrue(
        message.matches(
            "ringstate sweep: interrupted; [1-9][0-9]* of 64000 rows are kept, and the same"
                + " command with --resume goes on\n"),
        message);
    assertFalse(Files.exists(out));
    assertEnds(start(spec, out, "--resume"));
    assertArrayEquals(Files.readAllBytes(undisturbed), Files.readAllBytes(out));
  }

  private static void assertSameRows(ParquetTable expected, ParquetTable actual) {
    assertEquals(ROWS, actual.records().size());
    assertEquals(expected.header(), actual.header());
    Set<String> indices = new HashSet<>();
    for (int i = 0; i < ROWS; i++) {
      assertEquals(expected.records().get(i), actual.records().get(i));
      indices.add(actual.records().get(i).get(0));
    }
    assertEquals(ROWS, indices.size());
  }

  @Test
  void aRunThatWasKilledDoesNotGoOnWithAnotherSweep() throws IOException, InterruptedException {
    Path out = folder.resolve("other.csv");
    Path journal = folder.resolve("other.csv.journal");
    while (!kill(start(folder.resolve("sweep.toml"), out), journal, new SplittableRandom(1))) {
      Files.delete(out);
    }
    Path changed =
        Files.writeString(folder.resolve("changed.toml"), SWEEP.replace("seed = 5", "seed = 6"));
    Set<String> kept = names("other.");
    Process refused = start(changed, out, "--resume");
    assertEquals(1, refused.waitFor());
    String message = Files.readString(folder.resolve("err.txt"));
    assertTrue(message.contains("cannot go on"), message);
    assertEquals(1, message.lines().count(), message);
    assertEquals(kept, names("other."));
    assertEnds(start(folder.resolve("sweep.toml"), out, "--resume"));
  }

  private static Set<String> names(String beginning) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> String.valueOf(file.getFileName()))
          .filter(name -> name.startsWith(beginning))
          .collect(Collectors.toSet());
    }
  }
}
