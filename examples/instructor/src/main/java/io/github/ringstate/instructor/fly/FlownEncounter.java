package io.github.ringstate.instructor.fly;

import io.github.ringstate.dynamics.NoSteadyFlightException;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.encounter.Trajectory;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.instructor.conditions.Conditions;
import java.util.ArrayList;
import java.util.List;

/**
 * One flight, from entry to its end.
 *
 * @param outcome what came of it
 * @param samples the flight at equal steps of time
 */
record FlownEncounter(Outcome outcome, List<Sample> samples) {

  FlownEncounter {
    samples = List.copyOf(samples);
  }

  /**
   * Flies what is asked for.
   *
   * @param request what is asked for
   * @return the flight
   * @throws UserError if the craft cannot begin the entry
   */
  static FlownEncounter fly(FlyRequest request) {
    Encounter encounter =
        request.encounter().withRecovery(request.recovery().standard()).withDelay(request.delayS());
    List<Sample> samples = new ArrayList<>();
    Trajectory trajectory =
        new Trajectory(request.stepS(), (phase, motion) -> samples.add(Sample.of(phase, motion)));
    try {
      return new FlownEncounter(encounter.fly(Simulator.precise(), trajectory), samples);
    } catch (NoSteadyFlightException noStart) {
      throw Conditions.noStart(request.approach().kind().label(), noStart);
    }
  }
}
