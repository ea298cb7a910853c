package io.github.ringstate.encounter;

import io.github.ringstate.craft.CraftLimits;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.integrate.Event;
import io.github.ringstate.integrate.Event.Crossing;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * The limits of the rotor's speed. An arrest outside them is none.
 *
 * @param low the power-on minimum, over the nominal speed
 * @param high the power-off maximum, over the nominal speed
 */
record RotorLimits(double low, double high) {

  /**
   * Over the nominal speed. Thrust goes with the square of the speed: at half of it the blades
   * would need four times their blade loading, and stall. A rotor that a flight slows further would
   * come to a stand, where the angles of attack of the model grow without bound.
   */
  private static final double LEAST = 0.5;

  static RotorLimits of(Helicopter craft) {
    return new RotorLimits(
        craft.si(CraftLimits.LOW_ROTOR_SPEED), craft.si(CraftLimits.HIGH_ROTOR_SPEED));
  }

  /** The event that ends a flight where the rotor is too slow for the model. */
  static Event<Happening, Motion> tooSlow() {
    return Event.stop(
        EventKind.ROTOR_TOO_SLOW, Crossing.FALLING, seen -> seen.rotorSpeed() - LEAST);
  }

  /** Refuses a start with a rotor that slow, rad/s. */
  static void check(Helicopter craft, double rotorSpeed, String entry) {
    double nominal = craft.rotor().nominalSpeed();
    if (!(rotorSpeed > LEAST * nominal)) {
      throw new IllegalArgumentException(
          "the entry "
              + entry
              + " starts with the rotor at "
              + rotorSpeed
              + " rad/s; allowed: above "
              + LEAST * nominal
              + ", half of its nominal speed");
    }
  }

  /** Events that note when one of them is left, or that stop the flight there. */
  List<Event<Happening, Motion>> events(boolean stop) {
    return List.of(
        event(stop, EventKind.LOW_ROTOR_SPEED, Crossing.FALLING, seen -> seen.rotorSpeed() - low),
        event(stop, EventKind.HIGH_ROTOR_SPEED, Crossing.RISING, seen -> seen.rotorSpeed() - high));
  }

  private static Event<Happening, Motion> event(
      boolean stop, EventKind kind, Crossing crossing, ToDoubleFunction<Motion> value) {
    return stop ? Event.stop(kind, crossing, value) : Event.note(kind, crossing, value);
  }

  /** Which of them a motion is outside; null if none. */
  @Nullable EventKind left(Motion motion) {
    double speed = motion.rotorSpeed();
    if (speed < low) {
      return EventKind.LOW_ROTOR_SPEED;
    }
    return speed > high ? EventKind.HIGH_ROTOR_SPEED : null;
  }

  /** Whether a flight ended because one of them was left. */
  static boolean ended(@Nullable Happening stop) {
    return stop == EventKind.LOW_ROTOR_SPEED || stop == EventKind.HIGH_ROTOR_SPEED;
  }
}
