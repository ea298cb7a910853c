package io.github.ringstate.instructor.floor;

import io.github.ringstate.encounter.FlightLimits;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.text.NotAWayOut;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.pilots.PilotLosses;
import io.github.ringstate.instructor.pilots.PilotTerms;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/** A table of floors as its messages speak of it; what is not there is empty. */
record FloorFacts(
    String share,
    String margin,
    boolean briefed,
    String groundShare,
    String fewest,
    String from,
    String longest,
    String recoverySeconds,
    String pilots,
    String models,
    String modelWords,
    String onset,
    String interval,
    List<Term> recoveries,
    List<Term> spreads,
    String notAWayOut,
    String obstacles) {

  /** The longest delay that is looked at for a latest moment, s. */
  static final double LATEST = 8;

  static FloorFacts of(FloorRequest request, UnitSystem units) {
    long fewest = PilotLosses.fewest(request.share());
    return new FloorFacts(
        percent(request.share()),
        units.typed(Unit.FOOT, request.margin()),
        request.briefed().isPresent(),
        percent(request.groundShare()),
        request.pool().pilots() < fewest ? Long.toString(fewest) : "",
        request.clock().from(),
        Decimals.brief(LATEST),
        Decimals.brief(FlightLimits.RECOVERY_TIME.standard()),
        PilotTerms.pilots(request.pool(), request.disturbances(), true),
        request.pool().models().map(PilotTerms::models).orElse(""),
        PilotTerms.models(),
        PilotTerms.onset(request.clock(), units),
        PilotTerms.interval(request.pool()),
        PilotTerms.recoveries(request.recoveries(), request.loaded().get(0)),
        PilotTerms.spreads(request.recoveries(), units),
        request.recoveries().stream().anyMatch(Technique::isMistaken) ? NotAWayOut.TEXT : "",
        PilotTerms.obstacles());
  }

  /** A share in per cent. */
  static String percent(double share) {
    return Decimals.brief(Unit.PERCENT.fromSi(share)) + " %";
  }
}
