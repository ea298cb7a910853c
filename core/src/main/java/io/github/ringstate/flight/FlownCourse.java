package io.github.ringstate.flight;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A course that a {@link Flyer} flies, with a history if wanted. */
public final class FlownCourse implements Course {

  private final Flyer flyer;
  private final @Nullable History history;
  private final Occurrences occurrences = new Occurrences();
  private double time;
  private double[] state = new double[State.SIZE];

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
  public void start(double from, double[] at) {
    time = from;
    state = at.clone();
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
    }
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

  @Override
  public Motion at(EquationsOfMotion motion, ControlLaw law) {
    return motion.at(time, state, law);
  }

  @Override
  public Occurrences occurrences() {
    return occurrences;
  }
}
