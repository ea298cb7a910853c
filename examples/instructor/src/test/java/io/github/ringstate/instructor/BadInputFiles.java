package io.github.ringstate.instructor;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The files that bad inputs name. */
final class BadInputFiles {

  private static final String LINE = "LINE ";

  private BadInputFiles() {}

  static void write(Path folder) throws IOException {
    String trainer = Run.of("craft", "trainer").out();
    for (List<String> change : BadInput.FILES) {
      String changed = trainer.replace(change.get(1), change.get(2));
      assertTrue(!changed.equals(trainer), change.get(0) + " changes nothing");
      Files.writeString(folder.resolve(change.get(0)), changed);
    }
    Files.write(folder.resolve("no-text.toml"), new byte[] {'a', '=', (byte) 0xFC, '\n'});
    Files.write(folder.resolve("large.toml"), "# nothing\n".repeat(10_000).getBytes(UTF_8));
    Files.writeString(folder.resolve("empty.toml"), "");
  }

  private static int lastLine(Path file, String text) {
    try {
      List<String> lines = Files.readAllLines(file);
      int line = lines.size();
      while (!lines.get(line - 1).contains(text)) {
        line--;
      }
      return line;
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  static String[] args(BadInput bad, Path folder) {
    return bad.args().stream()
        .map(arg -> arg.replace("DIR", folder.toString()))
        .toArray(String[]::new);
  }

  static void assertRefused(BadInput bad, Path folder, Run run) {
    assertEquals(bad.status(), run.status(), run.err());
    assertEquals("", run.out(), "nothing on standard output");
    for (String part : bad.message()) {
      String expected =
          part.startsWith(LINE)
              ? "line " + lastLine(folder.resolve(bad.what()), part.substring(LINE.length())) + ":"
              : part.replace("DIR", folder.toString());
      assertTrue(run.err().contains(expected), expected + " is not in " + run.err());
    }
    // One sentence, perhaps with a hint where to find help; never a stack trace.
    assertTrue(run.err().lines().count() <= 2, run.err());
    assertTrue(!run.err().contains("Exception") && !run.err().contains("\tat "), run.err());
    assertTrue(run.err().startsWith("ringstate"), run.err());
  }
}
