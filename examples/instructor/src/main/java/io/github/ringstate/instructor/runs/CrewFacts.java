package io.github.ringstate.instructor.runs;

import io.github.ringstate.craft.RotationSense;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.study.run.RunVerdict;
import java.util.Comparator;
import java.util.OptionalDouble;

/** What the crew agrees on before the flight, as the model and the operator propose it. */
record CrewFacts(
    boolean anyTrack,
    String tailwind,
    String side,
    String escape,
    String track,
    String commandHours,
    String typeHours) {

  static CrewFacts of(RunsRequest request, RunAnalysis analysis, UnitSystem units) {
    RunRow best =
        analysis.rows().stream()
            .min(
                Comparator.comparing(RunRow::verdict)
                    .thenComparing(
                        Comparator.comparingDouble((RunRow row) -> row.track().minimumAirspeed())
                            .reversed()))
            .orElseThrow();
    OptionalDouble tailwind =
        analysis.rows().stream()
            .filter(row -> row.verdict().compareTo(RunVerdict.FLY_WITH_A_LIMIT) <= 0)
            .mapToDouble(row -> row.track().triangle().tailwind())
            .max();
    RotationSense sense = request.plan().craft().sense();
    return new CrewFacts(
        tailwind.isPresent(),
        tailwind.orElse(0) > 0 ? units.speedInWords(tailwind.getAsDouble()) : "",
        Headings.side(analysis.technique(), sense),
        Headings.threeDigits(Headings.escapeDeg(analysis.technique(), sense, best.trackDeg())),
        Headings.threeDigits(best.trackDeg()),
        Decimals.brief(request.crew().commandHours()),
        Decimals.brief(request.crew().typeHours()));
  }
}
