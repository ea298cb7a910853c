package io.github.ringstate.encounter;

import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.State;
import io.github.ringstate.integrate.Event;
import io.github.ringstate.integrate.Event.Crossing;
import io.github.ringstate.integrate.Propagator;
import io.github.ringstate.pilot.Cockpit;
import io.github.ringstate.pilot.ControlLaw;
import io.github.ringstate.pilot.Cue;
import io.github.ringstate.pilot.NoRecovery;
import io.github.ringstate.pilot.Phase;
import io.github.ringstate.pilot.PilotView;
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

  /** Thrust over weight below which a flight counts as one of low thrust (assumed). */
  private static final double LOW_THRUST = 0.5;

  /** Phases after which a recovery is taken to go round in a circle at one instant. */
  private static final int MOST_PHASES = 10_000;

  private final Approach approach;
  private final Propagator<EventKind, Motion> flight;
  private final @Nullable Trajectory trajectory;
  private final boolean story;
  private final EquationsOfMotion equations;
  private final PilotView pilot;
  private final ControlLaw entryLaw;
  private final double level;
  private final double warning;
  private final ControlLaw recoveryLaw = (seen, controls) -> command(seen, controls);
  private final List<Event<EventKind, Motion>> always;
  private final List<Event<EventKind, Motion>> untilCue;
  private final List<Event<EventKind, Motion>> inPhase;
  private final List<Event<EventKind, Motion>> inLastPhase;

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
   * @param flight what is flown with
   * @param trajectory where to name the phases, or null
   * @param story whether all that happens is looked for, or only what the outcome is made of
   */
  Descent(
      Approach approach,
      Propagator<EventKind, Motion> flight,
      @Nullable Trajectory trajectory,
      boolean story) {
    this.approach = approach;
    this.flight = flight;
    this.trajectory = trajectory;
    this.story = story;
    Encounter encounter = approach.encounter();
    equations = approach.scene().equations(encounter.height().isPresent());
    pilot = approach.scene().pilot(equations);
    entryLaw = approach.scene().start().law();
    flight.start(approach.time(), approach.state());
    level = encounter.height().orElse(0);
    warning = encounter.craft().si(Helicopter.LOW_ROTOR_SPEED);
    always = List.copyOf(events(encounter.height().isPresent(), story));
    untilCue = with(List.of(Event.stop(EventKind.CUE, Crossing.RISING, seen -> cue.level(pilot))));
    Event<EventKind, Motion> limit =
        Event.note(EventKind.LIMIT_BINDS, Crossing.FALLING, seen -> phase.limitMargin(pilot));
    Event<EventKind, Motion> phaseEnd =
        Event.stop(EventKind.PHASE_END, Crossing.RISING, seen -> phase.end(pilot));
    inLastPhase = story ? with(List.of(limit)) : always;
    inPhase = with(story ? List.of(limit, phaseEnd) : List.of(phaseEnd));
  }

  private List<Event<EventKind, Motion>> events(boolean ground, boolean story) {
    Scene scene = approach.scene();
    List<Event<EventKind, Motion>> events = new ArrayList<>();
    events.add(Event.stop(EventKind.ARREST, Crossing.RISING, Motion::verticalSpeed));
    if (ground) {
      events.add(Event.stop(EventKind.GROUND, Crossing.FALLING, Motion::height));
    }
    if (!story) {
      return events;
    }
    events.add(
        Event.note(
            EventKind.FASTEST_DESCENT,
            Crossing.RISING,
            seen -> seen.verticalAcceleration() - Approach.STEADY));
    events.add(Event.note(EventKind.RING_STATE_LEFT, Crossing.RISING, scene::margin));
    events.add(
        Event.<EventKind, Motion>note(
                EventKind.RING_STATE_ENTERED_AGAIN, Crossing.FALLING, scene::margin)
            .when(seen -> seen.time() > approach.time() + SAME_CROSSING));
    events.add(
        Event.note(
            EventKind.LOW_ROTOR_SPEED, Crossing.FALLING, seen -> seen.rotorSpeed() - warning));
    events.add(
        Event.note(EventKind.LOW_THRUST, Crossing.FALLING, seen -> seen.loadFactor() - LOW_THRUST));
    return events;
  }

  private List<Event<EventKind, Motion>> with(List<Event<EventKind, Motion>> more) {
    List<Event<EventKind, Motion>> all = new ArrayList<>(always);
    all.addAll(more);
    return List.copyOf(all);
  }

  private void command(Cockpit seen, Controls controls) {
    phase.command(seen, controls);
  }

  /** Flies one descent; what came of it is then asked for. */
  void fly(Recovery flown, Recognition recognition) {
    recovery = flown;
    recognisedAt = Double.NaN;
    pilot.follow(entryLaw);
    pilot.begin(Double.NaN, approach.time(), approach.time());
    pilot.held(Double.NaN);
    flight.restart(approach.time() + (recognition.cue().isPresent() ? 0 : recognition.delay()));
    approach.noteOnset(flight.log());
    ending(waiting(recognition));
  }

  /** Until the pilot acts, and on; returns what ended the flight, or null if its time ran out. */
  private @Nullable EventKind waiting(Recognition recognition) {
    named("unrecognised");
    double begins = approach.time();
    if (recognition.cue().isPresent()) {
      cue = recognition.cue().get();
      if (cue.level(now()) >= 0) {
        flight.note(EventKind.CUE);
      } else {
        double giveUp = approach.time() + Encounter.RECOVERY_TIME;
        EventKind stop = flight.propagateShared(equations, giveUp, untilCue);
        if (stop != EventKind.CUE) {
          return stop;
        }
      }
      begins = flight.time();
    }
    if (recognition.delay() > Propagator.SHORTEST_LEG) {
      EventKind stop = flight.propagateShared(equations, begins + recognition.delay(), always);
      if (stop != null) {
        return stop;
      }
    }
    recognisedAt = flight.state(State.UP);
    flight.note(EventKind.RECOGNITION);
    return recovering();
  }

  private @Nullable EventKind recovering() {
    double recognition = flight.time();
    pilot.held(flight.state(State.COLLECTIVE));
    double end = recognition + Encounter.RECOVERY_TIME;
    boolean held = false;
    begin(recovery.phases());
    pilot.follow(recoveryLaw);
    for (int flown = 0; end - flight.time() > Propagator.SHORTEST_LEG; flown++) {
      if (flown > MOST_PHASES) {
        throw bad("has more than " + MOST_PHASES + " phases in one descent");
      }
      pilot.begin(recognition, techniqueBegan, flight.time());
      Cockpit now = now();
      if (phase.ends() && phase.end(now) >= 0) {
        goOn(now);
        continue;
      }
      if (story && !held && phase.limitMargin(now) < 0) {
        flight.note(EventKind.LIMIT_BINDS);
      }
      named(phase.name());
      EventKind stop = flight.propagate(equations, end, phase.ends() ? inPhase : inLastPhase);
      if (stop != EventKind.PHASE_END) {
        return stop;
      }
      Cockpit then = now();
      held = story && phase.limitMargin(then) < 0;
      goOn(then);
    }
    return null;
  }

  private void begin(List<Phase> list) {
    phases = list;
    phase = list.get(0);
    next = 1;
    techniqueBegan = flight.time();
  }

  private void goOn(Cockpit now) {
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

  /** What the pilot sees where the flight is. */
  private Cockpit now() {
    flight.at(equations);
    return pilot;
  }

  private void named(String name) {
    if (trajectory != null) {
      trajectory.phase(name);
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
      case ARRESTED -> flight.state(State.UP);
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
    return Math.max(0, -flight.least());
  }

  double timeToArrest() {
    return ending == Ending.ARRESTED ? flight.time() - approach.time() : Double.NaN;
  }

  double impactSpeed() {
    return ending == Ending.GROUND ? -flight.state(State.SPEED_UP) : Double.NaN;
  }

  Outcome outcome() {
    return new Outcome(
        ending,
        present(altitudeLoss()),
        present(lossAfterRecognition()),
        OptionalDouble.of(peakDescent()),
        present(timeToArrest()),
        present(impactSpeed()),
        OptionalDouble.of(approach.time()),
        Occurrence.listOf(flight.log()));
  }

  private static OptionalDouble present(double value) {
    return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
  }
}
