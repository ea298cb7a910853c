package io.github.ringstate.instructor.loss;

import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import java.util.OptionalDouble;

/**
 * One flight of a loss table.
 *
 * @param conditions craft, mass and air
 * @param entry the entry's name
 * @param recovery what the pilot did
 * @param delayS from onset to the pilot's action, s
 * @param ending how it ended
 * @param altitudeLossFt height at onset less the lowest height, ft
 * @param lossAfterRecognitionFt height at recognition less the lowest height, ft
 * @param peakDescentFpm greatest rate of descent after onset, ft/min
 * @param timeToArrestS from onset to the arrest, s
 * @param impactFpm rate of descent at ground contact, ft/min
 */
record LossRow(
    Conditions conditions,
    String entry,
    Technique recovery,
    double delayS,
    Ending ending,
    OptionalDouble altitudeLossFt,
    OptionalDouble lossAfterRecognitionFt,
    OptionalDouble peakDescentFpm,
    OptionalDouble timeToArrestS,
    OptionalDouble impactFpm) {

  static LossRow of(
      Conditions conditions, String entry, Technique recovery, double delay, Outcome outcome) {
    return new LossRow(
        conditions,
        entry,
        recovery,
        delay,
        outcome.ending(),
        in(Unit.FOOT, outcome.altitudeLoss()),
        in(Unit.FOOT, outcome.lossAfterRecognition()),
        in(Unit.FOOT_PER_MINUTE, outcome.peakDescent()),
        outcome.timeToArrest(),
        in(Unit.FOOT_PER_MINUTE, outcome.impactSpeed()));
  }

  private static OptionalDouble in(Unit unit, OptionalDouble si) {
    return si.isPresent() ? OptionalDouble.of(unit.fromSi(si.getAsDouble())) : si;
  }
}
