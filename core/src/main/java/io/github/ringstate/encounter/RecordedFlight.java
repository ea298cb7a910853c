package io.github.ringstate.encounter;

/**
 * A flight that was kept.
 *
 * @param encounter what was flown
 * @param outcome what came of it
 * @param history its course, from the start of the entry to the end
 */
public record RecordedFlight(Encounter encounter, Outcome outcome, History history) {}
