package io.github.ringstate.instructor.option;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.pilot.Technique;
import java.util.Comparator;
import java.util.List;
import picocli.CommandLine.Option;

/** The recoveries of a table. */
public final class RecoveriesOption {

  @Option(
      names = "--recovery",
      paramLabel = "NAME[,NAME...]",
      defaultValue = "forward,lateral,autorotation",
      description =
          "Recoveries: forward, lateral, autorotation, none, or collective and collective-raised"
              + " (power alone, the lever alone: not a way out, shown with words to that effect)."
              + " Unless given: ${DEFAULT-VALUE}.")
  private String recoveries = "";

  /** Made by picocli. */
  public RecoveriesOption() {}

  /**
   * What was given.
   *
   * @return the ways out in the order given, then what is none
   * @throws UserError if a name is unknown or stands twice
   */
  public List<Technique> recoveries() {
    return new Choice<>("--recovery", Technique.ALL, Technique::name)
        .several(recoveries).stream()
            .sorted(Comparator.comparing(recovery -> !recovery.wayOut()))
            .toList();
  }
}
