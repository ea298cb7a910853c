package io.github.ringstate.instructor;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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

  /** Less work for the compiler in a run that is over before it pays. */
  private static final List<String> QUICK_START =
      List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC");

  @TempDir static Path folder = Path.of("");

  @BeforeAll
  static void files() throws IOException {
    BadInputFiles.write(folder);
  }

  private static ProcessBuilder jar(List<String> options, String... args) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(options);
    command.addAll(List.of("-jar", property("ringstate.jar")));
    command.addAll(List.of(args));
    return new ProcessBuilder(command);
  }

  private static Run run(List<String> options, String... args)
      throws IOException, InterruptedException {
    File err = Files.createTempFile(folder, "err", ".txt").toFile();
    Process process = jar(options, args).redirectError(err).start();
    process.getOutputStream().close();
    String out = new String(process.getInputStream().readAllBytes(), UTF_8);
    int status = process.waitFor();
    return new Run(status, out, Files.readString(err.toPath()));
  }

  private static Run run(String... args) throws IOException, InterruptedException {
    return run(List.of(), args);
  }

  private static String property(String name) {
    return requireNonNull(System.getProperty(name), name);
  }

  @Test
  void theJarRunsAloneAndKnowsItsVersion() throws IOException, InterruptedException {
    Run run = run("--version");
    assertEquals(0, run.status(), run.err());
    assertEquals("ringstate " + property("ringstate.version"), run.lines().get(0));
  }

  /** Every second one, to save time: all of them run inside one virtual machine elsewhere. */
  static List<BadInput> bad() {
    return IntStream.range(0, BadInput.ALL.size())
        .filter(i -> i % 2 == 0)
        .mapToObj(BadInput.ALL::get)
        .toList();
  }

  @ParameterizedTest
  @MethodSource("bad")
  void badInputIsRefused(BadInput bad) throws IOException, InterruptedException {
    BadInputFiles.assertRefused(bad, folder, run(QUICK_START, BadInputFiles.args(bad, folder)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "loss",
        "loss --format csv --pressure-altitude-ft 5000",
        "fly --format json",
        "boundary --step-kt 0.5",
        "craft heavy"
      })
  void theOutputIsTheSameTwiceAndUnderAGermanLocale(String command)
      throws IOException, InterruptedException {
    String[] args = command.split(" ", -1);
    Run first = run(args);
    assertEquals(0, first.status(), first.err());
    assertEquals("", first.err());
    assertEquals(first, run(args));
    List<String> german = List.of("-Duser.language=de", "-Duser.country=DE");
    assertEquals(first, run(german, args));
    // and the same as in this virtual machine, whatever ran in it before
    assertEquals(first.out(), Run.of(args).out());
  }

  @Test
  void aPrintedCraftIsTakenBackAndFliesTheSame() throws IOException, InterruptedException {
    String file = folder.resolve("copy.toml").toString();
    assertEquals(new Run(0, "", ""), run("craft", "utility", "--output", file));
    assertEquals(run("craft", "utility").out(), Files.readString(Path.of(file)));
    assertEquals(
        run("loss", "--craft", "utility", "--format", "csv", "--delays", "1"),
        run("loss", "--craft", file, "--format", "csv", "--delays", "1"));
  }

  @Test
  void aFileHoldsWhatTheTerminalWouldShow() throws IOException, InterruptedException {
    Path file = Files.writeString(folder.resolve("table.csv"), "old");
    String[] args = {"loss", "--format", "csv", "--delays", "0"};
    String[] toFile =
        Stream.concat(Stream.of(args), Stream.of("--output", file.toString()))
            .toArray(String[]::new);
    assertEquals(new Run(0, "", ""), run(toFile));
    assertEquals(run(args).out(), Files.readString(file));
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void aFullDiskBehindStandardOutputIsReported() throws IOException, InterruptedException {
    File err = Files.createTempFile(folder, "err", ".txt").toFile();
    Process process =
        jar(List.of(), "craft").redirectOutput(new File("/dev/full")).redirectError(err).start();
    assertEquals(1, process.waitFor());
    String message = Files.readString(err.toPath());
    assertTrue(message.contains("standard output cannot be written"), message);
    assertEquals(1, message.lines().count(), message);
  }

  @Test
  void aReaderThatHasSeenEnoughIsNoError() throws IOException, InterruptedException {
    File err = Files.createTempFile(folder, "err", ".txt").toFile();
    Process process = jar(List.of(), "fly", "--step", "0.01").redirectError(err).start();
    try (InputStream out = process.getInputStream()) {
      assertTrue(out.read() > 0);
    }
    assertEquals(0, process.waitFor());
    assertEquals("", Files.readString(err.toPath()));
  }
}
