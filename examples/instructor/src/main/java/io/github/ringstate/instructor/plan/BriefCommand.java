package io.github.ringstate.instructor.plan;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.plan.PlanFile;
import io.github.ringstate.files.plan.PlanFile.Part;
import io.github.ringstate.files.report.Format;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.files.toml.Texts;
import io.github.ringstate.instructor.option.Choice;
import io.github.ringstate.instructor.option.PlanOption;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes all sheets of a plan. */
@Command(
    name = "brief",
    description = {
      "Make all sheets of a plan at once: floor, loss, card, lesson, and runs if a run is planned.",
      ""
    },
    footer = {"", "Example", "  ringstate brief plan.toml --folder .", "", Caution.TEXT})
public final class BriefCommand implements Runnable {

  private static final List<String> ALWAYS = List.of("floor", "loss", "card", "lesson");

  private final ToIntFunction<String[]> tool;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "PLAN", description = "The plan, as 'ringstate plan' writes it.")
  private String plan = "";

  @Option(
      names = "--folder",
      paramLabel = "FOLDER",
      required = true,
      description = "Where the sheets go; the folder must exist, old sheets are replaced.")
  private String folder = "";

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "pdf",
      description = "pdf or html. Unless given: ${DEFAULT-VALUE}.")
  private String format = "";

  /**
   * Creates the command.
   *
   * @param tool runs the tool with some arguments and gives its exit status
   */
  public BriefCommand(ToIntFunction<String[]> tool) {
    this.tool = tool;
  }

  @Override
  public void run() {
    String ending =
        new Choice<>("--format", List.of(Format.PDF, Format.HTML), Format::label)
            .one(format)
            .label();
    Path into = folder();
    List<String> sheets = new ArrayList<>(ALWAYS);
    PrintWriter out = spec.commandLine().getOut();
    if (PlanFile.read(plan, Texts.FILES).options().containsKey(Part.RUN)) {
      sheets.add("runs");
    } else {
      spec.commandLine()
          .getErr()
          .println(spec.qualifiedName() + ": " + PlanCommandMessages.SAY.noRun());
    }
    for (String sheet : sheets) {
      String file = into.resolve(sheet + "." + ending).toString();
      int status =
          tool.applyAsInt(
              new String[] {sheet, PlanOption.NAME, plan, "--format", ending, "--output", file});
      if (status != 0) {
        throw UserError.file(plan, "gives no sheet of " + sheet);
      }
      out.println(PlanCommandMessages.SAY.written(file));
    }
    out.flush();
  }

  private Path folder() {
    try {
      Path path = Path.of(folder);
      if (!folder.isBlank() && Files.isDirectory(path)) {
        return path;
      }
    } catch (InvalidPathException wrong) {
      // refused below
    }
    throw UserError.option("--folder", folder, "a folder that exists");
  }
}
