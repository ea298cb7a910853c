package io.github.ringstate.instructor.fly;

import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.State;
import io.github.ringstate.quantity.Unit;

/**
 * A flight at one instant, in the units of the cockpit.
 *
 * @param timeS since the flight began, s
 * @param heightFt above the ground or, where there is none, above the height at onset, ft
 * @param groundSpeedKt horizontal speed over the ground in any direction, kt
 * @param airspeedKt horizontal speed through the air in any direction, kt
 * @param verticalSpeedFpm vertical speed, ft/min, positive up
 * @param pitchDeg pitch attitude, deg, positive nose up
 * @param bankDeg bank, deg, positive to the right
 * @param collectiveDeg blade pitch at three quarters of the radius, deg
 * @param rotorSpeedPct rotor speed, per cent of nominal
 * @param powerPct power taken, per cent of what may be used without limit of time in that air
 * @param inducedOverHover induced velocity, in hover induced velocities
 * @param axialOverHover axial speed of the disc, in hover induced velocities, positive in climb
 * @param edgewiseOverHover edgewise speed of the disc, in hover induced velocities
 * @param phase what is going on
 */
record Sample(
    double timeS,
    double heightFt,
    double groundSpeedKt,
    double airspeedKt,
    double verticalSpeedFpm,
    double pitchDeg,
    double bankDeg,
    double collectiveDeg,
    double rotorSpeedPct,
    double powerPct,
    double inducedOverHover,
    double axialOverHover,
    double edgewiseOverHover,
    String phase) {

  static Sample of(String phase, Motion motion) {
    double north = motion.state(State.SPEED_NORTH);
    double east = motion.state(State.SPEED_EAST);
    return new Sample(
        motion.time(),
        Unit.FOOT.fromSi(motion.height()),
        Unit.KNOT.fromSi(Math.sqrt(north * north + east * east)),
        Unit.KNOT.fromSi(motion.airspeed()),
        Unit.FOOT_PER_MINUTE.fromSi(motion.verticalSpeed()),
        Unit.DEGREE.fromSi(motion.pitch()),
        Unit.DEGREE.fromSi(motion.bank()),
        Unit.DEGREE.fromSi(motion.collective()),
        Unit.PERCENT.fromSi(motion.rotorSpeed()),
        Unit.PERCENT.fromSi(motion.power()),
        motion.inducedOverHover(),
        motion.axialOverHover(),
        motion.edgewiseOverHover(),
        phase);
  }
}
