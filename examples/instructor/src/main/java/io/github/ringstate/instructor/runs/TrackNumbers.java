package io.github.ringstate.instructor.runs;

import io.github.ringstate.craft.RotationSense;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.study.run.RunJudgement;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The numbers of a pair of tracks as a table for people shows them, on paper and on a screen. */
record TrackNumbers(
    String tracks,
    String tail,
    String cross,
    String air,
    String minimum,
    String power,
    String takeOff,
    String ring,
    String escape,
    String sectors,
    String verdict) {

  /** The numbers of a pair; where it has none, a dash of one's own choice. */
  static TrackNumbers of(
      RunsRequest request, RunAnalysis analysis, TrackPair pair, UnitSystem units, String dash) {
    RunRow row = pair.first();
    OptionalDouble margin = row.track().boundaryMargin();
    RotationSense sense = request.plan().craft().sense();
    return new TrackNumbers(
        pair.every() ? "every" : each(pair, one -> Headings.threeDigits(one.trackDeg())),
        units.speed(row.track().triangle().tailwind()),
        units.speed(Math.abs(row.track().triangle().crosswind())),
        units.speed(row.track().triangle().airspeed()),
        units.speed(row.track().minimumAirspeed()),
        RunRow.wholePercent(row.track().continuousMargin(), dash),
        RunRow.wholePercent(row.track().takeOffMargin(), dash),
        margin.isPresent() ? units.verticalSpeed(margin.getAsDouble()) : dash,
        pair.every()
            ? Headings.side(analysis.technique(), sense)
            : each(
                pair,
                one ->
                    Headings.threeDigits(
                        Headings.escapeDeg(analysis.technique(), sense, one.trackDeg()))),
        marks(request, pair),
        verdict(row.judgement(), units));
  }

  private static String each(TrackPair pair, Function<RunRow, String> words) {
    return pair.rows().stream().map(words).collect(Collectors.joining(" "));
  }

  /** Which of the two tracks is meant, where it is not both. */
  private static String marks(RunsRequest request, TrackPair pair) {
    List<RunRow> met =
        pair.rows().stream().filter(row -> !Headings.mark(request.plan(), row).isEmpty()).toList();
    return met.isEmpty()
        ? ""
        : "*"
            + (met.size() == pair.rows().size() ? "" : Headings.threeDigits(met.get(0).trackDeg()));
  }

  /** The verdict with the speed that it names, short enough for a table. */
  private static String verdict(RunJudgement judgement, UnitSystem units) {
    if (judgement.minimumAirspeed().isPresent()) {
      return RunsMessages.SAY.withLimit(
          judgement.verdict().label(), units.speed(judgement.minimumAirspeed().getAsDouble()));
    }
    return judgement.groundSpeedInstead().isPresent()
        ? RunsMessages.SAY.atGroundSpeed(
            judgement.verdict().label(), units.speed(judgement.groundSpeedInstead().getAsDouble()))
        : judgement.verdict().label();
  }
}
