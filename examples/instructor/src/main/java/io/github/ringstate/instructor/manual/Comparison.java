package io.github.ringstate.instructor.manual;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.craft.Helicopter;
import java.util.OptionalDouble;

/**
 * What the manual says beside what the model does.
 *
 * @param manual the manual's numbers
 * @param made the craft made of them
 * @param ceiling the model's hover ceiling, m
 * @param climb its climb, m/s
 * @param autorotation its descent in autorotation, m/s
 */
record Comparison(
    ManualNumbers manual,
    ManualCraft made,
    OptionalDouble ceiling,
    OptionalDouble climb,
    OptionalDouble autorotation) {

  static Comparison of(ManualNumbers manual) {
    ManualCraft made = ManualCraft.of(manual);
    Helicopter craft = made.craft();
    double warmer =
        manual.ceilingTemperature() - StandardAtmosphere.at(manual.ceiling()).temperature();
    return new Comparison(
        manual,
        made,
        Performance.ceiling(craft, manual.ceilingMass(), warmer),
        Performance.climb(craft, manual.climbSpeed()),
        Performance.autorotation(craft, manual.climbSpeed()));
  }

  /** Mass over disc area at the greatest mass, kg/m2. */
  double discLoading() {
    return manual.maximumMass() / (Math.PI * manual.radius() * manual.radius());
  }

  /**
   * Thrust coefficient over solidity at the greatest mass, sea level, standard day (a pure number).
   */
  double bladeLoading() {
    double area = Math.PI * manual.radius() * manual.radius();
    return made.craft().weight()
        / (StandardAtmosphere.at(0).density()
            * area
            * manual.tipSpeed()
            * manual.tipSpeed()
            * manual.solidity());
  }
}
