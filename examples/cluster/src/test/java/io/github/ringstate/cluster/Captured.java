package io.github.ringstate.cluster;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;

/** What a run in this process printed. */
final class Captured {

  private final ByteArrayOutputStream outBytes = new ByteArrayOutputStream();
  private final ByteArrayOutputStream errBytes = new ByteArrayOutputStream();
  private final PrintStream out = new PrintStream(outBytes, true, UTF_8);
  private final PrintStream err = new PrintStream(errBytes, true, UTF_8);

  PrintStream out() {
    return out;
  }

  PrintStream err() {
    return err;
  }

  String outText() {
    return outBytes.toString(UTF_8);
  }

  String errText() {
    return errBytes.toString(UTF_8);
  }
}
