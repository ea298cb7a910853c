package io.github.ringstate.validation.catalogue;

/** The ground's effect on the induced velocity. */
@FunctionalInterface
public interface GroundEffectModel {

  /**
   * Induced velocity over that away from the ground at the same thrust.
   *
   * @param radius the rotor's radius, m
   * @param discHeight the disc's height above the ground, m
   * @param edgewise the edgewise speed, m/s
   * @param induced the induced velocity, m/s
   * @return the ratio
   */
  double inducedRatio(double radius, double discHeight, double edgewise, double induced);
}
