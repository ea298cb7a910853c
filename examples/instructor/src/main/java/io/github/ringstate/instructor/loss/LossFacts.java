package io.github.ringstate.instructor.loss;

import io.github.ringstate.encounter.EdgeCheck;
import io.github.ringstate.encounter.FlightLimits;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.text.NotAWayOut;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.option.Clock;
import io.github.ringstate.instructor.pilots.PilotTerms;
import io.github.ringstate.instructor.pilots.Pool;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import java.util.OptionalDouble;

/** A loss table as its messages speak of it; what is not there is empty. */
record LossFacts(
    String from,
    boolean fromOnset,
    boolean through,
    String steps,
    String recoverySeconds,
    String sinkUnit,
    String planned,
    String plannedNumber,
    String margin,
    boolean showGround,
    String pilots,
    int pilotCount,
    String models,
    String modelWords,
    boolean fitted,
    String state,
    String stateDelays,
    String stateOrigin,
    String onset,
    String interval,
    List<Term> recoveries,
    List<Term> spreads,
    String notAWayOut,
    boolean sensitive,
    String sensitiveLoss) {

  static LossFacts of(LossRequest request, UnitSystem units, boolean sensitive) {
    OptionalDouble height = request.approach().height();
    return new LossFacts(
        request.clock().from(),
        request.clock().kind() != Clock.Kind.CUE,
        request.recoveries().contains(Technique.NONE) && !request.clock().isLimits(),
        units.steps().inWords(),
        Decimals.brief(FlightLimits.RECOVERY_TIME.standard()),
        units.verticalSpeed().symbol(),
        height.isPresent() ? units.typed(Unit.FOOT, height.getAsDouble()) : "",
        height.isPresent() ? units.typedNumber(Unit.FOOT, height.getAsDouble()) : "",
        units.typed(Unit.FOOT, request.margin()),
        height.isPresent() && request.state().isEmpty(),
        request
            .pool()
            .map(
                pool ->
                    PilotTerms.pilots(pool, request.disturbances(), request.state().isPresent()))
            .orElse(""),
        request.pool().map(Pool::pilots).orElse(0),
        request.pool().flatMap(Pool::models).map(PilotTerms::models).orElse(""),
        PilotTerms.models(),
        request.loaded().get(0).fitted().isPresent(),
        request.state().map(PilotState::label).orElse(""),
        request.state().map(PilotTerms::delays).orElse(""),
        request.state().map(PilotState::origin).orElse(""),
        PilotTerms.onset(request.clock(), units),
        request.pool().map(PilotTerms::interval).orElse(""),
        PilotTerms.recoveries(request.recoveries(), request.loaded().get(0)),
        request.pool().isPresent() ? PilotTerms.spreads(request.recoveries(), units) : List.of(),
        request.recoveries().stream().anyMatch(Technique::isMistaken) ? NotAWayOut.TEXT : "",
        sensitive,
        units.typed(Unit.FOOT, EdgeCheck.SAME_LOSS));
  }
}
