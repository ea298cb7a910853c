package io.github.ringstate.instructor.loss;

import io.github.ringstate.calibration.FittedBands;
import io.github.ringstate.dynamics.NoSteadyFlightException;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.instructor.option.Clock;
import io.github.ringstate.instructor.pilots.Pool;
import io.github.ringstate.instructor.pilots.ShownFlight;
import io.github.ringstate.instructor.progress.Work;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.study.LossCell;
import io.github.ringstate.study.LossTable;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Flies all that a loss table asks for.
 *
 * @param request what is asked for
 * @param work hears how far it has come
 */
record LossStudy(LossRequest request, Work work) {

  /**
   * Flies.
   *
   * @return a block for each mass in each air
   * @throws UserError if a craft cannot hover or begin the entry in one of the airs
   */
  LossResult run() {
    List<LossBlock> blocks = new ArrayList<>();
    try {
      for (LossRequest.Planned planned : request.tables()) {
        Conditions conditions = Conditions.of(planned.craft(), planned.air());
        blocks.add(
            new LossBlock(
                conditions,
                request.recoveries(),
                planned.delays(),
                rows(conditions, planned.delays()),
                request
                    .pool()
                    .map(pool -> pilots(conditions, planned.delays(), pool))
                    .orElse(List.of()),
                untilRing(conditions)));
      }
      return new LossResult(
          blocks, request.drawn() ? shown(blocks.get(0).conditions()) : List.of());
    } catch (NoSteadyFlightException noStart) {
      throw Conditions.noStart(request.approach().kind().label(), noStart);
    }
  }

  private List<LossRow> rows(Conditions conditions, List<Double> waited) {
    Encounter base =
        request.pool().isPresent()
            ? request.undisturbed(conditions)
            : request.encounter(conditions);
    LossTable table =
        LossTable.fly(
            base,
            List.of(conditions.craft()),
            List.of(conditions.air()),
            request.recoveries().stream().map(Technique::standard).toList(),
            waited);
    Iterator<LossCell> cells = table.cells().iterator();
    Iterator<Boolean> sensitive = table.sensitive().iterator();
    List<LossRow> rows = new ArrayList<>();
    for (Technique recovery : request.recoveries()) {
      for (double delay : waited) {
        rows.add(
            new LossRow(
                recovery,
                delay,
                cells.next().outcome(),
                sensitive.next(),
                fitted(base.withDelay(delay), recovery)));
      }
    }
    return rows;
  }

  private static Optional<FittedBands> fitted(Encounter flown, Technique recovery) {
    return flown.craft().fitted().isPresent() && recovery.wayOut()
        ? Optional.of(FittedBands.of(flown.withRecovery(recovery.standard())))
        : Optional.empty();
  }

  private List<PilotRow> pilots(Conditions conditions, List<Double> waited, Pool pool) {
    Encounter base = request.encounter(conditions);
    List<OptionalDouble> delays =
        request.state().isPresent()
            ? List.of(OptionalDouble.empty())
            : waited.stream().map(OptionalDouble::of).toList();
    List<PilotRow> rows = new ArrayList<>();
    for (Technique recovery : request.recoveries()) {
      for (OptionalDouble delay : delays) {
        Encounter flown = delay.isPresent() ? base.withDelay(delay.getAsDouble()) : base;
        rows.add(
            new PilotRow(
                recovery,
                delay,
                pool.fly(pool.study(flown, recovery, request.state()), LossPage.MOST, work)));
      }
    }
    return rows;
  }

  /** How much earlier the limits that are taught are exceeded than the ring state begins. */
  private OptionalDouble untilRing(Conditions conditions) {
    if (!request.clock().isLimits()) {
      return OptionalDouble.empty();
    }
    Encounter flown = request.undisturbed(conditions).withRecovery(Technique.NONE.standard());
    OptionalDouble limits = flown.fly().onsetTime();
    OptionalDouble ring =
        // the boundary that every command takes for the onset of the ring state
        Clock.BOUNDARY
            .on(flown)
            .withInflow(flown.inflow(), new HeaveDamping(flown.craft().inflow()))
            .fly()
            .onsetTime();
    return limits.isPresent() && ring.isPresent()
        ? OptionalDouble.of(ring.getAsDouble() - limits.getAsDouble())
        : OptionalDouble.empty();
  }

  private List<ShownFlight> shown(Conditions conditions) {
    Encounter base = request.undisturbed(conditions).withDelay(request.shownDelay());
    return request.recoveries().stream().map(recovery -> ShownFlight.fly(base, recovery)).toList();
  }
}
