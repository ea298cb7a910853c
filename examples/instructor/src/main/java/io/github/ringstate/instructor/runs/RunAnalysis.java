package io.github.ringstate.instructor.runs;

import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.pilots.PilotCells;
import io.github.ringstate.instructor.pilots.Way;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.run.RunJudgement;
import io.github.ringstate.study.run.RunLimits;
import io.github.ringstate.study.run.RunLoss;
import io.github.ringstate.study.run.RunStudy;
import io.github.ringstate.study.run.RunTrack;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A run taken apart by track.
 *
 * @param technique the technique to brief: the one that costs least height at its worst; where the
 *     ring state is met on no track, on the standard approach
 * @param way how far one standard pilot needs through the air with it, at the most; empty where the
 *     descent is not arrested
 * @param limits the airspeeds that keep the margins
 * @param worst the worst loss on any track, by which all are judged; empty where the ring state is
 *     met on none
 * @param rows the tracks, the first from north on first; at least one
 */
record RunAnalysis(
    Technique technique,
    Optional<Way> way,
    Optional<RunLimits> limits,
    Optional<RunLoss> worst,
    List<RunRow> rows) {

  /** The share of the pilots whose loss is reckoned with. */
  static final double SHARE = 0.95;

  RunAnalysis {
    rows = List.copyOf(rows);
  }

  /** The judgement of some track, of which turn, height and hover are the same on all. */
  RunJudgement anywhere() {
    return rows.get(0).judgement();
  }

  /** The height that covers the worst loss with the margin left; empty if there is none. */
  String neededForLoss(RunsRequest request, UnitSystem units) {
    return worst
        .filter(loss -> Double.isFinite(loss.most()))
        .map(
            loss ->
                PilotCells.needed(loss.quantile(SHARE), request.plan().margin(), units)
                    + " "
                    + units.length().symbol())
        .orElse("");
  }

  /** Whether the descent is not arrested by too many. */
  boolean isOpen() {
    return worst.isPresent() && Double.isInfinite(worst.get().most());
  }

  /**
   * Takes a run apart.
   *
   * @param request the run
   * @return the analysis
   */
  static RunAnalysis of(RunsRequest request) {
    RunStudy study = new RunStudy(request.plan());
    RunFlights flights = new RunFlights(request, study);
    List<RunTrack> tracks = study.tracks();
    boolean met = request.techniques().stream().anyMatch(each -> flights.isMet(tracks, each));
    Technique technique =
        request.techniques().stream()
            .min(
                Comparator.comparingDouble(
                    each -> met ? flights.most(tracks, each) : flights.mostOnApproach(each)))
            .orElseThrow();
    Optional<RunLimits> limits =
        RunLimits.find(
            study, request.boundaryMargin(), request.minimumAirspeed(), Unit.KNOT.toSi(1));
    Optional<RunLoss> worst = flights.worst(tracks, technique);
    List<RunRow> rows = new ArrayList<>();
    for (RunTrack track : tracks) {
      rows.add(
          new RunRow(
              track,
              flights.loss(track, technique),
              RunJudgement.of(study, limits, track.triangle().track(), worst)));
    }
    return new RunAnalysis(
        technique,
        worst.isPresent()
            ? flights.farthest(tracks, technique)
            : flights.farthestOnApproach(technique),
        limits,
        worst,
        rows);
  }
}
