package io.github.ringstate.instructor;

import java.io.ByteArrayOutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Assertions;

/** Runs of the tool whose output is bytes. */
final class Documents {

  private Documents() {}

  static byte[] of(String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    StringWriter err = new StringWriter();
    int status = Main.commandLine(out).setErr(new PrintWriter(err, true)).execute(args);
    Assertions.assertEquals(0, status, err.toString());
    return out.toByteArray();
  }
}
