package io.github.ringstate.analysis.sensitivity;

import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.quantity.Quantity;
import java.util.Objects;

/**
 * A number that an encounter depends on.
 *
 * @param group what it belongs to: craft, air, pilot or model
 * @param range its name, unit and the range in which it may lie, for whatever reason
 * @param standard its value in the base, within the range, in the unit of the range
 * @param change the encounter with another value
 */
public record Input(String group, Quantity range, double standard, Change change) {

  /** Makes the encounter with another value of a number. */
  @FunctionalInterface
  public interface Change {

    /**
     * Changes the number.
     *
     * @param base the encounter
     * @param value the value, in the unit of the range
     * @return the changed encounter
     */
    Encounter with(Encounter base, double value);
  }

  /** Checks the value. */
  public Input {
    Objects.requireNonNull(change, "change");
    range.check(standard);
  }

  /**
   * The name of the number.
   *
   * @return some lower-case words
   */
  public String name() {
    return range.name();
  }
}
