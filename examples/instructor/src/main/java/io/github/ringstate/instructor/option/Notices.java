package io.github.ringstate.instructor.option;

import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;

/** What a command says beside its result, on standard error. */
public final class Notices {

  private Notices() {}

  /**
   * Prints notices.
   *
   * @param notices one sentence each
   * @param spec the command
   */
  public static void print(List<String> notices, CommandSpec spec) {
    PrintWriter err = spec.commandLine().getErr();
    notices.forEach(notice -> err.println(spec.qualifiedName() + ": " + notice));
  }
}
