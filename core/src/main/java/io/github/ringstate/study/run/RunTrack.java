package io.github.ringstate.study.run;

import io.github.ringstate.air.WindTriangle;
import java.util.OptionalDouble;

/**
 * A run on one track.
 *
 * @param triangle track, ground speed and mean wind
 * @param minimumAirspeed the minimum airspeed in gusts and lulls, m/s
 * @param maximumAirspeed the greatest, m/s
 * @param power the greatest shaft power that the run takes at the least, the mean and the greatest
 *     airspeed, W; empty where the rotor cannot carry the craft
 * @param continuousMargin what is left of the continuous power, over that power; negative where the
 *     run takes more; minus infinity where the rotor cannot carry the craft
 * @param takeOffMargin what is left of the take-off power, over that power
 * @param boundaryMargin the extra rate of descent that reaches the ring state at the least
 *     airspeed, m/s; not positive where the planned descent already does; empty where no rate of
 *     descent does
 */
public record RunTrack(
    WindTriangle triangle,
    double minimumAirspeed,
    double maximumAirspeed,
    OptionalDouble power,
    double continuousMargin,
    double takeOffMargin,
    OptionalDouble boundaryMargin) {}
