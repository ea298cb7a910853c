package io.github.ringstate.flight;

import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * Something that happens in a flight when a quantity passes through zero.
 *
 * @param kind what happens
 * @param crossing which passages count
 * @param stops whether the leg ends there
 * @param value the quantity, continuous along the flight
 * @param counts a further condition at the passage
 */
public record FlightEvent(
    EventKind kind,
    Crossing crossing,
    boolean stops,
    ToDoubleFunction<Motion> value,
    Predicate<Motion> counts) {

  /** Which passages through zero count. */
  public enum Crossing {
    /** From negative to positive. */
    RISING,
    /** From positive to negative. */
    FALLING,
    /** Both. */
    EITHER
  }

  /**
   * An event that ends its leg.
   *
   * @param kind what happens
   * @param crossing which passages count
   * @param value the quantity, continuous along the flight
   * @return the event
   */
  public static FlightEvent stop(
      EventKind kind, Crossing crossing, ToDoubleFunction<Motion> value) {
    return new FlightEvent(kind, crossing, true, value, motion -> true);
  }

  /**
   * An event that is noted, while the leg goes on.
   *
   * @param kind what happens
   * @param crossing which passages count
   * @param value the quantity, continuous along the flight
   * @return the event
   */
  public static FlightEvent note(
      EventKind kind, Crossing crossing, ToDoubleFunction<Motion> value) {
    return new FlightEvent(kind, crossing, false, value, motion -> true);
  }

  /**
   * The same event with a further condition.
   *
   * @param condition what must hold at the passage
   * @return the event that counts only then
   */
  public FlightEvent when(Predicate<Motion> condition) {
    return new FlightEvent(kind, crossing, stops, value, condition);
  }

  /**
   * Whether a passage counts.
   *
   * @param rising whether the quantity rises through zero
   * @param motion the motion at the passage
   * @return true if it counts
   */
  public boolean happens(boolean rising, Motion motion) {
    boolean right =
        switch (crossing) {
          case RISING -> rising;
          case FALLING -> !rising;
          case EITHER -> true;
        };
    return right && counts.test(motion);
  }
}
