package io.github.ringstate.analysis.continuation;

/** A solution on a curve: its unknowns, the parameter, and the direction of the curve there. */
public final class CurvePoint {

  private final double[] place;
  private final double[] tangent;

  CurvePoint(double[] place, double[] tangent) {
    this.place = place;
    this.tangent = tangent;
  }

  /**
   * One of the unknowns.
   *
   * @param index its place, from 0
   * @return its value
   */
  public double unknown(int index) {
    return place[index];
  }

  /**
   * The parameter.
   *
   * @return its value
   */
  public double parameter() {
    return place[place.length - 1];
  }

  /**
   * Unknowns and parameter.
   *
   * @return the unknowns and last the parameter; a new array
   */
  public double[] place() {
    return place.clone();
  }

  /**
   * The direction in which the curve is followed.
   *
   * @return unknowns and last the parameter by arc length; a new array of length one
   */
  public double[] tangent() {
    return tangent.clone();
  }

  /** How the parameter changes along the curve. */
  double turning() {
    return tangent[tangent.length - 1];
  }
}
