package io.github.ringstate.instructor.sensitivity;

import io.github.ringstate.files.text.Caution;
import io.github.ringstate.instructor.option.Choice;
import io.github.ringstate.instructor.option.EntryOptions;
import io.github.ringstate.instructor.option.Loading;
import io.github.ringstate.instructor.option.NumberText;
import io.github.ringstate.instructor.option.PictureOutput;
import io.github.ringstate.pilot.Recognition;
import java.util.OptionalDouble;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints and draws how the altitude loss changes with one number at a time. */
@Command(
    name = "sensitivity",
    description = {
      "Change the numbers of craft, air, pilot and model one at a time, and print or draw (a tornado"
          + " plot) what each does to the altitude loss. For research.",
      ""
    },
    footer = {
      "",
      "CSV columns: group (craft, air, pilot, model), number, unit, value, low, high,",
      "altitude_loss_low_ft, altitude_loss_high_ft, change_ft, derivative_ft_per_unit, error_ft_per_unit,",
      "second_way_ft_per_unit, agree.",
      "",
      "Example: what the loss of the heavy craft depends on, 1.5 s late",
      "  ringstate sensitivity --craft heavy --delay 1.5",
      "and the picture, of the model's numbers alone",
      "  ringstate sensitivity --groups model --format svg --output model.svg",
      "",
      Caution.TEXT
    })
public final class SensitivityCommand implements Runnable {

  @Mixin private final Loading loading = new Loading();
  @Mixin private final EntryOptions entry = new EntryOptions();

  @Option(
      names = "--recovery",
      paramLabel = "NAME",
      defaultValue = "forward",
      description = "forward, lateral or autorotation. Unless given: ${DEFAULT-VALUE}.")
  private String recovery = "";

  @Option(
      names = "--delay",
      paramLabel = "S",
      defaultValue = "1",
      description = "Delay from onset to action. Unless given: ${DEFAULT-VALUE}.")
  private String delay = "";

  @Option(
      names = "--groups",
      paramLabel = "GROUP[,GROUP...]",
      defaultValue = "craft,air,pilot,model",
      description =
          "Whose numbers are changed: craft, air, pilot, model. Unless given: ${DEFAULT-VALUE}.")
  private String groups = "";

  @Mixin private final PictureOutput output = new PictureOutput();

  /** Made by the tool. */
  public SensitivityCommand() {}

  @Override
  public void run() {
    output.deliver(this::report);
  }

  private SensitivityReport report() {
    SensitivityRequest request =
        new SensitivityRequest(
            loading.conditions(),
            entry.approach(OptionalDouble.empty()),
            Choice.waysOut("--recovery").one(recovery),
            NumberText.one("--delay", delay, Recognition.DELAY),
            new Choice<>("--groups", SensitivityRequest.GROUPS, group -> group).several(groups));
    return new SensitivityReport(request, request.tornado());
  }
}
