package io.github.ringstate.instructor.conditions;

import io.github.ringstate.air.Air;
import io.github.ringstate.air.Wind;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Trim;

/**
 * The power for a hover in calm air, out of ground effect, beside what the engine gives in that
 * air.
 *
 * @param needed what the hover takes, W
 * @param continuous what may be used without limit of time, W
 * @param takeOff what may be used for minutes, W
 */
public record HoverPower(double needed, double continuous, double takeOff) {

  /**
   * Works the powers out.
   *
   * @param craft the helicopter
   * @param air the air
   * @return the powers
   * @throws io.github.ringstate.dynamics.NoSteadyFlightException if the rotor cannot carry the
   *     craft in this air at any power
   */
  static HoverPower of(Helicopter craft, Air air) {
    EquationsOfMotion motion = new EquationsOfMotion(craft, air, Wind.CALM, craft.inflow(), false);
    Trim hover = Trim.find(motion, 0, 0);
    double needed = motion.at(0, hover.state(motion, 0, 0)).loads().shaftPower();
    return new HoverPower(needed, craft.continuousPower(air), craft.takeOffPower(air));
  }

  /**
   * Whether the hover takes more than there is.
   *
   * @return true if the craft cannot hold a hover out of ground effect
   */
  public boolean isShort() {
    return needed > takeOff;
  }

  /**
   * What is left over the hover.
   *
   * @return the take-off power less the hover's, over the hover's; negative if it is short
   */
  public double spare() {
    return takeOff / needed - 1;
  }
}
