package io.github.ringstate.instructor.fly;

import io.github.ringstate.dynamics.NoSteadyFlightException;
import io.github.ringstate.encounter.EdgeCheck;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.encounter.Trajectory;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.instructor.conditions.Conditions;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One flight, from entry to its end, and the flights of a lesson if they are asked for.
 *
 * @param outcome what came of it
 * @param sensitive whether that is on an edge between two outcomes
 * @param samples the flight at equal steps of time
 * @param lesson the flights of the lesson; empty unless asked for
 */
record FlownEncounter(
    Outcome outcome, boolean sensitive, List<Sample> samples, Optional<ClassroomFlights> lesson) {

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
    List<Sample> samples = new ArrayList<>();
    Trajectory trajectory =
        new Trajectory(request.step(), (phase, motion) -> samples.add(Sample.of(phase, motion)));
    try {
      Encounter flown = request.flown();
      Outcome outcome = flown.fly(Simulator.precise(), trajectory);
      return new FlownEncounter(
          outcome,
          new EdgeCheck(flown).isSensitive(flown.recovery(), flown.recognition(), outcome),
          samples,
          request.lesson() ? Optional.of(ClassroomFlights.fly(request)) : Optional.empty());
    } catch (NoSteadyFlightException noStart) {
      throw Conditions.noStart(request.approach().kind().label(), noStart);
    }
  }
}
