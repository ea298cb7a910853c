package io.github.ringstate.instructor;

import io.github.ringstate.files.text.Caution;
import java.io.PrintWriter;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints a script that completes commands and options in a shell. */
@Command(
    name = CompletionCommand.NAME,
    description = {"Print a script with which bash or zsh completes commands and options.", ""},
    footer = {
      "",
      "Example: complete in this shell, the folder of ringstate being on the PATH",
      "  source <(ringstate completion)",
      "",
      Caution.TEXT
    })
final class CompletionCommand implements Runnable {

  /** What the command is called. */
  static final String NAME = "completion";

  @Spec private CommandSpec spec;

  @Override
  public void run() {
    PrintWriter out = spec.commandLine().getOut();
    out.print(AutoComplete.bash(spec.root().name(), spec.root().commandLine()));
    out.flush();
  }
}
