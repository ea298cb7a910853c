package io.github.ringstate.flight;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A course for bulk work: the same equations of motion, flown without allocation by the pair of
 * order 3 with an error estimate of order 2 by Bogacki and Shampine (Applied Mathematics Letters 2,
 * 1989).
 *
 * <p>A step is as long as its error estimate allows, in each quantity of the state relative to a
 * scale of its own. The last stage of a step is the first of the next one, so what events look at
 * is known at the end of each step without another evaluation.
 *
 * <p>Stability: by far the fastest thing is the decay of the induced velocity, 12 to 60 a second,
 * whose rate the equations tell. Steps are kept within the method's stability for it, so that none
 * is wasted on finding the limit. Only where the flight is all but steady, and the limit is all
 * that keeps steps short, are they longer; what decays too fast for them is then solved exactly
 * ({@link DecayWeights}). Doing so everywhere saves steps but costs more accuracy than they are
 * worth: a velocity that follows its target closely is as smooth as the target, and the plain
 * method makes use of that.
 *
 * <p>Events are located on the cubic through values and slopes at the ends of their step; a leg
 * that an event ends is then stepped anew to that instant. The greatest rate of descent is that of
 * the cubics.
 *
 * <p>The first leg after a start is kept, step by step, so that flights that differ only in what
 * follows it need not fly it again; unless something is noted on it.
 *
 * <p>An instance is used over and over by one thread and is not safe to share.
 */
public final class SwiftCourse implements Course {

  /**
   * Error of a step that is let pass, in the scales below; chosen by measurement, see the tests.
   */
  private static final double STANDARD_TOLERANCE = 2.5e-4;

  /** Decay times step that the method bears; its limit of stability is 2.51. */
  private static final double STABLE = 2.3;

  /** Error of a step, over the tolerance, below which the flight is all but steady. */
  private static final double ALL_BUT_STEADY = 1e-3;

  /** Vertical acceleration of a descent that lingers, m/s2, and its rate of descent, m/s. */
  private static final double HARDLY_CHANGING = 0.1;

  private static final double SINKING = 2;

  private static final double FIRST_STEP = 0.02;
  private static final double GREATEST_STEP = 0.5;
  private static final double LEAST_STEP = 1e-6;
  private static final double SAFETY = 0.9;
  private static final double LEAST_FACTOR = 0.2;
  private static final double GREATEST_FACTOR = 3;
  private static final int MOST_EVENTS = 16;
  private static final double INSTANT = 1e-9;

  /** Part of a step by which the place of an event moves when it is known well enough. */
  private static final double SETTLED = 1e-4;

  private static final int ITERATIONS = 60;

  /** One over the scale of each quantity of the state, in the order of {@link State}. */
  private static final double[] PER_SCALE = {
    0,
    0,
    1, // position: only the height matters
    1,
    1,
    1, // m/s
    5,
    5,
    5, // 0.2 rad
    1,
    1,
    1, // rad/s
    20, // 0.05 rad
    0.1, // m/s: an error of the inflow dies away within a step or two
    0.1, // rad/s, of some tens
    0.2 // the indicator is read, not flown by
  };

  private final double tolerance;
  private final Occurrences occurrences = new Occurrences();
  private final Milestones kept = new Milestones();
  private final DecayWeights weights = new DecayWeights();
  private double[] y = new double[State.SIZE];
  private double[] next = new double[State.SIZE];
  private double[] k1 = new double[State.SIZE];
  private final double[] k2 = new double[State.SIZE];
  private final double[] k3 = new double[State.SIZE];
  private double[] k4 = new double[State.SIZE];
  private final double[] probe = new double[State.SIZE];
  private final double[] before = new double[MOST_EVENTS];
  private final double[] after = new double[MOST_EVENTS];
  private double time;
  private double step;
  private double decay;
  private double fastest;
  private double lingered;
  private boolean steady;
  private boolean firstLeg;
  private @Nullable ControlLaw keptLaw;

  /** Creates a course with the standard tolerance. */
  public SwiftCourse() {
    this(STANDARD_TOLERANCE);
  }

  /**
   * Creates a course.
   *
   * @param tolerance error of a step that is let pass, in units of about 1 m, 1 m/s, 0.2 rad,
   *     positive
   */
  public SwiftCourse(double tolerance) {
    if (!(tolerance > 0)) {
      throw new IllegalArgumentException("the tolerance must be positive, not " + tolerance);
    }
    this.tolerance = tolerance;
  }

  @Override
  public void start(double from, double[] at, ControlLaw law) {
    keptLaw = law;
    time = from;
    System.arraycopy(at, 0, y, 0, State.SIZE);
    step = FIRST_STEP;
    fastest = Math.max(0, -y[State.SPEED_UP]);
    lingered = 0;
    steady = false;
    firstLeg = true;
    occurrences.clear();
    kept.clear();
    kept.add(time, time, y, step, fastest, lingered, steady);
  }

  @Override
  public void again(double until) {
    int i = kept.onTheWayTo(until);
    time = kept.time(i);
    kept.state(i, y);
    step = kept.step(i);
    fastest = kept.fastest(i);
    lingered = kept.lingered(i);
    steady = kept.steady(i);
    firstLeg = true;
    occurrences.clear();
  }

  @Override
  public @Nullable EventKind fly(
      EquationsOfMotion motion, ControlLaw law, double end, List<FlightEvent> events) {
    boolean keeping = firstLeg && law == keptLaw;
    firstLeg = false;
    int noted = occurrences.size();
    double reach = time;
    int count = events.size();
    if (count > MOST_EVENTS) {
      throw new IllegalArgumentException("at most " + MOST_EVENTS + " events, not " + count);
    }
    Motion m = motion.on(time, y, k1, law);
    decay = motion.inflowDecay();
    for (int i = 0; i < count; i++) {
      before[i] = events.get(i).value().applyAsDouble(m);
    }
    while (end - time > INSTANT) {
      double wanted = steady ? step : Math.min(step, STABLE / decay);
      double h = Math.min(wanted, end - time);
      // what follows a step cut short belongs to this leg alone, even if the step is not taken
      keeping &= h == wanted;
      reach = Math.max(reach, time + h);
      double error = attempt(motion, law, h);
      if (!(error <= 1) && h > LEAST_STEP) {
        step = h * factor(error);
        continue;
      }
      double nextDecay = motion.inflowDecay();
      boolean crossed = false;
      for (int i = 0; i < count; i++) {
        after[i] = events.get(i).value().applyAsDouble(m);
        crossed |= before[i] < 0 != after[i] < 0;
      }
      if (crossed) {
        EventKind stop = passed(motion, law, h, events);
        if (stop != null) {
          return stop;
        }
      }
      lookForFastest(h, 1);
      if (Math.abs(k4[State.SPEED_UP]) < HARDLY_CHANGING
          && next[State.SPEED_UP] < -SINKING
          && motion.sinkFeedsItself()) {
        lingered += h;
      }
      moveOn(h);
      System.arraycopy(after, 0, before, 0, count);
      decay = nextDecay;
      if (h == wanted) {
        step = Math.min(h * factor(error), GREATEST_STEP);
        steady = error < ALL_BUT_STEADY;
        keeping &= occurrences.size() == noted;
        if (keeping && time > kept.last()) {
          kept.add(time, reach, y, step, fastest, lingered, steady);
        }
      }
    }
    return null;
  }

  /** Goes through the events of a step in order of time, up to the first that ends the leg. */
  private @Nullable EventKind passed(
      EquationsOfMotion motion, ControlLaw law, double h, List<FlightEvent> events) {
    double done = 0;
    while (true) {
      double first = 2;
      int which = -1;
      for (int i = 0; i < events.size(); i++) {
        if (before[i] < 0 != after[i] < 0) {
          double at = located(motion, law, h, events.get(i), before[i], after[i]);
          if (at < first) {
            first = at;
            which = i;
          }
        }
      }
      if (which < 0) {
        return null;
      }
      FlightEvent event = events.get(which);
      boolean rising = before[which] < 0;
      // taken care of: seen from here on as what it is at the end of the step
      before[which] = after[which];
      done = Math.max(done, first);
      Motion there = interpolated(motion, law, h, done);
      if (!event.happens(rising, there)) {
        continue;
      }
      if (!event.stops()) {
        occurrences.add(event.kind(), time + done * h, there.height(), there.verticalSpeed());
        continue;
      }
      double cut = done * h;
      if (cut > INSTANT) {
        lookForFastest(h, done);
        attempt(motion, law, cut);
        moveOn(cut);
      }
      occurrences.add(event.kind(), time, y[State.UP], y[State.SPEED_UP]);
      return event.kind();
    }
  }

  /** Goes to the end of a step that was worked out; its slopes there begin the next one. */
  private void moveOn(double h) {
    time += h;
    double[] left = y;
    y = next;
    next = left;
    double[] slope = k1;
    k1 = k4;
    k4 = slope;
    fastest = Math.max(fastest, -y[State.SPEED_UP]);
  }

  /**
   * Part of the step at which an event's quantity vanishes: regula falsi in the variant of Anderson
   * and Björck (BIT 13, 1973), until it moves by less than a ten-thousandth of the step and so is
   * known far better than that.
   */
  private double located(
      EquationsOfMotion motion,
      ControlLaw law,
      double h,
      FlightEvent event,
      double atBegin,
      double atEnd) {
    double left = 0;
    double right = 1;
    double f = atBegin;
    double g = atEnd;
    double last = Double.NaN;
    int kept = 0;
    for (int i = 0; i < ITERATIONS; i++) {
      double s = (left * g - right * f) / (g - f);
      if (!(s > left && s < right)) {
        s = 0.5 * (left + right);
      }
      if (Math.abs(s - last) < SETTLED) {
        return s;
      }
      last = s;
      double value = event.value().applyAsDouble(interpolated(motion, law, h, s));
      if (value == 0) {
        return s;
      }
      if (value < 0 == g < 0) {
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

  /** The motion within the step, on the cubic through values and slopes at its ends. */
  private Motion interpolated(EquationsOfMotion motion, ControlLaw law, double h, double s) {
    for (int i = 0; i < State.SIZE; i++) {
      probe[i] = cubic(i, h, s);
    }
    return motion.look(time + s * h, probe, law);
  }

  /** Takes note of the greatest rate of descent within the first part s of a step. */
  private void lookForFastest(double h, double s) {
    if (!(k1[State.SPEED_UP] < 0 && k4[State.SPEED_UP] > 0)) {
      return;
    }
    // where the slope of Hermite's cubic vanishes: a r^2 + b r + c = 0 with c < 0 < a + b + c
    double rise = 6 * (next[State.SPEED_UP] - y[State.SPEED_UP]);
    double c = h * k1[State.SPEED_UP];
    double b = rise - 4 * c - 2 * h * k4[State.SPEED_UP];
    double a = 3 * (c + h * k4[State.SPEED_UP]) - rise;
    double r = -2 * c / (b + Math.sqrt(b * b - 4 * a * c));
    if (r > 0 && r < s) {
      fastest = Math.max(fastest, -cubic(State.SPEED_UP, h, r));
    }
  }

  private double cubic(int i, double h, double s) {
    double r = 1 - s;
    return (1 + 2 * s) * r * r * y[i]
        + s * r * r * h * k1[i]
        + s * s * (3 - 2 * s) * next[i]
        - s * s * r * h * k4[i];
  }

  /** Tries a step; returns its error over the tolerance. Leaves {@code next} and {@code k4}. */
  private double attempt(EquationsOfMotion motion, ControlLaw law, double h) {
    double excess = Math.max(0, decay - STABLE / h);
    weights.of(excess * h);
    double induced = y[State.INDUCED];
    double n1 = k1[State.INDUCED];
    for (int i = 0; i < State.SIZE; i++) {
      next[i] = y[i] + 0.5 * h * k1[i];
    }
    next[State.INDUCED] = induced + h * weights.second(n1);
    motion.on(time + 0.5 * h, next, k2, law);
    double n2 = k2[State.INDUCED] + excess * (next[State.INDUCED] - induced);
    for (int i = 0; i < State.SIZE; i++) {
      next[i] = y[i] + 0.75 * h * k2[i];
    }
    next[State.INDUCED] = induced + h * weights.third(n1, n2);
    motion.on(time + 0.75 * h, next, k3, law);
    double n3 = k3[State.INDUCED] + excess * (next[State.INDUCED] - induced);
    for (int i = 0; i < State.SIZE; i++) {
      next[i] = y[i] + h * (2.0 / 9 * k1[i] + 1.0 / 3 * k2[i] + 4.0 / 9 * k3[i]);
    }
    next[State.INDUCED] = induced + h * weights.end(n1, n2, n3);
    motion.on(time + h, next, k4, law);
    double even = 0;
    double odd = 0;
    for (int i = 0; i < State.SIZE; i += 2) {
      double one = error(i);
      double other = error(i + 1);
      even += one * one;
      odd += other * other;
    }
    return h * Math.sqrt(even + odd) / tolerance;
  }

  private double error(int i) {
    return PER_SCALE[i]
        * (-5.0 / 72 * k1[i] + 1.0 / 12 * k2[i] + 1.0 / 9 * k3[i] - 1.0 / 8 * k4[i]);
  }

  /** How much longer or shorter the next step is: the cube root of what the error leaves. */
  private static double factor(double error) {
    if (!(error > 0)) {
      return error == 0 ? GREATEST_FACTOR : LEAST_FACTOR;
    }
    double factor = SAFETY / cubeRoot(error);
    return Math.min(Math.max(factor, LEAST_FACTOR), GREATEST_FACTOR);
  }

  /**
   * Cube root to about one per cent, all that a step size needs: from the exponent, then Newton.
   */
  private static double cubeRoot(double x) {
    double r = Double.longBitsToDouble(Double.doubleToRawLongBits(x) / 3 + 0x2A9F7893782DA1CEL);
    return r - (r * r * r - x) / (3 * r * r);
  }

  @Override
  public double time() {
    return time;
  }

  @Override
  public double state(int index) {
    return y[index];
  }

  @Override
  public double fastestDescent() {
    return fastest;
  }

  /**
   * How long the descent has lingered since the start: sinking, hardly changing, and where a faster
   * sink grows by itself. From there small errors grow as well, so a flight that lingers for long
   * is not known well.
   *
   * @return the time, s
   */
  public double lingered() {
    return lingered;
  }

  @Override
  public Motion at(EquationsOfMotion motion, ControlLaw law) {
    return motion.at(time, y, law);
  }

  @Override
  public Occurrences occurrences() {
    return occurrences;
  }
}
