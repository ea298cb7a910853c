package io.github.ringstate.instructor.sensitivity;

import io.github.ringstate.analysis.sensitivity.Input;
import io.github.ringstate.analysis.sensitivity.Inputs;
import io.github.ringstate.analysis.sensitivity.Tornado;
import io.github.ringstate.dynamics.NoSteadyFlightException;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.instructor.option.Approach;
import io.github.ringstate.pilot.Technique;
import java.util.List;
import java.util.stream.Stream;

/**
 * Whose sensitivities are asked for.
 *
 * @param conditions craft, mass and air
 * @param approach how the flight comes to the ring state
 * @param technique the recovery
 * @param delay from onset to action, s
 * @param groups whose numbers are changed, of {@link #GROUPS}
 */
record SensitivityRequest(
    Conditions conditions,
    Approach approach,
    Technique technique,
    double delay,
    List<String> groups) {

  /** Whose numbers there are. */
  static final List<String> GROUPS = List.of("craft", "air", "pilot", "model");

  SensitivityRequest {
    groups = List.copyOf(groups);
  }

  /** The encounter of the base. */
  Encounter encounter() {
    return approach
        .encounter(conditions.craft(), conditions.air())
        .withRecovery(technique.standard())
        .withDelay(delay);
  }

  /** The numbers, in the order of the groups. */
  List<Input> inputs() {
    Encounter base = encounter();
    return Stream.of(
            Inputs.craft(base.craft()),
            List.of(Inputs.pressureAltitude(base.air()), Inputs.delay(base)),
            Inputs.technique(technique),
            Inputs.model())
        .flatMap(List::stream)
        .filter(input -> groups.contains(input.group()))
        .toList();
  }

  /** Flies. */
  Tornado tornado() {
    Encounter base = encounter();
    try {
      return Tornado.of(base, inputs());
    } catch (NoSteadyFlightException noStart) {
      throw Conditions.noStart(approach.kind().label(), noStart);
    } catch (IllegalArgumentException notArrested) {
      throw UserError.usage("--delay cannot be " + delay + ": " + notArrested.getMessage());
    }
  }
}
