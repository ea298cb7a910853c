package io.github.ringstate.encounter;

import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Trim;
import io.github.ringstate.encounter.Entry.Start;
import io.github.ringstate.pilot.Cockpit;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.SoftLimit;
import java.util.function.ToDoubleFunction;

/**
 * What the entries from forward flight have in common: a steady flight to start from, and a speed
 * that is then held with the nose, gently and within a limit of attitude.
 *
 * @param airspeed airspeed of the steady flight along the nose, m/s
 * @param descent rate of descent of the steady flight over the ground, m/s
 * @param noseUsed how far the nose may depart from its attitude in the steady flight, rad
 * @param hands how fast nose and collective are moved, and how closely the speed is held
 * @param excess how much the speed is too high, m/s
 */
record Slowing(
    double airspeed,
    double descent,
    double noseUsed,
    ApproachHands hands,
    ToDoubleFunction<Cockpit> excess) {

  /** Ground speed over which the collective is moved at the least, m/s. */
  private static final double MINIMUM_SLOWING = 1;

  /**
   * The start of an entry in which the ground speed is brought down by the view over the ground,
   * with the collective raised as in {@link #raising}.
   *
   * @param motion the equations of motion
   * @param numbers values for at least what {@link ApproachHands} takes
   * @param from ground speed of the steady flight, m/s
   * @param to ground speed at which the craft is to arrive, m/s
   * @param descent rate of descent of the steady flight over the ground, m/s
   * @param noseUsed as above
   * @param power power that the collective at arrival stands for, over that of the hover
   */
  static Start overGround(
      EquationsOfMotion motion,
      ParameterSet numbers,
      double from,
      double to,
      double descent,
      double noseUsed,
      double power) {
    return new Slowing(
            from - motion.windAtStart()[0],
            descent,
            noseUsed,
            ApproachHands.of(numbers),
            seen -> seen.groundSpeed() - to)
        .raising(motion, from, to, power);
  }

  /** The steady flight. */
  Trim trim(EquationsOfMotion motion) {
    double[] wind = motion.windAtStart();
    return Trim.find(motion, airspeed, 0 - wind[1], -descent - wind[2]);
  }

  /** The start, with the collective left as it is in the steady flight. */
  Start start(EquationsOfMotion motion) {
    Trim trim = trim(motion);
    return start(motion, trim, seen -> trim.collective());
  }

  /** The start, with a collective, rad, that depends on what the pilot sees. */
  Start start(EquationsOfMotion motion, Trim trim, ToDoubleFunction<Cockpit> collective) {
    return new Start(
        state(motion, trim),
        (seen, controls) -> {
          nose(trim.pitch(), excess.applyAsDouble(seen), controls);
          controls.bank(hands.drift().bank(seen, trim.bank()), hands.rate());
          controls.collective(collective.applyAsDouble(seen), hands.rate());
        });
  }

  /** The state of the steady flight, which goes straight ahead over the ground. */
  double[] state(EquationsOfMotion motion, Trim trim) {
    double[] wind = motion.windAtStart();
    return trim.state(motion, airspeed, 0 - wind[1], -descent - wind[2]);
  }

  /**
   * The start, with the collective brought evenly towards that of the hover while the ground speed
   * falls: a power between those of the steady flight and of the hover stands for the collective
   * that lies in the same ratio between theirs (assumed); one that is not above that of the steady
   * flight leaves the collective where it was.
   *
   * @param motion the equations of motion
   * @param from ground speed of the steady flight, m/s
   * @param to ground speed at which the craft is to arrive, m/s
   * @param power power that the collective at arrival stands for, over that of the hover
   */
  private Start raising(EquationsOfMotion motion, double from, double to, double power) {
    Trim steady = trim(motion);
    Trim hover = Trim.find(motion, 0, 0);
    double held = power(motion, state(motion, steady));
    double hovering = power(motion, hover.state(motion, 0, 0));
    double share = (power * hovering - held) / (hovering - held);
    double raised = within(share) * (hover.collective() - steady.collective());
    double inverseSlowing = 1 / Math.max(from - to, MINIMUM_SLOWING);
    return start(
        motion,
        steady,
        seen ->
            steady.collective() + within((from - seen.groundSpeed()) * inverseSlowing) * raised);
  }

  /** Cut off at nothing and at all; nothing where it is not a number. */
  private static double within(double share) {
    return share > 0 ? Math.min(share, 1) : 0;
  }

  private static double power(EquationsOfMotion motion, double[] state) {
    return motion.at(0, state).loads().shaftPower();
  }

  private void nose(double datum, double tooFast, Controls controls) {
    controls.pitch(
        datum + SoftLimit.within(noseUsed / hands.softness() * tooFast, noseUsed), hands.rate());
  }
}
