package io.github.ringstate.instructor.runs;

import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.sheets.message.Words;
import io.github.ringstate.study.run.AirspeedCheck;
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

  /**
   * What tracks have in common that share a reason: all but the airspeed is alike on all tracks.
   */
  private record Key(RunVerdict verdict, AirspeedCheck.Reason airspeed) {

    static final Comparator<Key> MILDEST_FIRST =
        Comparator.comparing(Key::verdict).thenComparing(Key::airspeed);

    static Key of(RunRow row) {
      return new Key(row.verdict(), row.judgement().airspeed().reason());
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
              String reason = TrackFacts.of(request, analysis, worst, units).reason(worst);
              why.add(
                  new Why(
                      key.verdict().label(),
                      directions.arcs(row -> Key.of(row).equals(key)),
                      directions.areAlike()
                          ? reason
                          : RunsMessages.SAY.worstOf(
                              Headings.threeDigits(worst.trackDeg()), Words.small(reason))));
            });
    return why;
  }
}
