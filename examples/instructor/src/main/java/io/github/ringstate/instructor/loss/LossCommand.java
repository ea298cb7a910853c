package io.github.ringstate.instructor.loss;

import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.instructor.delivery.Delivery;
import io.github.ringstate.instructor.option.ApproachOptions;
import io.github.ringstate.instructor.option.Choice;
import io.github.ringstate.instructor.option.CraftOption;
import io.github.ringstate.instructor.option.Loadings;
import io.github.ringstate.instructor.option.NumberText;
import io.github.ringstate.instructor.option.RecoveryKind;
import io.github.ringstate.instructor.option.SheetOutput;
import io.github.ringstate.instructor.report.Caution;
import io.github.ringstate.pilot.Recognition;
import java.io.OutputStream;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints altitude loss against delay. */
@Command(
    name = "loss",
    description = {
      "Print the altitude lost in the ring state against delay, for each recovery.",
      ""
    },
    footer = {
      "",
      "Example: the trainer, 560 kg, on a hot day, 300 ft above the ground at onset",
      "  ringstate loss --mass-kg 560 --oat-c 35 --height-ft 300",
      "",
      Caution.TEXT
    })
public final class LossCommand implements Runnable {

  private final OutputStream terminal;

  @Mixin private final CraftOption craft = new CraftOption();
  @Mixin private final Loadings loadings = new Loadings();
  @Mixin private final ApproachOptions approach = new ApproachOptions();

  @Option(
      names = "--delays",
      paramLabel = "S[,S...]",
      defaultValue = "0,0.5,1,2,3,4",
      description =
          "Delays from onset to the pilot's first movement of the controls, one line each. Unless"
              + " given: ${DEFAULT-VALUE}.")
  private String delays = "";

  @Option(
      names = "--recoveries",
      paramLabel = "NAME[,NAME...]",
      defaultValue = "forward,lateral,autorotation,collective",
      description =
          "Recoveries, one column each: forward, lateral, autorotation, collective (power alone) or"
              + " none. Unless given: all but none.")
  private String recoveries = "";

  @Mixin private final SheetOutput output = new SheetOutput();

  /**
   * Creates the command.
   *
   * @param terminal where the report goes if no file is given
   */
  public LossCommand(OutputStream terminal) {
    this.terminal = terminal;
  }

  @Override
  public void run() {
    Delivery delivery = output.delivery(terminal);
    LossRequest request = request();
    delivery.deliver(new LossReport(request, LossBlock.fly(request)));
  }

  private LossRequest request() {
    Helicopter chosen = craft.craft();
    return new LossRequest(
        loadings.load(chosen),
        loadings.airs(),
        approach.approach(),
        new Choice<>("--recoveries", List.of(RecoveryKind.values()), RecoveryKind::label)
            .several(recoveries),
        NumberText.several("--delays", delays, Recognition.DELAY));
  }
}
