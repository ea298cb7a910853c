package io.github.ringstate.analysis.continuation;

import java.util.List;
import org.hipparchus.analysis.MultivariateVectorFunction;

/**
 * A curve of solutions.
 *
 * @param points the points, in the order in which they were found
 * @param turns where the parameter turns back, in the same order, to about a millionth of a step
 */
public record Curve(List<CurvePoint> points, List<CurvePoint> turns) {

  /** Copies both. */
  public Curve {
    points = List.copyOf(points);
    turns = List.copyOf(turns);
  }

  /**
   * The turns as folds, located anew.
   *
   * @param equations the equations whose curve this is, exact to rounding
   * @return a fold for each turn, in the same order
   */
  public List<Fold> folds(MultivariateVectorFunction equations) {
    return turns.stream().map(turn -> Fold.near(equations, turn.place(), turn.tangent())).toList();
  }
}
