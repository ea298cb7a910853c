package io.github.ringstate.encounter;

import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.NoSteadyFlightException;
import io.github.ringstate.dynamics.State;
import io.github.ringstate.integrate.Event;
import io.github.ringstate.integrate.Event.Crossing;
import io.github.ringstate.integrate.EventLog;
import io.github.ringstate.integrate.Propagator;
import io.github.ringstate.integrate.UnfinishedLegException;
import io.github.ringstate.pilot.ControlLaw;
import io.github.ringstate.pilot.PilotView;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * The flight from the start of the entry to the onset of the ring state. It does not depend on what
 * the pilot does afterwards, so encounters that differ in recognition and recovery alone share it.
 *
 * <p>It is flown away from the ground, from a height at which onset is at the height of the
 * encounter.
 */
public final class Approach {

  /**
   * Vertical acceleration that is none, m/s2: in steady flight its sign is noise, of the size that
   * the tolerance of a fast flight leaves, and an event that looked for it would find one at every
   * step. A peak of the rate of descent is thereby missed by some millionths of a m/s where it is
   * sharp, and by less than 0.005 m/s where the descent takes ten seconds to turn.
   */
  static final double STEADY = 1e-3;

  /**
   * Rate of descent that is none, m/s. A hover begins at exactly zero and may stay there, and an
   * integrator that looks for events cannot tell on which side of zero that is.
   */
  private static final double LEVEL = 1e-6;

  /**
   * How fast the margin changes at most in an entry, 1/s (measured: 99 of 100 drawn entries in
   * gusts stay below 5.3, the fastest of 3,000 reaches 20 for an instant). Without it a descent
   * that grazes the boundary meets it or not as the steps happen to fall.
   */
  private static final double FASTEST_MARGIN = 10;

  /**
   * Errors of the steps of an approach over the usual ones. An approach may take a minute, through
   * which a pilot's hunt for speed and the sink itself make errors grow: onset then came up to 0.04
   * s wrong. Smaller ones cost a tenth of the approach, for it is mostly stability that keeps these
   * steps short.
   */
  private static final double CAREFULLY = 0.125;

  /** The name of what is flown until onset, as of a phase. */
  static final String ENTRY = "entry";

  private final Encounter encounter;
  private final Scene scene;
  private final Arrival arrival;
  private final double startHeight;

  private Approach(Encounter encounter, Scene scene, Arrival arrival, double startHeight) {
    this.encounter = encounter;
    this.scene = scene;
    this.arrival = arrival;
    this.startHeight = startHeight;
  }

  /**
   * Flies the approach of an encounter.
   *
   * @param encounter the encounter; its recognition and recovery play no part
   * @param simulator what flies it
   * @return the approach
   * @throws NoSteadyFlightException if the craft cannot hover or start the entry in this air, or
   *     its rotor slows to half of its speed in the entry before the ring state begins
   */
  public static Approach fly(Encounter encounter, Simulator simulator) {
    Scene scene = new Scene(encounter);
    Propagator<Happening, Motion> propagator = simulator.propagator();
    propagator.budget(encounter.limits().evaluations());
    double level = encounter.height().orElse(0);
    DoubleFunction<Arrival> flight = from -> fly(scene, from, propagator);
    Arrival arrival;
    double startHeight = level;
    if (scene.windVaries()) {
      StartHeight.Tried start = StartHeight.find(level, flight);
      startHeight = start.startHeight();
      arrival = start.arrival();
    } else {
      arrival = flight.apply(level);
    }
    if (arrival.end() == EventKind.ROTOR_TOO_SLOW) {
      throw new NoSteadyFlightException(tooSlow(encounter, arrival.time()));
    }
    if (!arrival.onset()) {
      return new Approach(encounter, scene, arrival, startHeight);
    }
    double below = level - arrival.height();
    arrival.state()[State.UP] += below;
    return new Approach(encounter, scene, arrival, startHeight + below);
  }

  private static String tooSlow(Encounter encounter, double time) {
    return String.format(
        Locale.ROOT,
        "the rotor of %s slows to half of its speed %.0f s into the entry %s, before the ring state:"
            + " the engine does not carry the craft there",
        encounter.craft().name(),
        time,
        encounter.entry().name());
  }

  private static Arrival fly(
      Scene scene, double startHeight, Propagator<Happening, Motion> propagator) {
    EquationsOfMotion free = scene.equations(false);
    PilotView pilot = scene.pilot(free);
    Entry.Start start = scene.start(startHeight);
    pilot.follow(start.law());
    pilot.begin(Double.NaN, 0, 0);
    double[] state = start.state().clone();
    state[State.UP] += startHeight;
    Motion first = free.at(0, state);
    if (scene.margin(first) < 0 && sinks(first)) {
      return new Arrival(0, state, EventKind.ONSET, start.law());
    }
    Event<Happening, Motion> crossing =
        Event.<Happening, Motion>stop(EventKind.ONSET, Crossing.FALLING, scene::margin)
            .when(
                motion ->
                    scene.encounter().boundary().isOfPath()
                        || (motion.verticalAcceleration() < 0 && sinks(motion)))
            .changingAtMost(FASTEST_MARGIN);
    Event<Happening, Motion> building =
        Event.<Happening, Motion>stop(
                EventKind.ONSET, Crossing.FALLING, motion -> motion.verticalAcceleration() + STEADY)
            .when(motion -> scene.margin(motion) < 0 && sinks(motion));
    // in an updraught a craft may climb over the ground while the disc is inside the boundary
    Event<Happening, Motion> sinking =
        Event.<Happening, Motion>stop(
                EventKind.ONSET, Crossing.FALLING, motion -> motion.verticalSpeed() + LEVEL)
            .when(motion -> scene.margin(motion) < 0);
    propagator.start(0, state);
    propagator.scaleTolerance(CAREFULLY);
    Happening stop =
        propagate(
            scene, propagator, free, List.of(crossing, building, sinking, RotorLimits.tooSlow()));
    for (int i = 0; i < state.length; i++) {
      state[i] = propagator.state(i);
    }
    return new Arrival(propagator.time(), state, stop, start.law());
  }

  private static @Nullable Happening propagate(
      Scene scene,
      Propagator<Happening, Motion> propagator,
      EquationsOfMotion free,
      List<Event<Happening, Motion>> events) {
    Encounter encounter = scene.encounter();
    try {
      return propagator.propagate(free, encounter.limits().si(FlightLimits.ENTRY_TIME), events);
    } catch (UnfinishedLegException unfinished) {
      throw new UnfinishedFlightException(
          "the entry " + encounter.entry().name(), ENTRY, unfinished);
    }
  }

  /** Whether height is lost at this instant or begins to be. */
  private static boolean sinks(Motion motion) {
    double speed = motion.verticalSpeed();
    return speed < 0 || (speed == 0 && motion.verticalAcceleration() < 0);
  }

  /**
   * Whether the ring state was entered.
   *
   * @return true if there was an onset
   */
  public boolean onset() {
    return arrival.onset();
  }

  /**
   * When the approach ended.
   *
   * @return the time of onset, or when the search for one was given up, s since the start
   */
  public double time() {
    return arrival.time();
  }

  /**
   * The state at the end.
   *
   * @return a copy, in the order of {@link State}, SI units
   */
  public double[] state() {
    return arrival.state().clone();
  }

  Scene scene() {
    return scene;
  }

  /** What is done with the controls until the pilot acts. */
  ControlLaw law() {
    return arrival.law();
  }

  Encounter encounter() {
    return encounter;
  }

  /** Notes the onset in a log. */
  void noteOnset(EventLog<Happening> log) {
    log.add(EventKind.ONSET, arrival.time(), arrival.state());
  }

  /** Flies the approach once more for whoever listens to the propagator. */
  void again(Propagator<Happening, Motion> propagator) {
    fly(scene, startHeight, propagator);
  }

  /** Whether an encounter has this approach. */
  boolean serves(Encounter other) {
    return differInPilotAtMost(encounter, other);
  }

  /** Whether two encounters differ in recognition and recovery at most. */
  static boolean differInPilotAtMost(Encounter one, Encounter other) {
    return one.withRecovery(other.recovery()).withRecognition(other.recognition()).equals(other);
  }
}
