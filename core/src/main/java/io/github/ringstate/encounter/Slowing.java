package io.github.ringstate.encounter;

import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Trim;
import io.github.ringstate.encounter.Entry.Start;
import io.github.ringstate.pilot.Cockpit;
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

  private void nose(double datum, double tooFast, Controls controls) {
    controls.pitch(
        datum + SoftLimit.within(noseUsed / hands.softness() * tooFast, noseUsed), hands.rate());
  }
}
