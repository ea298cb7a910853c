package io.github.ringstate.dynamics;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.air.Wind;
import io.github.ringstate.air.WindField;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.inflow.RingStateInflow;

/** The equations of motion of a craft at sea level without ground beneath it. */
public final class AtSeaLevel {

  private AtSeaLevel() {}

  /** In calm air, with the standard inflow. */
  public static EquationsOfMotion calm(Helicopter craft) {
    return in(Wind.CALM, craft);
  }

  /** In a wind, with the standard inflow. */
  public static EquationsOfMotion in(WindField wind, Helicopter craft) {
    return new EquationsOfMotion(
        craft, StandardAtmosphere.at(0), wind, RingStateInflow.standard(), false);
  }

  /** In calm air, with an inflow. */
  public static EquationsOfMotion with(InflowModel inflow, Helicopter craft) {
    return new EquationsOfMotion(craft, StandardAtmosphere.at(0), Wind.CALM, inflow, false);
  }

  /** The state of a steady hover. */
  public static double[] hover(EquationsOfMotion motion) {
    return Trim.find(motion, 0, 0).state(motion, 0, 0);
  }
}
