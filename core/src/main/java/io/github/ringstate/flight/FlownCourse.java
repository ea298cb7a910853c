package io.github.ringstate.flight;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A course that a {@link Flyer} flies, with a history if wanted. */
public final class FlownCourse implements Course {

  private final Flyer flyer;
  private final @Nullable History history;
  private final Occurrences occurrences = new Occurrences();
  private double firstTime;
  private double[] firstState = new double[State.SIZE];
  private double time;
  private double[] state = new double[State.SIZE];
  private double fastest;

  /**
   * Creates a course.
   *
   * @param flyer the way of flying
   * @param history where to put samples of the flight, or null
   */
  public FlownCourse(Flyer flyer, @Nullable History history) {
    this.flyer = flyer;
    this.history = history;
  }

  @Override
  public void start(double from, double[] at, ControlLaw law) {
    firstTime = from;
    firstState = at.clone();
    again(from);
  }

  @Override
  public void again(double until) {
    time = firstTime;
    state = firstState;
    fastest = Math.max(0, -state[State.SPEED_UP]);
    occurrences.clear();
  }

  @Override
  public @Nullable EventKind fly(
      EquationsOfMotion motion, ControlLaw law, double end, List<FlightEvent> events) {
    Leg leg = flyer.fly(motion, law, time, state, end, events, history);
    time = leg.time();
    state = leg.state();
    for (Occurrence seen : leg.occurrences()) {
      occurrences.add(seen.kind(), seen.time(), seen.height(), seen.verticalSpeed());
      fastest = Math.max(fastest, -seen.verticalSpeed());
    }
    fastest = Math.max(fastest, -state[State.SPEED_UP]);
    return leg.stop().orElse(null);
  }

  @Override
  public double time() {
    return time;
  }

  @Override
  public double state(int index) {
    return state[index];
  }

  /** {@inheritDoc} Among the ends of legs and what was noted. */
  @Override
  public double fastestDescent() {
    return fastest;
  }

  @Override
  public Motion at(EquationsOfMotion motion, ControlLaw law) {
    return motion.at(time, state, law);
  }

  @Override
  public Occurrences occurrences() {
    return occurrences;
  }
}
