package io.github.ringstate.analysis.sensitivity;

import io.github.ringstate.integrate.DormandPrince;
import io.github.ringstate.integrate.Equations;
import io.github.ringstate.integrate.Event;
import io.github.ringstate.integrate.EventLog;
import io.github.ringstate.integrate.PrecisePropagator;
import io.github.ringstate.integrate.Propagator;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/**
 * A leg together with its derivative s = dy/dp by a number p: y' = f(t, y, p) and s' = f_y s + f_p,
 * integrated side by side. The right-hand side of the second is the derivative of f(t, y + e s, p +
 * e) by e, and is taken as a central difference between the equations of two neighbours, of which
 * one has a little more of the number and one a little less. No neighbour is flown.
 *
 * <p>An event, of which the quantity is g(t, y, p), moves in time by t_p = -(g_y s + g_p) /
 * (dg/dt). What is handed on is where the neighbours meet it, y + e (s + f t_p); and where the leg
 * of a neighbour begins at another time, s begins with what that makes of the state at the same
 * time. Together these are the jumps of s at an event (Rozenvasser, Automation and Remote Control
 * 28, 1967; from memory).
 *
 * @param <K> what names events
 * @param <V> the view of an instant
 */
final class LinearLeg<K, V> implements Equations<V> {

  /** Tolerance of the integration, for state and derivative. */
  private static final double TOLERANCE = 1e-11;

  /** Half of the time over which the rate of an event's quantity is taken, s. */
  private static final double INSTANT = 1e-4;

  /**
   * Second difference of the rates over the first, beyond which they have a kink at the number:
   * where they are smooth it is of the size of the part.
   */
  private static final double BENT = 1e-2;

  /** A difference of rates that is rounding, in SI units. */
  private static final double ROUNDING = 1e-8;

  private final Leg<K, V> base;
  private final Leg<K, V> more;
  private final Leg<K, V> less;
  private final double part;
  private final int size;
  private boolean bent;
  private final double[] state;
  private final double[] rates;
  private final double[] stateOfMore;
  private final double[] stateOfLess;
  private final double[] ratesOfMore;
  private final double[] ratesOfLess;

  /**
   * A leg and those of its neighbours.
   *
   * @param base the leg
   * @param more that of the neighbour with more of the number
   * @param less that of the neighbour with less
   * @param part how much more and less, in the unit of the number in which derivatives are taken
   */
  LinearLeg(Leg<K, V> base, Leg<K, V> more, Leg<K, V> less, double part) {
    this.base = base;
    this.more = more;
    this.less = less;
    this.part = part;
    size = base.equations().dimension();
    state = new double[size];
    rates = new double[size];
    stateOfMore = new double[size];
    stateOfLess = new double[size];
    ratesOfMore = new double[size];
    ratesOfLess = new double[size];
  }

  /**
   * Flies the leg; returns how it was flown, and how the neighbours with more and less would be.
   */
  List<Leg.Flown> fly() {
    Propagator<Integer, V> flight = new PrecisePropagator<>(DormandPrince::new, TOLERANCE, 0);
    flight.start(base.begin().time(), beginning());
    Integer met = flight.propagate(this, base.end(), numbered());
    int stop = met == null ? Leg.Flown.TIME_OVER : met;
    EventLog<Integer> log = flight.log();
    List<List<Leg.Met>> notes = List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    for (int k = 0; k < log.size(); k++) {
      int noted = k;
      List<Leg.Place> places = places(log.time(k), i -> log.state(noted, i), log.kind(k));
      for (int who = 0; who < places.size(); who++) {
        notes.get(who).add(new Leg.Met(log.kind(k), places.get(who)));
      }
    }
    List<Leg.Place> ends = places(flight.time(), flight::state, stop);
    bent = bends();
    List<Leg.Flown> flown = new ArrayList<>();
    for (int who = 0; who < ends.size(); who++) {
      flown.add(new Leg.Flown(notes.get(who), stop, ends.get(who)));
    }
    return flown;
  }

  /** Whether the equations of the neighbours were found not to lie to either side of the leg's. */
  boolean isBent() {
    return bent;
  }

  /** Whether the rates that were worked out last have a kink at the number. */
  private boolean bends() {
    double first = 0;
    double second = 0;
    for (int i = 0; i < size; i++) {
      first = Math.max(first, Math.abs(ratesOfMore[i] - ratesOfLess[i]));
      second = Math.max(second, Math.abs(ratesOfMore[i] - 2 * rates[i] + ratesOfLess[i]));
    }
    return !(second <= BENT * first + ROUNDING);
  }

  /** State and derivative where the leg begins, at the time at which its own flight does. */
  private double[] beginning() {
    double[] both = Arrays.copyOf(base.begin().state(), 2 * size);
    base.equations().rates(base.begin().time(), base.begin().state().clone(), rates);
    double later = slope(more.begin().time(), less.begin().time());
    for (int i = 0; i < size; i++) {
      both[size + i] = slope(more.begin().state()[i], less.begin().state()[i]) - rates[i] * later;
    }
    return both;
  }

  /** The events, named by their numbers: one kind may be looked for in several ways. */
  private List<Event<Integer, V>> numbered() {
    List<Event<Integer, V>> numbered = new ArrayList<>();
    for (Event<K, V> event : base.events()) {
      numbered.add(
          new Event<>(
              numbered.size(),
              event.crossing(),
              event.stops(),
              event.value(),
              event.counts(),
              event.fastest()));
    }
    return numbered;
  }

  /** Where the three meet an event, or end where their time is over: itself, with more, less. */
  private List<Leg.Place> places(double time, IntToDoubleFunction both, int event) {
    double[] there = new double[2 * size];
    Arrays.setAll(there, both);
    rates(time, there, new double[2 * size]);
    double[] at = state.clone();
    double[] slopes = rates.clone();
    double later =
        event == Leg.Flown.TIME_OVER
            ? slope(more.end(), less.end())
            : later(event, time, at, slopes);
    double[] atMore = new double[size];
    double[] atLess = new double[size];
    for (int i = 0; i < size; i++) {
      double change = there[size + i] + slopes[i] * later;
      atMore[i] = at[i] + part * change;
      atLess[i] = at[i] - part * change;
    }
    return List.of(
        new Leg.Place(time, at),
        new Leg.Place(time + part * later, atMore),
        new Leg.Place(time - part * later, atLess));
  }

  /** How much later an event is with more of the number, s per unit, where rates were looked at. */
  private double later(int event, double time, double[] at, double[] slopes) {
    double byNumber =
        slope(more.value(event, time, stateOfMore), less.value(event, time, stateOfLess));
    double[] before = new double[size];
    double[] after = new double[size];
    for (int i = 0; i < size; i++) {
      before[i] = at[i] - INSTANT * slopes[i];
      after[i] = at[i] + INSTANT * slopes[i];
    }
    double byTime =
        (base.value(event, time + INSTANT, after) - base.value(event, time - INSTANT, before))
            / (2 * INSTANT);
    return -byNumber / byTime;
  }

  private double slope(double withMore, double withLess) {
    return (withMore - withLess) / (2 * part);
  }

  /** Sets the neighbours' states. */
  private void apart(double[] both) {
    for (int i = 0; i < size; i++) {
      stateOfMore[i] = both[i] + part * both[size + i];
      stateOfLess[i] = both[i] - part * both[size + i];
    }
  }

  @Override
  public int dimension() {
    return 2 * size;
  }

  @Override
  public V rates(double time, double[] both, double[] itsRates) {
    apart(both);
    more.equations().rates(time, stateOfMore, ratesOfMore);
    less.equations().rates(time, stateOfLess, ratesOfLess);
    System.arraycopy(both, 0, state, 0, size);
    V view = base.equations().rates(time, state, rates);
    for (int i = 0; i < size; i++) {
      itsRates[i] = rates[i];
      itsRates[size + i] = slope(ratesOfMore[i], ratesOfLess[i]);
    }
    return view;
  }

  @Override
  public V at(double time, double[] both) {
    System.arraycopy(both, 0, state, 0, size);
    return base.equations().at(time, state);
  }
}
