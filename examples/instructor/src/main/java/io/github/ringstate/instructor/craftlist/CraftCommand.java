package io.github.ringstate.instructor.craftlist;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.instructor.option.CraftOption;
import io.github.ringstate.instructor.option.OutputOptions;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists the demo craft, or prints one. */
@Command(
    name = "craft",
    description = {"List the demo craft, or print one as a file that --craft takes back.", ""},
    footer = {
      "",
      "Example: a craft of one's own, made from the utility",
      "  ringstate craft utility --output mine.toml",
      "  ringstate loss --craft mine.toml",
      "",
      Caution.TEXT
    })
public final class CraftCommand implements Runnable {

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      arity = "0..1",
      paramLabel = "NAME|FILE",
      description =
          "The craft to print: trainer, utility, twin, heavy or a file. Unless given, the demo"
              + " craft are listed.")
  private @Nullable String name;

  @Mixin private final OutputOptions output = new OutputOptions();

  /** Made by the tool. */
  public CraftCommand() {}

  @Override
  public void run() {
    output.deliver(
        () ->
            name == null
                ? new CraftListReport(DemoCraft.ALL)
                : new CraftReport(CraftOption.find("NAME", name, spec)));
  }
}
