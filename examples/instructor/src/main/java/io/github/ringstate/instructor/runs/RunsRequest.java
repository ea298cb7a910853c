package io.github.ringstate.instructor.runs;

import io.github.ringstate.encounter.Disturbances;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.instructor.option.Worse;
import io.github.ringstate.instructor.pilots.Pool;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.study.run.RunMishap;
import io.github.ringstate.study.run.RunPlan;
import io.github.ringstate.study.run.RunStudy;
import io.github.ringstate.study.run.RunTrack;
import java.util.ArrayList;
import java.util.List;

/**
 * A run that is asked for.
 *
 * @param conditions craft, mass and air
 * @param reported the wind as reported
 * @param plan the run, with the wind at its height
 * @param techniques the techniques to choose from: the one that loses least is briefed
 * @param boundaryMargin extra rate of descent to be left before the ring state, m/s
 * @param minimumAirspeed airspeed to be kept in any case, m/s
 * @param disturbances what disturbs the pilots
 * @param pool the pilots who fly each track
 * @param later by how much they act later than distracted pilots do, s
 * @param crew what the operator asks of the crew
 */
record RunsRequest(
    Conditions conditions,
    ReportedWind reported,
    RunPlan plan,
    List<Technique> techniques,
    double boundaryMargin,
    double minimumAirspeed,
    Disturbances disturbances,
    Pool pool,
    double later,
    CrewMinimum crew) {

  RunsRequest {
    techniques = List.copyOf(techniques);
  }

  /** The same run heavier, hotter and with pilots who act later. */
  RunsRequest on(Worse worse) {
    Conditions then = Conditions.of(worse.on(conditions.craft()), worse.on(conditions.air()));
    return new RunsRequest(
        then,
        reported,
        plan.on(then.craft(), then.air()),
        techniques,
        boundaryMargin,
        minimumAirspeed,
        disturbances,
        pool,
        worse.later(),
        crew);
  }

  /** What the pilots fly on any track, by the standard techniques and with the median delay. */
  List<Encounter> flown() {
    RunStudy study = new RunStudy(plan);
    List<Encounter> all = new ArrayList<>();
    for (RunTrack track : study.tracks()) {
      for (RunMishap mishap : RunMishap.values()) {
        study
            .encounter(track, mishap)
            .map(encounter -> encounter.withDelay(PilotState.DISTRACTED.median()))
            .ifPresent(
                encounter ->
                    techniques.forEach(each -> all.add(encounter.withRecovery(each.standard()))));
      }
    }
    return all;
  }
}
