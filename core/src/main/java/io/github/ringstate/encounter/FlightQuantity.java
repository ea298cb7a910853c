package io.github.ringstate.encounter;

import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.State;
import io.github.ringstate.quantity.Unit;
import java.util.function.ToDoubleFunction;

/** A quantity of a flight that a {@link History} tells at any time. SI units, angles in radians. */
public enum FlightQuantity {
  /** Time since the flight began. */
  TIME("time", Unit.SECOND, Motion::time),
  /** Distance to the north of the start. */
  NORTH("north", Unit.METRE, motion -> motion.state(State.NORTH)),
  /** Distance to the east of the start. */
  EAST("east", Unit.METRE, motion -> motion.state(State.EAST)),
  /** Height above the ground, or above that of onset where there is none. */
  HEIGHT("height", Unit.METRE, Motion::height),
  /** Speed over the ground to the north. */
  SPEED_NORTH("speed north", Unit.METRE_PER_SECOND, motion -> motion.state(State.SPEED_NORTH)),
  /** Speed over the ground to the east. */
  SPEED_EAST("speed east", Unit.METRE_PER_SECOND, motion -> motion.state(State.SPEED_EAST)),
  /** Vertical speed, positive up. */
  VERTICAL_SPEED("vertical speed", Unit.METRE_PER_SECOND, Motion::verticalSpeed),
  /** What the vertical speed indicator shows, positive up. */
  INDICATED_VERTICAL_SPEED(
      "indicated vertical speed",
      Unit.METRE_PER_SECOND,
      motion -> motion.state(State.INDICATED_VERTICAL_SPEED)),
  /** Vertical acceleration, positive up. */
  VERTICAL_ACCELERATION(
      "vertical acceleration", Unit.METRE_PER_SECOND_SQUARED, Motion::verticalAcceleration),
  /** Horizontal speed through the air along the nose. */
  FORWARD_AIRSPEED("forward airspeed", Unit.METRE_PER_SECOND, Motion::forwardAirspeed),
  /** Horizontal speed through the air to the right. */
  SIDEWAYS_AIRSPEED("sideways airspeed", Unit.METRE_PER_SECOND, Motion::sidewaysAirspeed),
  /** Speed over the ground along the nose. */
  GROUND_SPEED("ground speed", Unit.METRE_PER_SECOND, Motion::groundSpeed),
  /** Speed over the ground to the right. */
  SIDEWAYS_GROUND_SPEED(
      "sideways ground speed", Unit.METRE_PER_SECOND, Motion::sidewaysGroundSpeed),
  /** Pitch attitude, positive nose up. */
  PITCH("pitch", Unit.RADIAN, Motion::pitch),
  /** Bank, positive to the right. */
  BANK("bank", Unit.RADIAN, Motion::bank),
  /** Heading, clockwise from north. */
  HEADING("heading", Unit.RADIAN, Motion::heading),
  /** Rate of pitch attitude. */
  PITCH_RATE("pitch rate", Unit.RADIAN_PER_SECOND, motion -> motion.state(State.PITCH_RATE)),
  /** Rate of bank. */
  BANK_RATE("bank rate", Unit.RADIAN_PER_SECOND, motion -> motion.state(State.BANK_RATE)),
  /** Blade pitch at three quarters of the radius. */
  COLLECTIVE("collective", Unit.RADIAN, Motion::collective),
  /** Rotor speed over its nominal value. */
  ROTOR_SPEED("rotor speed over nominal", Unit.ONE, Motion::rotorSpeed),
  /** Thrust over weight. */
  LOAD_FACTOR("load factor", Unit.ONE, Motion::loadFactor),
  /** Thrust along the shaft. */
  THRUST("thrust", Unit.NEWTON, motion -> motion.loads().thrust()),
  /** Power that rotors and gearbox take. */
  SHAFT_POWER("shaft power", Unit.WATT, motion -> motion.loads().shaftPower()),
  /** Power that the engine gives. */
  ENGINE_POWER("engine power", Unit.WATT, motion -> motion.loads().enginePower()),
  /** Power that rotors and gearbox take, over continuous power. */
  POWER("power over continuous", Unit.ONE, Motion::power),
  /** Induced velocity, positive down through the disc. */
  INDUCED("induced velocity", Unit.METRE_PER_SECOND, motion -> motion.state(State.INDUCED)),
  /** Edgewise speed, in hover induced velocities. */
  EDGEWISE("edgewise speed over hover", Unit.ONE, Motion::edgewiseOverHover),
  /** Axial speed, in hover induced velocities, positive in climb. */
  AXIAL("axial speed over hover", Unit.ONE, Motion::axialOverHover),
  /** Induced velocity, in hover induced velocities. */
  INDUCED_OVER_HOVER("induced velocity over hover", Unit.ONE, Motion::inducedOverHover),
  /** Level of the ring that is remembered, in hover induced velocities. */
  RING("remembered level of the ring", Unit.ONE, motion -> motion.state(State.RING)),
  /** Standard deviation of the thrust over its mean. */
  ROUGHNESS("roughness", Unit.ONE, Motion::roughness);

  private final String label;
  private final Unit unit;

  @SuppressWarnings("ImmutableEnumChecker") // a function that keeps nothing
  private final ToDoubleFunction<Motion> function;

  FlightQuantity(String label, Unit unit, ToDoubleFunction<Motion> function) {
    this.label = label;
    this.unit = unit;
    this.function = function;
  }

  /**
   * The quantity for people.
   *
   * @return lower case
   */
  public String label() {
    return label;
  }

  /**
   * The unit.
   *
   * @return the unit of its values
   */
  public Unit unit() {
    return unit;
  }

  /**
   * The quantity as the name of a column: its label with underscores, then the unit.
   *
   * @return for instance {@code vertical_speed_m_per_s}
   */
  public String key() {
    String stem = label.replace(' ', '_');
    return unit.suffix().isEmpty() ? stem : stem + "_" + unit.suffix();
  }

  double of(Motion motion) {
    return function.applyAsDouble(motion);
  }
}
