package io.github.ringstate.pilot;

import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;

/**
 * How a pilot sets power: by moving the collective until the instrument shows what is wanted, and
 * never more than the take-off power of that air, beyond which the rotor slows.
 *
 * @param gain collective that is put in for an error of all the continuous power, rad
 */
public record PowerSetting(double gain) {

  /**
   * Collective that is put in for an error of all the continuous power. Default 0.08 rad, range
   * 0.01 to 0.5 rad.
   */
  public static final Parameter GAIN =
      Parameter.of("power gain", Unit.RADIAN, 0.01, 0.5, 0.08, "assumed");

  /** Power of the climb, over continuous power. Default 100 %, range 50 to 110 %. */
  public static final Parameter CLIMB_POWER =
      Parameter.of("climb power", Unit.PERCENT, 50, 110, 100, "assumed: continuous power");

  /**
   * No error makes a pilot ask for more than this at once, rad. It is beyond the travel of any
   * lever, so that the craft's limits are what is felt.
   */
  private static final double FARTHEST = 1;

  /**
   * The habit that the numbers of a technique describe.
   *
   * @param numbers values for at least {@link #GAIN}
   * @return the habit
   */
  public static PowerSetting of(ParameterSet numbers) {
    return new PowerSetting(numbers.si(GAIN));
  }

  /**
   * The collective to command for a power.
   *
   * @param seen what can be known
   * @param power the power wanted, over the continuous power; beyond the take-off power that is
   *     what is set
   * @return blade pitch at three quarters of the radius, rad
   */
  public double collective(Cockpit seen, double power) {
    double wanted = gain * (Math.min(power, seen.takeOffPower()) - seen.power());
    return seen.collective() + Math.min(Math.max(wanted, -FARTHEST), FARTHEST);
  }
}
