package io.github.ringstate.encounter;

import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.State;
import io.github.ringstate.integrate.Event;
import io.github.ringstate.integrate.EventLog;
import io.github.ringstate.integrate.Propagator;
import io.github.ringstate.integrate.UnfinishedLegException;
import io.github.ringstate.pilot.Cockpit;
import io.github.ringstate.pilot.ControlLaw;
import io.github.ringstate.pilot.Phase;
import io.github.ringstate.pilot.PilotView;
import io.github.ringstate.pilot.Recognition;
import io.github.ringstate.pilot.Recovery;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * The flight from onset to its end: unrecognised, then through the phases of the recovery. One
 * instance flies any number of descents from one approach, one after the other, and allocates
 * nothing of its own for any but the first.
 */
final class Descent {

  /** By how much greater errors of steps may be after the arrest, where that is enough. */
  private static final double WATCHED_ROUGHLY = 8;

  private final Approach approach;
  private final Propagator<Happening, Motion> flight;
  private final Consumer<String> phases;
  private final boolean story;
  private final EquationsOfMotion equations;
  private final PilotView pilot;
  private final double level;
  private final RotorLimits rotorLimits;
  private final double past;
  private final double recoveryTime;
  private final ArrestWatch arrest = new ArrestWatch();
  private final PhaseWalk walk = new PhaseWalk();
  private final ControlLaw recoveryLaw = walk::command;
  private final Lookouts lookouts;

  private Ending ending = Ending.NO_ONSET;
  private String phaseName = "";
  private double recognisedAt;
  private double actedAt;
  private double peak;
  private double end;
  private boolean beyond;
  private boolean cleared;
  private double afterArrest = 1;

  /**
   * Prepares for descents of which nobody hears the phases.
   *
   * @param approach the approach
   * @param flight what is flown with
   * @param story whether all that happens is looked for, or only what the outcome is made of
   */
  Descent(Approach approach, Propagator<Happening, Motion> flight, boolean story) {
    this(approach, flight, story, phase -> {});
  }

  /**
   * Prepares for descents.
   *
   * @param approach the approach
   * @param flight what is flown with
   * @param story whether all that happens is looked for, or only what the outcome is made of
   * @param phases hears the name of each phase as it begins
   */
  Descent(
      Approach approach,
      Propagator<Happening, Motion> flight,
      boolean story,
      Consumer<String> phases) {
    this.approach = approach;
    this.flight = flight;
    this.phases = phases;
    this.story = story;
    Encounter encounter = approach.encounter();
    equations = approach.scene().equations(encounter.height().isPresent());
    pilot = approach.scene().pilot(equations);
    FlightLimits limits = encounter.limits();
    flight.budget(limits.evaluations());
    flight.start(approach.time(), approach.state());
    level = encounter.height().orElse(0);
    past = limits.si(FlightLimits.TIME_PAST_ARREST);
    recoveryTime = limits.si(FlightLimits.RECOVERY_TIME);
    rotorLimits = RotorLimits.of(encounter.craft());
    lookouts = new Lookouts(approach, pilot, arrest, walk, rotorLimits, story);
  }

  /** Flies one descent; what came of it is then asked for. */
  void fly(Recovery flown, Recognition recognition) {
    fly(flown, recognition, 1);
  }

  /**
   * Flies one descent, of which what follows the arrest is only looked at roughly: mostly the craft
   * climbs away, and nothing of that is kept. Where it does not, the descent is flown again.
   */
  void flyQuickly(Recovery flown, Recognition recognition) {
    if (past > 0) {
      fly(flown, recognition, 1);
      return;
    }
    fly(flown, recognition, WATCHED_ROUGHLY);
    if (arrest.begun() && !(cleared && isPlain()) && !flight.isGivenUp()) {
      fly(flown, recognition, 1);
    }
  }

  private void fly(Recovery flown, Recognition recognition, double roughness) {
    afterArrest = roughness;
    beyond = false;
    arrest.clear();
    recognisedAt = Double.NaN;
    actedAt = Double.NaN;
    pilot.follow(approach.law());
    pilot.begin(Double.NaN, approach.time(), approach.time());
    pilot.held(Double.NaN);
    flight.restart(approach.time() + (recognition.cue().isPresent() ? 0 : recognition.delay()));
    approach.noteOnset(flight.log());
    try {
      ending(waiting(flown, recognition));
      goOnPast();
    } catch (UnfinishedLegException unfinished) {
      throw new UnfinishedFlightException("the recovery " + flown.name(), phaseName, unfinished);
    }
  }

  /** Until the pilot acts, and on; returns what ended the flight, or null if its time ran out. */
  private @Nullable Happening waiting(Recovery recovery, Recognition recognition) {
    named("unrecognised");
    double begins = approach.time();
    if (recognition.cue().isPresent()) {
      lookouts.cue(recognition.cue().get());
      flight.at(equations);
      if (lookouts.level() >= 0) {
        flight.note(EventKind.CUE);
      } else {
        Happening stop = leg(approach.time() + recoveryTime, lookouts.untilCue(), true);
        if (stop != EventKind.CUE) {
          return stop;
        }
      }
      begins = flight.time();
    }
    if (recognition.delay() > Propagator.SHORTEST_LEG) {
      Happening stop = leg(begins + recognition.delay(), lookouts.always(), true);
      if (stop != null || over()) {
        return stop;
      }
    }
    recognisedAt = flight.state(State.UP);
    flight.note(EventKind.RECOGNITION);
    actedAt = flight.time();
    pilot.held(flight.state(State.COLLECTIVE));
    walk.begin(recovery, flight.time());
    pilot.follow(recoveryLaw);
    return recovering(actedAt + recoveryTime);
  }

  /** Flies phases until a time or what ends them. */
  private @Nullable Happening recovering(double until) {
    boolean held = false;
    while (left(until) > Propagator.SHORTEST_LEG) {
      pilot.begin(actedAt, walk.techniqueBegan(), walk.phaseBegan());
      Cockpit now = now();
      Phase phase = walk.phase();
      if (phase.ends() && walk.end(now) >= 0) {
        walk.goOn(now, flight.time());
        continue;
      }
      if (story && !held && phase.limitMargin(now) < 0) {
        flight.note(EventKind.LIMIT_BINDS);
      }
      named(phase.name());
      Happening stop = leg(until, lookouts.inPhase(phase.ends()), false);
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
  private @Nullable Happening leg(double last, Lookouts.Lookout lookout, boolean waiting) {
    if (beyond) {
      return flight.propagate(equations, last, lookout.past());
    }
    while (true) {
      double until = arrest.begun() ? arrest.until() : last;
      List<Event<Happening, Motion>> events =
          arrest.begun() ? lookout.arrested() : lookout.sinking();
      Happening stop =
          waiting
              ? flight.propagateShared(equations, Math.min(last, until), events)
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
      }
      flight.scaleTolerance(afterArrest);
      EventKind left = rotorLimits.left(flight.at(equations));
      if (left != null) {
        return left;
      }
    }
  }

  /** Flies on past an arrest that lasts, if that is asked for; nothing of how it ended changes. */
  private void goOnPast() {
    if (!(ending == Ending.ARRESTED && past > 0)) {
      return;
    }
    beyond = true;
    end = arrest.time() + past;
    if (flight.time() < end) {
      if (Double.isNaN(actedAt)) {
        leg(end, lookouts.always(), false);
      } else {
        recovering(end);
      }
      end = flight.time();
    }
    EventLog<Happening> log = flight.log();
    int kept = log.size();
    while (kept > 0 && log.time(kept - 1) > end) {
      kept--;
    }
    log.truncate(kept);
  }

  /** How much of its time the flight has left, s. */
  private double left(double until) {
    return flight.isGivenUp()
        ? 0
        : (!beyond && arrest.begun() ? arrest.until() : until) - flight.time();
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
    phaseName = name;
    phases.accept(name);
  }

  private void ending(@Nullable Happening stop) {
    end = flight.time();
    cleared = stop == EventKind.CLEAR;
    peak = Math.max(0, -flight.least());
    if (stop == EventKind.GROUND) {
      ending = Ending.GROUND;
    } else if (stop instanceof FlightEvent) {
      ending = Ending.STOPPED;
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
        end = arrest.time();
        recognisedAt = arrest.recognisedAt();
        peak = arrest.peakDescent();
        if (!(past > 0)) {
          flight.log().truncate(arrest.logged());
        }
      }
    }
  }

  /** When the flight ended, past its arrest if it was flown on, s. */
  double end() {
    return end;
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
      case NOT_ARRESTED, ARREST_NOT_LASTING, STOPPED, NO_ONSET -> Double.NaN;
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
    return peak;
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
