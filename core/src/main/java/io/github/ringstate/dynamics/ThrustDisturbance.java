package io.github.ringstate.dynamics;

/**
 * Unsteady thrust: how the flow in the ring state shakes the rotor. Immutable and safe to share
 * between threads; a function of its arguments alone, smooth and finite. What is random is drawn
 * from a seed beforehand.
 */
public interface ThrustDisturbance {

  /** Steady thrust. */
  ThrustDisturbance NONE =
      new ThrustDisturbance() {
        @Override
        public double factor(double time, double edgewise, double axial) {
          return 1;
        }

        @Override
        public double roughness(double edgewise, double axial) {
          return 0;
        }
      };

  /**
   * Thrust over steady thrust at one instant; a smooth function of all its arguments.
   *
   * @param time time since the flight began, s
   * @param edgewise edgewise speed, in units of the hover induced velocity
   * @param axial axial speed, in units of the hover induced velocity, positive in climb
   * @return the factor, positive
   */
  double factor(double time, double edgewise, double axial);

  /**
   * How much the thrust fluctuates there.
   *
   * @param edgewise edgewise speed, in units of the hover induced velocity
   * @param axial axial speed, in units of the hover induced velocity, positive in climb
   * @return standard deviation of the factor
   */
  double roughness(double edgewise, double axial);
}
