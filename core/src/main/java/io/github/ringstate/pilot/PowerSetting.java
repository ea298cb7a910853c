package io.github.ringstate.pilot;

/** How a pilot sets power: by moving the collective until the instrument shows what is wanted. */
public final class PowerSetting {

  /** Collective that is put in for an error of all the continuous power, rad (assumed). */
  private static final double GAIN = 0.08;

  private PowerSetting() {}

  /**
   * The collective to command for a power.
   *
   * @param seen what can be known
   * @param power the power wanted, over the continuous power
   * @return blade pitch at three quarters of the radius, rad
   */
  public static double collective(Cockpit seen, double power) {
    return seen.collective() + GAIN * (power - seen.power());
  }
}
