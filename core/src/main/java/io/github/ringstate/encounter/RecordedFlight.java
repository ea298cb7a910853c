package io.github.ringstate.encounter;

/**
 * A flight that was kept.
 *
 * @param encounter what was flown
 * @param outcome what came of it
 * @param history its course, from the start of the entry to the end
 */
public record RecordedFlight(Encounter encounter, Outcome outcome, History history) {

  /**
   * Flies an encounter on from an approach that is shared with others, and keeps all of the flight.
   *
   * @param encounter the encounter
   * @param approach the approach of an encounter that differs in recognition and recovery at most
   * @param simulator what flies it
   * @return the flight
   * @throws IllegalArgumentException if the approach is that of another encounter
   */
  public static RecordedFlight of(Encounter encounter, Approach approach, Simulator simulator) {
    return Flight.record(encounter, approach, simulator);
  }
}
