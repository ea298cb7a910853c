package io.github.ringstate.instructor.pilots;

import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.State;
import io.github.ringstate.encounter.Disturbances;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.encounter.Trajectory;
import io.github.ringstate.pilot.Technique;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.hipparchus.util.FastMath;

/**
 * One flight of a standard pilot with its way, to be drawn and told.
 *
 * @param recovery what the pilot did
 * @param outcome what came of it
 * @param path where it was at equal steps of time
 */
public record ShownFlight(Technique recovery, Outcome outcome, List<Point> path) {

  private static final double STEP = 0.1;

  /**
   * One instant.
   *
   * @param time since the flight began, s
   * @param height above the ground, or above the height at onset, m
   * @param north speed over the ground to the north, m/s
   * @param east speed over the ground to the east, m/s
   * @param heading where the nose points, rad, clockwise from north
   * @param forward airspeed along the heading, m/s
   * @param sideways airspeed to the right of it, m/s
   * @param torque torque of the rotors and gearbox over that of continuous power at full rotor
   *     speed
   */
  public record Point(
      double time,
      double height,
      double north,
      double east,
      double heading,
      double forward,
      double sideways,
      double torque) {}

  /** Copies the path. */
  public ShownFlight {
    path = List.copyOf(path);
  }

  /**
   * Flies an encounter with the standard technique.
   *
   * @param base the encounter, its recovery not yet set
   * @param recovery what the pilot does
   * @return the flight
   */
  public static ShownFlight fly(Encounter base, Technique recovery) {
    List<Point> path = new ArrayList<>();
    Outcome outcome =
        base.withRecovery(recovery.standard())
            .fly(
                Simulator.precise(),
                new Trajectory(STEP, (phase, motion) -> path.add(point(motion))));
    return new ShownFlight(recovery, outcome, path);
  }

  /**
   * Without what meets each pilot by chance, which the standard pilot does not.
   *
   * @param encounter the encounter
   * @return the encounter without shaking and gusts
   */
  public static Encounter undisturbed(Encounter encounter) {
    return encounter.withDisturbances(
        encounter.disturbances().with(Disturbances.SHAKING, 0).with(Disturbances.GUST_WIND, 0));
  }

  private static Point point(Motion motion) {
    return new Point(
        motion.time(),
        motion.height(),
        motion.state(State.SPEED_NORTH),
        motion.state(State.SPEED_EAST),
        motion.heading(),
        motion.forwardAirspeed(),
        motion.sidewaysAirspeed(),
        motion.power() / motion.rotorSpeed());
  }

  /**
   * The way over the ground from onset to the end: the lowest point, or the ground.
   *
   * @return the way; empty if the descent was not arrested above the ground, or there was none
   */
  public Optional<Way> overGround() {
    return way(Point::north, Point::east);
  }

  /**
   * The way through the air from onset to the lowest point, which the wind carries along.
   *
   * @return the way; empty if the descent was not arrested above the ground, or there was none
   */
  public Optional<Way> throughAir() {
    return way(
        at ->
            at.forward() * FastMath.cos(at.heading()) - at.sideways() * FastMath.sin(at.heading()),
        at ->
            at.forward() * FastMath.sin(at.heading()) + at.sideways() * FastMath.cos(at.heading()));
  }

  private Optional<Way> way(ToDoubleFunction<Point> toNorth, ToDoubleFunction<Point> toEast) {
    if (outcome.onsetTime().isEmpty() || outcome.ending() != Ending.ARRESTED) {
      return Optional.empty();
    }
    double onset = outcome.onsetTime().getAsDouble();
    double end = onset + outcome.timeToArrest().getAsDouble();
    List<Point> flown = path.stream().filter(at -> at.time() >= onset && at.time() <= end).toList();
    if (flown.size() < 2) {
      return Optional.empty();
    }
    double north = 0;
    double east = 0;
    double torque = 0;
    for (int i = 1; i < flown.size(); i++) {
      Point before = flown.get(i - 1);
      Point after = flown.get(i);
      double step = after.time() - before.time();
      north += step * (toNorth.applyAsDouble(before) + toNorth.applyAsDouble(after)) / 2;
      east += step * (toEast.applyAsDouble(before) + toEast.applyAsDouble(after)) / 2;
      torque = Math.max(torque, after.torque());
    }
    double heading = flown.get(0).heading();
    double ahead = north * FastMath.cos(heading) + east * FastMath.sin(heading);
    double right = east * FastMath.cos(heading) - north * FastMath.sin(heading);
    return Optional.of(new Way(ahead, right, end - onset, torque));
  }
}
