package io.github.ringstate.encounter;

import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.State;
import io.github.ringstate.integrate.NodeListener;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Writes the nodes of a flight down: time, state and rates of each, and the phase it lies in. */
final class Recorder implements NodeListener<Motion> {

  private final List<String> phases = new ArrayList<>();
  private double[] numbers = new double[256 * Nodes.WIDTH];
  private boolean[] ends = new boolean[256];
  private String phase = "";
  private int size;

  /** Names the phase of the nodes that follow. */
  void phase(String name) {
    phase = name;
  }

  @Override
  public void at(Node node, Motion seen) {
    if (size == ends.length) {
      numbers = Arrays.copyOf(numbers, 2 * numbers.length);
      ends = Arrays.copyOf(ends, 2 * size);
    }
    int at = size * Nodes.WIDTH;
    numbers[at] = seen.time();
    for (int i = 0; i < State.SIZE; i++) {
      numbers[at + 1 + i] = seen.state(i);
      numbers[at + 1 + State.SIZE + i] = seen.rate(i);
    }
    ends[size] = node == Node.END || size == 0;
    phases.add(phase);
    size++;
  }

  /** The history of what was flown from an approach on, up to a time, s. */
  History history(Approach approach, double until) {
    int kept = 0;
    while (kept < size && numbers[kept * Nodes.WIDTH] < until) {
      kept++;
    }
    kept = Math.min(kept + 1, size);
    Nodes nodes =
        new Nodes(
            Arrays.copyOf(numbers, kept * Nodes.WIDTH),
            Arrays.copyOf(ends, kept),
            List.copyOf(phases.subList(0, kept)));
    return new History(approach, nodes, Math.min(until, nodes.time(kept - 1)));
  }
}
