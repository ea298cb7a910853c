/**
 * Flight: the equations of motion of a point-mass helicopter, and ways of flying them.
 *
 * <p>{@link io.github.ringstate.flight.EquationsOfMotion} turns a time, a {@link
 * io.github.ringstate.flight.State} vector and a {@link io.github.ringstate.flight.ControlLaw} into
 * a {@link io.github.ringstate.flight.Motion}: the rates of the state and all that came up on the
 * way. It is the only place where forces are worked out. A {@link io.github.ringstate.flight.Flyer}
 * flies a {@link io.github.ringstate.flight.Leg}: from a state, under one law, until a {@link
 * io.github.ringstate.flight.FlightEvent} stops it. {@link io.github.ringstate.flight.PreciseFlyer}
 * does so with an integrator of Hipparchus; an event lies where its quantity vanishes, not where a
 * step ends. {@link io.github.ringstate.flight.SwiftCourse} does so for bulk work, some thirty
 * times as quickly and without allocation, within a tenth of a foot in altitude loss. {@link
 * io.github.ringstate.flight.Trim} finds the steady flight from which an encounter starts.
 *
 * <p>Frame: north, east, up over flat ground. Attitude: heading, pitch, bank. Axial speed through
 * the disc is positive in climb. Everything in SI units and radians.
 *
 * <p>A control law sees what a {@link io.github.ringstate.flight.Cockpit} shows and sets {@link
 * io.github.ringstate.flight.Controls}. A {@link io.github.ringstate.flight.ThrustDisturbance}
 * shakes the thrust, as {@link io.github.ringstate.flight.RingStateShaking} does in the ring state.
 *
 * <p>Left out: flapping and control inputs below the attitude, so a commanded attitude is reached
 * at limited rates whatever the rotor does; yaw dynamics beyond a rate; sloping ground; change of
 * density with height.
 */
@NullMarked
package io.github.ringstate.flight;

import org.jspecify.annotations.NullMarked;
