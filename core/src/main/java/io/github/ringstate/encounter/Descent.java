package io.github.ringstate.encounter;

import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.flight.ControlLaw;
import io.github.ringstate.flight.EquationsOfMotion;
import io.github.ringstate.flight.EventKind;
import io.github.ringstate.flight.FlightEvent;
import io.github.ringstate.flight.FlightEvent.Crossing;
import io.github.ringstate.flight.Flyer;
import io.github.ringstate.flight.History;
import io.github.ringstate.flight.Leg;
import io.github.ringstate.flight.Motion;
import io.github.ringstate.flight.Occurrence;
import io.github.ringstate.flight.State;
import io.github.ringstate.pilot.Cue;
import io.github.ringstate.pilot.Recovery;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** The flight from onset to its end: unrecognised, then through the phases of the recovery. */
final class Descent {

  /** Time after onset in which a crossing of the boundary is the same crossing, s. */
  private static final double SAME_CROSSING = 1e-6;

  /** A leg that would be shorter is not flown, s: an integrator cannot tell its ends apart. */
  private static final double SHORTEST_LEG = 1e-9;

  private final Encounter encounter;
  private final Approach approach;
  private final Flyer flyer;
  private final @Nullable History history;
  private final EquationsOfMotion motion;
  private final double onset;
  private final List<Occurrence> occurrences = new ArrayList<>();
  private double fastest;

  Descent(Encounter encounter, Approach approach, Flyer flyer, @Nullable History history) {
    this.encounter = encounter;
    this.approach = approach;
    this.flyer = flyer;
    this.history = history;
    motion = approach.scene().equations(encounter.height().isPresent());
    onset = approach.time();
    occurrences.addAll(approach.occurrences());
  }

  Outcome fly() {
    Leg begun = new Leg(onset, approach.state(), Optional.empty(), List.of());
    motion.begin(Double.NaN, -1, onset);
    noted(begun);
    phase("unrecognised");
    Leg waited = encounter.recognition().cue().map(cue -> noticing(begun, cue)).orElse(begun);
    if (waited.stop().isEmpty()) {
      waited = until(waited, waited.time() + encounter.recognition().delay());
    }
    if (waited.stop().isPresent() || timedOut(waited)) {
      return ended(waited, OptionalDouble.empty());
    }
    note(EventKind.RECOGNITION, waited);
    return ended(recovering(waited), OptionalDouble.of(waited.state()[State.UP]));
  }

  /** Until the cue fires; the leg that is returned has a stop only if the flight ended first. */
  private Leg noticing(Leg begun, Cue cue) {
    ControlLaw law = approach.scene().start().law();
    if (cue.level(motion.at(begun.time(), begun.state(), law)) >= 0) {
      note(EventKind.CUE, begun);
      return begun;
    }
    List<FlightEvent> events = events();
    events.add(FlightEvent.stop(EventKind.CUE, Crossing.RISING, cue::level));
    Leg leg =
        noted(
            flyer.fly(
                motion,
                law,
                begun.time(),
                begun.state(),
                onset + Encounter.RECOVERY_TIME,
                events,
                history));
    boolean fired = leg.stop().filter(kind -> kind == EventKind.CUE).isPresent();
    return fired ? new Leg(leg.time(), leg.state(), Optional.empty(), leg.occurrences()) : leg;
  }

  private boolean timedOut(Leg leg) {
    return encounter.recognition().cue().isPresent()
        && occurrences.stream().noneMatch(seen -> seen.kind() == EventKind.CUE)
        && leg.stop().isEmpty();
  }

  private Leg until(Leg from, double end) {
    if (!(end - from.time() > SHORTEST_LEG) || timedOut(from)) {
      return from;
    }
    return noted(
        flyer.fly(
            motion,
            approach.scene().start().law(),
            from.time(),
            from.state(),
            end,
            events(),
            history));
  }

  private Leg recovering(Leg from) {
    Recovery recovery = encounter.recovery();
    double recognition = from.time();
    double end = recognition + Encounter.RECOVERY_TIME;
    int last = recovery.phases().size() - 1;
    Leg leg = from;
    boolean held = false;
    int phase = 0;
    while (end - leg.time() > SHORTEST_LEG) {
      int flown = phase;
      ControlLaw law = (seen, controls) -> recovery.command(flown, seen, controls);
      motion.begin(recognition, phase, leg.time());
      Motion now = motion.at(leg.time(), leg.state(), law);
      boolean ends = phase < last;
      if (ends && recovery.phaseEnd(phase, now) >= 0) {
        phase = next(phase, now);
        continue;
      }
      if (!held && recovery.limitMargin(phase, now) < 0) {
        note(EventKind.LIMIT_BINDS, leg);
      }
      phase(recovery.phases().get(phase));
      List<FlightEvent> events = events();
      events.add(
          FlightEvent.note(
              EventKind.LIMIT_BINDS, Crossing.FALLING, seen -> recovery.limitMargin(flown, seen)));
      if (ends) {
        events.add(
            FlightEvent.stop(
                EventKind.PHASE_END, Crossing.RISING, seen -> recovery.phaseEnd(flown, seen)));
      }
      leg = noted(flyer.fly(motion, law, leg.time(), leg.state(), end, events, history));
      if (leg.stop().filter(kind -> kind == EventKind.PHASE_END).isEmpty()) {
        break;
      }
      Motion then = motion.at(leg.time(), leg.state(), law);
      held = recovery.limitMargin(phase, then) < 0;
      phase = next(phase, then);
    }
    return leg;
  }

  private int next(int phase, Motion now) {
    Recovery recovery = encounter.recovery();
    int next = recovery.next(phase, now);
    if (!(next > phase && next < recovery.phases().size())) {
      throw new IllegalStateException(
          "the recovery " + recovery.name() + " goes from phase " + phase + " to " + next);
    }
    return next;
  }

  private List<FlightEvent> events() {
    double warning = encounter.craft().si(Helicopter.LOW_ROTOR_SPEED);
    Scene scene = approach.scene();
    List<FlightEvent> events = new ArrayList<>();
    events.add(FlightEvent.stop(EventKind.ARREST, Crossing.RISING, Motion::verticalSpeed));
    if (encounter.height().isPresent()) {
      events.add(FlightEvent.stop(EventKind.GROUND, Crossing.FALLING, Motion::height));
    }
    events.add(
        FlightEvent.note(EventKind.FASTEST_DESCENT, Crossing.RISING, Motion::verticalAcceleration));
    events.add(FlightEvent.note(EventKind.RING_STATE_LEFT, Crossing.RISING, scene::margin));
    events.add(
        FlightEvent.note(EventKind.RING_STATE_ENTERED_AGAIN, Crossing.FALLING, scene::margin)
            .when(seen -> seen.time() > onset + SAME_CROSSING));
    events.add(
        FlightEvent.note(
            EventKind.LOW_ROTOR_SPEED, Crossing.FALLING, seen -> seen.rotorSpeed() - warning));
    events.add(
        FlightEvent.note(EventKind.LOW_THRUST, Crossing.FALLING, seen -> seen.loadFactor() - 0.5));
    return events;
  }

  private void note(EventKind kind, Leg at) {
    occurrences.add(
        new Occurrence(kind, at.time(), at.state()[State.UP], at.state()[State.SPEED_UP]));
  }

  private void phase(String name) {
    if (history != null) {
      history.phase(name);
    }
  }

  private Leg noted(Leg leg) {
    occurrences.addAll(leg.occurrences());
    for (Occurrence occurrence : leg.occurrences()) {
      fastest = Math.max(fastest, -occurrence.verticalSpeed());
    }
    fastest = Math.max(fastest, -leg.state()[State.SPEED_UP]);
    return leg;
  }

  private Outcome ended(Leg leg, OptionalDouble recognisedAt) {
    Ending ending = Ending.NOT_ARRESTED;
    if (leg.stop().filter(kind -> kind == EventKind.GROUND).isPresent()) {
      ending = Ending.GROUND;
    } else if (leg.stop().filter(kind -> kind == EventKind.ARREST).isPresent()) {
      ending = Ending.ARRESTED;
    }
    OptionalDouble none = OptionalDouble.empty();
    boolean bottomed = ending != Ending.NOT_ARRESTED;
    double lowest = ending == Ending.GROUND ? 0 : leg.state()[State.UP];
    return new Outcome(
        ending,
        bottomed ? OptionalDouble.of(encounter.height().orElse(0) - lowest) : none,
        bottomed && recognisedAt.isPresent()
            ? OptionalDouble.of(recognisedAt.getAsDouble() - lowest)
            : none,
        OptionalDouble.of(fastest),
        ending == Ending.ARRESTED ? OptionalDouble.of(leg.time() - onset) : none,
        ending == Ending.GROUND ? OptionalDouble.of(-leg.state()[State.SPEED_UP]) : none,
        OptionalDouble.of(onset),
        occurrences);
  }
}
