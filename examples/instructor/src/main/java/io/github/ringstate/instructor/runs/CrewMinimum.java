package io.github.ringstate.instructor.runs;

import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.Unit;

/**
 * The least experience that an operator asks for.
 *
 * @param commandHours hours in command
 * @param typeHours hours on the type
 */
record CrewMinimum(double commandHours, double typeHours) {

  /** Hours in command. */
  static final Parameter COMMAND =
      Parameter.of("hours in command", Unit.ONE, 0, 20_000, 500, "common practice, no source");

  /** Hours on the type. */
  static final Parameter TYPE =
      Parameter.of("hours on type", Unit.ONE, 0, 20_000, 100, "common practice, no source");
}
