package io.github.ringstate.rotor;

/**
 * Ground effect by Cheeseman and Bennett, ARC R&amp;M 3021, 1955 (formula from memory).
 *
 * <p>At constant power the thrust near the ground is greater by 1 / (1 - q), q = (R / 4Z)^2 / (1 +
 * (V / v)^2), with Z the height of the disc and V the edgewise speed. Induced power grows as thrust
 * to the power 3/2, so at constant thrust it is smaller by (1 - q)^(3/2), and with it the induced
 * velocity. The formula holds for Z above about half the radius, so below that it is held at its
 * value there.
 */
public final class GroundEffect {

  /** Least height of the disc over the radius for which the formula holds (from memory). */
  private static final double LOWEST_DISC = 0.5;

  /** Square of a speed, m2/s2, that is added so that none can be divided by (numerical). */
  private static final double STILL_AIR_SQUARED = 1e-12;

  private GroundEffect() {}

  /**
   * Induced velocity over that away from the ground at the same thrust.
   *
   * @param radius the rotor's radius, m
   * @param discHeight the disc's height above the ground, m
   * @param edgewise the edgewise speed, m/s
   * @param induced the induced velocity, m/s
   * @return the ratio, from 0.65 to 1
   */
  public static double inducedRatio(
      double radius, double discHeight, double edgewise, double induced) {
    double near = radius / (4 * Math.max(discHeight, LOWEST_DISC * radius));
    double v2 = induced * induced;
    double atConstantPower = 1 - near * near * v2 / (v2 + edgewise * edgewise + STILL_AIR_SQUARED);
    return atConstantPower * Math.sqrt(atConstantPower);
  }
}
