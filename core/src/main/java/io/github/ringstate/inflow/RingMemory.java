package io.github.ringstate.inflow;

import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.SoftLimit;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/**
 * How a vortex ring outlasts the flow that made it.
 *
 * <p>One number is remembered, the level s: an axial speed in hover induced velocities, 0 before
 * there was a ring. From it and the axial speed z of the instant follows q, the axial speed of the
 * steady flow whose ring is there:
 *
 * <pre>
 *   q     = z - c,   c = pos(z - s - b)
 *   ds/dt = c / tau - a pos(s - z - b) / t,   in units of R / vh
 * </pre>
 *
 * <p>where pos is {@link SoftLimit#positive} with the half width b of the switch, tau the
 * dissolving and t the deepening time. While the flow deepens, z is below s, c is zero and q is z:
 * the ring is that of the steady flow, and s follows. A ring begins where it {@linkplain
 * VortexRing#feeding feeds itself}, so a is zero elsewhere; once s is as deep as the axial onset a
 * is one. When z is above s by more than twice b, q = s + b and dq/dt = (z - q) / tau: the ring
 * dissolves. Where a flow is steady q equals z, so equilibria, and the boundary, are those of the
 * steady model. A flow that never fed a ring leaves s at zero and q at z.
 *
 * <p>The side on which a small disturbance falls decides which of two linear models holds about an
 * equilibrium within the ring: below it q = z, above it q is held for a time of the order of tau.
 * Disturbances smaller than b are not told apart.
 *
 * <p>Of the dissolving ring only this is known: model rotors in water shed rings every 20 to 50
 * revolutions (Stack, Caradonna and Savas), 4 to 11 R / vh of a light helicopter. That is an
 * interval between rings and not the life of one.
 */
public final class RingMemory {

  /**
   * Time in which the ring dissolves once the flow no longer feeds it, in units of R / vh. Default
   * 3.6, range 0 to 11 (a pure number).
   */
  public static final Parameter DISSOLVING_TIME =
      Parameter.of(
          "ring dissolving time",
          Unit.ONE,
          0,
          11,
          3.6,
          "assumed, never measured: 2 s in a light helicopter; 0 is a ring that goes at once");

  /**
   * Time in which a deeper ring is remembered, in units of R / vh. Default 0.2, range 0.05 to 1 (a
   * pure number).
   */
  public static final Parameter DEEPENING_TIME =
      Parameter.of(
          "ring deepening time",
          Unit.ONE,
          0.05,
          1,
          0.2,
          "assumed: as quick as the inflow itself, whose lag in hover is 0.21 R / vh");

  /**
   * Half width of the switch between deepening and dissolving, in hover induced velocities. Default
   * 0.02, range 0.005 to 0.1 (a pure number).
   */
  public static final Parameter SWITCH_WIDTH =
      Parameter.of(
          "ring switch width",
          Unit.ONE,
          0.005,
          0.1,
          0.02,
          "numerical: narrow beside the 0.1 by which pulled power moves a rotor along the fold");

  /** Every number of the memory. */
  public static final List<Parameter> PARAMETERS =
      List.of(DISSOLVING_TIME, DEEPENING_TIME, SWITCH_WIDTH);

  /** The ring goes at the instant at which its flow does. */
  public static final RingMemory NONE =
      new RingMemory(ParameterSet.standard(PARAMETERS).with(DISSOLVING_TIME, 0), -1);

  private final boolean lasting;
  private final double dissolving;
  private final double deepening;
  private final double width;
  private final double onset;

  /**
   * Creates a memory.
   *
   * @param numbers values for {@link #PARAMETERS}; others are ignored
   * @param onset axial speed of the onset in vertical descent, in hover induced velocities,
   *     negative
   */
  public RingMemory(ParameterSet numbers, double onset) {
    if (!(onset < 0)) {
      throw new IllegalArgumentException(
          "the onset must be a descent, less than 0 hover induced velocities, not " + onset);
    }
    this.onset = onset;
    double time = numbers.get(DISSOLVING_TIME);
    lasting = time > 0;
    dissolving = lasting ? 1 / time : 0;
    deepening = 1 / numbers.get(DEEPENING_TIME);
    width = numbers.get(SWITCH_WIDTH);
  }

  /**
   * Whether anything is remembered.
   *
   * @return false if the ring goes at once
   */
  public boolean lasting() {
    return lasting;
  }

  /**
   * Half width of the switch between deepening and dissolving.
   *
   * @return the half width b, in hover induced velocities, positive
   */
  public double switchWidth() {
    return width;
  }

  /**
   * How far the ring is deeper than that of the flow of the instant.
   *
   * @param axial axial speed z of the instant, in hover induced velocities, positive in climb
   * @param level the remembered level s, same unit, not positive
   * @return c = z - q, not negative; zero where nothing is remembered
   */
  public double excess(double axial, double level) {
    return lasting ? SoftLimit.positive(axial - level - width, width) : 0;
  }

  /**
   * Whether the flow of the instant may begin a ring, so that it matters whether the ring feeds
   * itself.
   *
   * @param axial axial speed z of the instant, in hover induced velocities, positive in climb
   * @param level the remembered level s, same unit, not positive
   * @return true if {@link #rate} depends on the feeding
   */
  public boolean mayBegin(double axial, double level) {
    return lasting && axial < level && level > onset;
  }

  /**
   * How the level changes.
   *
   * @param axial axial speed z of the instant, in hover induced velocities, positive in climb
   * @param level the remembered level s, same unit, not positive
   * @param feeding how far the ring feeds itself, 0 to 1; any number unless it {@link #mayBegin}
   * @return ds/dt, in hover induced velocities in a time of R / vh
   */
  public double rate(double axial, double level, double feeding) {
    if (!lasting) {
      return 0;
    }
    if (axial < level) {
      double formed = smoothStep(2 * level / onset - 1);
      return -(formed + (1 - formed) * feeding)
          * deepening
          * SoftLimit.positive(level - axial - width, width);
    }
    // what there is to dissolve: all of it until the level is within the width of none
    return dissolving * excess(axial, level) * smoothStep(-level / width);
  }

  private static double smoothStep(double t) {
    if (t <= 0) {
      return 0;
    }
    return t >= 1 ? 1 : t * t * (3 - 2 * t);
  }
}
