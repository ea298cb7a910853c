package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Interrupts from the keyboard, for tests that send them. */
public final class Interrupts {

  private Interrupts() {}

  /** A build in the background of a script is deaf to interrupts, and its children with it. */
  public static void assumeHeard() throws IOException {
    String ignored =
        Files.readAllLines(Path.of("/proc/self/status")).stream()
            .filter(line -> line.startsWith("SigIgn:"))
            .findFirst()
            .orElseThrow()
            .replaceFirst("SigIgn:\\s*", "");
    // the lowest bit stands for signal 1, the next for SIGINT (proc(5))
    assumeTrue((Long.parseUnsignedLong(ignored, 16) & 2) == 0, "interrupts are ignored here");
  }
}
