package io.github.ringstate.instructor.desk;

import io.github.ringstate.instructor.delivery.Recipient;
import io.github.ringstate.instructor.origin.Kept;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;

/** The tool's commands, as a program runs them. */
@FunctionalInterface
public interface Tool {

  /**
   * Runs one command.
   *
   * @param arguments the command with its arguments
   * @param kept what stands in for files
   * @param out where it prints
   * @param err where it says what is not its result
   * @param recipient who takes its report; empty to print it
   * @return the exit status
   */
  int run(
      List<String> arguments,
      Kept kept,
      OutputStream out,
      PrintWriter err,
      Optional<Recipient> recipient);
}
