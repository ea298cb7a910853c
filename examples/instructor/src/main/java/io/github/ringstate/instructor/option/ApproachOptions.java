package io.github.ringstate.instructor.option;

import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.instructor.refusal.Refusal;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** How the flight comes to the ring state. */
public final class ApproachOptions {

  @Option(
      names = "--entry",
      paramLabel = "ENTRY",
      defaultValue = "settling",
      description =
          "settling (from a hover), steep (a steep approach slowed too much) or downwind (a run at"
              + " constant ground speed while the wind comes round behind). Unless given:"
              + " ${DEFAULT-VALUE}.")
  private String entry = "";

  @Option(
      names = "--wind-kt",
      paramLabel = "KT",
      description =
          "Wind: from ahead for settling and steep, from behind for downwind. Unless given: 0; 18"
              + " for downwind.")
  private @Nullable String wind;

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
   * @throws Refusal if a name is unknown or a number wrong
   */
  public Approach approach() {
    EntryKind kind =
        new Choice<>("--entry", List.of(EntryKind.values()), EntryKind::label).one(entry);
    double windKt =
        wind == null
            ? kind.wind().standard()
            : NumberText.one("--wind-kt", wind, kind.wind().quantity());
    OptionalDouble heightFt =
        height == null
            ? OptionalDouble.empty()
            : OptionalDouble.of(
                NumberText.one("--height-ft", height, Ranges.in(Unit.FOOT, Encounter.HEIGHT)));
    return new Approach(kind, windKt, heightFt);
  }
}
