package io.github.ringstate.rotor;

import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.SoftLimit;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/**
 * A main rotor: its geometry and blades, and from them thrust, power and the lag of the inflow.
 *
 * <p>Thrust is that of blade element theory with uniform inflow, linear twist, a root cut-out and a
 * tip loss, integrated over the span in closed form (Leishman, <i>Principles of Helicopter
 * Aerodynamics</i>, ch. 3; Gessow and Myers, <i>Aerodynamics of the Helicopter</i>, ch. 3):
 *
 * <pre>CT / s = (a / 2) integral over r of [theta(r) (r^2 + mu^2 / 2) - lambda r] dr</pre>
 *
 * <p>With no twist, no cut-out and no tip loss that is CT = (s a / 2) [theta (1/3 + mu^2/2) -
 * lambda/2]. The blade loading CT/s is then held below a limit, which stands for stall: linear up
 * to half of the limit, bent into it at once and a half.
 *
 * <p>Axial speeds are positive for air that passes down through the disc, so the axial speed of a
 * climb is positive and that of a descent negative. Angles are in radians, speeds in m/s. Instances
 * are immutable and safe to share between threads.
 */
public final class Rotor {

  /** Rotor radius. Default 3.9 m, range 1 to 15 m. */
  public static final Parameter RADIUS =
      Parameter.of("radius", Unit.METRE, 1, 15, 3.9, "invented within the typical range");

  /** Blade area over disc area. Default 0.03, range 0.01 to 0.2 (a pure number). */
  public static final Parameter SOLIDITY =
      Parameter.of("solidity", Unit.ONE, 0.01, 0.2, 0.03, "invented within the typical range");

  /** Speed of the blade tips at full rotor speed. Default 205 m/s, range 100 to 260 m/s. */
  public static final Parameter TIP_SPEED =
      Parameter.of(
          "tip speed", Unit.METRE_PER_SECOND, 100, 260, 205, "invented within the typical range");

  /** Slope of the blade section's lift curve. Default 5.73 1/rad, range 4.5 to 7 1/rad. */
  public static final Parameter LIFT_SLOPE =
      Parameter.of(
          "lift slope",
          Unit.PER_RADIAN,
          4.5,
          7,
          5.73,
          "0.1 per degree, usual for rotor sections (Gessow and Myers; from memory)");

  /**
   * Linear twist, blade pitch at the tip less that at the centre. Default -8 deg, range -20 to 5
   * deg.
   */
  public static final Parameter TWIST =
      Parameter.of("twist", Unit.DEGREE, -20, 5, -8, "invented within the typical range");

  /**
   * Fraction of the radius beyond which the blade carries no lift. Default 0.97, range 0.9 to 1 (a
   * pure number).
   */
  public static final Parameter TIP_LOSS =
      Parameter.of("tip loss factor", Unit.ONE, 0.9, 1, 0.97, "usual value (from memory)");

  /**
   * Fraction of the radius inside which the blade carries no lift. Default 0.1, range 0 to 0.3 (a
   * pure number).
   */
  public static final Parameter ROOT_CUTOUT =
      Parameter.of("root cutout", Unit.ONE, 0, 0.3, 0.1, "invented within the typical range");

  /** Induced power over that of uniform inflow. Default 1.15, range 1 to 1.4 (a pure number). */
  public static final Parameter INDUCED_POWER_FACTOR =
      Parameter.of(
          "induced power factor", Unit.ONE, 1, 1.4, 1.15, "usual hover value (from memory)");

  /** Greatest blade loading CT/s. Default 0.16, range 0.1 to 0.25 (a pure number). */
  public static final Parameter BLADE_LOADING_LIMIT =
      Parameter.of(
          "blade loading limit",
          Unit.ONE,
          0.1,
          0.25,
          0.16,
          "assumed: where measured hover thrust ceases to grow, about 0.15 to 0.17");

  /**
   * Moment of inertia of all that turns with the rotor. Default 130 kg m2, range 10 to 100000 kg
   * m2.
   */
  public static final Parameter INERTIA =
      Parameter.of(
          "inertia",
          Unit.KILOGRAM_SQUARE_METRE,
          10,
          100_000,
          130,
          "invented within the typical range");

  /** Height of the hub above the lowest part of the craft. Default 2.7 m, range 0.5 to 8 m. */
  public static final Parameter HUB_HEIGHT =
      Parameter.of("hub height", Unit.METRE, 0.5, 8, 2.7, "invented within the typical range");

  /** All parameters of a rotor. */
  public static final List<Parameter> PARAMETERS =
      List.of(
          RADIUS,
          SOLIDITY,
          TIP_SPEED,
          LIFT_SLOPE,
          TWIST,
          TIP_LOSS,
          ROOT_CUTOUT,
          BladeDrag.PROFILE_DRAG,
          BladeDrag.PROFILE_DRAG_SLOPE,
          BladeDrag.PROFILE_DRAG_CURVATURE,
          INDUCED_POWER_FACTOR,
          BLADE_LOADING_LIMIT,
          INERTIA,
          InflowLag.APPARENT_MASS,
          InflowLag.MINIMUM_MASS_FLOW,
          HUB_HEIGHT);

  private final double radius;
  private final double area;
  private final double solidity;
  private final double nominalTipSpeed;
  private final double halfSlope;
  private final double collectiveFactor;
  private final double collectiveFactorMu2;
  private final double twistTerm;
  private final double twistTermMu2;
  private final double inflowFactor;
  private final BladeDrag bladeDrag;
  private final double inducedPowerFactor;
  private final double bladeLoadingLimit;
  private final double inertia;
  private final InflowLag inflowLag;
  private final double hubHeight;

  /**
   * Builds a rotor.
   *
   * @param numbers values for at least {@link #PARAMETERS}
   */
  public Rotor(ParameterSet numbers) {
    radius = numbers.si(RADIUS);
    area = Math.PI * radius * radius;
    solidity = numbers.si(SOLIDITY);
    nominalTipSpeed = numbers.si(TIP_SPEED);
    halfSlope = numbers.si(LIFT_SLOPE) / 2;
    double outer = numbers.si(TIP_LOSS);
    double inner = numbers.si(ROOT_CUTOUT);
    double span1 = outer - inner;
    double span2 = (outer * outer - inner * inner) / 2;
    double span3 = (outer * outer * outer - inner * inner * inner) / 3;
    double span4 = (outer * outer * outer * outer - inner * inner * inner * inner) / 4;
    double twist = numbers.si(TWIST);
    collectiveFactor = span3;
    collectiveFactorMu2 = span1 / 2;
    // theta(r) = theta75 + twist (r - 3/4)
    twistTerm = twist * (span4 - 0.75 * span3);
    twistTermMu2 = twist * (span2 - 0.75 * span1) / 2;
    inflowFactor = span2;
    bladeDrag = new BladeDrag(numbers, area);
    inducedPowerFactor = numbers.si(INDUCED_POWER_FACTOR);
    bladeLoadingLimit = numbers.si(BLADE_LOADING_LIMIT);
    inertia = numbers.si(INERTIA);
    inflowLag = new InflowLag(numbers, radius);
    hubHeight = numbers.si(HUB_HEIGHT);
  }

  /**
   * Radius.
   *
   * @return the radius, m
   */
  public double radius() {
    return radius;
  }

  /**
   * Disc area.
   *
   * @return the area, m2
   */
  public double area() {
    return area;
  }

  /**
   * Blade area over disc area.
   *
   * @return the solidity s
   */
  public double solidity() {
    return solidity;
  }

  /**
   * Speed of the rotor at 100 per cent.
   *
   * @return the rotational speed, rad/s
   */
  public double nominalSpeed() {
    return nominalTipSpeed / radius;
  }

  /**
   * Moment of inertia of all that turns with the rotor.
   *
   * @return the inertia, kg m2
   */
  public double inertia() {
    return inertia;
  }

  /**
   * Induced power over that of uniform inflow, outside the ring state.
   *
   * @return the factor k
   */
  public double inducedPowerFactor() {
    return inducedPowerFactor;
  }

  /**
   * What the drag of the blades takes.
   *
   * @return the drag
   */
  public BladeDrag bladeDrag() {
    return bladeDrag;
  }

  /**
   * How the induced velocity follows the thrust.
   *
   * @return the lag
   */
  public InflowLag inflowLag() {
    return inflowLag;
  }

  /**
   * Height of the hub above the lowest part of the craft.
   *
   * @return the height, m
   */
  public double hubHeight() {
    return hubHeight;
  }

  /**
   * Hover induced velocity, vh = sqrt(T / (2 rho A)).
   *
   * @param thrust the thrust, N; not negative
   * @param density the air's density, kg/m3
   * @return the velocity, m/s
   */
  public double hoverInducedVelocity(double thrust, double density) {
    return Math.sqrt(thrust / (2 * density * area));
  }

  /**
   * Blade loading CT/s by blade element theory, as if the blades did not stall. It stands for their
   * mean angle of attack.
   *
   * @param tipSpeed the speed of the blade tips, m/s
   * @param collective blade pitch at three quarters of the radius, rad
   * @param edgewiseSquared the square of the edgewise speed, m2/s2
   * @param inflow the total axial flow down through the disc, m/s
   * @return the blade loading, a pure number; negative if the blades push down
   */
  public double unstalledLoading(
      double tipSpeed, double collective, double edgewiseSquared, double inflow) {
    double inverseTipSpeed = 1 / tipSpeed;
    double mu2 = edgewiseSquared * inverseTipSpeed * inverseTipSpeed;
    return halfSlope
        * ((collectiveFactor + mu2 * collectiveFactorMu2) * collective
            + twistTerm
            + mu2 * twistTermMu2
            - inflowFactor * inflow * inverseTipSpeed);
  }

  /**
   * Thrust at a blade loading, which stall holds below its limit.
   *
   * @param density the air's density, kg/m3
   * @param tipSpeed the speed of the blade tips, m/s
   * @param unstalledLoading the {@linkplain #unstalledLoading blade loading without stall}
   * @return the thrust along the shaft, N; negative if the blades push down
   */
  public double thrust(double density, double tipSpeed, double unstalledLoading) {
    return density
        * area
        * tipSpeed
        * tipSpeed
        * solidity
        * SoftLimit.within(unstalledLoading, bladeLoadingLimit);
  }

  /**
   * Thrust by blade element theory.
   *
   * @param density the air's density, kg/m3
   * @param tipSpeed the speed of the blade tips, m/s
   * @param collective blade pitch at three quarters of the radius, rad
   * @param edgewiseSquared the square of the edgewise speed, m2/s2
   * @param inflow the total axial flow down through the disc, m/s
   * @return the thrust along the shaft, N; negative if the blades push down
   */
  public double thrust(
      double density, double tipSpeed, double collective, double edgewiseSquared, double inflow) {
    return thrust(
        density, tipSpeed, unstalledLoading(tipSpeed, collective, edgewiseSquared, inflow));
  }

  /**
   * Slope of the thrust over the axial flow through the disc, away from stall.
   *
   * @param density the air's density, kg/m3
   * @param tipSpeed the speed of the blade tips, m/s
   * @return the slope, N per m/s, negative
   */
  public double thrustPerInflow(double density, double tipSpeed) {
    return -density * area * tipSpeed * solidity * halfSlope * inflowFactor;
  }

  /**
   * Power that thrust takes: T (Vaxial + v) and the losses of non-uniform inflow, (k - 1) T [(1 -
   * s) v + r].
   *
   * <p>Inflow fitted to measurements in the ring state contains a share s of those losses already;
   * they are counted once. Where such an inflow is anchored at the ideal hover it contains less,
   * and r is what it leaves out.
   *
   * @param thrust the thrust, N
   * @param axial the axial speed, m/s, positive in climb
   * @param induced the induced velocity, m/s
   * @param lossShare how much of the losses the induced velocity already contains, 0 to 1
   * @param ringLosses the losses r of the ring that it does not contain, as an induced velocity
   *     that the factor would be applied to, m/s
   * @return the power, W; negative where the air drives the rotor
   */
  public double thrustPower(
      double thrust, double axial, double induced, double lossShare, double ringLosses) {
    return thrust * (axial + induced)
        + (inducedPowerFactor - 1) * (1 - lossShare) * Math.abs(thrust) * induced
        + (inducedPowerFactor - 1) * Math.abs(thrust) * ringLosses;
  }
}
