package io.github.ringstate.instructor.runs;

import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;

/**
 * The least experience that an operator asks for.
 *
 * @param commandHours hours in command
 * @param typeHours hours on the type
 */
record CrewMinimum(double commandHours, double typeHours) {

  /** Hours in command. */
  static final Quantity COMMAND = new Quantity("hours in command", Unit.ONE, 0, 20_000);

  /** Hours on the type. */
  static final Quantity TYPE = new Quantity("hours on type", Unit.ONE, 0, 20_000);
}
