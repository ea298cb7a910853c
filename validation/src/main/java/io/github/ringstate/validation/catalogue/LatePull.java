package io.github.ringstate.validation.catalogue;

import io.github.ringstate.air.Air;
import io.github.ringstate.air.Wind;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.Commander;
import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.Propagators;
import io.github.ringstate.dynamics.State;
import io.github.ringstate.dynamics.Trim;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.integrate.Event;
import io.github.ringstate.integrate.Event.Crossing;
import io.github.ringstate.integrate.Propagator;
import io.github.ringstate.integrate.Sampler;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/**
 * The flight of an official report: a heavy twin that is slowed on its approach, nose up, with
 * little power, and is not arrested by all the power there is.
 *
 * <p>From 43 kt, 700 ft/min and 350 ft airspeed and sink are led to 32 kt and 1,000 ft/min at 240
 * ft, as reported. There the nose goes up to 20 degrees, and the lever stays where it is until
 * power is pulled, to 115 per cent of the take-off power. The report does not say at which height
 * that was, nor when the nose came down, nor how much power the hover would have left. The height
 * of the pull is found here such that the sink at 100 ft is the 1,800 ft/min that is reported.
 */
final class LatePull {

  /** What ends a leg. */
  private enum End {
    PULL,
    ARREST,
    GROUND
  }

  private static final double TORQUE = 1.15;
  private static final double SINK = Unit.FOOT_PER_MINUTE.toSi(1800);
  private static final double SEEN = Unit.FOOT.toSi(100);
  private static final double START = Unit.FOOT.toSi(350);
  private static final double FLARE = Unit.FOOT.toSi(240);
  private static final double NOSE_UP = Math.toRadians(20);
  private static final double ATTITUDE_RATE = Math.toRadians(8);
  private static final double COLLECTIVE_RATE = Math.toRadians(6);
  private static final double POWER_GAIN = 0.08;
  private static final double TOLERANCE = 1e-6;

  private final EquationsOfMotion motion;
  private final Trim hover;
  private final double[] start;
  private final double levelled;
  private final double takeOff;
  private double lever;

  /**
   * Prepares the flight.
   *
   * @param craft the craft, its drive train good for the torque of the report
   * @param air the air
   * @param inflow the inflow
   * @param levelled airspeed below which the nose comes down, m/s; far below zero for never
   */
  LatePull(Helicopter craft, Air air, InflowModel inflow, double levelled) {
    this.levelled = levelled;
    motion = new EquationsOfMotion(craft, air, Wind.CALM, inflow, true);
    EquationsOfMotion free = new EquationsOfMotion(craft, air, Wind.CALM, inflow, false);
    hover = Trim.find(free, 0, 0);
    double airspeed = Unit.KNOT.toSi(43);
    double sink = Unit.FOOT_PER_MINUTE.toSi(700);
    start = Trim.find(free, airspeed, -sink).state(free, airspeed, -sink);
    start[State.UP] = START;
    takeOff = craft.takeOffPower(air) / craft.continuousPower(air);
  }

  /** How a flight went: rate of descent at 100 ft, m/s, and the height at which it stopped, m. */
  record Flown(double sink, double left) {}

  /** The flight whose sink at 100 ft is that of the report, the pull found by halving. */
  Flown asReported() {
    double low = SEEN;
    double high = FLARE;
    Flown flown = pulledAt(low);
    for (int i = 0; i < 9; i++) {
      double middle = 0.5 * (low + high);
      Flown tried = pulledAt(middle);
      if (tried.sink() > SINK) {
        low = middle;
        flown = tried;
      } else {
        high = middle;
      }
    }
    return flown;
  }

  private Flown pulledAt(double height) {
    double[] seen = {0};
    Propagator<End, Motion> flight = Propagators.dormandPrince(TOLERANCE);
    flight.sample(
        new Sampler<>(
            0.02,
            m -> {
              if (m.height() > SEEN) {
                seen[0] = -m.verticalSpeed();
              }
            }));
    flight.start(0, start);
    leg(flight, this::approach, End.PULL, FLARE);
    lever = flight.state(State.COLLECTIVE);
    if (leg(flight, this::flare, End.PULL, height) != End.PULL) {
      return new Flown(0, flight.state(State.UP));
    }
    leg(flight, this::pull, End.PULL, -1);
    double left = Math.max(0, flight.state(State.UP));
    return new Flown(left < SEEN ? seen[0] : 0, left < 1e-6 ? 0 : left);
  }

  private End leg(Propagator<End, Motion> flight, Commander commander, End kind, double height) {
    motion.commandedBy(commander);
    List<Event<End, Motion>> events =
        List.of(
            Event.stop(kind, Crossing.FALLING, m -> m.height() - height),
            Event.stop(End.GROUND, Crossing.FALLING, Motion::height),
            Event.stop(End.ARREST, Crossing.RISING, Motion::verticalSpeed));
    End end = flight.propagate(motion, flight.time() + 60, events);
    if (end == null) {
      throw new IllegalStateException("the approach of the report takes more than 60 s");
    }
    return end;
  }

  private void approach(Motion seen, Controls controls) {
    double done = Math.min(Math.max((START - seen.height()) / (START - FLARE), 0), 1);
    double airspeed = Unit.KNOT.toSi(43 - 11 * done);
    double sink = Unit.FOOT_PER_MINUTE.toSi(700 + 300 * done);
    double nose = 0.05 + 0.06 * (seen.forwardAirspeed() - airspeed);
    controls.pitch(hover.pitch() + Math.min(Math.max(nose, -0.1), 0.35), ATTITUDE_RATE);
    controls.bank(hover.bank(), ATTITUDE_RATE);
    controls.collective(
        seen.collective()
            - 0.02 * (sink + seen.verticalSpeed())
            - 0.01 * seen.verticalAcceleration(),
        COLLECTIVE_RATE);
  }

  private void flare(Motion seen, Controls controls) {
    attitude(seen, controls);
    controls.collective(lever, COLLECTIVE_RATE);
  }

  private void pull(Motion seen, Controls controls) {
    attitude(seen, controls);
    controls.collective(
        seen.collective() + POWER_GAIN * (TORQUE * takeOff - seen.power()), COLLECTIVE_RATE);
  }

  /** Nose up until the airspeed at which it comes down; never to fly backwards in earnest. */
  private void attitude(Motion seen, Controls controls) {
    double airspeed = seen.forwardAirspeed();
    double up = 1 / (1 + Math.exp(-(airspeed - levelled) / Unit.KNOT.toSi(1)));
    double nose = hover.pitch() + (NOSE_UP - hover.pitch()) * up;
    controls.pitch(nose - 0.02 * Math.min(airspeed, 0), ATTITUDE_RATE);
    controls.bank(hover.bank(), ATTITUDE_RATE);
  }
}
