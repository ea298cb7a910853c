package io.github.ringstate.instructor.runs;

import io.github.ringstate.study.run.RunVerdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** The best and the worst directions to run in, in words. */
record Directions(RunAnalysis analysis) {

  private static final List<String> POINTS =
      List.of(
          "north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west");

  /** Best: the least severe verdict met, and among those the greatest minimum airspeed. */
  String best() {
    RunVerdict verdict = extreme(Comparator.naturalOrder());
    if (verdict.compareTo(RunVerdict.NOT_AS_PLANNED) < 0 && areAlike()) {
      return RunsMessages.SAY.everyTrackAlike(verdict.label());
    }
    List<RunRow> rows = with(verdict);
    RunRow finest =
        rows.stream()
            .max(Comparator.comparingDouble(row -> row.track().minimumAirspeed()))
            .orElseThrow();
    return verdict.compareTo(RunVerdict.NOT_AS_PLANNED) < 0
        ? on(finest, verdict)
        : RunsMessages.SAY.noTrack();
  }

  /** Worst: the most severe verdict met, and among those the smallest minimum airspeed. */
  String worst() {
    RunVerdict verdict = extreme(Comparator.reverseOrder());
    if (areAlike()) {
      return RunsMessages.SAY.everyTrackAlike(verdict.label());
    }
    RunRow poorest =
        with(verdict).stream()
            .min(Comparator.comparingDouble(row -> row.track().minimumAirspeed()))
            .orElseThrow();
    return on(poorest, verdict);
  }

  private String on(RunRow row, RunVerdict verdict) {
    return RunsMessages.SAY.direction(
        POINTS.get((int) Math.floor((row.trackDeg() + 22.5) / 45) % POINTS.size()),
        Headings.threeDigits(row.trackDeg()),
        verdict.label(),
        arcs(each -> each.verdict() == verdict));
  }

  /** As in calm air: no track has an airspeed that any other has not. */
  boolean areAlike() {
    DoubleSummaryStatistics airspeeds =
        analysis.rows().stream()
            .mapToDouble(row -> row.track().minimumAirspeed())
            .summaryStatistics();
    return airspeeds.getMax() - airspeeds.getMin() < 1e-9;
  }

  private RunVerdict extreme(Comparator<RunVerdict> order) {
    return analysis.rows().stream().map(row -> row.verdict()).min(order).orElseThrow();
  }

  private List<RunRow> with(RunVerdict verdict) {
    return analysis.rows().stream().filter(row -> row.verdict() == verdict).toList();
  }

  /** Tracks that pass a test, neighbours put together. */
  String arcs(Predicate<RunRow> test) {
    List<RunRow> rows = analysis.rows();
    int count = rows.size();
    List<String> arcs = new ArrayList<>();
    if (rows.stream().allMatch(test)) {
      return "every track";
    }
    for (int i = 0; i < count; i++) {
      boolean begins = test.test(rows.get(i)) && !test.test(rows.get((i + count - 1) % count));
      if (begins) {
        int last = i;
        while (test.test(rows.get((last + 1) % count))) {
          last++;
        }
        String from = Headings.threeDigits(rows.get(i).trackDeg());
        String to = Headings.threeDigits(rows.get(last % count).trackDeg());
        arcs.add(last == i ? from : from + " to " + to);
      }
    }
    return arcs.isEmpty() ? "no track" : arcs.stream().collect(Collectors.joining(", "));
  }
}
