package io.github.ringstate.instructor.loss;

import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.instructor.option.RecoveryKind;
import io.github.ringstate.instructor.pilots.Pool;
import io.github.ringstate.study.LossSpread;
import io.github.ringstate.study.Progress;
import io.github.ringstate.study.Sampling;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * How losses spread over pilots at one mass in one air, away from the ground.
 *
 * @param conditions craft, mass and air
 * @param cells for each recovery each delay
 */
record LossBands(Conditions conditions, List<Cell> cells) {

  /** The pilots of a sheet unless the user asks for others. */
  private static final Pool STANDARD = new Pool(250, 1, OptionalInt.empty());

  private static final double MEDIAN = 0.5;
  private static final double MOST = 0.95;
  private static final double CONFIDENCE = 0.95;

  LossBands {
    cells = List.copyOf(cells);
  }

  /**
   * One recovery after one delay.
   *
   * @param recovery what the pilots do
   * @param delayS from onset to their action, s
   * @param median loss that half of them do not exceed, m; infinite where so many did not arrest
   *     the descent; empty where the ring state is not met
   * @param most the same for 95 in 100
   */
  record Cell(RecoveryKind recovery, double delayS, OptionalDouble median, OptionalDouble most) {}

  /**
   * Flies the pilots.
   *
   * @param conditions craft, mass and air
   * @param request what is asked for
   * @return the bands
   */
  static LossBands fly(Conditions conditions, LossRequest request) {
    Encounter base =
        Encounter.of(conditions.craft())
            .withAir(conditions.air())
            .withEntry(request.approach().entry())
            .withRecognition(request.clock().recognition(request.approach().entry()))
            .withDisturbances(request.disturbances());
    List<Cell> cells = new ArrayList<>();
    for (RecoveryKind recovery : request.recoveries()) {
      for (double delay : request.delays()) {
        LossSpread spread =
            pool(request)
                .study(base.withDelay(delay), recovery, Optional.empty())
                .fly(Sampling.of(pool(request).pilots()), Progress.SILENT);
        cells.add(new Cell(recovery, delay, quantile(spread, MEDIAN), quantile(spread, MOST)));
      }
    }
    return new LossBands(conditions, cells);
  }

  /**
   * The pilots of a sheet.
   *
   * @param request what is asked for
   * @return those that the user asks for, or a standard number
   */
  static Pool pool(LossRequest request) {
    return request.pool().orElse(STANDARD);
  }

  private static OptionalDouble quantile(LossSpread spread, double share) {
    return spread.samples() == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(spread.quantile(share, CONFIDENCE).value());
  }

  /**
   * One cell.
   *
   * @param recovery one of the recoveries
   * @param delayS one of the delays, s
   * @return the cell
   */
  Cell cell(RecoveryKind recovery, double delayS) {
    return cells.stream()
        .filter(cell -> cell.recovery() == recovery && cell.delayS() == delayS)
        .findFirst()
        .orElseThrow();
  }
}
