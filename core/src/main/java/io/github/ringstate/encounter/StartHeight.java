package io.github.ringstate.encounter;

import io.github.ringstate.dynamics.State;
import java.util.function.DoubleFunction;

/**
 * Finds how high an approach has to start for its onset to be at a height, where the wind depends
 * on height and with it how far the approach goes down.
 *
 * <p>A start higher up usually gives an onset higher up, though less so; the secant method needs
 * three or four flights then; one from the level and one from so much higher say whether the height
 * matters at all. Where it does not lead there, starts are tried ever higher until one has its
 * onset above, and the interval is closed. There may be no such start: in that wind the ring state
 * is not entered at that height. Where a descent grazes the boundary, in gusts above all, the
 * height of onset may jump over the one wanted; the nearer side of the jump is then taken, and the
 * entry and the descent do not quite join.
 */
final class StartHeight {

  /** How near to its height an onset has to be, m. */
  private static final double CLOSE = 1e-3;

  /** Onset height over start height below which the secant method is not followed. */
  private static final double MINIMUM_SLOPE = 0.1;

  private static final int SECANTS = 6;

  /** How far above the onset the first and the highest start tried is, m. */
  private static final double LOWEST = 2;

  private static final double HIGHEST = 512;

  /** Interval of starts that is not divided any more, m. */
  private static final double NARROW = 1e-4;

  /** What the tolerance of an integration makes of a state, SI units. */
  private static final double ROUNDING = 1e-6;

  private final double level;
  private final DoubleFunction<Arrival> flight;

  private StartHeight(double level, DoubleFunction<Arrival> flight) {
    this.level = level;
    this.flight = flight;
  }

  /**
   * A start that was tried.
   *
   * @param startHeight how high it was, m
   * @param arrival where the approach from there ended
   * @param miss how much its onset is above the height wanted, m; NaN without onset
   */
  record Tried(double startHeight, Arrival arrival, double miss) {

    private boolean lost() {
      return Double.isNaN(miss);
    }

    /**
     * Whether another differs in height alone: a wind that is not known to be the same at all
     * heights may be so all the same, at those that matter.
     */
    private boolean isLike(Tried other) {
      double[] here = arrival.state();
      double[] there = other.arrival.state();
      boolean alike = !other.lost() && Math.abs(arrival.time() - other.arrival.time()) <= ROUNDING;
      for (int i = 0; i < State.SIZE && alike; i++) {
        alike = i == State.UP || Math.abs(here[i] - there[i]) <= ROUNDING;
      }
      return alike;
    }

    private boolean isWithin(double distance) {
      return Math.abs(miss) <= distance;
    }
  }

  /**
   * Finds the start.
   *
   * @param level the height at which onset is to be, m
   * @param flight flies the approach from a start so much higher than that of the entry, m
   * @return the start found; without onset if there is none that leads there. Where the height is
   *     of no matter, the start at the level itself, with onset below
   */
  static Tried find(double level, DoubleFunction<Arrival> flight) {
    StartHeight search = new StartHeight(level, flight);
    Tried first = search.at(level);
    Tried found = first;
    if (!first.lost() && !first.isWithin(CLOSE)) {
      Tried next = search.at(level - first.miss());
      if (first.isLike(next)) {
        return first;
      }
      found = search.bySecants(first, next);
    }
    return found.isWithin(CLOSE) ? found : search.byHalving(first);
  }

  private Tried at(double startHeight) {
    Arrival arrival = flight.apply(startHeight);
    return new Tried(startHeight, arrival, arrival.onset() ? arrival.height() - level : Double.NaN);
  }

  private Tried bySecants(Tried first, Tried next) {
    Tried before = first;
    Tried now = next;
    for (int i = 0; i < SECANTS && !now.lost() && !now.isWithin(CLOSE); i++) {
      double slope = (now.miss() - before.miss()) / (now.startHeight() - before.startHeight());
      if (!(slope >= MINIMUM_SLOPE)) {
        return now;
      }
      before = now;
      now = at(now.startHeight() - now.miss() / slope);
    }
    return now;
  }

  /** From below, whether without onset or with one that is too low, to one that is too high. */
  private Tried byHalving(Tried first) {
    Tried low = first;
    Tried high = first;
    for (double above = LOWEST; !(high.miss() >= 0 || (high.lost() && !low.lost())); above *= 2) {
      if (above > HIGHEST) {
        return none(first);
      }
      low = high;
      high = at(level + above);
    }
    for (int i = 0; high.startHeight() - low.startHeight() > NARROW; i++) {
      Tried middle = at(between(low, high, i));
      if (middle.isWithin(CLOSE)) {
        return middle;
      }
      if (middle.lost() ? low.lost() : middle.miss() < 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    if (low.lost() || high.lost()) {
      return none(first);
    }
    return -low.miss() < high.miss() ? low : high;
  }

  /** By the chord and in the middle in turn. */
  private static double between(Tried low, Tried high, int turn) {
    double chord = -low.miss() / (high.miss() - low.miss());
    double share = turn % 2 == 0 && chord > 0 && chord < 1 ? chord : 0.5;
    return low.startHeight() + share * (high.startHeight() - low.startHeight());
  }

  private static Tried none(Tried first) {
    Arrival arrival = first.arrival();
    Happening end = arrival.onset() ? null : arrival.end();
    Arrival without = new Arrival(arrival.time(), arrival.state(), end, arrival.law());
    return new Tried(first.startHeight(), without, Double.NaN);
  }
}
