package io.github.ringstate.instructor.loss;

import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.instructor.option.RecoveryKind;
import io.github.ringstate.instructor.report.Decimals;
import io.github.ringstate.instructor.report.Term;
import java.util.ArrayList;
import java.util.List;

/** The words of a loss table, explained. */
final class LossTerms {

  private LossTerms() {}

  static List<Term> of(LossRequest request) {
    List<Term> terms = new ArrayList<>();
    terms.add(
        new Term(
            "delay",
            "from onset to the pilot's first movement of the controls: recognition and reaction"
                + " together"));
    terms.add(
        new Term(
            "onset",
            "the descent crosses the heave-damping boundary of the ring state; from there a faster"
                + " sink means less thrust, and the sink grows by itself"));
    terms.add(
        new Term(
            "loss",
            "height at onset less the lowest height, reached when the vertical speed is back to"
                + " zero (arrest). Rounded to 1 ft below 100 ft, to 5 ft from there, to 10 ft from"
                + " 1000 ft; the model is no better than that"));
    if (request.approach().heightFt().isPresent()) {
      terms.add(
          new Term(
              "GROUND",
              "the craft reaches the ground first, descending at the number of ft/min that stands"
                  + " behind"));
    }
    terms.add(
        new Term(
            "not arrested",
            "still descending "
                + Decimals.brief(Encounter.RECOVERY_TIME)
                + " s after the pilot began to act"));
    for (RecoveryKind recovery : request.recoveries()) {
      terms.add(new Term(recovery.label(), recovery.description(request.loaded().get(0).sense())));
    }
    return terms;
  }
}
