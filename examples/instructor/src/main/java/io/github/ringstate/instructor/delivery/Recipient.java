package io.github.ringstate.instructor.delivery;

import io.github.ringstate.files.report.Report;
import java.io.OutputStream;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;

/** Takes a report: a file, a stream, or a program that shows it itself. */
@FunctionalInterface
public interface Recipient {

  /**
   * Takes a report.
   *
   * @param report the report
   */
  void take(Report report);

  /** What knows where reports go: the command at the top. */
  interface Holder {

    /**
     * Who takes the reports of the run in place of a file or a terminal.
     *
     * @return a program that shows them itself; empty if they are written
     */
    Optional<Recipient> recipient();

    /**
     * Where what is written goes if no file is given.
     *
     * @return the stream, which stays open
     */
    OutputStream terminal();

    /**
     * What knows where the reports of a command go.
     *
     * @param spec the command
     * @return the command at its top
     */
    static Holder of(CommandSpec spec) {
      return (Holder) spec.root().userObject();
    }
  }
}
