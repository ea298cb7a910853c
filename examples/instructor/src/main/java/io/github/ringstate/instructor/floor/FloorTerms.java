package io.github.ringstate.instructor.floor;

import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.pilots.PilotLosses;
import io.github.ringstate.instructor.pilots.PilotTerms;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/** The words of a table of floors, explained. */
final class FloorTerms {

  /** The longest delay that is looked at for a latest moment, s. */
  static final double LATEST = 8;

  private static final String LOSS =
      "height at onset less the lowest height; so many of the pilots lost no more than this. A pilot"
          + " who did not arrest the descent counts as one who lost more than any other";
  private static final String ARRESTED =
      "share of the pilots who arrested the descent within "
          + Decimals.brief(Encounter.RECOVERY_TIME)
          + " s, of those who met the ring state";
  private static final String GROUND =
      "lost no less than the height at onset, or did not arrest the descent";

  private FloorTerms() {}

  private static String floor(FloorRequest request, UnitSystem units) {
    return "height at onset from which "
        + FloorTakeAway.percent(request.share())
        + " of the simulated pilots recovered with "
        + units.given(Unit.FOOT, request.marginFt())
        + " to spare. It is what simulated pilots did, not a height to rely on. Flown away from"
        + " the ground, without what ground effect would add";
  }

  private static String latest(FloorRequest request) {
    return "the delay, "
        + request.clock().from()
        + ", up to which "
        + FloorTakeAway.percent(request.share())
        + " still recovered with the margin, if all wait as long; tried in steps of 0.25 s up to "
        + Decimals.brief(LATEST)
        + " s";
  }

  private static String tooFew(FloorRequest request) {
    return "for an interval with two ends "
        + PilotLosses.fewest(request.share())
        + " pilots or more must meet the ring state; --pilots flies more";
  }

  static List<Term> forPeople(FloorRequest request, UnitSystem units) {
    List<Term> terms = new ArrayList<>();
    terms.add(new Term("floor", floor(request, units) + ". Rounded upwards"));
    terms.add(new Term("none", "so many did not recover, from whatever height"));
    terms.add(PilotTerms.ONSET);
    terms.add(new Term("loss", LOSS));
    terms.add(new Term("floor lies in", PilotTerms.BAND));
    if (request.pool().pilots() < PilotLosses.fewest(request.share())) {
      terms.add(new Term("too few", tooFew(request)));
    }
    if (request.pool().models().isPresent()) {
      terms.add(new Term("and model", PilotTerms.MODELS));
    }
    terms.add(new Term("arrested", ARRESTED));
    if (request.briefedFt().isPresent()) {
      terms.add(new Term("hit the ground", GROUND));
      terms.add(new Term("cannot tell", CANNOT_TELL));
      terms.add(new Term("latest moment", latest(request)));
    }
    request.states().forEach(state -> terms.add(PilotTerms.state(state)));
    terms.addAll(PilotTerms.recoveries(request.recoveries(), request.loaded().get(0)));
    terms.addAll(PilotTerms.spreads(request.recoveries(), units));
    return terms;
  }

  private static final String CANNOT_TELL =
      "the intervals of their shares, with those of the models if these were flown, overlap";

  static List<Term> forData(FloorRequest request) {
    UnitSystem units = UnitSystem.AVIATION;
    List<Term> terms = new ArrayList<>();
    terms.add(
        new Term(
            "floor_ft",
            floor(request, units) + ". Rounded upwards; nothing where so many did not recover"));
    terms.add(new Term("floor_low_ft, floor_high_ft", PilotTerms.BAND));
    terms.add(new Term("floor_models_low_ft, floor_models_high_ft", PilotTerms.MODELS));
    terms.add(PilotTerms.ONSET);
    terms.add(new Term("samples", "how many pilots met the ring state"));
    terms.add(new Term("arrested_share", ARRESTED));
    terms.add(new Term("p50_ft, p95_ft", LOSS + ", 50 and 95 %"));
    if (request.briefedFt().isPresent()) {
      terms.add(new Term("ground_share", "share of the pilots who " + GROUND));
      terms.add(new Term("latest_delay_s", latest(request)));
    }
    terms.add(
        new Term(
            "clock",
            request
                .clock()
                .description(request.approach().entry(), request.loaded().get(0), units)));
    terms.add(PilotTerms.pilots(request.pool(), request.disturbances(), true));
    request.states().forEach(state -> terms.add(PilotTerms.state(state)));
    terms.addAll(PilotTerms.recoveries(request.recoveries(), request.loaded().get(0)));
    PilotTerms.notAWayOut(request.recoveries()).ifPresent(terms::add);
    terms.addAll(PilotTerms.spreads(request.recoveries(), units));
    return terms;
  }
}
