package io.github.ringstate.instructor.best;

import io.github.ringstate.analysis.best.BestRecovery;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.instructor.option.Choice;
import io.github.ringstate.instructor.option.EntryOptions;
import io.github.ringstate.instructor.option.Loading;
import io.github.ringstate.instructor.option.NumberText;
import io.github.ringstate.instructor.option.PictureOutput;
import io.github.ringstate.pilot.Recognition;
import java.util.List;
import java.util.OptionalDouble;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints the least altitude loss that a search found, and what each recovery loses more. */
@Command(
    name = "best",
    description = {
      "Search for the history of controls with the least altitude loss that the model allows, and"
          + " print what each recovery loses more. For research: nobody has flown it.",
      ""
    },
    footer = {
      "",
      "CSV columns: delay_s, recovery (best, forward, lateral, autorotation), altitude_loss_ft,",
      "excess_ft, searches_apart_ft. The search takes some seconds for each delay.",
      "",
      "Example: how far the recoveries are from the best in the heavy craft",
      "  ringstate best --craft heavy --delays 1",
      "and the picture of losses and commands against time",
      "  ringstate best --craft heavy --delays 0.5,1,2 --format svg --output best.svg",
      "",
      Caution.TEXT
    })
public final class BestCommand implements Runnable {

  private record Power(String label, double cap) {}

  private static final List<Power> POWERS =
      List.of(new Power("take-off", BestRecovery.ALL_POWER), new Power("continuous", 1));

  @Mixin private final Loading loading = new Loading();
  @Mixin private final EntryOptions entry = new EntryOptions();

  @Option(
      names = "--delays",
      paramLabel = "S[,S...]",
      defaultValue = "1",
      description = "Delays from onset to action. Unless given: ${DEFAULT-VALUE}.")
  private String delays = "";

  @Option(
      names = "--power",
      paramLabel = "POWER",
      defaultValue = "take-off",
      description =
          "The greatest power that the best recovery may set: take-off, or continuous as in the"
              + " climb of the recoveries. Unless given: ${DEFAULT-VALUE}.")
  private String power = "";

  @Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "1",
      description = "Seed of the search. Unless given: ${DEFAULT-VALUE}.")
  private String seed = "";

  @Mixin private final PictureOutput output = new PictureOutput();

  /** Made by the tool. */
  public BestCommand() {}

  @Override
  public void run() {
    output.deliver(this::report);
  }

  private BestReport report() {
    Power chosen = new Choice<>("--power", POWERS, Power::label).one(power);
    BestRequest request =
        new BestRequest(
            loading.conditions(),
            entry.approach(OptionalDouble.empty()),
            NumberText.several("--delays", delays, Recognition.DELAY),
            chosen.cap(),
            chosen.label(),
            NumberText.whole("--seed", seed, Long.MIN_VALUE, Long.MAX_VALUE));
    return new BestReport(request, BestResult.of(request));
  }
}
