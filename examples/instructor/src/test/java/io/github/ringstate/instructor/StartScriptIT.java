package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The script that starts the tool, and the archive of class data that it starts it with. */
class StartScriptIT {

  @TempDir static Path folder = Path.of("");

  private static Run script(Path script, String... args) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of("sh", script.toString()));
    command.addAll(List.of(args));
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
    return JarRun.of(builder);
  }

  @ParameterizedTest
  @ValueSource(strings = {"loss", "loss --pilots 20 --delays 0", "craft heavy", "runs --wind 3"})
  @EnabledOnOs(OS.LINUX)
  void theScriptRunsTheJar(String command) throws IOException, InterruptedException {
    String[] args = command.split(" ", -1);
    assertEquals(JarRun.of(List.of(), args), script(Path.of("ringstate").toAbsolutePath(), args));
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void theScriptRunsTheJarBesideItWithoutAnArchiveAndThroughALink()
      throws IOException, InterruptedException {
    Path place = Files.createDirectory(folder.resolve("a place"));
    Files.copy(Path.of("ringstate"), place.resolve("ringstate"));
    Files.copy(Path.of(JarRun.property("ringstate.jar")), place.resolve("ringstate.jar"));
    Path link = Files.createSymbolicLink(folder.resolve("link"), place.resolve("ringstate"));
    assertEquals(JarRun.of(List.of(), "craft"), script(link, "craft"));
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void withoutTheJarTheScriptSaysWhatIsMissing() throws IOException, InterruptedException {
    Path place = Files.createDirectory(folder.resolve("no jar"));
    Files.copy(Path.of("ringstate"), place.resolve("ringstate"));
    Run run = script(place.resolve("ringstate"), "craft");
    assertEquals(1, run.status());
    assertEquals("", run.out());
    assertTrue(
        run.err().matches("ringstate: .*ringstate.jar is missing; README.md .*\n"), run.err());
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void theBuildLeavesAnArchiveOfClassDataThatIsUsed() throws IOException, InterruptedException {
    Path archive = Path.of(JarRun.property("ringstate.jar")).resolveSibling("ringstate.jsa");
    List<String> options = List.of("-XX:SharedArchiveFile=" + archive, "-Xlog:class+load");
    String loaded = JarRun.of(options, "craft").out();
    assertTrue(
        loaded.lines().anyMatch(line -> line.matches(".*ringstate\\.craft\\..*shared objects.*")),
        "no class of the library comes from the archive");
  }

  /** A virtual machine that maps an archive cut short is killed by the system. */
  @ParameterizedTest
  @ValueSource(doubles = {0.3, 0.99})
  @EnabledOnOs(OS.LINUX)
  void anArchiveThatWasCutShortIsPassedOver(double share) throws IOException, InterruptedException {
    Path place = copied("cut " + share);
    Path archive = place.resolve("ringstate.jsa");
    byte[] whole = Files.readAllBytes(archive);
    Files.write(archive, Arrays.copyOf(whole, (int) (share * whole.length)));
    assertEquals(JarRun.of(List.of(), "craft"), script(place.resolve("ringstate"), "craft"));
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 4_000_000})
  @EnabledOnOs(OS.LINUX)
  void anArchiveThatWasOverwrittenIsPassedOver(int from) throws IOException, InterruptedException {
    Path place = copied("overwritten " + from);
    Path archive = place.resolve("ringstate.jsa");
    byte[] bytes = Files.readAllBytes(archive);
    byte[] noise = new byte[20_000];
    new SplittableRandom(from).nextBytes(noise);
    System.arraycopy(noise, 0, bytes, from, noise.length);
    Files.write(archive, bytes);
    assertEquals(JarRun.of(List.of(), "craft"), script(place.resolve("ringstate"), "craft"));
  }

  /** The jar, the archive and the script somewhere else, with the times that they had. */
  private static Path copied(String name) throws IOException {
    Path place = Files.createDirectory(folder.resolve(name));
    Path built = Path.of(JarRun.property("ringstate.jar")).getParent();
    for (String file : List.of("ringstate.jar", "ringstate.jsa", "ringstate.jsa.size")) {
      Files.copy(built.resolve(file), place.resolve(file), StandardCopyOption.COPY_ATTRIBUTES);
      assertTrue(place.resolve(file).toFile().setWritable(true));
    }
    Files.copy(Path.of("ringstate"), place.resolve("ringstate"));
    return place;
  }
}
