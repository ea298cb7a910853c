package io.github.ringstate.encounter;

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

  private final Approach approach;
  private final Propagator<EventKind, Motion> flight;
  private final @Nullable Trajectory trajectory;
  private final boolean story;
  private final EquationsOfMotion equations;
  private final PilotView pilot;
  private final ControlLaw entryLaw;
  private final double level;
  private final RotorLimits rotorLimits;
  private final ControlLaw recoveryLaw = (seen, controls) -> command(seen, controls);
  private final ArrestWatch arrest = new ArrestWatch();
  private final PhaseWalk walk = new PhaseWalk();
  private final Lookout always;
  private final Lookout untilCue;
  private final Lookout inPhase;
  private final Lookout inLastPhase;

  private Cue cue = Cue.of("none", seen -> -1);
  private Ending ending = Ending.NO_ONSET;
  private double recognisedAt;
  private boolean watched;

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
    entryLaw = approach.law();
    flight.start(approach.time(), approach.state());
    level = encounter.height().orElse(0);
    rotorLimits = RotorLimits.of(encounter.craft());
    Event<EventKind, Motion> onCue =
        Event.stop(EventKind.CUE, Crossing.RISING, seen -> cue.level(pilot));
    Event<EventKind, Motion> limit =
        Event.note(
            EventKind.LIMIT_BINDS, Crossing.FALLING, seen -> walk.phase().limitMargin(pilot));
    Event<EventKind, Motion> phaseEnd =
        Event.stop(EventKind.PHASE_END, Crossing.RISING, seen -> walk.phase().end(pilot));
    boolean ground = encounter.height().isPresent();
    always = lookout(ground, List.of());
    untilCue = lookout(ground, List.of(onCue));
    inLastPhase = lookout(ground, story ? List.of(limit) : List.of());
    inPhase = lookout(ground, story ? List.of(limit, phaseEnd) : List.of(phaseEnd));
  }

  /** What is looked for on a leg until the descent is arrested, and thereafter. */
  private record Lookout(
      List<Event<EventKind, Motion>> sinking, List<Event<EventKind, Motion>> arrested) {}

  private Lookout lookout(boolean ground, List<Event<EventKind, Motion>> more) {
    Event<EventKind, Motion> arrested =
        Event.stop(EventKind.ARREST, Crossing.RISING, Motion::verticalSpeed);
    List<Event<EventKind, Motion>> sinking = new ArrayList<>();
    List<Event<EventKind, Motion>> watching = new ArrayList<>();
    sinking.add(arrested);
    watching.add(arrested.when(seen -> arrest.isLower(seen.height())));
    if (ground) {
      Event<EventKind, Motion> contact =
          Event.stop(EventKind.GROUND, Crossing.FALLING, Motion::height);
      sinking.add(contact);
      watching.add(contact);
    }
    watching.add(
        Event.stop(
            EventKind.CLEAR,
            Crossing.RISING,
            seen -> seen.height() - arrest.low() - ArrestWatch.CLEAR));
    watching.addAll(rotorLimits.events(true));
    if (story) {
      List<Event<EventKind, Motion>> notes = notes();
      sinking.addAll(notes);
      sinking.addAll(rotorLimits.events(false));
      watching.addAll(notes);
      sinking.add(lowThrust());
      watching.add(lowThrust());
    }
    sinking.addAll(more);
    watching.addAll(more);
    return new Lookout(List.copyOf(sinking), List.copyOf(watching));
  }

  private static Event<EventKind, Motion> lowThrust() {
    return Event.note(
        EventKind.LOW_THRUST, Crossing.FALLING, seen -> seen.loadFactor() - LOW_THRUST);
  }

  private List<Event<EventKind, Motion>> notes() {
    Scene scene = approach.scene();
    return List.of(
        Event.note(
            EventKind.FASTEST_DESCENT,
            Crossing.RISING,
            seen -> seen.verticalAcceleration() - Approach.STEADY),
        Event.note(EventKind.RING_STATE_LEFT, Crossing.RISING, scene::margin),
        Event.<EventKind, Motion>note(
                EventKind.RING_STATE_ENTERED_AGAIN, Crossing.FALLING, scene::margin)
            .when(seen -> seen.time() > approach.time() + SAME_CROSSING));
  }

  private void command(Cockpit seen, Controls controls) {
    walk.phase().command(seen, controls);
  }

  /** Flies one descent; what came of it is then asked for. */
  void fly(Recovery flown, Recognition recognition) {
    fly(flown, recognition, true);
  }

  /**
   * Flies one descent.
   *
   * @param watching whether it is flown on from an arrest to see whether that lasts
   */
  void fly(Recovery flown, Recognition recognition, boolean watching) {
    watched = watching;
    arrest.clear();
    recognisedAt = Double.NaN;
    pilot.follow(entryLaw);
    pilot.begin(Double.NaN, approach.time(), approach.time());
    pilot.held(Double.NaN);
    flight.restart(approach.time() + (recognition.cue().isPresent() ? 0 : recognition.delay()));
    approach.noteOnset(flight.log());
    ending(waiting(flown, recognition));
  }

  /** Until the pilot acts, and on; returns what ended the flight, or null if its time ran out. */
  private @Nullable EventKind waiting(Recovery recovery, Recognition recognition) {
    named("unrecognised");
    double begins = approach.time();
    if (recognition.cue().isPresent()) {
      cue = recognition.cue().get();
      if (cue.level(now()) >= 0) {
        flight.note(EventKind.CUE);
      } else {
        double giveUp = approach.time() + Encounter.RECOVERY_TIME;
        EventKind stop = leg(giveUp, untilCue, true);
        if (stop != EventKind.CUE) {
          return stop;
        }
      }
      begins = flight.time();
    }
    if (recognition.delay() > Propagator.SHORTEST_LEG) {
      EventKind stop = leg(begins + recognition.delay(), always, true);
      if (stop != null || over()) {
        return stop;
      }
    }
    recognisedAt = flight.state(State.UP);
    flight.note(EventKind.RECOGNITION);
    return recovering(recovery);
  }

  private @Nullable EventKind recovering(Recovery recovery) {
    double recognition = flight.time();
    pilot.held(flight.state(State.COLLECTIVE));
    double end = recognition + Encounter.RECOVERY_TIME;
    boolean held = false;
    walk.begin(recovery, flight.time());
    pilot.follow(recoveryLaw);
    while (left(end) > Propagator.SHORTEST_LEG) {
      pilot.begin(recognition, walk.techniqueBegan(), flight.time());
      Cockpit now = now();
      Phase phase = walk.phase();
      if (phase.ends() && phase.end(now) >= 0) {
        walk.goOn(now, flight.time());
        continue;
      }
      if (story && !held && phase.limitMargin(now) < 0) {
        flight.note(EventKind.LIMIT_BINDS);
      }
      named(phase.name());
      EventKind stop = leg(end, phase.ends() ? inPhase : inLastPhase, false);
      if (stop != EventKind.PHASE_END) {
        return stop;
      }
      Cockpit then = now();
      held = story && phase.limitMargin(then) < 0;
      walk.goOn(then, flight.time());
    }
    return null;
  }

  /**
   * Flies a leg, on from arrests that are to be watched.
   *
   * @param waiting whether the pilot has not acted yet; then the leg ends in time for that
   * @return what ended it, or null if its time ran out
   */
  private @Nullable EventKind leg(double end, Lookout lookout, boolean waiting) {
    while (true) {
      double until = arrest.begun() ? arrest.until() : end;
      List<Event<EventKind, Motion>> events =
          arrest.begun() ? lookout.arrested() : lookout.sinking();
      EventKind stop =
          waiting
              ? flight.propagateShared(equations, Math.min(end, until), events)
              : flight.propagate(equations, until, events);
      if (stop != EventKind.ARREST) {
        return stop;
      }
      if (arrest.begun()) {
        arrest.lower(flight.time(), flight.state(State.UP));
      } else {
        arrest.begin(
            flight.time(),
            flight.state(State.UP),
            recognisedAt,
            Math.max(0, -flight.least()),
            flight.log().size());
        if (!watched) {
          return stop;
        }
      }
      EventKind left = rotorLimits.left(flight.at(equations));
      if (left != null) {
        return left;
      }
    }
  }

  /** How much of its time the recovery has left, s. */
  private double left(double end) {
    return (arrest.begun() ? arrest.until() : end) - flight.time();
  }

  /** Whether an arrest was watched to the end. */
  private boolean over() {
    return arrest.begun() && left(Double.NaN) <= Propagator.SHORTEST_LEG;
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
    if (stop == EventKind.GROUND) {
      ending = Ending.GROUND;
    } else if (!arrest.begun()) {
      ending = Ending.NOT_ARRESTED;
    } else if (RotorLimits.ended(stop)
        || (stop == null && !arrest.lasts(flight.state(State.SPEED_UP)))) {
      ending = Ending.ARREST_NOT_LASTING;
    } else {
      ending = Ending.ARRESTED;
      if (stop == null && arrest.isLower(flight.state(State.UP))) {
        arrest.lower(flight.time(), flight.state(State.UP));
      }
      if (isPlain()) {
        // nothing of what was flown on belongs to the descent
        flight.log().truncate(arrest.logged());
        recognisedAt = arrest.recognisedAt();
      }
    }
  }

  Ending ending() {
    return ending;
  }

  /** Whether the descent was over with the first arrest. */
  boolean isPlain() {
    return ending == Ending.ARRESTED && !arrest.hadLaterLow();
  }

  /** The lowest height, m; NaN if the descent did not end. */
  private double lowest() {
    return switch (ending) {
      case GROUND -> 0;
      case ARRESTED -> arrest.low();
      case NOT_ARRESTED, ARREST_NOT_LASTING, NO_ONSET -> Double.NaN;
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
    return isPlain() ? arrest.peakDescent() : Math.max(0, -flight.least());
  }

  double timeToArrest() {
    return ending == Ending.ARRESTED ? arrest.time() - approach.time() : Double.NaN;
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
