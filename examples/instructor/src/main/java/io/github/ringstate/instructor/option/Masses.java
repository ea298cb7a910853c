package io.github.ringstate.instructor.option;

import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Masses as users give them. */
final class Masses {

  static final String OPTION = "--mass-kg";

  private Masses() {}

  /**
   * A craft at the masses given.
   *
   * @param craft the craft
   * @param text masses in kg with commas between, or null for the craft's own
   * @return the craft at each mass
   * @throws UserError if a mass is no number or outside the craft's limits
   */
  static List<Helicopter> several(Helicopter craft, @Nullable String text) {
    if (text == null) {
      return List.of(craft);
    }
    List<Helicopter> loaded = new ArrayList<>();
    for (double mass : NumberText.several(OPTION, text, limits(craft))) {
      loaded.add(craft.with(Helicopter.MASS, mass));
    }
    return loaded;
  }

  /**
   * A craft at the mass given.
   *
   * @param craft the craft
   * @param text a mass in kg, or null for the craft's own
   * @return the craft at that mass
   * @throws UserError if the mass is no number or outside the craft's limits
   */
  static Helicopter one(Helicopter craft, @Nullable String text) {
    return text == null
        ? craft
        : craft.with(Helicopter.MASS, NumberText.one(OPTION, text, limits(craft)));
  }

  private static Quantity limits(Helicopter craft) {
    return Helicopter.MASS
        .quantity()
        .within(
            craft.numbers().get(Helicopter.MINIMUM_MASS),
            craft.numbers().get(Helicopter.MAXIMUM_MASS));
  }
}
