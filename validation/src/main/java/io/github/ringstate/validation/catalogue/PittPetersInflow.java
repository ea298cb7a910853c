package io.github.ringstate.validation.catalogue;

/**
 * The three-state inflow of Pitt and Peters, Theoretical prediction of dynamic-inflow derivatives,
 * Vertica 5, 1981 (matrices from memory): M dv/dt + L^-1 v = C, with v the mean induced velocity
 * and its sine and cosine parts over tip speed, C the coefficients of thrust, roll and pitch moment
 * (nose up positive), and time in radians of rotor rotation.
 *
 * <p>The library itself has one uniform state. Its lag is held against this theory's first row.
 *
 * @param uniformMass apparent mass of the uniform state: 8 / (3 pi), or 128 / (75 pi) for a
 *     pressure that vanishes at the hub
 * @param gradientMass apparent mass of the two gradient states: 16 / (45 pi)
 * @param coupling the coupling of mean and gradient at full skew: 15 pi / 64
 */
public record PittPetersInflow(double uniformMass, double gradientMass, double coupling) {

  /**
   * The theory with the apparent mass of a solid disc.
   *
   * @return the theory
   */
  public static PittPetersInflow standard() {
    return new PittPetersInflow(8 / (3 * Math.PI), 16 / (45 * Math.PI), 15 * Math.PI / 64);
  }

  /**
   * The gains L times the mass-flow speed, with rows and columns in the order mean, sine, cosine,
   * and all of them taken positive: signs depend on the sense in which moments are counted.
   *
   * @param skew angle of the wake to the shaft, rad, 0 in hover to pi/2
   * @return the matrix
   */
  public double[][] gains(double skew) {
    double s = Math.cos(skew);
    double tangent = Math.tan(skew / 2);
    return new double[][] {
      {0.5, 0, coupling * tangent},
      {0, 4 / (1 + s), 0},
      {coupling * tangent, 0, 4 * s / (1 + s)}
    };
  }

  /**
   * The time constant of the uniform state alone.
   *
   * @param radius the rotor's radius, m
   * @param edgewise the edgewise speed, m/s
   * @param inflow the total axial flow, m/s
   * @param induced the induced velocity, m/s
   * @return the constant, s
   */
  public double uniformLag(double radius, double edgewise, double inflow, double induced) {
    double resultant = Math.sqrt(edgewise * edgewise + inflow * inflow);
    double massFlow = (edgewise * edgewise + (inflow + induced) * inflow) / resultant;
    return uniformMass * radius * gains(0)[0][0] / massFlow;
  }
}
