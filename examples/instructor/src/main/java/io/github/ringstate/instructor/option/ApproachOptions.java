package io.github.ringstate.instructor.option;

import io.github.ringstate.files.error.UserError;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How the flight comes to the ring state, and how high above the ground. */
public final class ApproachOptions {

  @Mixin private final EntryOptions entry = new EntryOptions();

  @Option(
      names = "--height-ft",
      paramLabel = "FT",
      description =
          "Height above the ground at onset. Unless given, there is no ground to be reached.")
  private @Nullable String height;

  /** Made by picocli. */
  public ApproachOptions() {}

  /**
   * What was given.
   *
   * @return the approach
   * @throws UserError if a name is unknown or a number wrong
   */
  public Approach approach() {
    return entry.approach(EntryOptions.height(height));
  }
}
