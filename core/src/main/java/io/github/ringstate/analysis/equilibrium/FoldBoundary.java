package io.github.ringstate.analysis.equilibrium;

import io.github.ringstate.analysis.continuation.Continuation;
import io.github.ringstate.analysis.continuation.Curve;
import io.github.ringstate.analysis.continuation.Fold;
import io.github.ringstate.analysis.continuation.FoldEquations;
import io.github.ringstate.craft.CraftLimits;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The boundary of heave stability of the whole craft: the folds of its steady descents, followed in
 * airspeed from the vertical descent on. Where the onset's folds and the exit's meet the boundary
 * is closed.
 *
 * @param folds the folds, in the order of the curve: from the onset in vertical descent to the
 *     exit, if they meet
 * @param widest the greatest airspeed at which there is a fold, where the two meet smoothly; empty
 *     if they do not within twice the hover induced velocity, or meet at a corner, where the curve
 *     ends, as with {@link io.github.ringstate.inflow.StabilityBoundInflow}
 */
public record FoldBoundary(List<Equilibrium> folds, Optional<Equilibrium> widest) {

  private static final double STEP = 0.05;

  private static final int MOST_POINTS = 500;

  private static final double FASTEST = 2;

  /** Copies the list. */
  public FoldBoundary {
    folds = List.copyOf(folds);
  }

  /**
   * Follows the folds.
   *
   * @param descents the case; followed from its airspeed on
   * @return the boundary, or empty if there is no fold at that airspeed
   */
  public static Optional<FoldBoundary> of(DescentCase descents) {
    DescentEquations atAirspeed = new DescentEquations(descents, 0, Varied.COLLECTIVE);
    List<Fold> folds = EquilibriumCurve.collectiveCurve(descents, atAirspeed).folds(atAirspeed);
    if (folds.isEmpty()) {
      return Optional.empty();
    }
    DescentEquations equations =
        new DescentEquations(descents, 0, Varied.COLLECTIVE, Varied.AIRSPEED);
    int n = DescentEquations.UNKNOWNS;
    double own = descents.airspeed() / descents.equations().hoverInduced();
    double lowest = descents.craft().si(CraftLimits.MINIMUM_COLLECTIVE);
    double[] start = Arrays.copyOf(folds.get(0).solution(), 2 * n + 2);
    start[2 * n + 1] = own;
    Curve curve =
        new Continuation(
                new FoldEquations(equations, n, FoldEquations.STEP),
                STEP,
                point ->
                    point.parameter() > own - 1e-9
                        && point.parameter() < FASTEST
                        && point.unknown(n) * DescentEquations.COLLECTIVE_SCALE > lowest,
                MOST_POINTS)
            .follow(start, true);
    List<Equilibrium> found = new ArrayList<>();
    curve.points().forEach(point -> found.add(at(equations, point.place())));
    return Optional.of(
        new FoldBoundary(
            found, curve.turns().stream().findFirst().map(turn -> at(equations, turn.place()))));
  }

  private static Equilibrium at(DescentEquations equations, double[] solution) {
    int n = DescentEquations.UNKNOWNS;
    double[] place = Arrays.copyOf(solution, n + 2);
    place[n + 1] = solution[2 * n + 1];
    return Equilibrium.at(equations, place);
  }
}
