package io.github.ringstate.instructor.loss;

import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.instructor.option.ApproachOptions;
import io.github.ringstate.instructor.option.Checked;
import io.github.ringstate.instructor.option.CompareOption;
import io.github.ringstate.instructor.option.CraftOption;
import io.github.ringstate.instructor.option.Loadings;
import io.github.ringstate.instructor.option.MarginOption;
import io.github.ringstate.instructor.option.NumberText;
import io.github.ringstate.instructor.option.PilotOptions;
import io.github.ringstate.instructor.option.RecoveriesOption;
import io.github.ringstate.instructor.option.SheetOutput;
import io.github.ringstate.instructor.option.Worse;
import io.github.ringstate.instructor.pilots.Pool;
import io.github.ringstate.instructor.progress.Work;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Recognition;
import io.github.ringstate.study.model.Accepted;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
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
      "and what 95 in 100 distracted pilots lose at most on that day",
      "  ringstate loss --mass-kg 560 --oat-c 35 --pilots 1024 --state distracted",
      "",
      "a sheet to print, for two masses and a planned height of 500 ft",
      "  ringstate loss --mass-kg 520,600 --height-ft 500 --format pdf --output loss.pdf",
      "",
      Caution.TEXT
    })
public final class LossCommand implements Runnable, Checked {

  private static final String DELAYS = "0,0.5,1,2,3,4";

  /** The pilots of a sheet unless the user asks for others. */
  private static final int ON_A_SHEET = 512;

  @Mixin private final CraftOption craft = new CraftOption();
  @Mixin private final Loadings loadings = new Loadings();
  @Mixin private final ApproachOptions approach = new ApproachOptions();

  @Option(
      names = "--delays",
      paramLabel = "S[,S...]",
      description =
          "Delays to the pilot's first movement of the controls, one line each. Unless given: "
              + DELAYS
              + ".")
  private @Nullable String delays;

  @Mixin private final RecoveriesOption recoveries = new RecoveriesOption();

  @Option(
      names = "--pilots",
      paramLabel = "N",
      description =
          "Fly so many simulated pilots at each delay, each with a technique of their own, beside"
              + " the standard technique. Unless given: none; "
              + ON_A_SHEET
              + " on a sheet (html, pdf).")
  private @Nullable String pilots;

  @Option(
      names = "--state",
      paramLabel = "STATE",
      description =
          "Give each pilot a delay of their own too, in place of --delays, as people have who are"
              + " primed, attentive, distracted or startled.")
  private @Nullable String state;

  @Mixin private final MarginOption margin = new MarginOption();
  @Mixin private final CompareOption compare = new CompareOption();
  @Mixin private final PilotOptions chance = new PilotOptions();
  @Mixin private final SheetOutput output = new SheetOutput();

  /** Made by the tool. */
  public LossCommand() {}

  @Override
  public List<Encounter> flown() {
    return request().flown();
  }

  @Override
  public void run() {
    output.deliver(this::report);
  }

  private LossReport report() {
    LossRequest request = request();
    try (Work work = Work.of(request.flights())) {
      return new LossReport(request, new LossStudy(request, work).run());
    }
  }

  private LossRequest request() {
    Helicopter chosen = craft.craft();
    return new LossRequest(
        loadings.load(chosen),
        loadings.airs(),
        approach.approach(),
        recoveries.recoveries(),
        state == null
            ? NumberText.several("--delays", delays == null ? DELAYS : delays, Recognition.DELAY)
            : List.of(),
        chance.clock(),
        chance.disturbances(),
        pool(),
        state(),
        output.isDrawn(),
        margin.margin(),
        compared());
  }

  private Optional<Worse> compared() {
    Optional<Worse> worse = compare.worse();
    if (worse.isPresent() && state != null) {
      throw UserError.usage(
          "--compare and --state exclude each other: it adds to delays that are given");
    }
    return worse;
  }

  private Optional<Pool> pool() {
    if (!isFlownByPilots()) {
      chance.refuseWithoutPilots();
      return Optional.empty();
    }
    Optional<Accepted<RingStateInflow>> models = chance.models(craft.craft());
    if (output.isDrawn() && models.isPresent()) {
      throw UserError.usage(
          "--models has no place on a sheet (html, pdf)" + UserError.ALLOWED + "text, csv, json");
    }
    return Optional.of(
        new Pool(
            chance.pilots(pilots, ON_A_SHEET),
            chance.precision(),
            chance.drawing(),
            chance.seed(),
            models));
  }

  private boolean isFlownByPilots() {
    return pilots != null || chance.isPrecise() || output.isDrawn();
  }

  private Optional<PilotState> state() {
    if (state == null) {
      return Optional.empty();
    }
    if (!isFlownByPilots()) {
      throw UserError.usage("--state" + PilotOptions.NEEDS_PILOTS + ": it gives each a delay");
    }
    if (delays != null) {
      throw UserError.usage(
          "--delays and --state exclude each other: a state gives each pilot a delay");
    }
    return Optional.of(PilotOptions.states().one(state));
  }
}
