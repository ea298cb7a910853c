package io.github.ringstate.analysis.equilibrium;

import io.github.ringstate.analysis.continuation.Continuation;
import io.github.ringstate.analysis.continuation.Curve;
import io.github.ringstate.analysis.continuation.CurvePoint;
import io.github.ringstate.analysis.continuation.Fold;
import io.github.ringstate.craft.CraftLimits;
import io.github.ringstate.craft.Helicopter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * Steady descents along a curve.
 *
 * @param points the descents, in the order of the curve
 * @param folds where two of them meet and cease, in the same order; their errors are below those of
 *     {@link #foldError}
 * @param foldError the greatest estimated error of a fold's unknowns, where one is a rad, a hover
 *     induced velocity or the nominal rotor speed; zero without folds
 */
public record EquilibriumCurve(
    List<Equilibrium> points, List<Equilibrium> folds, double foldError) {

  /** Longest step along a curve, in units of the hover induced velocity and its like. */
  private static final double STEP = 0.05;

  private static final int MOST_POINTS = 1000;

  /** Deepest descent and fastest climb of interest, in hover induced velocities. */
  private static final double DEEPEST = -2.5;

  private static final double HIGHEST = 0.2;

  /** Greatest airspeed of interest, in hover induced velocities. */
  private static final double FASTEST = 2;

  /** A curve that starts at airspeed zero goes so far astern, for zero to be on it. */
  private static final double LEAST_AIRSPEED = -0.02;

  /** Descents at one airspeed, mass and collective that are so near are the same. */
  private static final double SAME = 0.01;

  /** Copies the lists. */
  public EquilibriumCurve {
    points = List.copyOf(points);
    folds = List.copyOf(folds);
  }

  /**
   * Follows the descents from level flight on, lowering the collective at first: through the folds,
   * down to 2.5 hover induced velocities or the end of the lever.
   *
   * @param descents the case
   * @return the curve
   * @throws io.github.ringstate.dynamics.NoSteadyFlightException if there is no level flight
   */
  public static EquilibriumCurve againstCollective(DescentCase descents) {
    DescentEquations equations = new DescentEquations(descents, 0, Varied.COLLECTIVE);
    return of(equations, collectiveCurve(descents, equations));
  }

  static Curve collectiveCurve(DescentCase descents, DescentEquations equations) {
    double lowest =
        descents.craft().si(CraftLimits.MINIMUM_COLLECTIVE) / DescentEquations.COLLECTIVE_SCALE;
    double highest =
        descents.craft().si(CraftLimits.MAXIMUM_COLLECTIVE) / DescentEquations.COLLECTIVE_SCALE;
    return new Continuation(
            equations,
            STEP,
            point ->
                point.unknown(2) > DEEPEST
                    && point.unknown(2) < HIGHEST
                    && point.parameter() > lowest
                    && point.parameter() < highest,
            MOST_POINTS)
        .follow(equations.levelFlight(), false);
  }

  /**
   * Follows the descents at one collective in the airspeed, up to twice the hover induced velocity,
   * or in the mass, between its limits: from each descent that there is at the airspeed and mass of
   * the case, in both directions. A curve that connects to none of them is not found.
   *
   * @param descents the case
   * @param collective blade pitch at three quarters of the radius, rad, finite
   * @param varied airspeed or mass
   * @return the curves, none twice; empty if the case has no descent with this collective
   * @throws IllegalArgumentException if the collective is not finite or is what varies
   */
  public static List<EquilibriumCurve> against(
      DescentCase descents, double collective, Varied varied) {
    if (varied == Varied.COLLECTIVE) {
      throw new IllegalArgumentException("the collective is held here");
    }
    if (!(Math.abs(collective) < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "the collective must be finite, not " + collective + " rad");
    }
    DescentEquations equations = new DescentEquations(descents, collective, varied);
    Helicopter craft = descents.craft();
    boolean mass = varied == Varied.MASS;
    double low = mass ? craft.si(Helicopter.MINIMUM_MASS) / craft.mass() : LEAST_AIRSPEED;
    double high = mass ? craft.si(Helicopter.MAXIMUM_MASS) / craft.mass() : FASTEST;
    Continuation continuation =
        new Continuation(
            equations,
            STEP,
            point ->
                point.unknown(2) > DEEPEST && point.parameter() > low && point.parameter() < high,
            MOST_POINTS);
    double own =
        varied == Varied.MASS ? 1 : descents.airspeed() / descents.equations().hoverInduced();
    List<EquilibriumCurve> curves = new ArrayList<>();
    List<double[]> starts = starts(descents, collective, own);
    while (!starts.isEmpty()) {
      Curve curve = bothWays(continuation, starts.remove(0));
      starts.removeIf(start -> passes(curve, start));
      curves.add(of(equations, curve));
    }
    return curves;
  }

  /** The descents at a collective, with another parameter in its place. */
  private static List<double[]> starts(DescentCase descents, double collective, double parameter) {
    DescentEquations equations = new DescentEquations(descents, 0, Varied.COLLECTIVE);
    List<CurvePoint> points = collectiveCurve(descents, equations).points();
    double wanted = collective / DescentEquations.COLLECTIVE_SCALE;
    List<double[]> starts = new ArrayList<>();
    for (int i = 1; i < points.size(); i++) {
      CurvePoint one = points.get(i - 1);
      CurvePoint other = points.get(i);
      if (one.parameter() < wanted != other.parameter() < wanted) {
        double[] start = between(one, other, wanted);
        start[DescentEquations.UNKNOWNS] = parameter;
        starts.add(start);
      }
    }
    return starts;
  }

  private static double[] between(CurvePoint one, CurvePoint other, double parameter) {
    double part = (parameter - one.parameter()) / (other.parameter() - one.parameter());
    double[] place = one.place();
    double[] end = other.place();
    for (int i = 0; i < place.length; i++) {
      place[i] += part * (end[i] - place[i]);
    }
    return place;
  }

  private static Curve bothWays(Continuation continuation, double[] start) {
    Curve down = continuation.follow(start, false);
    Curve up = continuation.follow(start, true);
    List<CurvePoint> points = new ArrayList<>(down.points());
    Collections.reverse(points);
    points.addAll(up.points().subList(1, up.points().size()));
    List<CurvePoint> turns = new ArrayList<>(down.turns());
    Collections.reverse(turns);
    turns.addAll(up.turns());
    return new Curve(points, turns);
  }

  private static boolean passes(Curve curve, double[] start) {
    double parameter = start[DescentEquations.UNKNOWNS];
    for (int i = 1; i < curve.points().size(); i++) {
      CurvePoint one = curve.points().get(i - 1);
      CurvePoint other = curve.points().get(i);
      if (one.parameter() < parameter != other.parameter() < parameter
          && Math.abs(between(one, other, parameter)[2] - start[2]) < SAME) {
        return true;
      }
    }
    return false;
  }

  private static EquilibriumCurve of(DescentEquations equations, Curve curve) {
    double error = 0;
    List<Equilibrium> folds = new ArrayList<>();
    for (Fold fold : curve.folds(equations)) {
      folds.add(
          Equilibrium.at(equations, Arrays.copyOf(fold.solution(), DescentEquations.UNKNOWNS + 1)));
      error = Math.max(error, fold.error());
    }
    return new EquilibriumCurve(
        curve.points().stream().map(point -> Equilibrium.at(equations, point.place())).toList(),
        folds,
        error);
  }
}
