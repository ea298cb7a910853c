package io.github.ringstate.instructor.runs;

import io.github.ringstate.dynamics.NoSteadyFlightException;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.LossSpread;
import io.github.ringstate.study.Progress;
import io.github.ringstate.study.Sampling;
import io.github.ringstate.study.run.RunJudgement;
import io.github.ringstate.study.run.RunLimits;
import io.github.ringstate.study.run.RunLoss;
import io.github.ringstate.study.run.RunMishap;
import io.github.ringstate.study.run.RunStudy;
import io.github.ringstate.study.run.RunTrack;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A run taken apart by track.
 *
 * @param technique the technique to brief
 * @param limits the airspeeds that keep the margins
 * @param worst the worst loss on any track, by which all are judged; empty where the ring state is
 *     met on none
 * @param rows the tracks, the first from north on first; at least one
 */
record RunAnalysis(
    Technique technique, Optional<RunLimits> limits, Optional<RunLoss> worst, List<RunRow> rows) {

  /** The share of the pilots whose loss is reckoned with. */
  static final double SHARE = 0.95;

  RunAnalysis {
    rows = List.copyOf(rows);
  }

  /** The judgement of some track, of which turn, height and hover are the same on all. */
  RunJudgement anywhere() {
    return rows.get(0).judgement();
  }

  /** Whether the descent is not arrested by too many. */
  boolean isOpen() {
    return worst.isPresent() && Double.isInfinite(worst.get().most());
  }

  /** One flight is flown once, though tracks mirrored in the wind share it. */
  private static final class Flights {

    private final RunsRequest request;
    private final RunStudy study;
    private final Map<Key, Optional<RunLoss>> losses = new HashMap<>();

    /** Mirrored tracks have the same airspeeds to a hundredth of a knot, hence the same entry. */
    private record Key(RunMishap mishap, String technique, long hundredths) {

      static Key of(RunMishap mishap, String technique, RunTrack track) {
        double airspeed =
            mishap == RunMishap.SETTLING ? track.minimumAirspeed() : track.triangle().airspeed();
        return new Key(mishap, technique, Math.round(100 * Unit.KNOT.fromSi(airspeed)));
      }
    }

    Flights(RunsRequest request, RunStudy study) {
      this.request = request;
      this.study = study;
    }

    /** The worse loss of the mishaps. */
    Optional<RunLoss> loss(RunTrack track, Technique technique) {
      return Stream.of(RunMishap.values())
          .map(mishap -> loss(track, mishap, technique))
          .flatMap(Optional::stream)
          .reduce(RunLoss::worse);
    }

    /** The worst loss on any track. */
    Optional<RunLoss> worst(List<RunTrack> tracks, Technique technique) {
      return tracks.stream()
          .map(track -> loss(track, technique))
          .flatMap(Optional::stream)
          .reduce(RunLoss::worse);
    }

    private Optional<RunLoss> loss(RunTrack track, RunMishap mishap, Technique technique) {
      return losses.computeIfAbsent(
          Key.of(mishap, technique.name(), track),
          key -> study.encounter(track, mishap).flatMap(encounter -> fly(encounter, technique)));
    }

    private Optional<RunLoss> fly(Encounter encounter, Technique technique) {
      try {
        LossSpread spread =
            study
                .pilots(encounter, technique, PilotState.DISTRACTED, request.seed())
                .fly(Sampling.of(request.pilots()), Progress.SILENT);
        return spread.samples() == 0 ? Optional.empty() : Optional.of(RunLoss.of(spread, SHARE));
      } catch (NoSteadyFlightException noStart) {
        return Optional.of(RunLoss.OPEN);
      }
    }
  }

  /**
   * Takes a run apart.
   *
   * @param request the run
   * @return the analysis
   */
  static RunAnalysis of(RunsRequest request) {
    RunStudy study = new RunStudy(request.plan());
    Flights flights = new Flights(request, study);
    List<RunTrack> tracks = study.tracks();
    Technique technique =
        request.techniques().stream()
            .min(
                Comparator.comparingDouble(
                    each -> flights.worst(tracks, each).map(RunLoss::most).orElse(0.0)))
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
    return new RunAnalysis(technique, limits, worst, rows);
  }
}
