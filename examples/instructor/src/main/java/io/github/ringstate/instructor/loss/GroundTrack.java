package io.github.ringstate.instructor.loss;

/**
 * A way over the ground, seen from the heading at onset.
 *
 * @param ahead how far ahead, m; negative behind
 * @param right how far to the right, m; negative to the left
 * @param torque the greatest torque on the way, over that of continuous power at full rotor speed
 */
record GroundTrack(double ahead, double right, double torque) {}
