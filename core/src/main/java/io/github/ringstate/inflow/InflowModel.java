package io.github.ringstate.inflow;

import io.github.ringstate.quantity.OutOfRangeException;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Quantity;

/**
 * The steady mean induced velocity of a rotor as a function of its motion through the air.
 *
 * <p>Every speed is a pure number in units of the hover induced velocity {@code vh = sqrt(T / (2
 * rho A))} of the thrust that the rotor has at that moment. The edgewise speed {@code x} lies in
 * the disc plane and is never negative; the axial speed {@code z} is along the shaft, positive in
 * climb and negative in descent; the induced velocity {@code v} is positive in the sense of the
 * downwash of a lifting rotor; the total inflow is {@code w = z + v}.
 *
 * <p>Implementations are immutable, safe to share between threads, and return the same bits for the
 * same input, however often and in whatever order they are asked. Values are finite and continuous,
 * slopes at best too: a jump is met in steps ever shorter, until a flight that lingers at it has
 * used up its budget of evaluations.
 */
public interface InflowModel {

  /**
   * The model's name.
   *
   * @return a few lower-case words joined by hyphens, for instance {@code ring-state}
   */
  String name();

  /**
   * The edgewise speeds that the model accepts.
   *
   * @return the range, in hover induced velocities; 0 to 200 unless the model says otherwise
   */
  default Quantity edgewiseRange() {
    return HoverUnits.EDGEWISE;
  }

  /**
   * The axial speeds that the model accepts.
   *
   * @return the range, in hover induced velocities; -200 to 200 unless the model says otherwise
   */
  default Quantity axialRange() {
    return HoverUnits.AXIAL;
  }

  /**
   * The induced velocity.
   *
   * @param edgewise edgewise speed x, in hover induced velocities, not negative
   * @param axial axial speed z, in hover induced velocities, positive in climb
   * @return induced velocity v, in hover induced velocities
   * @throws OutOfRangeException if the model does not hold there, or an argument is not a number
   */
  double induced(double edgewise, double axial);

  /**
   * The total inflow through the disc.
   *
   * @param edgewise edgewise speed x, in hover induced velocities, not negative
   * @param axial axial speed z, in hover induced velocities, positive in climb
   * @return total inflow z + v, in hover induced velocities, positive downward through the disc
   * @throws OutOfRangeException if the model does not hold there, or an argument is not a number
   */
  default double total(double edgewise, double axial) {
    return axial + induced(edgewise, axial);
  }

  /**
   * How the total inflow changes with the axial speed. Positive where the rotor damps vertical
   * motion, negative where it drives it. At a corner it may be that of either side, or one between.
   * Flights and sweeps refuse a model whose slope is not that of its total inflow.
   *
   * @param edgewise edgewise speed x, in hover induced velocities, held constant
   * @param axial axial speed z, in hover induced velocities, positive in climb
   * @return d(total)/d(axial), a pure number; infinite where the model's curve stands upright
   * @throws OutOfRangeException if the model does not hold there, or an argument is not a number
   */
  double slope(double edgewise, double axial);

  /**
   * The share of the losses of a non-uniform inflow that this model's induced velocity already
   * contains. Momentum theory contains none of them and its induced power has to be multiplied by
   * an induced power factor; a curve measured on a rotor in the vortex ring state contains them
   * all, and multiplying that by the factor would count them twice.
   *
   * @param edgewise edgewise speed x, in hover induced velocities, not negative
   * @param axial axial speed z, in hover induced velocities, positive in climb
   * @return 0 where the factor applies in full, 1 where it does not apply, between otherwise
   * @throws OutOfRangeException if the model does not hold there, or an argument is not a number
   */
  double lossShare(double edgewise, double axial);

  /**
   * The vortex ring of this model: what it takes of power, and how it outlasts its flow.
   *
   * @return the ring; {@link VortexRing#NONE} unless the model says otherwise
   */
  default VortexRing ring() {
    return VortexRing.NONE;
  }

  /**
   * Whether the induced velocity has a gradient across the disc that acts back on its mean; see
   * {@link ThreeStateInflow}.
   *
   * @return false unless the model says otherwise
   */
  default boolean hasGradient() {
    return false;
  }

  /**
   * The numbers that the model was made of, to be read back.
   *
   * @return the numbers; none unless the model says otherwise
   */
  default ParameterSet numbers() {
    return ParameterSet.NONE;
  }
}
