package io.github.ringstate.integrate;

import java.util.Arrays;

/**
 * The instants of a leg at which its steps began, in order, to go on from any of them.
 *
 * <p>A step that was tried and found too long has its part in what came after it. So each
 * checkpoint also knows how far the steps reached that were tried on the way there: a leg that ends
 * before would have cut one of them short, and come by another way.
 */
final class Checkpoints {

  private static final int TIME = 0;
  private static final int STEP = 1;
  private static final int LEAST = 2;
  private static final int STEADY = 3;
  private static final int REACH = 4;
  private static final int TIMED = 5;
  private static final int EVALUATIONS = 6;
  private static final int STATE = 7;

  /** What rounding may make of the end of a step, s. */
  private static final double ROUNDING = 1e-9;

  private final int width;
  private double[] numbers;
  private int size;

  /** Creates an empty list for states of a length. */
  Checkpoints(int dimension) {
    width = STATE + dimension;
    numbers = new double[64 * width];
  }

  void clear() {
    size = 0;
  }

  void add(
      double time,
      double reach,
      double[] state,
      StepControl control,
      double least,
      double timed,
      long evaluations) {
    int at = size * width;
    if (at == numbers.length) {
      numbers = Arrays.copyOf(numbers, 2 * at);
    }
    System.arraycopy(state, 0, numbers, at + STATE, width - STATE);
    numbers[at + TIME] = time;
    numbers[at + STEP] = control.step();
    numbers[at + LEAST] = least;
    numbers[at + TIMED] = timed;
    numbers[at + EVALUATIONS] = evaluations;
    numbers[at + STEADY] = control.steady() ? 1 : 0;
    numbers[at + REACH] = size == 0 ? reach : Math.max(reach, numbers[at - width + REACH]);
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
      if (numbers[middle * width + REACH] + ROUNDING <= end) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }

  double time(int i) {
    return numbers[i * width + TIME];
  }

  void state(int i, double[] state) {
    System.arraycopy(numbers, i * width + STATE, state, 0, width - STATE);
  }

  double step(int i) {
    return numbers[i * width + STEP];
  }

  double least(int i) {
    return numbers[i * width + LEAST];
  }

  double timed(int i) {
    return numbers[i * width + TIMED];
  }

  long evaluations(int i) {
    return (long) numbers[i * width + EVALUATIONS];
  }

  boolean steady(int i) {
    return numbers[i * width + STEADY] != 0;
  }
}
