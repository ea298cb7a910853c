package io.github.ringstate.flight;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A course for bulk work: the same equations of motion, flown without allocation by the pair of
 * order 3 with an error estimate of order 2 by Bogacki and Shampine (Applied Mathematics Letters 2,
 * 1989).
 *
 * <p>A step is as long as its error estimate allows, in each quantity of the state relative to a
 * scale of its own; the lag of the inflow keeps steps below some tenths of a second, so a higher
 * order would not pay. The last stage of a step is the first of the next one, so what events look
 * at is known at the end of each step without another evaluation. An event is located on the cubic
 * through values and slopes at the ends of its step; a leg that an event ends is then stepped anew
 * to that instant.
 *
 * <p>An instance is used over and over by one thread and is not safe to share.
 */
public final class SwiftCourse implements Course {

  /**
   * Error of a step that is let pass, in the scales below; chosen by measurement, see the tests.
   */
  private static final double STANDARD_TOLERANCE = 2.5e-4;

  private static final double FIRST_STEP = 0.02;
  private static final double GREATEST_STEP = 0.25;
  private static final double LEAST_STEP = 1e-6;
  private static final double SAFETY = 0.9;
  private static final double LEAST_FACTOR = 0.2;
  private static final double GREATEST_FACTOR = 3;
  private static final int MOST_EVENTS = 16;
  private static final double INSTANT = 1e-9;
  private static final double NOTED = 1e-4;
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
    1, // m/s
    1, // rad/s
    0.2 // the indicator is read, not flown by
  };

  private final double tolerance;
  private final Occurrences occurrences = new Occurrences();
  private final double[] y = new double[State.SIZE];
  private final double[] next = new double[State.SIZE];
  private final double[] k1 = new double[State.SIZE];
  private final double[] k2 = new double[State.SIZE];
  private final double[] k3 = new double[State.SIZE];
  private final double[] k4 = new double[State.SIZE];
  private final double[] probe = new double[State.SIZE];
  private final double[] before = new double[MOST_EVENTS];
  private final double[] after = new double[MOST_EVENTS];
  private double time;
  private double step = FIRST_STEP;

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
  public void start(double from, double[] at) {
    time = from;
    System.arraycopy(at, 0, y, 0, State.SIZE);
    step = FIRST_STEP;
    occurrences.clear();
  }

  @Override
  public @Nullable EventKind fly(
      EquationsOfMotion motion, ControlLaw law, double end, List<FlightEvent> events) {
    int count = events.size();
    if (count > MOST_EVENTS) {
      throw new IllegalArgumentException("at most " + MOST_EVENTS + " events, not " + count);
    }
    Motion m = evaluate(motion, law, time, y, k1);
    for (int i = 0; i < count; i++) {
      before[i] = events.get(i).value().applyAsDouble(m);
    }
    while (end - time > INSTANT) {
      double h = Math.min(step, end - time);
      double error = attempt(motion, law, h);
      if (!(error <= 1) && h > LEAST_STEP) {
        step = h * factor(error);
        continue;
      }
      Motion then = motion.again(time + h, next, law);
      boolean crossed = false;
      for (int i = 0; i < count; i++) {
        after[i] = events.get(i).value().applyAsDouble(then);
        crossed |= before[i] < 0 != after[i] < 0;
      }
      if (crossed) {
        EventKind stop = passed(motion, law, h, events);
        if (stop != null) {
          return stop;
        }
      }
      time += h;
      System.arraycopy(next, 0, y, 0, State.SIZE);
      System.arraycopy(k4, 0, k1, 0, State.SIZE);
      System.arraycopy(after, 0, before, 0, count);
      // a step cut short by the end of the leg says nothing of the next one
      if (h == step) {
        step = Math.min(h * factor(error), GREATEST_STEP);
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
        attempt(motion, law, cut);
        System.arraycopy(next, 0, y, 0, State.SIZE);
        time += cut;
      }
      occurrences.add(event.kind(), time, y[State.UP], y[State.SPEED_UP]);
      return event.kind();
    }
  }

  /**
   * Part of the step at which an event's quantity vanishes: regula falsi, Illinois variant. Where a
   * leg ends is located as finely as the state allows; what is only noted, to a ten-thousandth of
   * the step.
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
    double accuracy = event.stops() ? INSTANT : NOTED;
    for (int i = 0; i < ITERATIONS && right - left > accuracy; i++) {
      double s = (left * g - right * f) / (g - f);
      if (!(s > left && s < right)) {
        s = 0.5 * (left + right);
      }
      double value = event.value().applyAsDouble(interpolated(motion, law, h, s));
      if (value == 0) {
        return s;
      }
      if (value < 0 == g < 0) {
        if (right - s < accuracy) {
          return s;
        }
        right = s;
        g = value;
        f *= 0.5;
      } else {
        if (s - left < accuracy) {
          return s;
        }
        left = s;
        f = value;
        g *= 0.5;
      }
    }
    return right;
  }

  /** The motion within the step, on the cubic through values and slopes at its ends. */
  private Motion interpolated(EquationsOfMotion motion, ControlLaw law, double h, double s) {
    double r = 1 - s;
    double h00 = (1 + 2 * s) * r * r;
    double h10 = s * r * r * h;
    double h01 = s * s * (3 - 2 * s);
    double h11 = -s * s * r * h;
    for (int i = 0; i < State.SIZE; i++) {
      probe[i] = h00 * y[i] + h10 * k1[i] + h01 * next[i] + h11 * k4[i];
    }
    return motion.at(time + s * h, probe, law);
  }

  /** Tries a step; returns its error over the tolerance. Leaves {@code next} and {@code k4}. */
  private double attempt(EquationsOfMotion motion, ControlLaw law, double h) {
    for (int i = 0; i < State.SIZE; i++) {
      next[i] = y[i] + 0.5 * h * k1[i];
    }
    evaluate(motion, law, time + 0.5 * h, next, k2);
    for (int i = 0; i < State.SIZE; i++) {
      next[i] = y[i] + 0.75 * h * k2[i];
    }
    evaluate(motion, law, time + 0.75 * h, next, k3);
    for (int i = 0; i < State.SIZE; i++) {
      next[i] = y[i] + h * (2.0 / 9 * k1[i] + 1.0 / 3 * k2[i] + 4.0 / 9 * k3[i]);
    }
    evaluate(motion, law, time + h, next, k4);
    double worst = 0;
    for (int i = 0; i < State.SIZE; i++) {
      double error = -5.0 / 72 * k1[i] + 1.0 / 12 * k2[i] + 1.0 / 9 * k3[i] - 1.0 / 8 * k4[i];
      double scaled = error * PER_SCALE[i];
      worst += scaled * scaled;
    }
    return h * Math.sqrt(worst) / tolerance;
  }

  private Motion evaluate(
      EquationsOfMotion motion, ControlLaw law, double t, double[] state, double[] rates) {
    Motion m = motion.at(t, state, law);
    System.arraycopy(m.rates, 0, rates, 0, State.SIZE);
    return m;
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
   * Cube root to about one per cent, all that a step size needs: from the exponent, then two steps
   * of Newton.
   */
  private static double cubeRoot(double x) {
    double r = Double.longBitsToDouble(Double.doubleToRawLongBits(x) / 3 + 0x2A9F7893782DA1CEL);
    r = r - (r * r * r - x) / (3 * r * r);
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
  public Motion at(EquationsOfMotion motion, ControlLaw law) {
    return motion.at(time, y, law);
  }

  @Override
  public Occurrences occurrences() {
    return occurrences;
  }
}
