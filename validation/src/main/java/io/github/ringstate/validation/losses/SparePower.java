package io.github.ringstate.validation.losses;

import io.github.ringstate.air.Air;
import io.github.ringstate.air.Wind;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Trim;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;

/**
 * A craft whose engine is changed such that its take-off power exceeds the power of the hover by a
 * given part.
 *
 * @param hover power that the hover out of ground effect in calm air takes, W
 * @param craft the changed craft; its continuous power is the same part of its take-off power as
 *     before
 */
record SparePower(double hover, Helicopter craft) {

  /**
   * Changes a craft.
   *
   * @param craft the craft
   * @param air the air in which it hovers
   * @param spare take-off power over that of the hover, less one; not negative
   * @return the changed craft
   */
  static SparePower of(Helicopter craft, Air air, double spare) {
    EquationsOfMotion motion =
        new EquationsOfMotion(craft, air, Wind.CALM, RingStateInflow.standard(), false);
    double hover = motion.at(0, Trim.find(motion, 0, 0).state(motion, 0, 0)).loads().shaftPower();
    ParameterSet numbers = craft.numbers();
    double takeOff = Unit.KILOWATT.fromSi(hover * (1 + spare));
    double ratio =
        numbers.get(Helicopter.CONTINUOUS_POWER) / numbers.get(Helicopter.TAKE_OFF_POWER);
    double seaLevel = Math.max(numbers.get(Helicopter.SEA_LEVEL_POWER), takeOff);
    return new SparePower(
        hover,
        new Helicopter(
            craft.name(),
            craft.description(),
            craft.sense(),
            craft.engine(),
            numbers
                .with(Helicopter.SEA_LEVEL_POWER, seaLevel)
                .with(Helicopter.TAKE_OFF_POWER, takeOff)
                .with(Helicopter.CONTINUOUS_POWER, ratio * takeOff)));
  }
}
