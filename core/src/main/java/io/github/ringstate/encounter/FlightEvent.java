package io.github.ringstate.encounter;

import io.github.ringstate.integrate.Event.Crossing;
import io.github.ringstate.pilot.Cockpit;
import java.util.Objects;
import java.util.function.ToDoubleFunction;

/**
 * An event of one's own: it happens where a quantity passes through zero, and is located exactly.
 * It is looked for from onset on. Equal to another only if the quantity is the same object; where
 * encounters are to be compared, use a method reference kept in a constant.
 *
 * @param name what it is called in {@link Occurrence#label()}
 * @param value the quantity, a function of nothing but what is seen, continuous along the flight,
 *     any unit; what is seen is not to be kept
 * @param crossing which passages count
 * @param stops whether the flight ends there, {@link Ending#STOPPED} unless it was arrested before
 */
public record FlightEvent(
    String name, ToDoubleFunction<Cockpit> value, Crossing crossing, boolean stops)
    implements Happening {

  /** Refuses null. */
  public FlightEvent {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(value, "value");
    Objects.requireNonNull(crossing, "crossing");
  }

  /**
   * An event that is noted among the occurrences.
   *
   * @param name what it is called
   * @param crossing which passages count
   * @param value the quantity
   * @return the event
   */
  public static FlightEvent note(String name, Crossing crossing, ToDoubleFunction<Cockpit> value) {
    return new FlightEvent(name, value, crossing, false);
  }

  /**
   * An event that ends the flight.
   *
   * @param name what it is called
   * @param crossing which passages count
   * @param value the quantity
   * @return the event
   */
  public static FlightEvent stop(String name, Crossing crossing, ToDoubleFunction<Cockpit> value) {
    return new FlightEvent(name, value, crossing, true);
  }

  @Override
  public String label() {
    return name;
  }

  /** The name, and what it does. */
  @Override
  public String toString() {
    return (stops ? "stops at " : "notes ") + name + ", " + crossing;
  }
}
