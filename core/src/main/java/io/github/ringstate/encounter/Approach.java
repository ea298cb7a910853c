package io.github.ringstate.encounter;

import io.github.ringstate.flight.EquationsOfMotion;
import io.github.ringstate.flight.EventKind;
import io.github.ringstate.flight.FlightEvent;
import io.github.ringstate.flight.FlightEvent.Crossing;
import io.github.ringstate.flight.Flyer;
import io.github.ringstate.flight.History;
import io.github.ringstate.flight.Leg;
import io.github.ringstate.flight.Motion;
import io.github.ringstate.flight.Occurrence;
import io.github.ringstate.flight.Occurrences;
import io.github.ringstate.flight.State;
import java.util.List;
import java.util.Optional;
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
   * the tolerance of a swift flight leaves, and an event that looked for it would find one at every
   * step. A peak of the rate of descent is thereby missed by some millionths of a m/s where it is
   * sharp, and by less than 0.005 m/s where the descent takes ten seconds to turn.
   */
  static final double STEADY = 1e-3;

  /**
   * Rate of descent that is none, m/s. A hover begins at exactly zero and may stay there, and an
   * integrator that looks for events cannot tell on which side of zero that is.
   */
  private static final double LEVEL = 1e-6;

  private final Encounter encounter;
  private final Scene scene;
  private final Leg leg;
  private final double lift;

  private Approach(Encounter encounter, Scene scene, Leg leg, double lift) {
    this.encounter = encounter;
    this.scene = scene;
    this.leg = leg;
    this.lift = lift;
  }

  /**
   * Flies the approach of an encounter.
   *
   * @param encounter the encounter; its recognition and recovery play no part
   * @param flyer the way of flying
   * @return the approach
   * @throws io.github.ringstate.flight.NoSteadyFlightException if the craft cannot hover or start
   *     the entry in this air
   */
  public static Approach fly(Encounter encounter, Flyer flyer) {
    Scene scene = new Scene(encounter);
    double level = encounter.height().orElse(0);
    Leg leg;
    double lift = level;
    if (encounter.disturbances().sheared()) {
      StartHeight.Tried start = StartHeight.find(level, from -> fly(scene, from, flyer, null));
      lift = start.lift();
      leg = start.leg();
    } else {
      leg = fly(scene, lift, flyer, null);
    }
    if (leg.stop().isEmpty()) {
      return new Approach(encounter, scene, leg, lift);
    }
    double below = level - leg.state()[State.UP];
    leg.state()[State.UP] += below;
    return new Approach(encounter, scene, leg, lift + below);
  }

  private static Leg fly(Scene scene, double lift, Flyer flyer, @Nullable History history) {
    EquationsOfMotion free = scene.equations(false);
    free.begin(Double.NaN, 0, 0);
    double[] state = scene.start().state().clone();
    state[State.UP] += lift;
    Motion first = free.at(0, state, scene.start().law());
    if (scene.margin(first) < 0 && sinks(first)) {
      Occurrence inside =
          new Occurrence(EventKind.ONSET, 0, state[State.UP], state[State.SPEED_UP]);
      return new Leg(0, state, Optional.of(EventKind.ONSET), List.of(inside));
    }
    FlightEvent crossing =
        FlightEvent.stop(EventKind.ONSET, Crossing.FALLING, scene::margin)
            .when(motion -> motion.verticalAcceleration() < 0 && sinks(motion));
    FlightEvent building =
        FlightEvent.stop(
                EventKind.ONSET, Crossing.FALLING, motion -> motion.verticalAcceleration() + STEADY)
            .when(motion -> scene.margin(motion) < 0 && sinks(motion));
    // in an updraught a craft may climb over the ground while the disc is inside the boundary
    FlightEvent sinking =
        FlightEvent.stop(
                EventKind.ONSET, Crossing.FALLING, motion -> motion.verticalSpeed() + LEVEL)
            .when(motion -> scene.margin(motion) < 0);
    return flyer.fly(
        free,
        scene.start().law(),
        0,
        state,
        Encounter.ENTRY_TIME,
        List.of(crossing, building, sinking),
        history);
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
    return leg.stop().isPresent();
  }

  /**
   * When the approach ended.
   *
   * @return the time of onset, or when the search for one was given up, s since the start
   */
  public double time() {
    return leg.time();
  }

  /**
   * The state at the end.
   *
   * @return a copy, in the order of {@link State}, SI units
   */
  public double[] state() {
    return leg.state().clone();
  }

  Scene scene() {
    return scene;
  }

  Encounter encounter() {
    return encounter;
  }

  /** Notes the onset in a list of what happened. */
  void noteOnset(Occurrences seen) {
    seen.add(EventKind.ONSET, leg.time(), leg.state()[State.UP], leg.state()[State.SPEED_UP]);
  }

  /** Flies the approach once more for its history. */
  void sample(Flyer flyer, History history) {
    history.phase("entry");
    fly(scene, lift, flyer, history);
  }

  /** Whether an encounter has this approach. */
  boolean serves(Encounter other) {
    return encounter
        .withRecovery(other.recovery())
        .withRecognition(other.recognition())
        .equals(other);
  }
}
