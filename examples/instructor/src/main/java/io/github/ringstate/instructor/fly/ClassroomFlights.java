package io.github.ringstate.instructor.fly;

import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.State;
import io.github.ringstate.encounter.Approach;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.EventKind;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.encounter.Trajectory;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeSet;

/**
 * The flights of a lesson: every recovery after every delay, from one entry. Power alone is among
 * them only if it is asked for.
 *
 * @param delays the delays, s, ascending
 * @param recoveries the recoveries
 * @param flights for each recovery each delay; none if the entry does not lead into the ring state
 */
record ClassroomFlights(List<Double> delays, List<Technique> recoveries, List<Flight> flights) {

  /** Time between samples, s. */
  static final double STEP = 0.2;

  /** From where before onset to where after it a flight is shown, s. */
  static final double BEFORE = 3;

  static final double AFTER = 24;

  private static final List<Double> OFFERED =
      List.of(0.0, 0.5, 1.0, 1.5, 2.0, 2.5, 3.0, 3.5, 4.0, 5.0, 6.0);

  ClassroomFlights {
    delays = List.copyOf(delays);
    recoveries = List.copyOf(recoveries);
    flights = List.copyOf(flights);
  }

  /**
   * One flight.
   *
   * @param recovery what the pilot does
   * @param delay from onset to the pilot's action, s
   * @param outcome what came of it
   * @param samples the flight at equal steps of time
   */
  record Flight(Technique recovery, double delay, Outcome outcome, List<Instant> samples) {

    Flight {
      samples = List.copyOf(samples);
    }

    /** When something happened, since onset, s. */
    OptionalDouble when(EventKind kind) {
      double onset = outcome.onsetTime().orElse(0);
      return outcome.first(kind).stream().mapToDouble(seen -> seen.time() - onset).findFirst();
    }
  }

  /**
   * A flight at one instant.
   *
   * @param time since onset, s
   * @param distance over the ground from the point of onset, m; negative before it
   * @param height above the ground, or above the height at onset, m
   * @param verticalSpeed m/s, positive up
   * @param inflow induced velocity, in hover induced velocities
   * @param power per cent of the continuous power
   */
  record Instant(
      double time,
      double distance,
      double height,
      double verticalSpeed,
      double inflow,
      double power) {}

  static ClassroomFlights fly(FlyRequest request) {
    TreeSet<Double> delays = new TreeSet<>(OFFERED);
    delays.add(request.delay());
    List<Technique> recoveries =
        Technique.ALL.stream()
            .filter(kind -> !kind.isMistaken() || kind.equals(request.recovery()))
            .toList();
    Encounter base = request.encounter();
    Simulator simulator = Simulator.precise();
    Approach approach = Approach.fly(base, simulator);
    List<Flight> flights = new ArrayList<>();
    if (approach.onset()) {
      for (Technique recovery : recoveries) {
        for (double delay : delays) {
          Encounter encounter = base.withRecovery(recovery.standard()).withDelay(delay);
          flights.add(fly(encounter, recovery, delay, approach, simulator));
        }
      }
    }
    return new ClassroomFlights(List.copyOf(delays), recoveries, flights);
  }

  private static Flight fly(
      Encounter encounter,
      Technique recovery,
      double delay,
      Approach approach,
      Simulator simulator) {
    double onset = approach.time();
    double[] at = approach.state();
    List<Instant> samples = new ArrayList<>();
    // the instants of a trajectory are whole steps since the start of the flight
    Trajectory trajectory =
        new Trajectory(
            STEP,
            (phase, motion) -> {
              double time = motion.time() - onset;
              if (time >= -BEFORE && time <= AFTER) {
                samples.add(instant(motion, time, at));
              }
            });
    Outcome outcome = encounter.fly(approach, simulator, trajectory);
    return new Flight(recovery, delay, outcome, samples);
  }

  private static Instant instant(Motion motion, double time, double[] onset) {
    double north = motion.state(State.NORTH) - onset[State.NORTH];
    double east = motion.state(State.EAST) - onset[State.EAST];
    double distance = Math.sqrt(north * north + east * east);
    return new Instant(
        time,
        time < 0 ? -distance : distance,
        motion.height(),
        motion.verticalSpeed(),
        motion.inducedOverHover(),
        Unit.PERCENT.fromSi(motion.power()));
  }
}
