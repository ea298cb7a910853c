package io.github.ringstate.instructor.floor;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.instructor.option.BriefedRecoveryOption;
import io.github.ringstate.instructor.option.BriefingOptions;
import io.github.ringstate.instructor.option.EntryOptions;
import io.github.ringstate.instructor.option.Loading;
import io.github.ringstate.instructor.option.PilotOptions;
import io.github.ringstate.instructor.pilots.Pool;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What card and lesson are asked for: one craft at one mass in one air, one technique. */
final class BriefedOptions {

  @Mixin private final Loading loading = new Loading();
  @Mixin private final EntryOptions entry = new EntryOptions();

  @Mixin private final BriefedRecoveryOption recovery = new BriefedRecoveryOption();

  @Option(
      names = "--state",
      paramLabel = "STATE[,STATE...]",
      defaultValue = "primed,attentive,distracted,startled",
      description =
          "States of the pilots; the height is that of the state that needs most. Unless given: all"
              + " of them.")
  private String states = "";

  @Mixin private final BriefingOptions briefing = new BriefingOptions();

  @Option(
      names = "--pilots",
      paramLabel = "N",
      description =
          "How many pilots are simulated for each state. Unless given: "
              + FloorCommand.STANDARD_PILOTS
              + ".")
  private @Nullable String pilots;

  @Mixin private final PilotOptions chance = new PilotOptions();

  /** Made by picocli. */
  BriefedOptions() {}

  /**
   * What was asked for.
   *
   * @return the floors to fly
   * @throws io.github.ringstate.files.error.UserError if an option is wrong
   */
  FloorRequest request() {
    if (chance.hasModels()) {
      throw UserError.usage(
          "--models has no place on a card or a lesson: 'ringstate floor' shows how far models move"
              + " the height");
    }
    return new FloorRequest(
        List.of(loading.craft()),
        List.of(loading.air()),
        entry.approach(OptionalDouble.empty()),
        OptionalDouble.empty(),
        recovery.recoveries(),
        PilotOptions.states().several(states),
        chance.clock(),
        chance.disturbances(),
        new Pool(
            chance.pilots(pilots, FloorCommand.STANDARD_PILOTS),
            chance.precision(),
            chance.drawing(),
            chance.seed(),
            Optional.empty()),
        briefing.share(),
        briefing.margin(),
        briefing.groundShare(),
        Optional.empty());
  }
}
