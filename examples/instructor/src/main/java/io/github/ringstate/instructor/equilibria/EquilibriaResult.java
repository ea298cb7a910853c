package io.github.ringstate.instructor.equilibria;

import io.github.ringstate.analysis.equilibrium.DescentCase;
import io.github.ringstate.analysis.equilibrium.Equilibrium;
import io.github.ringstate.analysis.equilibrium.EquilibriumCurve;
import io.github.ringstate.analysis.equilibrium.HysteresisLoop;
import io.github.ringstate.dynamics.NoSteadyFlightException;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.RingBand;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The steady descents that were found.
 *
 * @param descents whose they are
 * @param rows the descents along their curve, the folds among them
 * @param folds the folds: the onset and, where there is one, the exit
 * @param inflowAlone axial speed at which the slope of the inflow alone vanishes, beside each fold,
 *     in hover induced velocities; empty where it vanishes nowhere
 * @param loop the flown loop; empty if none was asked for, or nothing folds over
 */
record EquilibriaResult(
    DescentCase descents,
    List<Row> rows,
    List<Equilibrium> folds,
    List<OptionalDouble> inflowAlone,
    Optional<HysteresisLoop> loop) {

  private static final double LOOP_RATE = Unit.DEGREE.toSi(0.02);

  /** What the folds are called, in order. */
  static final List<String> NAMES = List.of("onset", "exit");

  /**
   * A steady descent.
   *
   * @param descent the descent
   * @param fold the name of the fold that it is; empty if it is none
   */
  record Row(Equilibrium descent, String fold) {}

  static EquilibriaResult of(DescentCase descents, boolean loop) {
    EquilibriumCurve curve;
    try {
      curve = EquilibriumCurve.againstCollective(descents);
    } catch (NoSteadyFlightException noLevelFlight) {
      throw UserError.usage("--airspeed-kt has no level flight: " + noLevelFlight.getMessage());
    }
    HeaveDamping slope = new HeaveDamping(descents.inflow());
    List<OptionalDouble> alone = new ArrayList<>();
    for (int i = 0; i < curve.folds().size(); i++) {
      boolean onset = i == 0;
      List<RingBand> bands = slope.bands(curve.folds().get(i).edgewise());
      alone.add(
          bands.isEmpty()
              ? OptionalDouble.empty()
              : onset ? OptionalDouble.of(bands.get(0).onset()) : bands.get(0).exit());
    }
    return new EquilibriaResult(
        descents,
        rows(curve),
        curve.folds(),
        alone,
        loop ? HysteresisLoop.fly(descents, LOOP_RATE) : Optional.empty());
  }

  /** Along the curve the vertical speed falls throughout, so a fold has its place by it. */
  private static List<Row> rows(EquilibriumCurve curve) {
    List<Row> rows = new ArrayList<>();
    int next = 0;
    for (Equilibrium point : curve.points()) {
      while (next < Math.min(curve.folds().size(), NAMES.size())
          && point.verticalSpeed() < curve.folds().get(next).verticalSpeed()) {
        rows.add(new Row(curve.folds().get(next), NAMES.get(next)));
        next++;
      }
      rows.add(new Row(point, ""));
    }
    return List.copyOf(rows);
  }
}
