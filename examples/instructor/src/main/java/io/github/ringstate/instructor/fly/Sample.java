package io.github.ringstate.instructor.fly;

import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.State;

/**
 * A flight at one instant.
 *
 * @param time since the flight began, s
 * @param height above the ground or, where there is none, above the height at onset, m
 * @param groundSpeed horizontal speed over the ground in any direction, m/s
 * @param airspeed horizontal speed through the air in any direction, m/s
 * @param verticalSpeed vertical speed, m/s, positive up
 * @param pitch pitch attitude, rad, positive nose up
 * @param bank bank, rad, positive to the right
 * @param collective blade pitch at three quarters of the radius, rad
 * @param rotorSpeed rotor speed over nominal
 * @param power power taken over what may be used without limit of time in that air
 * @param inducedOverHover induced velocity, in hover induced velocities
 * @param axialOverHover axial speed of the disc, in hover induced velocities, positive in climb
 * @param edgewiseOverHover edgewise speed of the disc, in hover induced velocities
 * @param phase what is going on
 */
record Sample(
    double time,
    double height,
    double groundSpeed,
    double airspeed,
    double verticalSpeed,
    double pitch,
    double bank,
    double collective,
    double rotorSpeed,
    double power,
    double inducedOverHover,
    double axialOverHover,
    double edgewiseOverHover,
    String phase) {

  static Sample of(String phase, Motion motion) {
    double north = motion.state(State.SPEED_NORTH);
    double east = motion.state(State.SPEED_EAST);
    return new Sample(
        motion.time(),
        motion.height(),
        Math.sqrt(north * north + east * east),
        motion.airspeed(),
        motion.verticalSpeed(),
        motion.pitch(),
        motion.bank(),
        motion.collective(),
        motion.rotorSpeed(),
        motion.power(),
        motion.inducedOverHover(),
        motion.axialOverHover(),
        motion.edgewiseOverHover(),
        phase);
  }
}
