package io.github.ringstate.integrate;

import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * What a {@link FastPropagator} has to be told of its equations.
 *
 * @param inverseScales one over the scale of each quantity of the state, in whose units its error
 *     counts; zero where an error does not matter
 * @param tolerance error of a step that is let pass, in those scales, positive
 * @param watched the place of the quantity whose least value is kept
 * @param stiff the place of the quantity that decays fastest by itself, or -1 for none
 * @param decay the rate of that decay at an instant just worked out, not negative
 * @param timed a condition; how long it held is kept, by the ends of steps
 * @param <V> the view of an instant
 */
@SuppressWarnings("ArrayRecordComponent") // read at every step
public record FastSettings<V>(
    double[] inverseScales,
    double tolerance,
    int watched,
    int stiff,
    ToDoubleFunction<V> decay,
    Predicate<V> timed) {

  /** Part of the message when the tolerance is not positive; it stands behind it. */
  public static final String TOLERANCE = "the tolerance must be positive, not ";

  /** Checks the tolerance and the places. */
  public FastSettings {
    if (!(tolerance > 0)) {
      throw new IllegalArgumentException(TOLERANCE + tolerance);
    }
    if (!(watched >= 0 && watched < inverseScales.length && stiff < inverseScales.length)) {
      throw new IllegalArgumentException(
          "places " + watched + " and " + stiff + " in a state of " + inverseScales.length);
    }
    inverseScales = inverseScales.clone();
  }

  /**
   * Settings without a stiff quantity and without a condition.
   *
   * @param inverseScales one over the scale of each quantity
   * @param tolerance error of a step that is let pass, positive
   * @param <V> the view of an instant
   * @return the settings; the first quantity is watched
   */
  public static <V> FastSettings<V> plain(double[] inverseScales, double tolerance) {
    return new FastSettings<>(inverseScales, tolerance, 0, -1, view -> 0, view -> false);
  }

  /**
   * The same settings with a stiff quantity.
   *
   * @param place its place in the state
   * @param rate the rate of its decay at an instant just worked out, not negative
   * @return the changed settings
   */
  public FastSettings<V> withStiff(int place, ToDoubleFunction<V> rate) {
    return new FastSettings<>(inverseScales, tolerance, watched, place, rate, timed);
  }
}
