package io.github.ringstate.instructor.option;

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
   * @throws io.github.ringstate.files.error.UserError if one is no number or out of range
   */
  public Map<AgreedHeight, Double> heights() {
    Map<AgreedHeight, Double> given = new EnumMap<>(AgreedHeight.class);
    if (start != null) {
      given.put(AgreedHeight.START, NumberText.one("--start-height-ft", start, HEIGHT));
    }
    if (abort != null) {
      given.put(AgreedHeight.ABORT, NumberText.one("--abort-height-ft", abort, HEIGHT));
    }
    return given;
  }
}
