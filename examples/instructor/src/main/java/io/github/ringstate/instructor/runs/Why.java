package io.github.ringstate.instructor.runs;

import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.study.RunJudgement;
import io.github.ringstate.study.RunVerdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * Why some tracks have their verdict.
 *
 * @param verdict the verdict
 * @param tracks the tracks, neighbours put together
 * @param sentence the reason of that one of them with the least airspeed
 */
record Why(String verdict, String tracks, String sentence) {

  /** What tracks have in common that share a reason. */
  private record Key(RunVerdict verdict, RunJudgement.Ground ground) {

    static Key of(RunRow row) {
      return new Key(row.judgement().verdict(), row.judgement().ground());
    }
  }

  /** For each verdict and ground the tracks, the least severe first. */
  static List<Why> of(RunsRequest request, RunAnalysis analysis, UnitSystem units) {
    RunReason reason = new RunReason(request, analysis, units);
    Directions directions = new Directions(analysis);
    List<Why> why = new ArrayList<>();
    analysis.rows().stream()
        .map(Key::of)
        .distinct()
        .sorted(Comparator.comparing(Key::verdict).thenComparing(Key::ground))
        .forEach(
            key -> {
              RunRow worst =
                  analysis.rows().stream()
                      .filter(row -> Key.of(row).equals(key))
                      .min(Comparator.comparingDouble(RunRow::leastAirspeedKt))
                      .orElseThrow();
              why.add(
                  new Why(
                      key.verdict().label(),
                      directions.arcs(row -> Key.of(row).equals(key)),
                      "On "
                          + EscapeWords.threeDigits(worst.trackDeg())
                          + ": "
                          + lowered(reason.sentence(worst))));
            });
    return why;
  }

  private static String lowered(String sentence) {
    return sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
  }
}
