package io.github.ringstate.instructor.floor;

import io.github.ringstate.dynamics.NoSteadyFlightException;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.instructor.pilots.PilotLosses;
import io.github.ringstate.instructor.pilots.ShownFlight;
import io.github.ringstate.instructor.progress.Work;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.study.PilotStudy;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Flies all that a table of floors asks for. */
final class FloorStudy {

  private FloorStudy() {}

  /**
   * Flies all that is asked for.
   *
   * @param request what is asked for
   * @param work hears how far it has come
   * @return a block for each mass in each air
   * @throws UserError if a craft cannot hover or begin the entry in one of the airs
   */
  static List<FloorBlock> run(FloorRequest request, Work work) {
    // all are looked at before the first is flown, for one may be refused
    List<Conditions> all =
        request.tables().stream()
            .map(planned -> Conditions.of(planned.craft(), planned.air()))
            .toList();
    List<FloorBlock> blocks = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      blocks.add(fly(all.get(i), request.tables().get(i).later(), request, work));
    }
    return blocks;
  }

  private static FloorBlock fly(
      Conditions conditions, double later, FloorRequest request, Work work) {
    Encounter base =
        request
            .clock()
            .on(request.approach().encounter(conditions.craft(), conditions.air()))
            .withDisturbances(request.disturbances());
    try {
      List<FloorRow> rows = new ArrayList<>();
      for (PilotState state : request.states()) {
        for (Technique recovery : request.recoveries()) {
          PilotStudy study = request.pool().study(base, recovery, state, later);
          PilotLosses losses = request.pool().fly(study, request.share(), work);
          rows.add(
              new FloorRow(
                  conditions,
                  request.approach().kind().label(),
                  state,
                  recovery,
                  study,
                  request.share(),
                  request.margin(),
                  losses,
                  ShownFlight.fly(
                          ShownFlight.undisturbed(base).withDelay(state.median() + later), recovery)
                      .overGround()));
        }
      }
      return new FloorBlock(conditions, rows, latest(conditions, request, base, work));
    } catch (NoSteadyFlightException noStart) {
      throw Conditions.noStart(request.approach().kind().label(), noStart);
    }
  }

  private static List<LatestMoment> latest(
      Conditions conditions, FloorRequest request, Encounter base, Work work) {
    List<LatestMoment> latest = new ArrayList<>();
    if (request.briefed().isPresent()) {
      double height = request.briefed().getAsDouble();
      for (Technique recovery : request.waysOut()) {
        latest.add(
            new LatestMoment(
                conditions,
                recovery,
                request
                    .briefing()
                    .latestMoment(
                        request.pool().study(base, recovery, Optional.empty()),
                        height,
                        work.part(request.search()))));
      }
    }
    return latest;
  }
}
