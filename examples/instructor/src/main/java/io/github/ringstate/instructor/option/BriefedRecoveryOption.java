package io.github.ringstate.instructor.option;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.pilot.Technique;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The one recovery that is briefed, or those that it is chosen from. */
public final class BriefedRecoveryOption {

  private static final String OPTION = "--recovery";

  /** Ways out that are chosen from unless the user wants another. */
  private static final List<Technique> TO_CHOOSE_FROM =
      List.of(Technique.FORWARD, Technique.LATERAL);

  @Option(
      names = OPTION,
      paramLabel = "NAME",
      description =
          "Recovery briefed: forward, lateral or autorotation. Unless given: forward or lateral,"
              + " whichever costs the slowest pilots less height at its worst.")
  private @Nullable String recovery;

  /** Made by picocli. */
  public BriefedRecoveryOption() {}

  /**
   * The recoveries to choose from.
   *
   * @return the one that was given, or several
   * @throws UserError if it is unknown or no way out
   */
  public List<Technique> recoveries() {
    if (recovery == null) {
      return TO_CHOOSE_FROM;
    }
    if (recovery.strip().equals(Technique.COLLECTIVE.name())) {
      throw UserError.option(
          OPTION,
          recovery,
          "forward, lateral, autorotation; collective alone is not a way out and no technique to"
              + " brief");
    }
    return List.of(Choice.waysOut(OPTION).one(recovery));
  }
}
