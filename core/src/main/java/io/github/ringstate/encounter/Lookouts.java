package io.github.ringstate.encounter;

import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.integrate.Event;
import io.github.ringstate.integrate.Event.Crossing;
import io.github.ringstate.pilot.Cue;
import io.github.ringstate.pilot.Cues;
import io.github.ringstate.pilot.PilotView;
import io.github.ringstate.quantity.NotFiniteException;
import java.util.ArrayList;
import java.util.List;

/** The events that are looked for on the legs of a descent. */
final class Lookouts {

  /** Time after onset in which a crossing of the boundary is the same crossing, s. */
  private static final double SAME_CROSSING = 0.01;

  /**
   * Thrust over weight below which a flight counts as one of low thrust: half of the weight, by
   * definition.
   */
  private static final double LOW_THRUST = 0.5;

  private final Approach approach;
  private final PilotView pilot;
  private final ArrestWatch arrest;
  private final boolean story;
  private final RotorLimits rotorLimits;
  private final Lookout always;
  private final Lookout untilCue;
  private final Lookout inPhase;
  private final Lookout inLastPhase;
  private Cue cue = Cues.of("none", seen -> -1);

  /**
   * Works out what is looked for.
   *
   * @param story whether all that happens is looked for, or only what the outcome is made of
   */
  Lookouts(
      Approach approach,
      PilotView pilot,
      ArrestWatch arrest,
      PhaseWalk walk,
      RotorLimits rotorLimits,
      boolean story) {
    this.approach = approach;
    this.pilot = pilot;
    this.arrest = arrest;
    this.story = story;
    this.rotorLimits = rotorLimits;
    Event<Happening, Motion> onCue = Event.stop(EventKind.CUE, Crossing.RISING, seen -> level());
    Event<Happening, Motion> limit =
        Event.note(
            EventKind.LIMIT_BINDS, Crossing.FALLING, seen -> walk.phase().limitMargin(pilot));
    Event<Happening, Motion> phaseEnd =
        Event.stop(EventKind.PHASE_END, Crossing.RISING, seen -> walk.end(pilot));
    always = lookout(List.of());
    untilCue = lookout(List.of(onCue));
    inLastPhase = lookout(story ? List.of(limit) : List.of());
    inPhase = lookout(story ? List.of(limit, phaseEnd) : List.of(phaseEnd));
  }

  /**
   * What is looked for on a leg until the descent is arrested, while that is watched, and past it.
   */
  record Lookout(
      List<Event<Happening, Motion>> sinking,
      List<Event<Happening, Motion>> arrested,
      List<Event<Happening, Motion>> past) {}

  Lookout always() {
    return always;
  }

  Lookout untilCue() {
    return untilCue;
  }

  Lookout inPhase(boolean ends) {
    return ends ? inPhase : inLastPhase;
  }

  /** Says for which cue to look. */
  void cue(Cue other) {
    cue = other;
  }

  /** How strong the cue is. */
  double level() {
    return NotFiniteException.check(cue.level(pilot), "the level of the cue", cue.name());
  }

  private Lookout lookout(List<Event<Happening, Motion>> more) {
    List<Event<Happening, Motion>> sinking = new ArrayList<>();
    List<Event<Happening, Motion>> watching = new ArrayList<>();
    List<Event<Happening, Motion>> past = new ArrayList<>();
    Event<Happening, Motion> arrested =
        Event.stop(EventKind.ARREST, Crossing.RISING, Motion::verticalSpeed);
    sinking.add(arrested);
    watching.add(arrested.when(seen -> arrest.isLower(seen.height())));
    sinking.add(RotorLimits.tooSlow());
    past.add(RotorLimits.tooSlow());
    if (approach.encounter().height().isPresent()) {
      Event<Happening, Motion> contact =
          Event.stop(EventKind.GROUND, Crossing.FALLING, Motion::height);
      sinking.add(contact);
      watching.add(contact);
      past.add(contact);
    }
    watching.add(
        Event.stop(
            EventKind.CLEAR,
            Crossing.RISING,
            seen -> seen.height() - arrest.low() - ArrestWatch.CLEAR));
    watching.addAll(rotorLimits.events(true));
    if (story) {
      Event<Happening, Motion> lowThrust =
          Event.note(
              EventKind.LOW_THRUST, Crossing.FALLING, seen -> seen.loadFactor() - LOW_THRUST);
      for (List<Event<Happening, Motion>> list : List.of(sinking, watching, past)) {
        list.addAll(notes());
        if (list != watching) {
          list.addAll(rotorLimits.events(false));
        }
        list.add(lowThrust);
      }
    }
    List<Event<Happening, Motion>> own = own();
    for (List<Event<Happening, Motion>> list : List.of(sinking, watching, past)) {
      list.addAll(more);
      list.addAll(own);
    }
    return new Lookout(List.copyOf(sinking), List.copyOf(watching), List.copyOf(past));
  }

  private List<Event<Happening, Motion>> notes() {
    Scene scene = approach.scene();
    return List.of(
        Event.note(
            EventKind.FASTEST_DESCENT,
            Crossing.RISING,
            seen -> seen.verticalAcceleration() - Approach.STEADY),
        Event.note(EventKind.RING_STATE_LEFT, Crossing.RISING, scene::margin),
        Event.<Happening, Motion>note(
                EventKind.RING_STATE_ENTERED_AGAIN, Crossing.FALLING, scene::margin)
            .when(seen -> seen.time() > approach.time() + SAME_CROSSING));
  }

  /** Events of the user's own; those that only note are part of the story. */
  private List<Event<Happening, Motion>> own() {
    List<Event<Happening, Motion>> own = new ArrayList<>();
    for (FlightEvent event : approach.encounter().events()) {
      if (story || event.stops()) {
        own.add(
            new Event<>(
                event,
                event.crossing(),
                event.stops(),
                seen ->
                    NotFiniteException.check(
                        event.value().applyAsDouble(pilot),
                        "the quantity of the event",
                        event.name()),
                seen -> true,
                0));
      }
    }
    return own;
  }
}
