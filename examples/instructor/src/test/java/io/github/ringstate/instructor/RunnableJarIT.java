package io.github.ringstate.instructor;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The jar as a user gets it, in a virtual machine of its own. */
class RunnableJarIT {

  @Test
  void theJarRunsAloneAndKnowsItsVersion() throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-jar",
                property("ringstate.jar"),
                "--version")
            .redirectErrorStream(true)
            .start();
    String printed = new String(process.getInputStream().readAllBytes(), UTF_8);
    assertEquals(0, process.waitFor(), printed);
    assertEquals("ringstate " + property("ringstate.version"), printed.lines().findFirst().get());
  }

  private static String property(String name) {
    return requireNonNull(System.getProperty(name), name);
  }
}
