package io.github.ringstate.instructor;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import org.junit.jupiter.api.Assertions;

/** Runs of the tool whose output is bytes. */
final class Documents {

  private Documents() {}

  /** Pages and sheets that more than one test looks at, made once. */
  private static final Map<List<String>, byte[]> MADE = new ConcurrentHashMap<>();

  /** What a command prints, made once for all tests; not for files that tests write. */
  static byte[] shared(String... args) {
    return MADE.computeIfAbsent(List.of(args), line -> of(args)).clone();
  }

  /** A page or a picture as text, made once for all tests. */
  static String text(String command) {
    return new String(shared(command.split(" ", -1)), UTF_8);
  }

  /** The trainer under another description. */
  static Path described(String description, Path file) throws IOException {
    return Files.writeString(
        file,
        Run.of("craft", "trainer")
            .out()
            .replaceFirst(
                "description = .*",
                Matcher.quoteReplacement("description = \"" + description + "\"")));
  }

  /** An invented recording that comes with the tool. */
  static byte[] recording(String name) throws IOException {
    try (var in = Main.class.getResourceAsStream("review/invented-" + name)) {
      return in.readAllBytes();
    }
  }

  static byte[] of(String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    StringWriter err = new StringWriter();
    int status = Main.commandLine(out).setErr(new PrintWriter(err, true)).execute(args);
    Assertions.assertEquals(0, status, err.toString());
    return out.toByteArray();
  }
}
