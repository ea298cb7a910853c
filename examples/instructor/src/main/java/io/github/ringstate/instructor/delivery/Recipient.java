package io.github.ringstate.instructor.delivery;

import io.github.ringstate.files.report.Report;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;

/** Takes reports in place of a file or a terminal: a program that shows them itself. */
@FunctionalInterface
public interface Recipient {

  /**
   * Takes a report.
   *
   * @param report the report
   */
  void take(Report report);

  /** What knows the recipient: the command at the top. */
  @FunctionalInterface
  interface Holder {

    /**
     * Who takes the reports of the run.
     *
     * @return the recipient; empty if they are written
     */
    Optional<Recipient> recipient();
  }

  /**
   * The recipient of the run that a command is part of.
   *
   * @param spec the command
   * @return the recipient; empty if reports are written
   */
  static Optional<Recipient> of(CommandSpec spec) {
    return spec.root().userObject() instanceof Holder holder
        ? holder.recipient()
        : Optional.empty();
  }
}
