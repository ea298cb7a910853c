package io.github.ringstate.rotor;

import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;

/** The drag of a rotor's blades, which rises with their load, and the power that it takes. */
public final class BladeDrag {

  /**
   * Mean profile drag coefficient of the blade sections at a blade loading CT/s of 0.07. Default
   * 0.01, range 0.005 to 0.02 (a pure number).
   */
  public static final Parameter PROFILE_DRAG =
      Parameter.of(
          "profile drag coefficient",
          Unit.ONE,
          0.005,
          0.02,
          0.01,
          "usual mean value in hover, 0.008 to 0.012 (from memory)");

  /**
   * Part of the section's drag coefficient that goes with its angle of attack. Default -0.0216
   * 1/rad, range -0.1 to 0.1 1/rad.
   */
  public static final Parameter PROFILE_DRAG_SLOPE =
      Parameter.of(
          "profile drag slope",
          Unit.PER_RADIAN,
          -0.1,
          0.1,
          -0.0216,
          "cd = 0.0087 - 0.0216 a + 0.400 a^2, Bailey, NACA TR 716, 1941 (from memory)");

  /**
   * Part of the section's drag coefficient that goes with its angle of attack squared. Default 0.4
   * 1/rad2, range 0 to 2 1/rad2.
   */
  public static final Parameter PROFILE_DRAG_CURVATURE =
      Parameter.of(
          "profile drag curvature",
          Unit.PER_SQUARE_RADIAN,
          0,
          2,
          0.4,
          "cd = 0.0087 - 0.0216 a + 0.400 a^2, Bailey, NACA TR 716, 1941 (from memory); steeper"
              + " beyond the stall, where it is an underestimate");

  /** Blade loading at which the mean profile drag coefficient is given: that of a usual hover. */
  private static final double USUAL_LOADING = 0.07;

  /** What a squared advance ratio adds to profile power (Bennett, from memory). */
  private static final double PROFILE_EDGEWISE = 4.65;

  private final double profileDragArea;
  private final double profileSlope;
  private final double profileCurvature;

  BladeDrag(ParameterSet numbers, double area) {
    double solidity = numbers.si(Rotor.SOLIDITY);
    profileDragArea = solidity * numbers.si(PROFILE_DRAG) / 8 * area;
    // with the angle of attack 4 (CT/s) / (a r) of ideal twist, integrated over cd r^3
    double inverseHalfSlope = 1 / (numbers.si(Rotor.LIFT_SLOPE) / 2);
    profileSlope = solidity * area * numbers.si(PROFILE_DRAG_SLOPE) * inverseHalfSlope / 3;
    profileCurvature =
        solidity * area * numbers.si(PROFILE_DRAG_CURVATURE) * inverseHalfSlope * inverseHalfSlope;
  }

  /**
   * Profile power, (s cd / 8) rho A Vtip^3 (1 + 4.65 mu^2), with a mean drag coefficient cd that
   * rises with the blades' angle of attack.
   *
   * <p>The section's polar is cd = d0 + d1 a + d2 a^2 (Bailey, NACA TR 716, 1941). With the angle
   * of attack 4 (CT/s) / (a r) of an ideally twisted blade the torque becomes s d0 / 8 + 2 d1 CT /
   * (3 a) + 4 d2 CT^2 / (s a^2) (Gessow and Myers, <i>Aerodynamics of the Helicopter</i>, from
   * memory). The first term is set so that cd is the {@linkplain #PROFILE_DRAG given mean value} at
   * CT/s = 0.07. CT/s is taken as it were without stall, so that pitch which no longer brings
   * thrust still costs power. The factor 4.65 stands for the in-plane force and radial flow
   * (Bennett, from memory).
   *
   * @param density the air's density, kg/m3
   * @param tipSpeed the speed of the blade tips, m/s
   * @param edgewiseSquared the square of the edgewise speed, m2/s2
   * @param unstalledLoading the {@linkplain Rotor#unstalledLoading blade loading without stall}
   * @return the power, W
   */
  public double profilePower(
      double density, double tipSpeed, double edgewiseSquared, double unstalledLoading) {
    double more = unstalledLoading - USUAL_LOADING;
    double rise = more * (profileSlope + profileCurvature * (unstalledLoading + USUAL_LOADING));
    return (profileDragArea + rise)
        * density
        * tipSpeed
        * (tipSpeed * tipSpeed + PROFILE_EDGEWISE * edgewiseSquared);
  }
}
