package io.github.ringstate.encounter;

import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ObjIntConsumer;

/**
 * The course of a flight, from the start of its entry to its end: every quantity at any time, or as
 * the steps of the integration gave it.
 *
 * <p>Between two nodes a quantity of the state lies on the cubic through its values and rates
 * there, which is the method's own for a fast flight; nodes of a precise flight are at most 0.02 s
 * apart, and the cubic is then within some 1e-6 of the flight in SI units. All other quantities are
 * worked out from the state.
 *
 * <p>Immutable and safe to share between threads; it keeps nothing of the simulator.
 */
public final class History {

  private final Approach approach;
  private final Nodes nodes;
  private final double end;

  History(Approach approach, Nodes nodes, double end) {
    this.approach = approach;
    this.nodes = nodes;
    this.end = end;
  }

  /**
   * When the flight began.
   *
   * @return the time, s: zero
   */
  public double start() {
    return nodes.time(0);
  }

  /**
   * When the flight ended.
   *
   * @return the time since it began, s
   */
  public double end() {
    return end;
  }

  /**
   * The flight at one instant.
   *
   * @param time the time since the flight began, s, from {@link #start} to {@link #end}
   * @return all quantities
   * @throws io.github.ringstate.quantity.OutOfRangeException if the time is outside the flight
   */
  public Instant at(double time) {
    return at(new double[] {time}).get(0);
  }

  /**
   * The flight at some instants.
   *
   * @param times the times since the flight began, s, in any order
   * @return all quantities at each
   * @throws io.github.ringstate.quantity.OutOfRangeException if a time is outside the flight
   */
  public List<Instant> at(double... times) {
    List<Instant> instants = new ArrayList<>();
    each(
        times,
        (motion, place) ->
            instants.add(new Instant(nodes.phase(nodes.before(times[place])), motion)));
    return List.copyOf(instants);
  }

  /**
   * Some quantities at some instants; quicker than {@link #at(double...)} where all are not needed.
   *
   * @param quantities the quantities
   * @param times the times since the flight began, s, in any order
   * @return for each quantity its value at each time, in its unit
   * @throws io.github.ringstate.quantity.OutOfRangeException if a time is outside the flight
   */
  public double[][] values(List<FlightQuantity> quantities, double... times) {
    double[][] values = new double[quantities.size()][times.length];
    each(
        times,
        (motion, place) -> {
          for (int i = 0; i < values.length; i++) {
            values[i][place] = quantities.get(i).of(motion);
          }
        });
    return values;
  }

  private void each(double[] times, ObjIntConsumer<Motion> look) {
    Quantity within = new Quantity("time of the flight", Unit.SECOND, start(), end);
    Scene scene = approach.scene();
    EquationsOfMotion free = scene.equations(false);
    EquationsOfMotion above = scene.equations(approach.encounter().height().isPresent());
    for (int place = 0; place < times.length; place++) {
      double time = within.check(times[place]);
      EquationsOfMotion equations = time < approach.time() ? free : above;
      look.accept(equations.at(time, nodes.state(time)), place);
    }
  }

  /**
   * The flight at equal steps of time.
   *
   * @param step the time between two instants, s, positive
   * @return all quantities at the start and at each step from there, and at the end
   */
  public List<Instant> sampled(double step) {
    if (!(step > 0)) {
      throw new IllegalArgumentException(
          "the step between instants must be positive, not " + step + " s");
    }
    int count = Math.toIntExact((long) Math.ceil((end - start()) / step - 1e-9));
    double[] times = new double[count + 1];
    Arrays.setAll(times, i -> i == count ? end : start() + i * step);
    return at(times);
  }

  /**
   * The flight as the integration stepped through it.
   *
   * @return all quantities at the start and at the end of each step
   */
  public List<Instant> steps() {
    return at(nodes.steps(end));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof History history
        && approach.encounter().equals(history.approach.encounter())
        && nodes.equals(history.nodes)
        && end == history.end;
  }

  @Override
  public int hashCode() {
    return nodes.hashCode();
  }

  /** How long the flight is, and in how many nodes it is kept. */
  @Override
  public String toString() {
    return "history of " + (end - start()) + " s in " + nodes.size() + " nodes";
  }
}
