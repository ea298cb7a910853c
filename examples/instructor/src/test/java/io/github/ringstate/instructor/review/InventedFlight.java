package io.github.ringstate.instructor.review;

import io.github.ringstate.craft.CraftLimits;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.FlightLimits;
import io.github.ringstate.encounter.FlightQuantity;
import io.github.ringstate.encounter.Instant;
import io.github.ringstate.encounter.RecordedFlight;
import io.github.ringstate.encounter.Simulator;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import org.hipparchus.util.FastMath;

/**
 * An invented flight: a level turn through all directions at 60 kt, a deceleration, and then an
 * encounter as the library computes it, and a climb away. All but the encounter is kinematics
 * alone.
 *
 * @param points the flight at equal steps of time
 * @param onset when the ring state begins, s
 * @param loss altitude lost, m
 */
record InventedFlight(List<Point> points, double onset, double loss) {

  /** Length of the turn and of the deceleration, s. */
  private static final double TURN = 90;

  private static final double SLOWING = 25;

  /** The descent of the encounter's start is taken up over so long, s. */
  private static final double SINKING = 10;

  /** The climb away lasts so long, s, its rate is taken up within, s, and is, m/s. */
  private static final double CLIMB = 15;

  private static final double TAKING_UP = 5;
  private static final double CLIMBING = 3;

  /** The pilot goes on with the recovery for so long past the arrest, s. */
  private static final double PAST_ARREST = 4;

  private static final double CRUISE = 31;
  private static final double GRAVITY = 9.80665;
  private static final double STEP = 0.02;

  /**
   * Air, attitude and lever, in SI units.
   *
   * @param windNorth velocity of the air over the ground
   * @param collective the lever as a share of its travel
   */
  record Held(
      double windNorth,
      double windEast,
      double heading,
      double pitch,
      double bank,
      double collective) {}

  /** One instant, in SI units. */
  record Point(
      double time,
      double north,
      double east,
      double height,
      double speedNorth,
      double speedEast,
      double verticalSpeed,
      Held held) {

    Point at(double other) {
      return new Point(other, north, east, height, speedNorth, speedEast, verticalSpeed, held);
    }
  }

  static InventedFlight of(Encounter encounter, double rate) {
    FlightLimits limits = FlightLimits.STANDARD.with(FlightLimits.TIME_PAST_ARREST, PAST_ARREST);
    RecordedFlight flown = encounter.withLimits(limits).record(Simulator.precise());
    List<Point> descent = new ArrayList<>();
    for (Instant instant : flown.history().sampled(1 / rate)) {
      descent.add(point(encounter, instant));
    }
    List<Point> points = new ArrayList<>();
    points.addAll(before(descent.get(0), rate));
    descent.forEach(point -> points.add(point.at(point.time() + TURN + SLOWING)));
    points.addAll(after(points.get(points.size() - 1), rate));
    OptionalDouble loss = flown.outcome().altitudeLoss();
    return new InventedFlight(
        points, flown.outcome().onsetTime().orElseThrow() + TURN + SLOWING, loss.orElseThrow());
  }

  private static Point point(Encounter encounter, Instant now) {
    Helicopter craft = encounter.craft();
    double low = craft.si(CraftLimits.MINIMUM_COLLECTIVE);
    double travel = craft.si(CraftLimits.MAXIMUM_COLLECTIVE) - low;
    double[] wind = new double[3];
    encounter
        .entry()
        .wind()
        .velocity(
            now.time(),
            now.get(FlightQuantity.NORTH),
            now.get(FlightQuantity.EAST),
            now.get(FlightQuantity.HEIGHT),
            wind);
    return new Point(
        now.time(),
        now.get(FlightQuantity.NORTH),
        now.get(FlightQuantity.EAST),
        now.get(FlightQuantity.HEIGHT),
        now.get(FlightQuantity.SPEED_NORTH),
        now.get(FlightQuantity.SPEED_EAST),
        now.get(FlightQuantity.VERTICAL_SPEED),
        new Held(
            wind[0],
            wind[1],
            now.get(FlightQuantity.HEADING),
            now.get(FlightQuantity.PITCH),
            now.get(FlightQuantity.BANK),
            (now.get(FlightQuantity.COLLECTIVE) - low) / travel));
  }

  /** What comes before the encounter, flown backwards from its start. */
  private static List<Point> before(Point start, double rate) {
    List<Point> backwards = new ArrayList<>();
    Point now = start;
    int each = (int) Math.rint(1 / (rate * STEP));
    int steps = (int) Math.rint((TURN + SLOWING) / STEP);
    for (int i = 1; i <= steps; i++) {
      now = earlier(start, now, -i * STEP);
      if (i % each == 0) {
        backwards.add(now.at(TURN + SLOWING - i * STEP));
      }
    }
    Collections.reverse(backwards);
    return backwards;
  }

  /** The climb away that follows, on a straight line. */
  private static List<Point> after(Point end, double rate) {
    List<Point> climb = new ArrayList<>();
    double height = end.height();
    for (int i = 1; i <= CLIMB * rate; i++) {
      double time = i / rate;
      double begun = Math.min(1, time / TAKING_UP);
      double speed = end.verticalSpeed() + CLIMBING * (1 - FastMath.cos(FastMath.PI * begun)) / 2;
      height += speed / rate;
      climb.add(
          new Point(
              end.time() + time,
              end.north() + time * end.speedNorth(),
              end.east() + time * end.speedEast(),
              height,
              end.speedNorth(),
              end.speedEast(),
              speed,
              end.held()));
    }
    return climb;
  }

  private static Point earlier(Point start, Point later, double time) {
    Held held = start.held();
    double airNorth = start.speedNorth() - held.windNorth();
    double airEast = start.speedEast() - held.windEast();
    double first = FastMath.hypot(airNorth, airEast);
    double ahead = FastMath.atan2(airEast, airNorth);
    boolean turning = time < -SLOWING;
    double slowed = turning ? 0 : (1 - FastMath.cos(FastMath.PI * (1 + time / SLOWING))) / 2;
    double airspeed = CRUISE + (first - CRUISE) * slowed;
    double rate = 2 * FastMath.PI / TURN;
    double heading = ahead + (turning ? rate * (time + SLOWING) : 0);
    double sinking =
        time < -SINKING ? 0 : (1 - FastMath.cos(FastMath.PI * (1 + time / SINKING))) / 2;
    double north = airspeed * FastMath.cos(heading) + held.windNorth();
    double east = airspeed * FastMath.sin(heading) + held.windEast();
    double vertical = start.verticalSpeed() * sinking;
    return new Point(
        time,
        later.north() - STEP * (north + later.speedNorth()) / 2,
        later.east() - STEP * (east + later.speedEast()) / 2,
        later.height() - STEP * (vertical + later.verticalSpeed()) / 2,
        north,
        east,
        vertical,
        new Held(
            held.windNorth(),
            held.windEast(),
            heading,
            held.pitch(),
            turning ? FastMath.atan(CRUISE * rate / GRAVITY) : 0,
            held.collective()));
  }
}
