package io.github.ringstate.recording;

/**
 * The pilot's first movement as attitude and controls show it.
 *
 * @param channel what moved first
 * @param time when it began, s
 * @param pitch change of the nose within the time looked at, rad, positive up; NaN if not recorded
 * @param bank the same of the bank, rad, positive to the right
 * @param collective the same of the lever, as a share of its travel
 */
public record Movement(
    Channel channel, Estimate time, double pitch, double bank, double collective) {}
