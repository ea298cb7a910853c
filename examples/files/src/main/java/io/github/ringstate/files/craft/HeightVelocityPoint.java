package io.github.ringstate.files.craft;

/**
 * A point of the height-velocity curve in a flight manual, as the user copied it.
 *
 * @param airspeedKt airspeed, kt
 * @param heightFt height above the ground, ft
 */
public record HeightVelocityPoint(double airspeedKt, double heightFt) {}
