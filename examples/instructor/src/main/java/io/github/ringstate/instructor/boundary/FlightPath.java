package io.github.ringstate.instructor.boundary;

import io.github.ringstate.dynamics.NoSteadyFlightException;
import io.github.ringstate.encounter.EventKind;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.encounter.Trajectory;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.pilot.Technique;
import java.util.ArrayList;
import java.util.List;

/**
 * The way of one encounter through the speeds of the disc.
 *
 * @param recovery what the pilot does
 * @param delay from onset to the pilot's action, s
 * @param entry the entry's name
 * @param points the speeds at equal steps of time
 * @param marks the speeds at which something happens
 */
record FlightPath(
    Technique recovery, double delay, String entry, List<Point> points, List<Point> marks) {

  private static final double STEP = 0.1;

  FlightPath {
    points = List.copyOf(points);
    marks = List.copyOf(marks);
  }

  /**
   * Speeds of the disc through the air.
   *
   * @param time since the flight began, s
   * @param edgewise edgewise airspeed, m/s
   * @param axial axial speed, m/s, positive in climb
   * @param mark what happens there; empty for a point on the way
   */
  record Point(double time, double edgewise, double axial, String mark) {}

  /**
   * Flies the encounter.
   *
   * @param conditions craft, mass and air
   * @param flight the flight
   * @return the way
   */
  static FlightPath fly(Conditions conditions, BoundaryRequest.Flight flight) {
    double hover = conditions.hoverInduced();
    List<Point> points = new ArrayList<>();
    Trajectory trajectory =
        new Trajectory(
            STEP,
            (phase, motion) ->
                points.add(
                    new Point(
                        motion.time(),
                        motion.edgewiseOverHover() * hover,
                        motion.axialOverHover() * hover,
                        "")));
    String entry = flight.approach().kind().label();
    Outcome outcome;
    try {
      outcome = flight.encounter(conditions).fly(Simulator.precise(), trajectory);
    } catch (NoSteadyFlightException noStart) {
      throw Conditions.noStart(entry, noStart);
    }
    List<Point> marks = new ArrayList<>();
    outcome.occurrences().stream()
        .filter(
            seen ->
                seen.kind() == EventKind.ONSET
                    || seen.kind() == EventKind.RECOGNITION
                    || seen.kind() == EventKind.ARREST)
        .forEach(seen -> marks.add(near(points, seen.time(), seen.kind().label())));
    return new FlightPath(flight.recovery(), flight.delay(), entry, points, marks);
  }

  private static Point near(List<Point> points, double time, String mark) {
    Point nearest = points.get(0);
    for (Point point : points) {
      if (Math.abs(point.time() - time) < Math.abs(nearest.time() - time)) {
        nearest = point;
      }
    }
    return new Point(time, nearest.edgewise(), nearest.axial(), mark);
  }

  /**
   * The encounter in words.
   *
   * @return a part of a sentence
   */
  String inWords() {
    return BoundaryMessages.SAY.flight(entry, recovery.shown(), Decimals.brief(delay));
  }
}
