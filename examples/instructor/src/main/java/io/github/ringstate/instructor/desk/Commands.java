package io.github.ringstate.instructor.desk;

import io.github.ringstate.files.report.Report;
import io.github.ringstate.instructor.delivery.Recipient;
import io.github.ringstate.instructor.origin.Kept;
import java.io.ByteArrayOutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;

/** Runs commands on texts that the page holds, and hears what they say. */
final class Commands {

  private final Tool tool;

  Commands(Tool tool) {
    this.tool = tool;
  }

  /**
   * What came of a command.
   *
   * @param status its exit status
   * @param said what it said, one sentence a line, without its own name in front
   * @param report its report, if it made one
   * @param printed what it printed
   */
  record Done(
      int status, List<String> said, Optional<Report> report, ByteArrayOutputStream printed) {

    boolean isWell() {
      return status == 0;
    }

    /** What a command that did not do it said. */
    String refusal() {
      return said.isEmpty() ? "" : said.get(said.size() - 1);
    }
  }

  /**
   * Lets a command make its report.
   *
   * @param arguments the command with its arguments
   * @param kept what stands in for files
   * @return what came of it
   * @throws CancellationException if the thread was interrupted
   */
  Done report(List<String> arguments, Kept kept) {
    List<Report> taken = new ArrayList<>();
    return run(arguments, kept, Optional.of(taken::add), taken);
  }

  /**
   * Lets a command print.
   *
   * @param arguments the command with its arguments
   * @param kept what stands in for files
   * @return what came of it
   */
  Done print(List<String> arguments, Kept kept) {
    return run(arguments, kept, Optional.empty(), List.of());
  }

  private Done run(
      List<String> arguments, Kept kept, Optional<Recipient> recipient, List<Report> taken) {
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    StringWriter said = new StringWriter();
    int status = tool.run(arguments, kept, printed, new PrintWriter(said, true), recipient);
    if (Thread.currentThread().isInterrupted()) {
      throw new CancellationException();
    }
    String name = "ringstate " + arguments.get(0) + ": ";
    return new Done(
        status,
        said.toString()
            .lines()
            .filter(line -> line.startsWith(name))
            .map(line -> line.substring(name.length()))
            .toList(),
        taken.stream().findFirst(),
        printed);
  }
}
