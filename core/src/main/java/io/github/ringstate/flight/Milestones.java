package io.github.ringstate.flight;

import java.util.Arrays;

/** The instants of a flight at which its steps began, in order, to fly on from any of them. */
final class Milestones {

  private static final int TIME = State.SIZE;
  private static final int STEP = State.SIZE + 1;
  private static final int FASTEST = State.SIZE + 2;
  private static final int STEADY = State.SIZE + 3;
  private static final int WIDTH = State.SIZE + 4;

  private double[] numbers = new double[64 * WIDTH];
  private int size;

  void clear() {
    size = 0;
  }

  void add(double time, double[] state, double step, double fastest, boolean steady) {
    int at = size * WIDTH;
    if (at == numbers.length) {
      numbers = Arrays.copyOf(numbers, 2 * at);
    }
    System.arraycopy(state, 0, numbers, at, State.SIZE);
    numbers[at + TIME] = time;
    numbers[at + STEP] = step;
    numbers[at + FASTEST] = fastest;
    numbers[at + STEADY] = steady ? 1 : 0;
    size++;
  }

  /** The time of the last one, s. */
  double last() {
    return time(size - 1);
  }

  /** Which is the last one not after an instant; the first one if all are later. */
  int notAfter(double instant) {
    int low = 0;
    int high = size - 1;
    while (low < high) {
      int middle = (low + high + 1) / 2;
      if (time(middle) <= instant) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }

  double time(int i) {
    return numbers[i * WIDTH + TIME];
  }

  void state(int i, double[] state) {
    System.arraycopy(numbers, i * WIDTH, state, 0, State.SIZE);
  }

  double step(int i) {
    return numbers[i * WIDTH + STEP];
  }

  double fastest(int i) {
    return numbers[i * WIDTH + FASTEST];
  }

  boolean steady(int i) {
    return numbers[i * WIDTH + STEADY] != 0;
  }
}
