package io.github.ringstate.instructor.sweep;

/**
 * What came of a sweep.
 *
 * @param points how many points there are
 * @param failed how many of them could not be flown
 */
public record SweepResult(long points, long failed) {}
