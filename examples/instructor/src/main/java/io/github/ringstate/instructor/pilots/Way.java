package io.github.ringstate.instructor.pilots;

import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.conditions.HoverPower;
import io.github.ringstate.quantity.Unit;

/**
 * A way from onset to the lowest point, seen from the heading at onset.
 *
 * @param ahead how far ahead, m; negative behind
 * @param right how far to the right, m; negative to the left
 * @param seconds how long it takes, s
 * @param torque the greatest torque on the way, over that of continuous power at full rotor speed
 */
public record Way(double ahead, double right, double seconds, double torque) {

  /**
   * How far it goes, and to which side.
   *
   * @param units the units to speak in
   * @return for instance {@code 120 ft ahead and 60 ft to the right}
   */
  public String inWords(UnitSystem units) {
    return PilotMessages.SAY.way(
        units.lossInWords(Math.abs(ahead)),
        ahead >= 0,
        units.lossInWords(Math.abs(right)),
        right >= 0);
  }

  /**
   * The same with what the pedals have to hold.
   *
   * @param units the units to speak in
   * @param hover the power for a hover in the same air
   * @return the way and the torque
   */
  public String withTorque(UnitSystem units, HoverPower hover) {
    return PilotMessages.SAY.wayWithTorque(
        inWords(units),
        Decimals.fixed(Unit.PERCENT.fromSi(torque / (hover.needed() / hover.continuous())), 0));
  }

  /**
   * The same for a table.
   *
   * @param units the units to speak in
   * @return how far ahead, with a minus sign if behind, and how far to the right (R) or left (L)
   */
  public String brief(UnitSystem units) {
    String nose = units.loss(Math.abs(ahead));
    String side = units.loss(Math.abs(right));
    return (ahead < 0 && !nose.equals("0") ? "-" : "")
        + nose
        + ", "
        + side
        + (side.equals("0") ? "" : right > 0 ? " R" : " L");
  }
}
