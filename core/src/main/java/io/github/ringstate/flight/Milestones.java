package io.github.ringstate.flight;

import java.util.Arrays;

/**
 * The instants of a flight at which its steps began, in order, to fly on from any of them.
 *
 * <p>A step that was tried and found too long has its part in what came after it. So each milestone
 * also knows how far the steps reached that were tried on the way there: a leg that ends before
 * would have cut one of them short, and come by another way.
 */
final class Milestones {

  private static final int TIME = State.SIZE;
  private static final int STEP = State.SIZE + 1;
  private static final int FASTEST = State.SIZE + 2;
  private static final int STEADY = State.SIZE + 3;
  private static final int REACH = State.SIZE + 4;
  private static final int LINGERED = State.SIZE + 5;
  private static final int WIDTH = State.SIZE + 6;

  /** What rounding may make of the end of a step, s. */
  private static final double ROUNDING = 1e-9;

  private double[] numbers = new double[64 * WIDTH];
  private int size;

  void clear() {
    size = 0;
  }

  void add(
      double time,
      double reach,
      double[] state,
      double step,
      double fastest,
      double lingered,
      boolean steady) {
    int at = size * WIDTH;
    if (at == numbers.length) {
      numbers = Arrays.copyOf(numbers, 2 * at);
    }
    System.arraycopy(state, 0, numbers, at, State.SIZE);
    numbers[at + TIME] = time;
    numbers[at + STEP] = step;
    numbers[at + FASTEST] = fastest;
    numbers[at + LINGERED] = lingered;
    numbers[at + STEADY] = steady ? 1 : 0;
    numbers[at + REACH] = size == 0 ? reach : Math.max(reach, numbers[at - WIDTH + REACH]);
    size++;
  }

  /** The time of the last one, s. */
  double last() {
    return time(size - 1);
  }

  /** Which is the last one on the way of a leg that ends at an instant; the first one at least. */
  int onTheWayTo(double end) {
    int low = 0;
    int high = size - 1;
    while (low < high) {
      int middle = (low + high + 1) / 2;
      if (numbers[middle * WIDTH + REACH] + ROUNDING <= end) {
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

  double lingered(int i) {
    return numbers[i * WIDTH + LINGERED];
  }

  boolean steady(int i) {
    return numbers[i * WIDTH + STEADY] != 0;
  }
}
