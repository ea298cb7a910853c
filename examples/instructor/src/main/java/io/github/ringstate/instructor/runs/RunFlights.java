package io.github.ringstate.instructor.runs;

import io.github.ringstate.dynamics.NoSteadyFlightException;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.instructor.pilots.LaterDelays;
import io.github.ringstate.instructor.pilots.ShownFlight;
import io.github.ringstate.instructor.pilots.Way;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.LossSpread;
import io.github.ringstate.study.PilotStudy;
import io.github.ringstate.study.Progress;
import io.github.ringstate.study.run.RunLoss;
import io.github.ringstate.study.run.RunMishap;
import io.github.ringstate.study.run.RunStudy;
import io.github.ringstate.study.run.RunTrack;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The flights of a run that meets the ring state; one is flown once, though tracks share it. */
final class RunFlights {

  private final RunsRequest request;
  private final RunStudy study;
  private final Map<Key, Optional<RunLoss>> losses = new HashMap<>();
  private final Map<Key, Encounter> encounters = new HashMap<>();

  RunFlights(RunsRequest request, RunStudy study) {
    this.request = request;
    this.study = study;
  }

  /** Mirrored tracks have the same airspeeds to a hundredth of a knot, hence the same entry. */
  private record Key(RunMishap mishap, String technique, long hundredths) {

    static Key of(RunMishap mishap, String technique, RunTrack track) {
      double airspeed =
          mishap == RunMishap.SETTLING ? track.minimumAirspeed() : track.triangle().airspeed();
      return new Key(mishap, technique, Math.round(100 * Unit.KNOT.fromSi(airspeed)));
    }
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

  /** Whether the ring state is met on any track. */
  boolean isMet(List<RunTrack> tracks, Technique technique) {
    return worst(tracks, technique).isPresent();
  }

  /** What most pilots lose on the worst track, m; nothing where nobody meets the ring state. */
  double most(List<RunTrack> tracks, Technique technique) {
    return worst(tracks, technique).map(RunLoss::most).orElse(0.0);
  }

  /** The same on the standard approach, which card and lesson choose their technique by, m. */
  double mostOnApproach(Technique technique) {
    return fly(approach(), technique).map(RunLoss::most).orElse(0.0);
  }

  private Encounter approach() {
    return Encounter.of(request.plan().craft()).withAir(request.plan().air());
  }

  private Optional<RunLoss> loss(RunTrack track, RunMishap mishap, Technique technique) {
    Key key = Key.of(mishap, technique.name(), track);
    return losses.computeIfAbsent(
        key,
        unknown ->
            study
                .encounter(track, mishap)
                .flatMap(
                    encounter -> {
                      encounters.put(key, encounter);
                      return fly(encounter, technique);
                    }));
  }

  private Optional<RunLoss> fly(Encounter encounter, Technique technique) {
    try {
      PilotStudy pilots =
          study.pilots(
              encounter.withDisturbances(request.disturbances()),
              technique,
              PilotState.DISTRACTED,
              request.pool().seed());
      LossSpread spread =
          new PilotStudy(
                  pilots.base(),
                  technique,
                  Optional.of(new LaterDelays(PilotState.DISTRACTED.delays(), request.later())),
                  pilots.seed(),
                  pilots.drawing())
              .fly(request.pool().sampling(RunAnalysis.SHARE), Progress.SILENT);
      return spread.samples() == 0
          ? Optional.empty()
          : Optional.of(RunLoss.of(spread, RunAnalysis.SHARE));
    } catch (NoSteadyFlightException noStart) {
      return Optional.of(RunLoss.OPEN);
    }
  }

  /** How far one standard pilot needs at the most, from whatever track. */
  Optional<Way> farthest(List<RunTrack> tracks, Technique technique) {
    // flies what has not been flown
    tracks.forEach(track -> loss(track, technique));
    return farthestFrom(
        encounters.entrySet().stream()
            .filter(entry -> entry.getKey().technique().equals(technique.name()))
            .map(Map.Entry::getValue)
            .toList(),
        technique);
  }

  /** The same on the standard approach. */
  Optional<Way> farthestOnApproach(Technique technique) {
    return farthestFrom(List.of(approach()), technique);
  }

  private Optional<Way> farthestFrom(List<Encounter> encounters, Technique technique) {
    List<Way> ways = new ArrayList<>();
    for (Encounter encounter : encounters) {
      try {
        ShownFlight.fly(
                encounter.withDelay(PilotState.DISTRACTED.median() + request.later()), technique)
            .throughAir()
            .ifPresent(ways::add);
      } catch (NoSteadyFlightException noStart) {
        // no run begins like this, so nobody goes anywhere from it
      }
    }
    return ways.stream()
        .reduce(
            (one, other) ->
                new Way(
                    Math.max(one.ahead(), other.ahead()),
                    Math.abs(one.right()) > Math.abs(other.right()) ? one.right() : other.right(),
                    Math.max(one.seconds(), other.seconds()),
                    Math.max(one.torque(), other.torque())));
  }
}
