package io.github.ringstate.encounter;

import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.flight.Cockpit;
import io.github.ringstate.flight.ControlLaw;
import io.github.ringstate.flight.Controls;
import io.github.ringstate.flight.Course;
import io.github.ringstate.flight.EquationsOfMotion;
import io.github.ringstate.flight.EventKind;
import io.github.ringstate.flight.FlightEvent;
import io.github.ringstate.flight.FlightEvent.Crossing;
import io.github.ringstate.flight.History;
import io.github.ringstate.flight.Motion;
import io.github.ringstate.flight.State;
import io.github.ringstate.pilot.Cue;
import io.github.ringstate.pilot.NoRecovery;
import io.github.ringstate.pilot.Phase;
import io.github.ringstate.pilot.Recognition;
import io.github.ringstate.pilot.Recovery;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * The flight from onset to its end: unrecognised, then through the phases of the recovery. One
 * instance flies any number of descents from one approach, one after the other, and allocates
 * nothing of its own for any but the first.
 */
final class Descent {

  /** Time after onset in which a crossing of the boundary is the same crossing, s. */
  private static final double SAME_CROSSING = 0.01;

  /** A leg that would be shorter is not flown, s: an integrator cannot tell its ends apart. */
  private static final double SHORTEST_LEG = 1e-9;

  /** Phases after which a recovery is taken to go round in a circle at one instant. */
  private static final int MOST_PHASES = 10_000;

  private final Approach approach;
  private final Course course;
  private final @Nullable History history;
  private final boolean story;
  private final EquationsOfMotion motion;
  private final ControlLaw entryLaw;
  private final double level;
  private final double warning;
  private final ControlLaw recoveryLaw = (seen, controls) -> command(seen, controls);
  private final List<FlightEvent> always;
  private final List<FlightEvent> untilCue;
  private final List<FlightEvent> inPhase;
  private final List<FlightEvent> inLastPhase;

  private Recovery recovery = new NoRecovery();
  private Cue cue = Cue.of("none", seen -> -1);
  private List<Phase> phases = recovery.phases();
  private int next;
  private Phase phase = phases.get(0);
  private double techniqueBegan;
  private Ending ending = Ending.NO_ONSET;
  private double recognisedAt;

  /**
   * Prepares for descents.
   *
   * @param approach the approach
   * @param course what is flown on
   * @param history where to name the phases, or null
   * @param story whether all that happens is looked for, or only what the outcome is made of
   */
  Descent(Approach approach, Course course, @Nullable History history, boolean story) {
    this.approach = approach;
    this.course = course;
    this.history = history;
    this.story = story;
    Encounter encounter = approach.encounter();
    motion = approach.scene().equations(encounter.height().isPresent());
    entryLaw = approach.scene().start().law();
    course.start(approach.time(), approach.state(), entryLaw);
    level = encounter.height().orElse(0);
    warning = encounter.craft().si(Helicopter.LOW_ROTOR_SPEED);
    always = List.copyOf(events(encounter.height().isPresent(), story));
    untilCue = with(FlightEvent.stop(EventKind.CUE, Crossing.RISING, seen -> cue.level(seen)));
    FlightEvent limit =
        FlightEvent.note(EventKind.LIMIT_BINDS, Crossing.FALLING, seen -> phase.limitMargin(seen));
    FlightEvent phaseEnd =
        FlightEvent.stop(EventKind.PHASE_END, Crossing.RISING, seen -> phase.end(seen));
    inLastPhase = story ? with(limit) : always;
    inPhase = story ? with(limit, phaseEnd) : with(phaseEnd);
  }

  private List<FlightEvent> events(boolean ground, boolean story) {
    Scene scene = approach.scene();
    List<FlightEvent> events = new ArrayList<>();
    events.add(FlightEvent.stop(EventKind.ARREST, Crossing.RISING, Motion::verticalSpeed));
    if (ground) {
      events.add(FlightEvent.stop(EventKind.GROUND, Crossing.FALLING, Motion::height));
    }
    if (!story) {
      return events;
    }
    events.add(
        FlightEvent.note(
            EventKind.FASTEST_DESCENT,
            Crossing.RISING,
            seen -> seen.verticalAcceleration() - Approach.STEADY));
    events.add(FlightEvent.note(EventKind.RING_STATE_LEFT, Crossing.RISING, scene::margin));
    events.add(
        FlightEvent.note(EventKind.RING_STATE_ENTERED_AGAIN, Crossing.FALLING, scene::margin)
            .when(seen -> seen.time() > approach.time() + SAME_CROSSING));
    events.add(
        FlightEvent.note(
            EventKind.LOW_ROTOR_SPEED, Crossing.FALLING, seen -> seen.rotorSpeed() - warning));
    events.add(
        FlightEvent.note(EventKind.LOW_THRUST, Crossing.FALLING, seen -> seen.loadFactor() - 0.5));
    return events;
  }

  private List<FlightEvent> with(FlightEvent... more) {
    List<FlightEvent> all = new ArrayList<>(always);
    all.addAll(List.of(more));
    return List.copyOf(all);
  }

  private void command(Cockpit seen, Controls controls) {
    phase.command(seen, controls);
  }

  /** Flies one descent; what came of it is then asked for. */
  void fly(Recovery flown, Recognition recognition) {
    recovery = flown;
    recognisedAt = Double.NaN;
    motion.begin(Double.NaN, approach.time(), approach.time());
    motion.held(Double.NaN);
    course.again(approach.time() + (recognition.cue().isPresent() ? 0 : recognition.delay()));
    approach.noteOnset(course.occurrences());
    ending(waiting(recognition));
  }

  /** Until the pilot acts, and on; returns what ended the flight, or null if its time ran out. */
  private @Nullable EventKind waiting(Recognition recognition) {
    named("unrecognised");
    double begins = approach.time();
    if (recognition.cue().isPresent()) {
      cue = recognition.cue().get();
      if (cue.level(course.at(motion, entryLaw)) >= 0) {
        note(EventKind.CUE);
      } else {
        double giveUp = approach.time() + Encounter.RECOVERY_TIME;
        EventKind stop = course.fly(motion, entryLaw, giveUp, untilCue);
        if (stop != EventKind.CUE) {
          return stop;
        }
      }
      begins = course.time();
    }
    if (recognition.delay() > SHORTEST_LEG) {
      EventKind stop = course.fly(motion, entryLaw, begins + recognition.delay(), always);
      if (stop != null) {
        return stop;
      }
    }
    recognisedAt = course.state(State.UP);
    note(EventKind.RECOGNITION);
    return recovering();
  }

  private @Nullable EventKind recovering() {
    double recognition = course.time();
    motion.held(course.state(State.COLLECTIVE));
    double end = recognition + Encounter.RECOVERY_TIME;
    boolean held = false;
    begin(recovery.phases());
    for (int flown = 0; end - course.time() > SHORTEST_LEG; flown++) {
      if (flown > MOST_PHASES) {
        throw bad("has more than " + MOST_PHASES + " phases in one descent");
      }
      motion.begin(recognition, techniqueBegan, course.time());
      Motion now = course.at(motion, recoveryLaw);
      if (phase.ends() && phase.end(now) >= 0) {
        goOn(now);
        continue;
      }
      if (story && !held && phase.limitMargin(now) < 0) {
        note(EventKind.LIMIT_BINDS);
      }
      named(phase.name());
      EventKind stop = course.fly(motion, recoveryLaw, end, phase.ends() ? inPhase : inLastPhase);
      if (stop != EventKind.PHASE_END) {
        return stop;
      }
      Motion then = course.at(motion, recoveryLaw);
      held = story && phase.limitMargin(then) < 0;
      goOn(then);
    }
    return null;
  }

  private void begin(List<Phase> list) {
    phases = list;
    phase = list.get(0);
    next = 1;
    techniqueBegan = course.time();
  }

  private void goOn(Motion now) {
    List<Phase> instead = phase.instead(now);
    if (!instead.isEmpty()) {
      begin(instead);
    } else if (next < phases.size()) {
      phase = phases.get(next++);
    } else {
      throw bad("has no phase after '" + phase.name() + "'");
    }
  }

  private IllegalStateException bad(String what) {
    return new IllegalStateException("the recovery " + recovery.name() + " " + what);
  }

  private void note(EventKind kind) {
    course
        .occurrences()
        .add(kind, course.time(), course.state(State.UP), course.state(State.SPEED_UP));
  }

  private void named(String name) {
    if (history != null) {
      history.phase(name);
    }
  }

  private void ending(@Nullable EventKind stop) {
    ending = Ending.NOT_ARRESTED;
    if (stop == EventKind.GROUND) {
      ending = Ending.GROUND;
    } else if (stop == EventKind.ARREST) {
      ending = Ending.ARRESTED;
    }
  }

  Ending ending() {
    return ending;
  }

  /** The lowest height, m; NaN if the descent did not end. */
  private double lowest() {
    return switch (ending) {
      case GROUND -> 0;
      case ARRESTED -> course.state(State.UP);
      case NOT_ARRESTED, NO_ONSET -> Double.NaN;
    };
  }

  /** Altitude loss, m; NaN if the descent did not end. */
  double altitudeLoss() {
    return level - lowest();
  }

  /** Loss after recognition, m; NaN if the descent did not end, or ended before recognition. */
  double lossAfterRecognition() {
    return recognisedAt - lowest();
  }

  double peakDescent() {
    return course.fastestDescent();
  }

  double timeToArrest() {
    return ending == Ending.ARRESTED ? course.time() - approach.time() : Double.NaN;
  }

  double impactSpeed() {
    return ending == Ending.GROUND ? -course.state(State.SPEED_UP) : Double.NaN;
  }

  Outcome outcome() {
    return new Outcome(
        ending,
        present(altitudeLoss()),
        present(lossAfterRecognition()),
        OptionalDouble.of(course.fastestDescent()),
        present(timeToArrest()),
        present(impactSpeed()),
        OptionalDouble.of(approach.time()),
        course.occurrences().list());
  }

  private static OptionalDouble present(double value) {
    return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
  }
}
