package io.github.ringstate.encounter;

import io.github.ringstate.dynamics.State;
import java.util.Arrays;
import java.util.List;

/**
 * The nodes of a flight in order of time, and the cubics through their states and rates (Hermite).
 * Two nodes may lie at one time, where rates jump: the latter counts.
 */
final class Nodes {

  /** Numbers of a node: its time, its state, its rates. */
  static final int WIDTH = 1 + 2 * State.SIZE;

  private final double[] numbers;
  private final boolean[] ends;
  private final List<String> phases;

  /** Takes nodes over, at least one; nobody else keeps the arrays. */
  Nodes(double[] numbers, boolean[] ends, List<String> phases) {
    this.numbers = numbers;
    this.ends = ends;
    this.phases = phases;
  }

  int size() {
    return ends.length;
  }

  double time(int node) {
    return numbers[node * WIDTH];
  }

  String phase(int node) {
    return phases.get(node);
  }

  /** The times at which steps ended, and the start. */
  double[] steps(double until) {
    double[] times = new double[size() + 1];
    int count = 0;
    for (int i = 0; i < size(); i++) {
      double at = Math.min(time(i), until);
      if (ends[i] && (count == 0 || at > times[count - 1])) {
        times[count++] = at;
      }
    }
    return Arrays.copyOf(times, count);
  }

  /** The last node that is not after a time; the first one at least. */
  int before(double time) {
    int low = 0;
    int high = size() - 1;
    while (low < high) {
      int middle = (low + high + 1) / 2;
      if (time(middle) <= time) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }

  /** The state at a time within the flight. */
  double[] state(double time) {
    int node = before(time);
    int at = node * WIDTH + 1;
    double h = node + 1 < size() ? time(node + 1) - time(node) : 0;
    double s = h > 0 ? (time - time(node)) / h : 0;
    double[] state = Arrays.copyOfRange(numbers, at, at + State.SIZE);
    if (s == 0) {
      return state;
    }
    double r = 1 - s;
    for (int i = 0; i < State.SIZE; i++) {
      double left = numbers[at + i];
      double right = numbers[at + WIDTH + i];
      double leftRate = numbers[at + State.SIZE + i];
      double rightRate = numbers[at + WIDTH + State.SIZE + i];
      state[i] =
          (1 + 2 * s) * r * r * left
              + s * r * r * h * leftRate
              + s * s * (3 - 2 * s) * right
              - s * s * r * h * rightRate;
    }
    return state;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Nodes nodes
        && Arrays.equals(numbers, nodes.numbers)
        && phases.equals(nodes.phases);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(numbers);
  }
}
