package io.github.ringstate.instructor.floor;

import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.instructor.option.BriefingOptions;
import io.github.ringstate.instructor.option.Checked;
import io.github.ringstate.instructor.option.CompareOption;
import io.github.ringstate.instructor.option.CraftOption;
import io.github.ringstate.instructor.option.EntryOptions;
import io.github.ringstate.instructor.option.Loadings;
import io.github.ringstate.instructor.option.PilotOptions;
import io.github.ringstate.instructor.option.RecoveriesOption;
import io.github.ringstate.instructor.option.SheetOutput;
import io.github.ringstate.instructor.pilots.Pool;
import io.github.ringstate.instructor.progress.Work;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints the heights from which simulated pilots recovered. */
@Command(
    name = "floor",
    description = {
      "Print the height at onset from which a share of the simulated pilots recovered with a margin,"
          + " for each state of the pilots and each recovery.",
      ""
    },
    footer = {
      "",
      "Example: which of two ways out to brief for 300 ft, for pilots who look elsewhere",
      "  ringstate floor --height-ft 300 --recovery forward,lateral --state distracted",
      "and the sheet to brief from",
      "  ringstate floor --height-ft 300 --format pdf --output floor.pdf",
      "",
      Caution.TEXT
    })
public final class FloorCommand implements Runnable, Checked {

  static final int STANDARD_PILOTS = 512;

  @Mixin private final CraftOption craft = new CraftOption();
  @Mixin private final Loadings loadings = new Loadings();
  @Mixin private final EntryOptions entry = new EntryOptions();

  @Option(
      names = "--height-ft",
      paramLabel = "FT",
      description =
          "Brief for this height above the ground at onset: which technique and why, or not to fly"
              + " below another height; how many would still have hit the ground, and the latest"
              + " moment at which each technique works.")
  private @Nullable String height;

  @Mixin private final RecoveriesOption recoveries = new RecoveriesOption();

  @Option(
      names = "--state",
      paramLabel = "STATE[,STATE...]",
      defaultValue = "primed,attentive,distracted,startled",
      description =
          "States of the pilots, which their delays go with: primed, attentive, distracted or"
              + " startled. Unless given: all of them.")
  private String states = "";

  @Mixin private final BriefingOptions briefing = new BriefingOptions();

  @Option(
      names = "--pilots",
      paramLabel = "N",
      description =
          "How many pilots are simulated for each line. Unless given: " + STANDARD_PILOTS + ".")
  private @Nullable String pilots;

  @Mixin private final CompareOption compare = new CompareOption();
  @Mixin private final PilotOptions chance = new PilotOptions();
  @Mixin private final SheetOutput output = new SheetOutput();

  /** Made by the tool. */
  public FloorCommand() {}

  @Override
  public List<Encounter> flown() {
    return request().flown();
  }

  @Override
  public void run() {
    output.deliver(this::report);
  }

  private FloorReport report() {
    FloorRequest request = request();
    try (Work work = Work.of(request.flights())) {
      return new FloorReport(request, FloorStudy.run(request, work));
    }
  }

  private FloorRequest request() {
    Helicopter chosen = craft.craft();
    return new FloorRequest(
        loadings.load(chosen),
        loadings.airs(),
        entry.approach(OptionalDouble.empty()),
        EntryOptions.height(height),
        recoveries.recoveries(),
        PilotOptions.states().several(states),
        chance.clock(),
        chance.disturbances(),
        new Pool(
            chance.pilots(pilots, STANDARD_PILOTS),
            chance.precision(),
            chance.drawing(),
            chance.seed(),
            chance.models(chosen)),
        briefing.share(),
        briefing.margin(),
        briefing.groundShare(),
        compare.worse());
  }
}
