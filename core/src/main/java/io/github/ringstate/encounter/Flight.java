package io.github.ringstate.encounter;

import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.integrate.Propagator;
import org.jspecify.annotations.Nullable;

/** How an encounter is flown on from its approach: told, sampled or kept. */
final class Flight {

  private Flight() {}

  /** Flies an encounter on from an approach that it shares with others. */
  static Outcome fly(
      Encounter encounter,
      Approach approach,
      Simulator simulator,
      @Nullable Trajectory trajectory) {
    Propagator<Happening, Motion> propagator = ready(encounter, approach, simulator);
    if (trajectory == null) {
      return approach.onset() ? flown(encounter, approach, propagator).outcome() : Outcome.NO_ONSET;
    }
    // a first flight says where the samples end
    double end = approach.onset() ? flown(encounter, approach, propagator).end() : approach.time();
    propagator.sample(trajectory.begin(end));
    trajectory.phase(Approach.ENTRY);
    approach.again(propagator);
    if (!approach.onset()) {
      return Outcome.NO_ONSET;
    }
    Descent descent = new Descent(approach, propagator, true, trajectory::phase);
    descent.fly(encounter.recovery(), encounter.recognition());
    return descent.outcome();
  }

  private static Descent flown(
      Encounter encounter, Approach approach, Propagator<Happening, Motion> propagator) {
    Descent descent = new Descent(approach, propagator, true);
    descent.fly(encounter.recovery(), encounter.recognition());
    return descent;
  }

  /** Flies an encounter on from an approach and keeps all of it. */
  static RecordedFlight record(Encounter encounter, Approach approach, Simulator simulator) {
    Propagator<Happening, Motion> propagator = ready(encounter, approach, simulator);
    Recorder recorder = new Recorder();
    propagator.listen(recorder);
    recorder.phase(Approach.ENTRY);
    approach.again(propagator);
    if (!approach.onset()) {
      return new RecordedFlight(
          encounter, Outcome.NO_ONSET, recorder.history(approach, approach.time()));
    }
    Descent descent = new Descent(approach, propagator, true, recorder::phase);
    descent.fly(encounter.recovery(), encounter.recognition());
    Outcome outcome = descent.outcome();
    return new RecordedFlight(encounter, outcome, recorder.history(approach, descent.end()));
  }

  private static Propagator<Happening, Motion> ready(
      Encounter encounter, Approach approach, Simulator simulator) {
    if (!approach.serves(encounter)) {
      throw new IllegalArgumentException(
          "the approach is that of an encounter which differs in more than recognition and"
              + " recovery");
    }
    return simulator.propagator();
  }
}
