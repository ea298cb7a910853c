package io.github.ringstate.instructor.conditions;

import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.inflow.RingStateInflow;
import java.util.stream.Collectors;

/** By which model a sheet was computed, in small print. */
public final class ModelNote {

  /** How the names of the ring's own numbers begin; those of momentum theory never change. */
  private static final String RING = "ring ";

  private ModelNote() {}

  /**
   * The model of flight with the numbers that a craft flies with.
   *
   * @param craft the craft
   * @return a part of a sentence
   */
  public static String of(Helicopter craft) {
    return ConditionMessages.SAY.model(
        craft.inflow().name(),
        RingStateInflow.PARAMETERS.stream()
            .filter(parameter -> parameter.name().startsWith(RING))
            .map(
                parameter ->
                    parameter.name().substring(RING.length())
                        + " "
                        + Decimals.brief(craft.inflow().numbers().get(parameter)))
            .collect(Collectors.joining(", ")),
        craft.fitted().isPresent());
  }
}
