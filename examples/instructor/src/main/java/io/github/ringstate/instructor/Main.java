package io.github.ringstate.instructor;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command-line tool. */
@Command(
    name = "ringstate",
    mixinStandardHelpOptions = true,
    versionProvider = PackagedVersion.class,
    description = "What a helicopter rotor does in descent.",
    footer = {"", Main.CAUTION})
public final class Main implements Runnable {

  static final String CAUTION =
      "A training aid from a simplified model: the flight manual, the operator's procedures,"
          + " local rules and a licensed instructor come first.";

  private final CommandLine commandLine;

  private Main() {
    commandLine = new CommandLine(this);
  }

  /**
   * Runs the tool and ends the virtual machine.
   *
   * @param args the arguments
   */
  public static void main(String[] args) {
    System.exit(commandLine().execute(args));
  }

  static CommandLine commandLine() {
    return new Main().commandLine;
  }

  @Override
  public void run() {
    commandLine.usage(commandLine.getOut());
  }
}
