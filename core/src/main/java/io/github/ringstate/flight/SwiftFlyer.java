package io.github.ringstate.flight;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Flies legs on a {@link SwiftCourse}: quick, without history. One instance serves one thread. */
public final class SwiftFlyer implements Flyer {

  private final SwiftCourse course;

  /** Creates a flyer with the standard tolerance. */
  public SwiftFlyer() {
    course = new SwiftCourse();
  }

  /**
   * Creates a flyer.
   *
   * @param tolerance error of a step that is let pass, in units of about 1 m, 1 m/s, 0.2 rad,
   *     positive
   */
  public SwiftFlyer(double tolerance) {
    course = new SwiftCourse(tolerance);
  }

  @Override
  public Leg fly(
      EquationsOfMotion motion,
      ControlLaw law,
      double start,
      double[] state,
      double end,
      List<FlightEvent> events,
      @Nullable History history) {
    if (history != null) {
      throw new IllegalArgumentException("a swift flight keeps no history; fly it precisely");
    }
    course.start(start, state, law);
    EventKind stop = course.fly(motion, law, end, events);
    double[] reached = new double[State.SIZE];
    for (int i = 0; i < State.SIZE; i++) {
      reached[i] = course.state(i);
    }
    return new Leg(course.time(), reached, Optional.ofNullable(stop), course.occurrences().list());
  }
}
