package io.github.ringstate.inflow;

/**
 * The vortex ring of an inflow model: what it takes of power, and what it keeps of an earlier flow.
 *
 * <p>{@link InflowModel} says what the inflow is once a flow is steady. A ring is a body of turning
 * air, and does not go at the instant at which the flow that made it does. This says how much of
 * the induced velocity is the ring's own, so that only that part lags.
 *
 * <p>Every speed is a pure number in units of the hover induced velocity, as in {@link
 * InflowModel}. Implementations are immutable.
 */
public interface VortexRing {

  /** No ring: nothing is remembered, and the ring takes no losses of its own. */
  VortexRing NONE =
      new VortexRing() {
        @Override
        public RingMemory memory() {
          return RingMemory.NONE;
        }

        @Override
        public double losses() {
          return 0;
        }

        @Override
        public double feeding(InflowModel inflow, double edgewise, double axial) {
          return 0;
        }

        @Override
        public double own(double axial) {
          return 0;
        }

        @Override
        public double left(double edgewise) {
          return 0;
        }
      };

  /**
   * How the ring deepens and dissolves.
   *
   * @return its memory
   */
  RingMemory memory();

  /**
   * The losses of the developed ring over those of the hover at the same thrust, both beyond what
   * the model's mean induced velocity accounts for. They count as far as {@link
   * InflowModel#lossShare} says that the factor on induced power does not.
   *
   * @return a pure number, not negative; 0 where the induced velocity contains all losses
   */
  double losses();

  /**
   * Whether the ring feeds itself, so that it deepens: where a faster sink takes less flow through
   * the disc.
   *
   * @param inflow the model whose ring this is, or a table of it
   * @param edgewise edgewise speed x, not negative
   * @param axial axial speed z, positive in climb
   * @return 0 outside the boundary of heave damping, 1 well inside, between in its margin
   */
  double feeding(InflowModel inflow, double edgewise, double axial);

  /**
   * The part of the induced velocity that is the ring's own, in steady axial flow.
   *
   * @param axial axial speed z, positive in climb
   * @return the part, zero where there is no ring
   */
  double own(double axial);

  /**
   * What is left of the ring's own part at an edgewise speed.
   *
   * @param edgewise edgewise speed x, not negative
   * @return a pure number, 1 in axial flow, 0 where the ring is blown away
   */
  double left(double edgewise);
}
