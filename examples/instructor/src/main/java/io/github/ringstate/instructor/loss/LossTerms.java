package io.github.ringstate.instructor.loss;

import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.option.Clock;
import io.github.ringstate.instructor.pilots.PilotTerms;
import io.github.ringstate.instructor.pilots.Pool;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/** The words of a loss table, explained. */
final class LossTerms {

  private static final String LOSS =
      "height at onset less the lowest height, reached when the vertical speed is back to zero"
          + " (arrest)";
  private static final String NOT_ARRESTED =
      "still descending "
          + Decimals.brief(Encounter.RECOVERY_TIME)
          + " s after the pilot began to act";

  private static final String STANDARD =
      "loss with the standard technique at that delay, which meets no gusts and no shaking; nothing"
          + " where each pilot has a delay of their own";
  private static final String LESS = "so many of the pilots lost no more than this";
  private static final String ENDLESS =
      ". A pilot who did not arrest the descent above the ground counts as one who lost more than"
          + " any other";
  private static final String ARRESTED =
      "share of the pilots who arrested the descent above the ground, of those who met the ring"
          + " state";

  private LossTerms() {}

  private static String delay(LossRequest request) {
    return request.clock().from()
        + " to the pilot's first movement of the controls"
        + (request.clock() == Clock.BOUNDARY ? ": recognition and reaction together" : "");
  }

  static List<Term> forPeople(LossRequest request, UnitSystem units) {
    List<Term> terms = new ArrayList<>();
    terms.add(new Term("delay", delay(request)));
    terms.add(PilotTerms.ONSET);
    terms.add(
        new Term(
            "loss",
            LOSS + ". Rounded " + units.steps().inWords() + "; the model is no better than that"));
    if (request.approach().heightFt().isPresent() && request.state().isEmpty()) {
      terms.add(
          new Term(
              "GROUND",
              "the craft reaches the ground first; the number is its rate of descent there, "
                  + units.verticalSpeed().symbol()));
    }
    terms.add(new Term("not arrested", NOT_ARRESTED));
    terms.addAll(PilotTerms.recoveries(request.recoveries(), request.loaded().get(0)));
    if (request.pool().isPresent()) {
      terms.addAll(pilots(request, request.pool().get(), units));
    }
    return terms;
  }

  private static List<Term> pilots(LossRequest request, Pool pool, UnitSystem units) {
    List<Term> terms = new ArrayList<>();
    if (request.state().isEmpty()) {
      terms.add(new Term("standard", STANDARD));
    }
    terms.add(new Term("50 %, 95 %", LESS + ENDLESS));
    if (request.approach().heightFt().isPresent()) {
      terms.add(
          new Term(
              "ground", "so many did not arrest the descent, and most of them reached the ground"));
    }
    terms.add(new Term("95 % lies in", PilotTerms.BAND));
    if (pool.models().isPresent()) {
      terms.add(new Term("and model", PilotTerms.MODELS));
    }
    terms.add(new Term("arrested", ARRESTED));
    terms.addAll(PilotTerms.spreads(request.recoveries(), units));
    return terms;
  }

  static List<Term> forSheet(LossRequest request, Pool pool, UnitSystem units) {
    List<Term> terms = new ArrayList<>();
    terms.add(new Term("hover", "power of a hover out of ground effect in calm air"));
    terms.add(new Term("delay", delay(request)));
    terms.add(PilotTerms.ONSET);
    terms.add(new Term("loss", LOSS + ", rounded " + units.steps().inWords()));
    terms.add(
        new Term(
            "50 %, 95 %",
            "the loss that 50 and 95 in 100 of "
                + pool.pilots()
                + " simulated pilots do not exceed, who vary in how they fly the recovery (spreads"
                + " assumed)"));
    request
        .approach()
        .heightFt()
        .ifPresent(
            height ->
                terms.add(
                    new Term(
                        "> " + units.number(Unit.FOOT, height),
                        "that many do not: for them the planned height is not enough, and the ground"
                            + " comes first. The ground and its effect are flown too; without a"
                            + " planned height the losses go on below")));
    terms.add(new Term("open", "that many did not arrest the descent: " + NOT_ARRESTED));
    return terms;
  }

  static List<Term> forData(LossRequest request) {
    UnitSystem units = UnitSystem.AVIATION;
    List<Term> terms = new ArrayList<>();
    terms.add(PilotTerms.ONSET);
    terms.add(
        new Term(
            "delay_s", delay(request) + "; nothing where each pilot has a delay of their own"));
    terms.add(
        new Term(
            "clock",
            request
                .clock()
                .description(request.approach().entry(), request.loaded().get(0), units)));
    terms.add(new Term("altitude_loss_ft", LOSS + ", or the ground is reached"));
    terms.add(
        new Term("loss_after_recognition_ft", "the same from the height at the end of the delay"));
    terms.add(new Term("peak_descent_fpm", "greatest rate of descent after onset"));
    terms.add(new Term("time_to_arrest_s", "from onset to arrest"));
    terms.add(new Term("impact_speed_fpm", "rate of descent at ground contact"));
    terms.add(new Term(Ending.NOT_ARRESTED.label(), NOT_ARRESTED));
    terms.add(new Term(Ending.NO_ONSET.label(), "the ring state was not entered"));
    terms.addAll(PilotTerms.recoveries(request.recoveries(), request.loaded().get(0)));
    PilotTerms.notAWayOut(request.recoveries()).ifPresent(terms::add);
    terms.add(
        new Term(
            "p50_ft, p90_ft, p95_ft",
            LESS
                + ", 50, 90 and 95 %; nothing without pilots, or where fewer arrested the descent"
                + ENDLESS));
    terms.add(new Term("p95_low_ft, p95_high_ft", PilotTerms.BAND));
    terms.add(new Term("p95_models_low_ft, p95_models_high_ft", PilotTerms.MODELS));
    terms.add(new Term("arrested_share", ARRESTED));
    terms.add(new Term("samples", "how many pilots met the ring state"));
    request
        .pool()
        .ifPresent(
            pool -> {
              terms.add(
                  new Term(
                      "outcome, altitude_loss_ft and the other columns before p50_ft", STANDARD));
              terms.add(
                  PilotTerms.pilots(pool, request.disturbances(), request.state().isPresent()));
              terms.addAll(PilotTerms.spreads(request.recoveries(), units));
            });
    request.state().ifPresent(state -> terms.add(PilotTerms.state(state)));
    return terms;
  }
}
