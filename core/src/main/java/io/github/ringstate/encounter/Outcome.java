package io.github.ringstate.encounter;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What came of an encounter. What an ending does not have is empty, never zero.
 *
 * @param ending how it ended
 * @param altitudeLoss height at onset less the lowest height, m; empty unless the descent was
 *     arrested or the ground reached
 * @param lossAfterRecognition height at recognition less the lowest height, m; empty as above, and
 *     where the flight ended before recognition
 * @param peakDescent greatest rate of descent after onset, m/s, positive; empty without onset
 * @param timeToArrest from onset to the arrest of the descent, s; empty unless arrested
 * @param impactSpeed rate of descent at ground contact, m/s, positive; empty unless the ground was
 *     reached
 * @param onsetTime from the start of the flight to onset, s; empty without onset
 * @param occurrences all that happened, in order of time
 */
public record Outcome(
    Ending ending,
    OptionalDouble altitudeLoss,
    OptionalDouble lossAfterRecognition,
    OptionalDouble peakDescent,
    OptionalDouble timeToArrest,
    OptionalDouble impactSpeed,
    OptionalDouble onsetTime,
    List<Occurrence> occurrences) {

  /** The outcome of an encounter that never meets the ring state. */
  public static final Outcome NO_ONSET =
      new Outcome(
          Ending.NO_ONSET,
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          List.of());

  /** Copies the occurrences. */
  public Outcome {
    occurrences = List.copyOf(occurrences);
  }

  /**
   * Whether something happened.
   *
   * @param kind what to look for
   * @return true if it happened at least once
   */
  public boolean happened(EventKind kind) {
    return first(kind).isPresent();
  }

  /**
   * When something happened first.
   *
   * @param kind what to look for
   * @return the first occurrence of it, or nothing if it did not happen
   */
  public Optional<Occurrence> first(EventKind kind) {
    return occurrences.stream().filter(occurrence -> occurrence.kind() == kind).findFirst();
  }
}
