package io.github.ringstate.instructor;

import java.io.ByteArrayOutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
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

  static byte[] of(String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    StringWriter err = new StringWriter();
    int status = Main.commandLine(out).setErr(new PrintWriter(err, true)).execute(args);
    Assertions.assertEquals(0, status, err.toString());
    return out.toByteArray();
  }
}
