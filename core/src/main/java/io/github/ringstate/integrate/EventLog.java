package io.github.ringstate.integrate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Events that happened, in order, with the state at each; written without allocation once it has
 * grown to its size.
 *
 * @param <K> what names events
 */
public final class EventLog<K> {

  private final List<K> kinds = new ArrayList<>();
  private double[] numbers = new double[0];
  private int width;

  /** Creates an empty log. */
  public EventLog() {}

  /** Forgets all. */
  public void clear() {
    kinds.clear();
  }

  /**
   * Forgets the latest events.
   *
   * @param kept how many are kept
   */
  public void truncate(int kept) {
    while (kinds.size() > kept) {
      kinds.remove(kinds.size() - 1);
    }
  }

  /**
   * Adds an event.
   *
   * @param kind what happened
   * @param time when
   * @param state the state then; copied; as long as in every event since the log was last empty
   */
  public void add(K kind, double time, double[] state) {
    if (kinds.isEmpty()) {
      width = state.length + 1;
    }
    int at = kinds.size() * width;
    if (at + width > numbers.length) {
      numbers = Arrays.copyOf(numbers, 2 * (at + 4 * width));
    }
    kinds.add(kind);
    numbers[at] = time;
    System.arraycopy(state, 0, numbers, at + 1, width - 1);
  }

  /**
   * How many events there are.
   *
   * @return their number
   */
  public int size() {
    return kinds.size();
  }

  /**
   * What happened.
   *
   * @param i the number of the event, from 0
   * @return its kind
   */
  public K kind(int i) {
    return kinds.get(i);
  }

  /**
   * When it happened.
   *
   * @param i the number of the event, from 0
   * @return the time
   */
  public double time(int i) {
    return numbers[i * width];
  }

  /**
   * One quantity of the state when it happened.
   *
   * @param i the number of the event, from 0
   * @param index the place in the state
   * @return its value
   */
  public double state(int i, int index) {
    return numbers[i * width + 1 + index];
  }
}
