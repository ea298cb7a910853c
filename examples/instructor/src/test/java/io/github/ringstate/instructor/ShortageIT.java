package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A machine that lacks something: one sentence says what. */
class ShortageIT {

  private static void assertSentence(Run run, String says) {
    assertEquals(1, run.status(), run.err());
    assertEquals("", run.out());
    // from JDK 24 on the virtual machine warns of a missing folder in a line of its own
    Predicate<String> ofTheMachine = line -> line.startsWith("WARNING: java.io.tmpdir");
    List<String> said = run.err().lines().filter(ofTheMachine.negate()).toList();
    assertEquals(1, said.size(), run.err());
    assertTrue(run.err().contains(says), run.err());
  }

  @ParameterizedTest
  @ValueSource(strings = {"svg", "png"})
  void withoutATemporaryFolderTheSentenceNamesIt(String format)
      throws IOException, InterruptedException {
    String command = "boundary --step-kt 5 --format " + format;
    Run run = JarRun.of(List.of("-Djava.io.tmpdir=/nonexistent"), command.split(" ", -1));
    assertSentence(run, "-Djava.io.tmpdir=/nonexistent cannot");
  }

  @ParameterizedTest
  @ValueSource(strings = "-Xmx10m")
  void withoutMemoryTheSentenceSaysHowToGiveMore(String heap)
      throws IOException, InterruptedException {
    assertSentence(
        JarRun.of(JarRun.plain(List.of(heap), "loss", "--delays", "0", "--format", "pdf")),
        "-Xmx512m");
  }

  @Test
  void withoutEitherTextIsStillPrinted() throws IOException, InterruptedException {
    Run run = JarRun.of(List.of("-Djava.io.tmpdir=/nonexistent"), "loss", "--delays", "0");
    assertEquals(0, run.status(), run.err());
  }
}
