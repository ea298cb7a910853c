package io.github.ringstate.instructor.rerun;

import io.github.ringstate.files.digest.Digest;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.provenance.Build;
import io.github.ringstate.files.provenance.Provenance;
import io.github.ringstate.files.provenance.Source;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.instructor.origin.Origin;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes a file again. */
@Command(
    name = "rerun",
    description = {
      "Run the command again that made a file: one of JSON, HTML, PDF, SVG, PNG or Parquet, or one of"
          + " text or CSV that has its FILE.provenance.json beside it.",
      "",
      "The same build gives the same bytes, but for the date on a sheet. What the command read is"
          + " taken from FILE where it is kept there (craft, sweep and plan files); other files must be"
          + " as they were.",
      ""
    },
    footer = {
      "",
      "Example: a sheet, and the same once more",
      "  ringstate loss --format pdf --output loss.pdf",
      "  ringstate rerun loss.pdf --output again.pdf",
      "",
      Caution.TEXT
    })
public final class RerunCommand implements Callable<Integer> {

  /** Runs the tool. */
  @FunctionalInterface
  public interface Tool {

    /**
     * Runs one command.
     *
     * @param arguments the command with its arguments
     * @param kept texts by the names of the files for which they stand in
     * @param err where it says what is not its result
     * @return the exit status
     */
    int run(List<String> arguments, Map<String, String> kept, PrintWriter err);
  }

  private final Tool tool;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "FILE", description = "A file that this tool wrote.")
  private String file = "";

  @Option(
      names = "--output",
      paramLabel = "NEW",
      description =
          "Where the new file goes; then it is said whether it has the same bytes. Unless given:"
              + " the terminal, and for a sweep it must be given.")
  private @Nullable String output;

  @Option(
      names = "--any-build",
      description = "Run also what another build of the tool made; the results may differ.")
  private boolean anyBuild;

  /**
   * Creates the command.
   *
   * @param tool runs the command that is found
   */
  public RerunCommand(Tool tool) {
    this.tool = tool;
  }

  @Override
  public Integer call() {
    Provenance provenance = KeptProvenance.read(file);
    if (!provenance.build().equals(Build.current())) {
      String made =
          "was made by "
              + provenance.build()
              + ", and this is "
              + Build.current()
              + ", whose results may differ";
      if (!anyBuild) {
        throw UserError.file(file, made + "; run it with --any-build all the same", null);
      }
      say(file + " " + made);
    }
    Map<String, String> kept = new HashMap<>();
    for (Source source : provenance.sources()) {
      if (source.text().isPresent()) {
        kept.put(source.name(), source.text().get());
      } else {
        check(source);
      }
    }
    int status = tool.run(arguments(provenance), kept, spec.commandLine().getErr());
    if (status == 0 && output != null) {
      say(output + (isSame(output) ? " has the same bytes as " : " differs from ") + file);
    }
    return status;
  }

  private List<String> arguments(Provenance provenance) {
    List<String> arguments = new ArrayList<>(provenance.command());
    int last = arguments.size() - 1;
    if (last < 2 || !arguments.get(last - 1).equals(Origin.OUTPUT)) {
      throw UserError.file(
          file, "cannot be run again: it was made by " + String.join(" ", arguments));
    }
    arguments.subList(last - 1, last + 1).clear();
    if (output != null) {
      arguments.add(Origin.OUTPUT);
      arguments.add(output);
    }
    return arguments;
  }

  private static void check(Source source) {
    try {
      if (Digest.of(Path.of(source.name())).equals(source.digest())) {
        return;
      }
    } catch (IOException | InvalidPathException gone) {
      throw UserError.file(
          source.name(), "cannot be read, and is not kept in what is to be made again", gone);
    }
    throw UserError.file(
        source.name(), "is not what it was when the file was made: its content differs");
  }

  private boolean isSame(String made) {
    try {
      return Files.mismatch(Path.of(file), Path.of(made)) < 0;
    } catch (IOException gone) {
      return false;
    }
  }

  private void say(String message) {
    spec.commandLine().getErr().println(spec.qualifiedName() + ": " + message);
  }
}
