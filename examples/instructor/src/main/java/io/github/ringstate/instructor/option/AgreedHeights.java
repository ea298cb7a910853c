package io.github.ringstate.instructor.option;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.plan.PlanFile.AgreedHeight;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Heights above the ground that are agreed on for a demonstration. */
public final class AgreedHeights {

  /** Heights that are accepted, in ft. */
  public static final Quantity HEIGHT = new Quantity("height", Unit.FOOT, 1, 20_000);

  @Option(
      names = "--start-height-ft",
      paramLabel = "FT",
      description =
          "Height above the ground at which a demonstration begins. Unless given: left open.")
  private @Nullable String start;

  @Option(
      names = "--abort-height-ft",
      paramLabel = "FT",
      description =
          "Height above the ground at which a demonstration is broken off. Unless given: left open.")
  private @Nullable String abort;

  /** Made by picocli. */
  public AgreedHeights() {}

  /**
   * The heights that were given.
   *
   * @return the heights, ft, as typed
   * @throws UserError if one is no number or out of range, or the end is not below the beginning
   */
  public Map<AgreedHeight, Double> heights() {
    Map<AgreedHeight, Double> given = new EnumMap<>(AgreedHeight.class);
    double highest = Double.POSITIVE_INFINITY;
    if (start != null) {
      highest = NumberText.one("--start-height-ft", start, HEIGHT);
      given.put(AgreedHeight.START, highest);
    }
    if (abort != null) {
      double lowest = NumberText.one("--abort-height-ft", abort, HEIGHT);
      if (!(lowest < highest)) {
        throw UserError.option(
            "--abort-height-ft", abort, "less than --start-height-ft, which is " + start);
      }
      given.put(AgreedHeight.ABORT, lowest);
    }
    return given;
  }
}
