package io.github.ringstate.instructor.runs;

import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.study.run.RunVerdict;
import java.util.Comparator;
import java.util.OptionalDouble;

/** What the crew agrees on before the flight, as the model and the operator propose it. */
record CrewFacts(
    boolean anyTrack,
    String tailwind,
    String escape,
    String track,
    String commandHours,
    String typeHours) {

  static CrewFacts of(RunsRequest request, RunAnalysis analysis, UnitSystem units) {
    RunRow best =
        analysis.rows().stream()
            .min(
                Comparator.comparing((RunRow row) -> row.judgement().verdict())
                    .thenComparing(
                        Comparator.comparingDouble((RunRow row) -> row.track().minimumAirspeed())
                            .reversed()))
            .orElseThrow();
    OptionalDouble tailwind =
        analysis.rows().stream()
            .filter(row -> row.judgement().verdict() == RunVerdict.FLY)
            .mapToDouble(row -> row.track().triangle().tailwind())
            .max();
    return new CrewFacts(
        tailwind.isPresent(),
        tailwind.orElse(0) > 0 ? units.speedInWords(tailwind.getAsDouble()) : "",
        best.escape().isPresent() ? EscapeWords.brief(best) : "",
        EscapeWords.threeDigits(best.trackDeg()),
        Decimals.brief(request.crew().commandHours()),
        Decimals.brief(request.crew().typeHours()));
  }
}
