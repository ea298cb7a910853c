package io.github.ringstate.instructor.runs;

import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.sheets.message.Words;
import io.github.ringstate.study.run.AirspeedCheck;
import io.github.ringstate.study.run.Finding;
import io.github.ringstate.study.run.HeightCheck;
import io.github.ringstate.study.run.RunJudgement;
import io.github.ringstate.study.run.RunVerdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Why some tracks have their verdict.
 *
 * @param verdict the verdict
 * @param tracks the tracks, neighbours put together
 * @param sentence the reason of that one of them with the minimum airspeed
 */
record Why(String verdict, String tracks, String sentence) {

  /** What tracks have in common that share a reason: the checks that speak against them alike. */
  private record Key(
      RunVerdict verdict, AirspeedCheck.Reason airspeed, HeightCheck.Reason height, Finding hover) {

    static final Comparator<Key> MILDEST_FIRST =
        Comparator.comparing(Key::verdict)
            .thenComparing(Key::airspeed)
            .thenComparing(Key::height)
            .thenComparing(Key::hover);

    static Key of(RunRow row) {
      RunJudgement judgement = row.judgement();
      HeightCheck.Reason height = judgement.height().reason();
      boolean speaks =
          switch (judgement.verdict()) {
            case FLY -> true;
            case FLY_WITH_A_LIMIT ->
                judgement.airspeed().finding() == Finding.HOLDS
                    && judgement.hover().finding() == Finding.HOLDS;
            case DO_NOT_FLY ->
                height == HeightCheck.Reason.NOT_COVERED
                    && judgement.airspeed().reason() != AirspeedCheck.Reason.NO_AIRSPEED;
          };
      return new Key(
          judgement.verdict(),
          judgement.airspeed().reason(),
          speaks ? height : HeightCheck.Reason.NO_RING_STATE,
          judgement.hover().finding());
    }
  }

  /** For each verdict and reason the tracks, the least severe first. */
  static List<Why> of(RunsRequest request, RunAnalysis analysis, UnitSystem units) {
    Directions directions = new Directions(analysis);
    List<Why> why = new ArrayList<>();
    analysis.rows().stream()
        .map(Key::of)
        .distinct()
        .sorted(Key.MILDEST_FIRST)
        .forEach(
            key -> {
              RunRow worst =
                  analysis.rows().stream()
                      .filter(row -> Key.of(row).equals(key))
                      .min(Comparator.comparingDouble(row -> row.track().minimumAirspeed()))
                      .orElseThrow();
              why.add(
                  new Why(
                      key.verdict().label(),
                      directions.arcs(row -> Key.of(row).equals(key)),
                      RunsMessages.SAY.worstOf(
                          EscapeWords.threeDigits(worst.trackDeg()),
                          Words.small(
                              TrackFacts.of(request, analysis, worst, units)
                                  .reason(worst.judgement())))));
            });
    return why;
  }
}
