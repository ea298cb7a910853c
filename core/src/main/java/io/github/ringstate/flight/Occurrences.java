package io.github.ringstate.flight;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Events that happened, in order; written without allocation once it has grown to its size. */
public final class Occurrences {

  private EventKind[] kinds = new EventKind[32];
  private double[] numbers = new double[3 * 32];
  private int size;

  /** Creates an empty one. */
  public Occurrences() {}

  /** Forgets all. */
  public void clear() {
    size = 0;
  }

  /**
   * Adds an event.
   *
   * @param kind what happened
   * @param time when, s
   * @param height height then, m
   * @param verticalSpeed vertical speed then, m/s, positive up
   */
  public void add(EventKind kind, double time, double height, double verticalSpeed) {
    if (size == kinds.length) {
      kinds = Arrays.copyOf(kinds, 2 * size);
      numbers = Arrays.copyOf(numbers, 6 * size);
    }
    kinds[size] = kind;
    numbers[3 * size] = time;
    numbers[3 * size + 1] = height;
    numbers[3 * size + 2] = verticalSpeed;
    size++;
  }

  /**
   * How many events there are.
   *
   * @return their number
   */
  public int size() {
    return size;
  }

  /**
   * What happened.
   *
   * @param i the number of the event, from 0
   * @return its kind
   */
  public EventKind kind(int i) {
    return kinds[i];
  }

  /**
   * The vertical speed at an event.
   *
   * @param i the number of the event, from 0
   * @return the speed, m/s, positive up
   */
  public double verticalSpeed(int i) {
    return numbers[3 * i + 2];
  }

  /**
   * All events as a list.
   *
   * @return a copy
   */
  public List<Occurrence> list() {
    List<Occurrence> list = new ArrayList<>(size);
    for (int i = 0; i < size; i++) {
      list.add(new Occurrence(kinds[i], numbers[3 * i], numbers[3 * i + 1], numbers[3 * i + 2]));
    }
    return List.copyOf(list);
  }
}
