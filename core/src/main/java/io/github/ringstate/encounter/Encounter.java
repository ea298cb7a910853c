package io.github.ringstate.encounter;

import io.github.ringstate.air.Air;
import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.air.Wind;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.flight.EquationsOfMotion;
import io.github.ringstate.flight.EventKind;
import io.github.ringstate.flight.FlightEvent;
import io.github.ringstate.flight.FlightEvent.Crossing;
import io.github.ringstate.flight.Flyer;
import io.github.ringstate.flight.History;
import io.github.ringstate.flight.Leg;
import io.github.ringstate.flight.Motion;
import io.github.ringstate.flight.Occurrence;
import io.github.ringstate.flight.PreciseFlyer;
import io.github.ringstate.flight.State;
import io.github.ringstate.flight.Trim;
import io.github.ringstate.inflow.BoundaryCriterion;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.pilot.Forward;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * One flight into the ring state and out of it: entry, onset, recognition, the pilot's action, and
 * arrest, ground contact or the end of the time.
 *
 * <p>Onset is the first instant inside the boundary at which the descent is building: usually the
 * crossing of the boundary; the start, if the entry starts inside. Recognition comes the delay
 * after onset; until then the controls are as in the entry. The descent is arrested when the
 * vertical speed rises through zero. Speeds are held against the boundary in units of the hover
 * induced velocity at the craft's weight.
 *
 * @param craft the helicopter
 * @param air the air at the start
 * @param entry how the flight comes to the ring state
 * @param recovery what the pilot does
 * @param delay from onset to the pilot's action, s, 0 to 60
 * @param height height above the ground at onset, m, 1 to 3000; empty if there is no ground
 * @param inflow the steady inflow
 * @param boundary what bounds the ring state
 */
public record Encounter(
    Helicopter craft,
    Air air,
    Entry entry,
    Recovery recovery,
    double delay,
    OptionalDouble height,
    InflowModel inflow,
    BoundaryCriterion boundary) {

  /** The delay that is accepted. */
  public static final Quantity DELAY = new Quantity("delay", Unit.SECOND, 0, 60);

  /** The height at onset that is accepted. */
  public static final Quantity HEIGHT = new Quantity("height at onset", Unit.METRE, 1, 3000);

  /** How long an entry may take to reach the ring state, s. */
  public static final double ENTRY_TIME = 60;

  /** How long a recovery may take, s. */
  public static final double RECOVERY_TIME = 60;

  /** Part of the message when a recovery has no phases; its name stands before it. */
  public static final String NO_PHASES = " has no phases";

  /** Time after onset in which a crossing of the boundary is the same crossing, s. */
  private static final double SAME_CROSSING = 1e-6;

  /** A leg that would be shorter is not flown, s: an integrator cannot tell its ends apart. */
  private static final double SHORTEST_LEG = 1e-9;

  /** Checks delay, height and that the recovery has phases. */
  public Encounter {
    DELAY.check(delay);
    if (recovery.phases().isEmpty()) {
      throw new IllegalArgumentException("the recovery " + recovery.name() + NO_PHASES);
    }
    if (height.isPresent()) {
      HEIGHT.check(height.getAsDouble());
    }
  }

  /**
   * An encounter at sea level on a standard day, away from the ground: entry from a hover, forward
   * recovery after one second, the ring-state inflow and its heave-damping boundary.
   *
   * @param craft the helicopter
   * @return the encounter
   */
  public static Encounter of(Helicopter craft) {
    RingStateInflow inflow = RingStateInflow.standard();
    return new Encounter(
        craft,
        StandardAtmosphere.at(0),
        new Settling(),
        new Forward(),
        1,
        OptionalDouble.empty(),
        inflow,
        new HeaveDamping(inflow));
  }

  /**
   * The same encounter with another craft.
   *
   * @param other the helicopter
   * @return the changed encounter
   */
  public Encounter withCraft(Helicopter other) {
    return new Encounter(other, air, entry, recovery, delay, height, inflow, boundary);
  }

  /**
   * The same encounter in other air.
   *
   * @param other the air at the start
   * @return the changed encounter
   */
  public Encounter withAir(Air other) {
    return new Encounter(craft, other, entry, recovery, delay, height, inflow, boundary);
  }

  /**
   * The same encounter from another entry.
   *
   * @param other how the flight comes to the ring state
   * @return the changed encounter
   */
  public Encounter withEntry(Entry other) {
    return new Encounter(craft, air, other, recovery, delay, height, inflow, boundary);
  }

  /**
   * The same encounter with another recovery.
   *
   * @param other what the pilot does
   * @return the changed encounter
   */
  public Encounter withRecovery(Recovery other) {
    return new Encounter(craft, air, entry, other, delay, height, inflow, boundary);
  }

  /**
   * The same encounter with another delay.
   *
   * @param other from onset to the pilot's action, s
   * @return the changed encounter
   */
  public Encounter withDelay(double other) {
    return new Encounter(craft, air, entry, recovery, other, height, inflow, boundary);
  }

  /**
   * The same encounter above ground.
   *
   * @param other height above the ground at onset, m
   * @return the changed encounter
   */
  public Encounter withHeight(double other) {
    return new Encounter(
        craft, air, entry, recovery, delay, OptionalDouble.of(other), inflow, boundary);
  }

  /**
   * The same encounter with another inflow and boundary.
   *
   * @param otherInflow the steady inflow
   * @param otherBoundary what bounds the ring state
   * @return the changed encounter
   */
  public Encounter withInflow(InflowModel otherInflow, BoundaryCriterion otherBoundary) {
    return new Encounter(craft, air, entry, recovery, delay, height, otherInflow, otherBoundary);
  }

  /**
   * Flies the encounter precisely.
   *
   * @return what came of it
   * @throws IllegalStateException if the craft cannot hover or start the entry in this air
   */
  public Outcome fly() {
    return fly(PreciseFlyer.standard(), null);
  }

  /**
   * Flies the encounter.
   *
   * @param flyer the way of flying
   * @param history where to put samples of the flight, or null; heights in it are above ground, or
   *     above the height at onset where there is no ground
   * @return what came of it
   * @throws IllegalStateException if the craft cannot hover or start the entry in this air
   */
  public Outcome fly(Flyer flyer, @Nullable History history) {
    return new Flight(flyer, history).fly();
  }

  /** One run through the legs of the encounter. */
  private final class Flight {

    private final Flyer flyer;
    private final @Nullable History history;
    private final EquationsOfMotion free;
    private final EquationsOfMotion low;
    private final Entry.Start start;
    private final List<Occurrence> occurrences = new ArrayList<>();
    private double fastest;

    Flight(Flyer flyer, @Nullable History history) {
      this.flyer = flyer;
      this.history = history;
      EquationsOfMotion calm = new EquationsOfMotion(craft, air, Wind.CALM, inflow, false);
      Trim hover = Trim.find(calm, 0, 0);
      free = new EquationsOfMotion(craft, air, entry.wind(), inflow, false);
      free.remember(hover);
      low =
          height.isPresent() ? new EquationsOfMotion(craft, air, entry.wind(), inflow, true) : free;
      low.remember(hover);
      start = entry.start(free);
    }

    Outcome fly() {
      Leg approach = approach(start.state(), null);
      boolean met = approach.stop().isPresent();
      double lift = height.orElse(0) - (met ? approach.state()[State.UP] : start.state()[State.UP]);
      if (history != null) {
        // Flown again, so that the heights of the samples count from the ground or from onset.
        double[] lifted = start.state().clone();
        lifted[State.UP] += lift;
        approach(lifted, history);
      }
      for (Occurrence seen : approach.occurrences()) {
        occurrences.add(seen.lifted(lift));
      }
      if (!met) {
        return Outcome.noOnset(occurrences);
      }
      double onset = approach.time();
      double[] state = approach.state();
      state[State.UP] += lift;
      fastest = -state[State.SPEED_UP];
      low.begin(Double.NaN, -1, onset);
      Leg waiting = waiting(onset, state);
      if (waiting.stop().isPresent()) {
        return ended(waiting, onset, OptionalDouble.empty());
      }
      OptionalDouble recognised = OptionalDouble.of(waiting.state()[State.UP]);
      occurrences.add(
          new Occurrence(
              EventKind.RECOGNITION,
              waiting.time(),
              waiting.state()[State.UP],
              waiting.state()[State.SPEED_UP]));
      return ended(recovering(waiting, onset), onset, recognised);
    }

    private Leg approach(double[] state, @Nullable History samples) {
      free.begin(Double.NaN, -1, 0);
      name(samples, "entry");
      Motion first = free.at(0, state, start.law());
      if (margin(first) < 0) {
        Occurrence inside =
            new Occurrence(EventKind.ONSET, 0, state[State.UP], state[State.SPEED_UP]);
        return new Leg(0, state.clone(), Optional.of(EventKind.ONSET), List.of(inside));
      }
      FlightEvent crossing =
          FlightEvent.stop(EventKind.ONSET, Crossing.FALLING, this::margin)
              .when(motion -> motion.verticalAcceleration() < 0);
      FlightEvent building =
          FlightEvent.stop(EventKind.ONSET, Crossing.FALLING, Motion::verticalAcceleration)
              .when(motion -> margin(motion) < 0);
      return flyer.fly(
          free, start.law(), 0, state, ENTRY_TIME, List.of(crossing, building), samples);
    }

    private Leg waiting(double onset, double[] state) {
      if (!(delay > SHORTEST_LEG)) {
        return new Leg(onset, state, Optional.empty(), List.of());
      }
      name(history, "unrecognised");
      return noted(
          flyer.fly(low, start.law(), onset, state, onset + delay, events(onset), history));
    }

    private Leg recovering(Leg from, double onset) {
      double recognition = from.time();
      double end = recognition + RECOVERY_TIME;
      int last = recovery.phases().size() - 1;
      Leg leg = from;
      for (int phase = 0; phase <= last; phase++) {
        if (!(end - leg.time() > SHORTEST_LEG)) {
          break;
        }
        low.begin(recognition, phase, leg.time());
        boolean skipped =
            phase < last && recovery.phaseEnd(low.at(leg.time(), leg.state(), recovery)) >= 0;
        if (skipped) {
          continue;
        }
        name(history, recovery.phases().get(phase));
        List<FlightEvent> events = events(onset);
        if (phase < last) {
          events.add(FlightEvent.stop(EventKind.PHASE_END, Crossing.RISING, recovery::phaseEnd));
        }
        leg = noted(flyer.fly(low, recovery, leg.time(), leg.state(), end, events, history));
        if (!leg.stop().filter(kind -> kind == EventKind.PHASE_END).isPresent()) {
          break;
        }
      }
      return leg;
    }

    private List<FlightEvent> events(double onset) {
      double warning = craft.si(Helicopter.LOW_ROTOR_SPEED);
      List<FlightEvent> events = new ArrayList<>();
      events.add(FlightEvent.stop(EventKind.ARREST, Crossing.RISING, Motion::verticalSpeed));
      if (height.isPresent()) {
        events.add(FlightEvent.stop(EventKind.GROUND, Crossing.FALLING, Motion::height));
      }
      ToDoubleFunction<Motion> acceleration = Motion::verticalAcceleration;
      events.add(FlightEvent.note(EventKind.FASTEST_DESCENT, Crossing.RISING, acceleration));
      events.add(FlightEvent.note(EventKind.RING_STATE_LEFT, Crossing.RISING, this::margin));
      events.add(
          FlightEvent.note(EventKind.RING_STATE_ENTERED_AGAIN, Crossing.FALLING, this::margin)
              .when(motion -> motion.time() > onset + SAME_CROSSING));
      events.add(
          FlightEvent.note(
              EventKind.LOW_ROTOR_SPEED,
              Crossing.FALLING,
              motion -> motion.rotorSpeed() - warning));
      events.add(
          FlightEvent.note(
              EventKind.LOW_THRUST, Crossing.FALLING, motion -> motion.loadFactor() - 0.5));
      return events;
    }

    private double margin(Motion motion) {
      return boundary.margin(motion.edgewiseOverHover(), motion.axialOverHover());
    }

    private Leg noted(Leg leg) {
      occurrences.addAll(leg.occurrences());
      for (Occurrence occurrence : leg.occurrences()) {
        fastest = Math.max(fastest, -occurrence.verticalSpeed());
      }
      fastest = Math.max(fastest, -leg.state()[State.SPEED_UP]);
      return leg;
    }

    private Outcome ended(Leg leg, double onset, OptionalDouble recognisedAt) {
      Ending ending = Ending.NOT_ARRESTED;
      if (leg.stop().filter(kind -> kind == EventKind.GROUND).isPresent()) {
        ending = Ending.GROUND;
      } else if (leg.stop().filter(kind -> kind == EventKind.ARREST).isPresent()) {
        ending = Ending.ARRESTED;
      }
      OptionalDouble none = OptionalDouble.empty();
      boolean bottomed = ending != Ending.NOT_ARRESTED;
      double lowest = ending == Ending.GROUND ? 0 : leg.state()[State.UP];
      OptionalDouble afterRecognition =
          bottomed && recognisedAt.isPresent()
              ? OptionalDouble.of(recognisedAt.getAsDouble() - lowest)
              : none;
      return new Outcome(
          ending,
          bottomed ? OptionalDouble.of(height.orElse(0) - lowest) : none,
          afterRecognition,
          OptionalDouble.of(fastest),
          ending == Ending.ARRESTED ? OptionalDouble.of(leg.time() - onset) : none,
          ending == Ending.GROUND ? OptionalDouble.of(-leg.state()[State.SPEED_UP]) : none,
          OptionalDouble.of(onset),
          occurrences);
    }

    private static void name(@Nullable History samples, String phase) {
      if (samples != null) {
        samples.phase(phase);
      }
    }
  }
}
