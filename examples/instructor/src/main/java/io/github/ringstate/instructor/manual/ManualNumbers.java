package io.github.ringstate.instructor.manual;

import io.github.ringstate.craft.EngineKind;
import io.github.ringstate.craft.RotationSense;
import java.util.OptionalDouble;

/**
 * The numbers that a flight manual has.
 *
 * @param name one word
 * @param sense which way the main rotor turns
 * @param engine the kind of engine
 * @param emptyMass least mass in flight, kg
 * @param maximumMass greatest mass, kg
 * @param diameter rotor diameter, m
 * @param chord blade chord, m
 * @param blades how many blades
 * @param rotorSpeed rotor speed, rev/min
 * @param continuousPower power without limit of time, kW
 * @param takeOffPower power for minutes, kW
 * @param ceiling pressure altitude of the hover ceiling out of ground effect, m
 * @param ceilingMass the mass that it holds for, kg
 * @param ceilingTemperature the air temperature there, K
 * @param climb best rate of climb at sea level on a standard day at the greatest mass and
 *     continuous power, m/s
 * @param climbSpeed the airspeed of it, m/s
 * @param autorotation rate of descent in autorotation at that airspeed, m/s; empty if the manual
 *     does not say
 */
record ManualNumbers(
    String name,
    RotationSense sense,
    EngineKind engine,
    double emptyMass,
    double maximumMass,
    double diameter,
    double chord,
    int blades,
    double rotorSpeed,
    double continuousPower,
    double takeOffPower,
    double ceiling,
    double ceilingMass,
    double ceilingTemperature,
    double climb,
    double climbSpeed,
    OptionalDouble autorotation) {

  /** Rotor radius, m. */
  double radius() {
    return diameter / 2;
  }

  /** Blade area over disc area (a pure number): rectangular blades. */
  double solidity() {
    return blades * chord / (Math.PI * radius());
  }

  /** Tip speed, m/s. */
  double tipSpeed() {
    return rotorSpeed * 2 * Math.PI / 60 * radius();
  }
}
