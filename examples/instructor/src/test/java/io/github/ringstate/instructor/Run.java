package io.github.ringstate.instructor;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;

/**
 * What a run of the tool left behind.
 *
 * @param status the exit status
 * @param out what it printed
 * @param err what it complained of
 */
public record Run(int status, String out, String err) {

  /** Runs the tool in this virtual machine. */
  public static Run of(String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    StringWriter err = new StringWriter();
    int status = Main.commandLine(out).setErr(new PrintWriter(err, true)).execute(args);
    return new Run(status, out.toString(UTF_8), err.toString());
  }

  /** What it printed, line by line. */
  public List<String> lines() {
    return out.lines().toList();
  }
}
