package io.github.ringstate.instructor.option;

import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.instructor.refusal.Refusal;
import io.github.ringstate.quantity.Quantity;
import java.util.List;

/** Delays as users type them. */
public final class DelayText {

  private static final Quantity RANGE = Encounter.DELAY;

  private DelayText() {}

  /**
   * Reads one delay.
   *
   * @param option the option's name
   * @param text what was given
   * @return the delay, s
   * @throws Refusal if it is no number or out of range
   */
  public static double one(String option, String text) {
    return NumberText.one(option, text, RANGE);
  }

  /**
   * Reads several delays.
   *
   * @param option the option's name
   * @param text what was given
   * @return the delays, s, as ordered by the user
   * @throws Refusal if one is no number or out of range, or stands twice
   */
  public static List<Double> several(String option, String text) {
    return NumberText.several(option, text, RANGE);
  }
}
