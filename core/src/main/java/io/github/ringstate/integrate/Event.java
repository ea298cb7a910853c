package io.github.ringstate.integrate;

import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * Something that happens when a quantity passes through zero. A quantity that is zero at the very
 * start of a leg does not pass there: it counts from where it goes.
 *
 * <p>A propagator looks at the quantity at the ends of its steps. One that goes through zero and
 * back within a step would go unseen; where it is known how fast the quantity changes at most, it
 * is looked at as often in between as it takes to see every such visit that lasts a millisecond.
 *
 * @param kind what happens
 * @param crossing which passages count
 * @param stops whether the leg ends there
 * @param value the quantity, continuous in time
 * @param counts a further condition at the passage
 * @param fastest how fast the quantity changes at most, in its unit per unit of time; zero where it
 *     is not looked at within steps
 * @param <K> what names events
 * @param <V> the view of an instant
 */
public record Event<K, V>(
    K kind,
    Crossing crossing,
    boolean stops,
    ToDoubleFunction<V> value,
    Predicate<V> counts,
    double fastest) {

  /** Shortest visit on the other side of zero that is sure to be seen. */
  static final double SHORTEST_VISIT = 1e-3;

  /** Message when the greatest rate of change is no rate. */
  public static final String NO_RATE =
      "how fast a quantity changes at most must be positive, or zero if unknown, not ";

  /** Checks the greatest rate of change. */
  public Event {
    if (!(fastest >= 0)) {
      throw new IllegalArgumentException(NO_RATE + fastest);
    }
  }

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
    return new Event<>(kind, crossing, true, value, view -> true, 0);
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
    return new Event<>(kind, crossing, false, value, view -> true, 0);
  }

  /**
   * The same event with a further condition.
   *
   * @param condition what must hold at the passage
   * @return the event that counts only then
   */
  public Event<K, V> when(Predicate<V> condition) {
    return new Event<>(kind, crossing, stops, value, condition, fastest);
  }

  /**
   * The same event, seen within steps as well.
   *
   * @param rate how fast the quantity changes at most, in its unit per unit of time, positive
   * @return the event whose visits beyond zero are seen if they last a millisecond
   */
  public Event<K, V> changingAtMost(double rate) {
    if (!(rate > 0)) {
      throw new IllegalArgumentException(NO_RATE + rate);
    }
    return new Event<>(kind, crossing, stops, value, counts, rate);
  }

  /**
   * How long the quantity may go unseen.
   *
   * @param now its value
   * @return the time; infinite where it is not looked at within steps
   */
  double unseen(double now) {
    return fastest > 0
        ? Math.max(Math.abs(now) / fastest, SHORTEST_VISIT)
        : Double.POSITIVE_INFINITY;
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
