package io.github.ringstate.inflow;

import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Limits that pilots are taught to keep, as a boundary: a rate of descent that is not exceeded
 * below an airspeed. They are no boundary of the ring state but a warning before it, for every
 * craft at every mass alike; an operator may have others.
 *
 * <p>FAA-H-8083-21B, Helicopter Flying Handbook, chapter 11, as training pages quote it: a descent
 * of more than 300 ft/min, less airspeed than effective translational lift (16 to 24 kt), and 20 to
 * 100 % of the power. The page itself was not seen. The power is left out, since a descent with the
 * rotor driven by the air alone is not what the limits are for.
 *
 * @param airspeed the airspeed, in hover induced velocities, above which the limits do not hold
 * @param sink the rate of descent, in hover induced velocities
 */
public record DescentLimits(double airspeed, double sink) implements BoundaryCriterion {

  /** The name of these limits among the boundaries. */
  public static final String NAME = "taught-limits";

  /**
   * Airspeed below which the rate of descent is limited. Default 16 kt, range 1 to 60 kt. It is the
   * lower end of effective translational lift, below which that is surely lost.
   */
  public static final Parameter AIRSPEED =
      Parameter.of(
          "limit airspeed",
          Unit.KNOT,
          1,
          60,
          16,
          "lower end of effective translational lift, 16 to 24 kt (FAA-H-8083-21B, ch. 11, quoted)");

  /** Rate of descent not to be exceeded there. Default 300 ft/min, range 50 to 2000 ft/min. */
  public static final Parameter SINK =
      Parameter.of(
          "limit sink",
          Unit.FOOT_PER_MINUTE,
          50,
          2000,
          300,
          "FAA-H-8083-21B, Helicopter Flying Handbook, ch. 11 (quoted)");

  /** All parameters. */
  public static final List<Parameter> PARAMETERS = List.of(AIRSPEED, SINK);

  /** Checks both. */
  public DescentLimits {
    HoverUnits.EDGEWISE.check(airspeed);
    HoverUnits.AXIAL.check(-sink);
  }

  /**
   * The limits for a craft.
   *
   * @param hoverInduced hover induced velocity at the craft's weight, m/s
   * @param numbers a value for each of {@link #PARAMETERS}
   * @return the limits
   */
  public static DescentLimits of(double hoverInduced, ParameterSet numbers) {
    return new DescentLimits(numbers.si(AIRSPEED) / hoverInduced, numbers.si(SINK) / hoverInduced);
  }

  @Override
  public String name() {
    return NAME;
  }

  /** {@inheritDoc} Limits are read off the airspeed and vertical speed indicators. */
  @Override
  public boolean isOfPath() {
    return true;
  }

  /** {@inheritDoc} Here the greater of both distances to a limit. */
  @Override
  public double margin(double edgewise, double axial) {
    return Math.max(
        HoverUnits.EDGEWISE.check(edgewise) - airspeed, HoverUnits.AXIAL.check(axial) + sink);
  }

  /** {@inheritDoc} One band below the airspeed, without an exit. */
  @Override
  public List<RingBand> bands(double edgewise) {
    return HoverUnits.EDGEWISE.check(edgewise) < airspeed
        ? List.of(new RingBand(-sink, OptionalDouble.empty()))
        : List.of();
  }

  @Override
  public OptionalDouble reach() {
    return OptionalDouble.of(airspeed);
  }
}
