package io.github.ringstate.integrate;

import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * Something that happens when a quantity passes through zero. A quantity that is zero at the very
 * start of a leg does not pass there: it counts from where it goes.
 *
 * @param kind what happens
 * @param crossing which passages count
 * @param stops whether the leg ends there
 * @param value the quantity, continuous in time
 * @param counts a further condition at the passage
 * @param <K> what names events
 * @param <V> the view of an instant
 */
public record Event<K, V>(
    K kind, Crossing crossing, boolean stops, ToDoubleFunction<V> value, Predicate<V> counts) {

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
   * @param value the quantity, continuous in time
   * @param <K> what names events
   * @param <V> the view of an instant
   * @return the event
   */
  public static <K, V> Event<K, V> stop(K kind, Crossing crossing, ToDoubleFunction<V> value) {
    return new Event<>(kind, crossing, true, value, view -> true);
  }

  /**
   * An event that is noted, while the leg goes on.
   *
   * @param kind what happens
   * @param crossing which passages count
   * @param value the quantity, continuous in time
   * @param <K> what names events
   * @param <V> the view of an instant
   * @return the event
   */
  public static <K, V> Event<K, V> note(K kind, Crossing crossing, ToDoubleFunction<V> value) {
    return new Event<>(kind, crossing, false, value, view -> true);
  }

  /**
   * The same event with a further condition.
   *
   * @param condition what must hold at the passage
   * @return the event that counts only then
   */
  public Event<K, V> when(Predicate<V> condition) {
    return new Event<>(kind, crossing, stops, value, condition);
  }

  /**
   * Whether a passage counts.
   *
   * @param rising whether the quantity rises through zero
   * @param view the instant of the passage
   * @return true if it counts
   */
  public boolean happens(boolean rising, V view) {
    boolean right =
        switch (crossing) {
          case RISING -> rising;
          case FALLING -> !rising;
          case EITHER -> true;
        };
    return right && counts.test(view);
  }
}
