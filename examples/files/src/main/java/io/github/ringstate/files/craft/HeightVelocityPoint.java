package io.github.ringstate.files.craft;

/**
 * A point of the height-velocity curve in a flight manual, as the user copied it.
 *
 * @param airspeed airspeed, m/s
 * @param height height above the ground, m
 */
public record HeightVelocityPoint(double airspeed, double height) {}
