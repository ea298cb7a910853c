package io.github.ringstate.instructor;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is no text is not poured into a terminal; script(1) of util-linux gives one. */
class BinaryOutputTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "loss --delays 1 --format pdf",
        "boundary --format png",
        "equilibria --format parquet"
      })
  @EnabledOnOs(OS.LINUX)
  void aTerminalGetsNoBinaryOutput(String command) throws IOException, InterruptedException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    ProcessBuilder script =
        new ProcessBuilder(
                "script",
                "-qec",
                "'" + java + "' " + Main.class.getName() + " " + command,
                "/dev/null")
            .redirectErrorStream(true)
            .redirectInput(Path.of("/dev/null").toFile());
    script.environment().put("CLASSPATH", System.getProperty("java.class.path"));
    Process process = script.start();
    String said = new String(process.getInputStream().readAllBytes(), UTF_8);
    assertTrue(process.waitFor(60, TimeUnit.SECONDS));
    assertEquals(2, process.exitValue(), said);
    assertTrue(said.contains("is no text for a terminal"), said);
  }
}
