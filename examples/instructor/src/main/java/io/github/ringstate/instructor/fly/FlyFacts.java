package io.github.ringstate.instructor.fly;

import io.github.ringstate.encounter.EdgeCheck;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.text.NotAWayOut;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.instructor.pilots.FallThrough;
import io.github.ringstate.instructor.pilots.PilotTerms;
import io.github.ringstate.quantity.Unit;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;

/** A flight as its messages speak of it; what is not there is empty. */
record FlyFacts(
    String recovery,
    String does,
    String delay,
    boolean onset,
    boolean arrested,
    boolean ground,
    boolean notArrested,
    boolean notLasting,
    boolean fellThrough,
    String arrestTime,
    String loss,
    String impact,
    String maximumDescent,
    boolean overGround,
    String hoverInduced,
    String onsetWords,
    String notAWayOut,
    String mass,
    String densityAltitude,
    boolean sensitive,
    String sensitiveLoss) {

  static FlyFacts of(FlyRequest request, FlownEncounter flown, UnitSystem units) {
    Outcome outcome = flown.outcome();
    Conditions conditions = request.conditions();
    return new FlyFacts(
        request.recovery().shown(),
        request.recovery().description(conditions.craft().sense()),
        Decimals.brief(request.delay()),
        outcome.ending() != Ending.NO_ONSET,
        outcome.ending() == Ending.ARRESTED,
        outcome.ending() == Ending.GROUND,
        outcome.ending() == Ending.NOT_ARRESTED,
        outcome.ending() == Ending.ARREST_NOT_LASTING,
        FallThrough.is(outcome),
        words(outcome.timeToArrest(), time -> Decimals.fixed(time, 1)),
        words(outcome.altitudeLoss(), units::lengthInWords),
        words(outcome.impactSpeed(), units::fineVerticalSpeedInWords),
        words(outcome.peakDescent(), units::fineVerticalSpeedInWords),
        request.approach().height().isPresent(),
        units.fineVerticalSpeedInWords(conditions.hoverInduced()),
        PilotTerms.ONSET,
        request.recovery().isMistaken() ? NotAWayOut.TEXT : "",
        units.given(Unit.KILOGRAM, conditions.massKg()),
        units.lengthInWords(conditions.air().densityAltitude()),
        flown.sensitive(),
        units.typed(Unit.FOOT, EdgeCheck.SAME_LOSS));
  }

  private static String words(OptionalDouble value, DoubleFunction<String> words) {
    return value.isPresent() ? words.apply(value.getAsDouble()) : "";
  }
}
