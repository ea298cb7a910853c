package io.github.ringstate.integrate;

import java.util.List;

/**
 * Finds where the quantities of events pass through zero within a step, on the cubic between its
 * ends.
 */
final class EventSearch<K, V> {

  /** Part of a step by which the place of an event moves when it is known well enough. */
  private static final double SETTLED = 1e-4;

  private static final int ITERATIONS = 60;

  private final BogackiShampine<V> step;
  private double[] before = new double[16];
  private double[] after = new double[16];
  // where in the step the next passage is looked for: from one place to another, with the value
  // there
  private double[] from = new double[16];
  private double[] until = new double[16];
  private double[] atUntil = new double[16];
  private boolean first;
  private double place;

  EventSearch(BogackiShampine<V> step) {
    this.step = step;
  }

  /** Begins a leg at an instant. */
  void begin(List<Event<K, V>> events, V view) {
    int count = events.size();
    if (count > before.length) {
      before = new double[count];
      after = new double[count];
      from = new double[count];
      until = new double[count];
      atUntil = new double[count];
    }
    for (int i = 0; i < count; i++) {
      before[i] = events.get(i).value().applyAsDouble(view);
    }
    first = true;
  }

  /** Looks at a step and its end; whether any quantity passed on the way. */
  boolean passes(List<Event<K, V>> events, V view, Equations<V> equations, double time, double h) {
    boolean passes = false;
    for (int i = 0; i < events.size(); i++) {
      after[i] = events.get(i).value().applyAsDouble(view);
      if (first && before[i] == 0) {
        before[i] = after[i];
      }
      from[i] = 0;
      until[i] = 1;
      atUntil[i] = after[i];
      passes |= before[i] < 0 != after[i] < 0;
    }
    first = false;
    for (int i = 0; i < events.size(); i++) {
      passes |= visits(events.get(i), i, equations, time, h);
    }
    return passes;
  }

  /** Whether a quantity is beyond zero somewhere within a step but at neither end of it. */
  private boolean visits(Event<K, V> event, int i, Equations<V> equations, double time, double h) {
    double s = event.unseen(before[i]) / h;
    if (!(s < 1) || before[i] < 0 != after[i] < 0) {
      return false;
    }
    while (s < 1) {
      double value = value(event, equations, time, h, s);
      if (value < 0 != before[i] < 0) {
        until[i] = s;
        atUntil[i] = value;
        return true;
      }
      s += event.unseen(value) / h;
    }
    return false;
  }

  private double value(Event<K, V> event, Equations<V> equations, double time, double h, double s) {
    return event.value().applyAsDouble(equations.at(time + s * h, step.within(h, s)));
  }

  /** The event that passes first among those not yet taken, or -1; {@link #place} is where. */
  int first(List<Event<K, V>> events, Equations<V> equations, double time, double h) {
    place = 2;
    int which = -1;
    for (int i = 0; i < events.size(); i++) {
      if (before[i] < 0 != atUntil[i] < 0) {
        double at = located(equations, time, h, events.get(i), i);
        if (at < place) {
          place = at;
          which = i;
        }
      }
    }
    return which;
  }

  /** Part of the step at which the event found last passes. */
  double place() {
    return place;
  }

  /** Takes a passage: it is seen from here on as what it is behind it. */
  boolean takeRising(int which) {
    boolean rising = before[which] < 0;
    before[which] = atUntil[which];
    from[which] = until[which];
    until[which] = 1;
    atUntil[which] = after[which];
    return rising;
  }

  /** Goes on to the next step. */
  void moveOn(int count) {
    System.arraycopy(after, 0, before, 0, count);
  }

  /**
   * Part of the step at which an event's quantity vanishes: regula falsi in the variant of Anderson
   * and Björck (BIT 13, 1973), until it moves by less than a ten-thousandth of the step and so is
   * known far better than that. Where a look hardly changed the value that it replaced, as beside a
   * jump, the next one is in the middle.
   */
  private double located(Equations<V> equations, double time, double h, Event<K, V> event, int i) {
    double left = from[i];
    double right = until[i];
    double f = before[i];
    double g = atUntil[i];
    double last = Double.NaN;
    int kept = 0;
    boolean stuck = false;
    for (int n = 0; n < ITERATIONS; n++) {
      double s = (left * g - right * f) / (g - f);
      if (stuck || !(s > left && s < right)) {
        s = 0.5 * (left + right);
      }
      if (right - left < SETTLED || (!stuck && Math.abs(s - last) < SETTLED)) {
        return s;
      }
      last = s;
      double value = value(event, equations, time, h, s);
      if (value == 0) {
        return s;
      }
      boolean beyond = value < 0 == g < 0;
      stuck = Math.abs(value) > 0.5 * Math.abs(beyond ? g : f);
      if (beyond) {
        if (kept < 0) {
          f *= weight(value, g);
        }
        right = s;
        g = value;
        kept = -1;
      } else {
        if (kept > 0) {
          g *= weight(value, f);
        }
        left = s;
        f = value;
        kept = 1;
      }
    }
    return right;
  }

  /** What the value at an end that is kept for the second time counts for. */
  private static double weight(double now, double previous) {
    double weight = 1 - now / previous;
    return weight > 0 ? weight : 0.5;
  }
}
