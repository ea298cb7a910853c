package io.github.ringstate.inflow;

import io.github.ringstate.quantity.MadeOf;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/**
 * Momentum theory with its gap closed: one root everywhere, continuous with a continuous slope, and
 * nowhere a fold.
 *
 * <p>Above the upper join the largest root of momentum theory, below the lower join the smallest.
 * Between them, at small edgewise speed, the cubic in z that continues both in value and slope; at
 * large edgewise speed the one root there is; and between those a smooth blend over the edgewise
 * speed. An own formulation; not fitted to measurements. Criteria for the boundary of the vortex
 * ring state whose authors used momentum theory can use it as their inflow.
 *
 * <p>The total inflow rises with the axial speed everywhere, since the cubic and the root both do.
 */
public final class SmoothMomentum extends MadeOf implements InflowModel {

  /**
   * Where the largest root of momentum theory is left. Default -0.8, range -1 to -0.6 (a pure
   * number).
   */
  public static final Parameter UPPER_JOIN =
      Parameter.of(
          "momentum upper join axial speed",
          Unit.ONE,
          -1.0,
          -0.6,
          -0.8,
          "fitted, not published: the climb root is followed until well inside the ring state");

  /**
   * Where the smallest root of momentum theory is taken up. Default -2.3, range -2.5 to -2.2 (a
   * pure number).
   */
  public static final Parameter LOWER_JOIN =
      Parameter.of(
          "momentum lower join axial speed",
          Unit.ONE,
          -2.5,
          -2.2,
          -2.3,
          "fitted, not published: at -2 itself the slope of momentum theory is infinite");

  /**
   * Where the blend from the cubic to the single root begins. Default 0.65, range 0.63 to 0.75 (a
   * pure number).
   */
  public static final Parameter BLEND_START =
      Parameter.of(
          "momentum blend start edgewise speed",
          Unit.ONE,
          0.63,
          0.75,
          0.65,
          "fitted, not published: just above 0.6204, from where momentum theory has one root");

  /**
   * Where the blend from the cubic to the single root ends. Default 1, range 0.9 to 1.1 (a pure
   * number).
   */
  public static final Parameter BLEND_END =
      Parameter.of(
          "momentum blend end edgewise speed",
          Unit.ONE,
          0.9,
          1.1,
          1.0,
          "fitted, not published: momentum theory is gentle enough from here on");

  /** Every number in the model that may be set. */
  public static final List<Parameter> PARAMETERS =
      List.of(UPPER_JOIN, LOWER_JOIN, BLEND_START, BLEND_END);

  private final ParameterSet numbers;
  private final double upperJoin;
  private final double lowerJoin;
  private final double blendStart;
  private final double blendEnd;
  private final double axialUpper;
  private final double axialUpperSlope;
  private final double axialLower;
  private final double axialLowerSlope;

  /**
   * Creates the model.
   *
   * @param parameters values for {@link #PARAMETERS}; others are ignored
   */
  public SmoothMomentum(ParameterSet parameters) {
    super(parameters.only(PARAMETERS));
    numbers = parameters.only(PARAMETERS);
    upperJoin = parameters.get(UPPER_JOIN);
    lowerJoin = parameters.get(LOWER_JOIN);
    blendStart = parameters.get(BLEND_START);
    blendEnd = parameters.get(BLEND_END);
    double upper = MomentumRoots.axialClimb(upperJoin);
    double lower = MomentumRoots.axialWindmill(lowerJoin);
    axialUpper = upperJoin + upper;
    axialUpperSlope = MomentumTheory.slopeAt(upperJoin, upper);
    axialLower = lowerJoin + lower;
    axialLowerSlope = MomentumTheory.slopeAt(lowerJoin, lower);
  }

  /**
   * The model with its standard values.
   *
   * @return the model
   */
  public static SmoothMomentum standard() {
    return new SmoothMomentum(ParameterSet.standard(PARAMETERS));
  }

  /**
   * The numbers of the model.
   *
   * @return a value for each of {@link #PARAMETERS}
   */
  @Override
  public ParameterSet numbers() {
    return numbers;
  }

  @Override
  public String name() {
    return "smooth-momentum";
  }

  @Override
  public double induced(double edgewise, double axial) {
    HoverUnits.check(edgewise, axial);
    return inducedAt(edgewise, axial);
  }

  @Override
  public double slope(double edgewise, double axial) {
    HoverUnits.check(edgewise, axial);
    return slopeAt(edgewise, axial);
  }

  /** {@inheritDoc} None: the model bridges ideal curves. */
  @Override
  public double lossShare(double edgewise, double axial) {
    HoverUnits.check(edgewise, axial);
    return 0;
  }

  double inducedAt(double x, double z) {
    if (z >= upperJoin) {
      return MomentumRoots.climb(x, z);
    }
    if (z <= lowerJoin) {
      return MomentumRoots.windmill(x, z);
    }
    if (x >= blendEnd) {
      return MomentumRoots.single(x, z);
    }
    double upper = MomentumRoots.climb(x, upperJoin);
    double lower = MomentumRoots.windmill(x, lowerJoin);
    double bridge =
        Hermite.value(
                lowerJoin,
                lowerJoin + lower,
                MomentumTheory.slopeAt(lowerJoin, lower),
                upperJoin,
                upperJoin + upper,
                MomentumTheory.slopeAt(upperJoin, upper),
                z)
            - z;
    if (x <= blendStart) {
      return bridge;
    }
    double share = blend(x);
    return (1 - share) * bridge + share * MomentumRoots.single(x, z);
  }

  double slopeAt(double x, double z) {
    if (z >= upperJoin) {
      return MomentumTheory.slopeAt(z, MomentumRoots.climb(x, z));
    }
    if (z <= lowerJoin) {
      return MomentumTheory.slopeAt(z, MomentumRoots.windmill(x, z));
    }
    if (x >= blendEnd) {
      return MomentumTheory.slopeAt(z, MomentumRoots.single(x, z));
    }
    double upper = MomentumRoots.climb(x, upperJoin);
    double lower = MomentumRoots.windmill(x, lowerJoin);
    double bridge =
        Hermite.slope(
            lowerJoin,
            lowerJoin + lower,
            MomentumTheory.slopeAt(lowerJoin, lower),
            upperJoin,
            upperJoin + upper,
            MomentumTheory.slopeAt(upperJoin, upper),
            z);
    if (x <= blendStart) {
      return bridge;
    }
    double share = blend(x);
    return (1 - share) * bridge + share * MomentumTheory.slopeAt(z, MomentumRoots.single(x, z));
  }

  /** The total inflow at zero edgewise speed from the lower join to 0, no root to search. */
  double axialTotal(double z) {
    if (z >= upperJoin) {
      return z + MomentumRoots.axialClimb(z);
    }
    return Hermite.value(
        lowerJoin, axialLower, axialLowerSlope, upperJoin, axialUpper, axialUpperSlope, z);
  }

  /** The slope of {@link #axialTotal}. */
  double axialSlope(double z) {
    if (z >= upperJoin) {
      return MomentumTheory.slopeAt(z, MomentumRoots.axialClimb(z));
    }
    return Hermite.slope(
        lowerJoin, axialLower, axialLowerSlope, upperJoin, axialUpper, axialUpperSlope, z);
  }

  private double blend(double x) {
    double t = (x - blendStart) / (blendEnd - blendStart);
    return t * t * t * (10 - t * (15 - 6 * t));
  }
}
