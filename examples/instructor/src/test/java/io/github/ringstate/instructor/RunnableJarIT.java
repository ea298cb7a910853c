package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The jar as a user gets it, in a virtual machine of its own. */
class RunnableJarIT {

  @TempDir static Path folder = Path.of("");

  @BeforeAll
  static void files() throws IOException {
    BadInputFiles.write(folder);
  }

  private static Run run(String command) throws IOException, InterruptedException {
    return JarRun.of(List.of(), command.split(" ", -1));
  }

  @Test
  void theJarRunsAloneAndKnowsItsVersion() throws IOException, InterruptedException {
    Run run = run("--version");
    assertEquals(0, run.status(), run.err());
    assertEquals("ringstate " + JarRun.property("ringstate.version"), run.lines().get(0));
  }

  /** Every thirtieth one, to save time: all of them run inside one virtual machine elsewhere. */
  static List<BadInput> bad() {
    return IntStream.range(0, BadInput.ALL.size())
        .filter(i -> i % 30 == 0)
        .mapToObj(BadInput.ALL::get)
        .toList();
  }

  @ParameterizedTest
  @MethodSource("bad")
  void badInputIsRefused(BadInput bad) throws IOException, InterruptedException {
    BadInputFiles.assertRefused(bad, folder, JarRun.of(List.of(), BadInputFiles.args(bad, folder)));
  }

  @Test
  void aFileHoldsWhatTheTerminalWouldShow() throws IOException, InterruptedException {
    Path file = Files.writeString(folder.resolve("table.csv"), "old");
    String command = "loss --format csv --delays 0";
    assertEquals(new Run(0, "", ""), run(command + " --output " + file));
    assertEquals(run(command).out(), Files.readString(file));
  }

  @ParameterizedTest
  @ValueSource(strings = {"craft", "--help"})
  @EnabledOnOs(OS.LINUX)
  void aFullDiskBehindStandardOutputIsReported(String command)
      throws IOException, InterruptedException {
    File err = Files.createTempFile(folder, "err", ".txt").toFile();
    Process process =
        JarRun.process(List.of(), command.split(" ", -1))
            .redirectOutput(new File("/dev/full"))
            .redirectError(err)
            .start();
    assertEquals(1, process.waitFor());
    String message = Files.readString(err.toPath());
    assertTrue(message.contains("standard output cannot be written"), message);
    assertEquals(1, message.lines().count(), message);
  }

  @Test
  void aReaderThatHasSeenEnoughIsNoError() throws IOException, InterruptedException {
    File err = Files.createTempFile(folder, "err", ".txt").toFile();
    Process process = JarRun.process(List.of(), "fly", "--step", "0.01").redirectError(err).start();
    try (InputStream out = process.getInputStream()) {
      assertTrue(out.read() > 0);
    }
    assertEquals(0, process.waitFor());
    assertEquals("", Files.readString(err.toPath()));
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void aPipeIsNoFileToBeReplaced() throws IOException, InterruptedException {
    Run run = run("craft --output /dev/stdout");
    assertEquals(
        new Run(
            1,
            "",
            "ringstate craft: /dev/stdout cannot be written: it is not a plain file, and only a"
                + " plain file can be replaced as a whole\n"),
        run);
  }

  /** Interrupts the tool as a keyboard does, some time after it began. */
  private static int interrupted(long milliseconds, String command)
      throws IOException, InterruptedException {
    Process process =
        JarRun.process(List.of(), command.split(" ", -1))
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    try {
      if (!process.waitFor(milliseconds, TimeUnit.MILLISECONDS)) {
        new ProcessBuilder("kill", "-INT", Long.toString(process.pid())).start().waitFor();
      }
      assertTrue(process.waitFor(20, TimeUnit.SECONDS), "it goes on after an interrupt");
    } finally {
      process.destroyForcibly();
    }
    return process.exitValue();
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void anInterruptedComputationEndsAndLeavesTheOldFileAndNothingElse()
      throws IOException, InterruptedException {
    Interrupts.assumeHeard();
    Path place = Files.createDirectory(folder.resolve("interrupted"));
    Path file = Files.writeString(place.resolve("floor.csv"), "old");
    // a million pilots take minutes
    String command = "floor --pilots 1000000 --format csv --output " + file;
    // 128 and the number of SIGINT, as shells have it (POSIX, Shell Command Language, 2.8.2, says
    // more than 128; common practice for the rest)
    assertEquals(130, interrupted(2500, command));
    assertEquals("old", Files.readString(file));
    assertHoldsOnly(place, "floor.csv");
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void aFileIsOldOrNewWheneverTheInterruptComes() throws IOException, InterruptedException {
    Interrupts.assumeHeard();
    Path place = Files.createDirectory(folder.resolve("whenever"));
    String command = "fly --step 0.01 --format csv";
    String whole = run(command).out();
    Path file = place.resolve("fly.csv");
    Path beside = place.resolve("fly.csv.provenance.json"); // where it came from, written last
    int status = 130;
    for (int i = 0; i < 16 && status != 0; i++) {
      Files.writeString(file, "old");
      status = interrupted(100 + 60L * i, command + " --output " + file);
      String found = Files.readString(file);
      assertTrue(status == 130 || status == 0, "status " + status);
      boolean written = status == 0 || !found.equals("old");
      assertEquals(written ? whole : "old", found);
      assertTrue(status != 0 || Files.exists(beside), "a run that ended wrote all");
      if (written) {
        Files.deleteIfExists(beside);
      }
      assertHoldsOnly(place, "fly.csv");
    }
  }

  private static void assertHoldsOnly(Path place, String name) throws IOException {
    try (Stream<Path> files = Files.list(place)) {
      assertEquals(List.of(name), files.map(file -> file.getFileName().toString()).toList());
    }
  }
}
