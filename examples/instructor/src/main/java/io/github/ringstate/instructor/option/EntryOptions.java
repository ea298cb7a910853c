package io.github.ringstate.instructor.option;

import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.quantity.Unit;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The entry and its wind. */
public final class EntryOptions {

  private static final String HEIGHT = "--height-ft";

  @Option(
      names = "--entry",
      paramLabel = "ENTRY",
      description =
          "tailwind-approach (a steep approach with the wind behind and little power), settling (from"
              + " a hover), steep (a steep approach slowed too much), downwind (a run at constant"
              + " ground speed while the wind comes round behind), quick-stop (with the wind behind),"
              + " short-hover (out of ground effect with too little power) or photo-drift (a hover"
              + " into the wind, let drift with it). Unless given: tailwind-approach.")
  private @Nullable String entry;

  @Option(
      names = "--wind-kt",
      paramLabel = "KT",
      description =
          "Wind: from behind for tailwind-approach, quick-stop (both below zero: from ahead) and"
              + " downwind, else from ahead. Unless given: 8 for tailwind-approach, 10 for quick-stop,"
              + " 18 for downwind, 20 for photo-drift, else 0.")
  private @Nullable String wind;

  /** Made by picocli. */
  public EntryOptions() {}

  /**
   * What was given.
   *
   * @param height height above the ground at onset, m; empty if there is no ground
   * @return the approach
   * @throws UserError if a name is unknown or a number wrong
   */
  public Approach approach(OptionalDouble height) {
    EntryKind kind =
        entry == null
            ? EntryKind.STANDARD
            : new Choice<>("--entry", EntryKind.ALL, EntryKind::name).one(entry);
    double speed =
        wind == null
            ? kind.wind().standard()
            : NumberText.one("--wind-kt", wind, kind.wind().quantity());
    return new Approach(kind, speed, height);
  }

  /**
   * Reads a height at onset.
   *
   * @param height the height in ft, or null
   * @return the height, m; empty for null
   * @throws UserError if it is no number or out of range
   */
  public static OptionalDouble height(@Nullable String height) {
    return height == null
        ? OptionalDouble.empty()
        : OptionalDouble.of(NumberText.si(HEIGHT, height, Ranges.in(Unit.FOOT, Encounter.HEIGHT)));
  }
}
