package io.github.ringstate.study.run;

/** How a slow run may come to the ring state. */
public enum RunMishap {
  /**
   * The ground speed is held with the nose while the wind comes round behind, the collective left
   * where the run has it.
   */
  TURN_DOWNWIND,
  /**
   * At the minimum airspeed in gusts the collective is lowered a little and left there. Only where
   * that airspeed is low enough for the ring state.
   */
  SETTLING
}
