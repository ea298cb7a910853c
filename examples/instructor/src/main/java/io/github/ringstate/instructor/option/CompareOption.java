package io.github.ringstate.instructor.option;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** A second condition beside the planned one. */
public final class CompareOption {

  @Option(
      names = Worse.OPTION,
      paramLabel = "KG,K,S",
      description =
          "Beside the conditions as planned, show what it is like so many kg heavier, K hotter and s"
              + " later, for instance 50,10,1.")
  private @Nullable String compare;

  /** Made by picocli. */
  public CompareOption() {}

  /**
   * How much worse it may be.
   *
   * @return what was given; empty if nothing was
   * @throws io.github.ringstate.files.error.UserError if it makes no sense
   */
  public Optional<Worse> worse() {
    return compare == null ? Optional.empty() : Optional.of(Worse.of(compare));
  }
}
