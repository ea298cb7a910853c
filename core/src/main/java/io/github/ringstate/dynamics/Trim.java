package io.github.ringstate.dynamics;

import io.github.ringstate.quantity.NotFiniteException;
import io.github.ringstate.quantity.OutOfRangeException;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.util.FastMath;

/**
 * A steady flight: the attitude, collective and induced velocity at which nothing accelerates.
 *
 * @param pitch pitch attitude, rad, positive nose up
 * @param bank bank, rad, positive to the right
 * @param collective blade pitch at three quarters of the radius, rad
 * @param induced induced velocity, m/s
 */
public record Trim(double pitch, double bank, double collective, double induced) {

  /** Part of the message when there is no trim; the speeds stand behind it. */
  public static final String NO_STEADY_FLIGHT = " has no steady flight at an airspeed of ";

  /**
   * Looks for the steady flight at an airspeed and vertical speed, heading north, the rotor at full
   * speed.
   *
   * <p>Four equations (three accelerations and the rate of the induced velocity vanish) in four
   * unknowns. Whether the engine has the power and the collective the travel is not asked; a flight
   * that starts without them is steady for no time.
   *
   * @param motion the equations of motion; their wind may be any
   * @param airspeed the speed through the air along the nose, m/s
   * @param verticalSpeed the vertical speed through the air, m/s, positive up
   * @return the trim
   * @throws NoSteadyFlightException if there is none, for instance because the blades stall
   */
  public static Trim find(EquationsOfMotion motion, double airspeed, double verticalSpeed) {
    return find(motion, airspeed, 0, verticalSpeed);
  }

  /**
   * Looks for the steady flight at a velocity through the air that may have a part to the side, as
   * over the ground in a cross wind; otherwise like {@link #find(EquationsOfMotion, double,
   * double)}.
   *
   * @param motion the equations of motion; their wind may be any
   * @param forward the speed through the air along the nose, m/s
   * @param sideways the speed through the air to the right, m/s
   * @param verticalSpeed the vertical speed through the air, m/s, positive up
   * @return the trim
   * @throws NoSteadyFlightException if there is none, for instance because the blades stall
   */
  public static Trim find(
      EquationsOfMotion motion, double forward, double sideways, double verticalSpeed) {
    return accelerating(motion, forward, sideways, verticalSpeed);
  }

  /**
   * Looks for the attitude, collective and induced velocity with which a craft at a velocity
   * through the air accelerates as asked, the induced velocity being what it would settle to;
   * otherwise like {@link #find(EquationsOfMotion, double, double, double)}.
   *
   * @param motion the equations of motion; their wind may be any
   * @param forward the speed through the air along the nose, m/s
   * @param sideways the speed through the air to the right, m/s
   * @param verticalSpeed the vertical speed through the air, m/s, positive up
   * @param acceleration along the nose, to the right and up, m/s2; none for steady flight
   * @return the controls
   * @throws NoSteadyFlightException if there are none, for instance because the blades stall
   */
  public static Trim accelerating(
      EquationsOfMotion motion,
      double forward,
      double sideways,
      double verticalSpeed,
      double... acceleration) {
    double scale = motion.hoverInduced();
    double airspeed = sideways == 0 ? Math.abs(forward) : FastMath.hypot(forward, sideways);
    // The thrust of a steady flight is near the weight, so this is near the induced velocity.
    double steadyInduced = motion.inflow().induced(airspeed / scale, verticalSpeed / scale);
    NotFiniteException.check(steadyInduced, "the induced velocity of", motion.inflow());
    double[] guess = {0, 0, 0.15, steadyInduced};
    try {
      double[] x =
          new TrimSolver(motion, forward, sideways, verticalSpeed, acceleration).reached(guess);
      return new Trim(x[0], x[1], x[2], x[3] * scale);
    } catch (ArithmeticException | MathRuntimeException | OutOfRangeException none) {
      throw none(motion, airspeed, verticalSpeed, none);
    }
  }

  private static NoSteadyFlightException none(
      EquationsOfMotion motion, double airspeed, double verticalSpeed, RuntimeException cause) {
    return new NoSteadyFlightException(
        motion.craft().name()
            + NO_STEADY_FLIGHT
            + airspeed
            + " m/s and a vertical speed of "
            + verticalSpeed
            + " m/s in this air",
        cause);
  }

  /**
   * A state vector that flies this trim, at the origin of the earth frame, heading north.
   *
   * @param motion the equations of motion whose trim this is
   * @param airspeed the speed through the air along the nose, m/s
   * @param verticalSpeed the vertical speed through the air, m/s, positive up
   * @return the state, in the order of {@link State}
   */
  public double[] state(EquationsOfMotion motion, double airspeed, double verticalSpeed) {
    return state(motion, airspeed, 0, verticalSpeed);
  }

  /**
   * A state vector that flies this trim, at the origin of the earth frame, heading north.
   *
   * @param motion the equations of motion whose trim this is
   * @param forward the speed through the air along the nose, m/s
   * @param sideways the speed through the air to the right, m/s
   * @param verticalSpeed the vertical speed through the air, m/s, positive up
   * @return the state, in the order of {@link State}
   */
  public double[] state(
      EquationsOfMotion motion, double forward, double sideways, double verticalSpeed) {
    double[] state = new double[State.SIZE];
    state[State.PITCH] = pitch;
    state[State.BANK] = bank;
    state[State.COLLECTIVE] = collective;
    state[State.INDUCED] = induced;
    state[State.ROTOR_SPEED] = motion.craft().rotor().nominalSpeed();
    motion.inAir(state, forward, sideways, verticalSpeed);
    state[State.INDICATED_VERTICAL_SPEED] = state[State.SPEED_UP];
    motion.inBalance(state).loads.settle(state);
    return state;
  }
}
