package io.github.ringstate.instructor.review;

import io.github.ringstate.dynamics.NoSteadyFlightException;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.encounter.RecordedFlight;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.instructor.option.Approach;
import io.github.ringstate.pilot.Recognition;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.recording.Channel;
import io.github.ringstate.recording.FoundEncounter;
import io.github.ringstate.recording.VerticalMotion;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the model makes of a descent that was flown: the same craft, the wind along the track, the
 * pilot's delay and recovery, and the same a second and two later.
 *
 * @param recovery the recovery
 * @param recoverySeen whether the recording shows it; else it is assumed
 * @param delay from onset to the first movement, s
 * @param delaySeen whether the recording shows it; else it is assumed
 * @param fromBehind the wind from behind, m/s
 * @param asRecorded whether it begins in the state that the recording has at its onset; else with
 *     the entry that was asked for
 * @param flight the flight; empty if the craft cannot begin the entry
 * @param losses altitude lost, and lost with one and with two seconds more, m; empty where the
 *     descent is not arrested
 */
record ModelledDescent(
    Technique recovery,
    boolean recoverySeen,
    double delay,
    boolean delaySeen,
    double fromBehind,
    boolean asRecorded,
    Optional<RecordedFlight> flight,
    Losses losses) {

  /** Where neither attitude nor a control is recorded, s (assumed). */
  private static final double ASSUMED_DELAY = 1;

  /** Altitude lost, and lost with one and with two seconds more, m. */
  record Losses(OptionalDouble flown, OptionalDouble oneMore, OptionalDouble twoMore) {

    static final Losses NONE =
        new Losses(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
  }

  static ModelledDescent of(ReviewRequest request, VerticalMotion motion, FoundEncounter found) {
    Optional<Technique> seen =
        found.movement().flatMap(movement -> movement.technique()).filter(Technique::wayOut);
    Technique recovery = seen.orElse(briefed(request).orElse(Technique.FORWARD));
    OptionalDouble recorded =
        found.delay().map(delay -> OptionalDouble.of(delay.value())).orElse(OptionalDouble.empty());
    double delay = delay(recorded.orElse(ASSUMED_DELAY));
    double fromBehind = request.wind().fromBehind(track(request, found.onsetTime().value()));
    Encounter entered =
        approach(request.entry(), fromBehind)
            .encounter(request.conditions().craft(), request.conditions().air())
            .withRecovery(recovery.standard());
    Encounter begun = entered.withEntry(RecordedStart.of(motion, found, fromBehind));
    Optional<RecordedFlight> asRecorded =
        flown(begun.withDelay(delay))
            .filter(flight -> flight.outcome().ending() != Ending.NO_ONSET);
    Encounter encounter = asRecorded.isPresent() ? begun : entered;
    Optional<RecordedFlight> flight =
        asRecorded.isPresent() ? asRecorded : flown(entered.withDelay(delay));
    Losses losses =
        flight
            .map(
                first ->
                    new Losses(
                        first.outcome().altitudeLoss(),
                        encounter.withDelay(delay(delay + 1)).fly().altitudeLoss(),
                        encounter.withDelay(delay(delay + 2)).fly().altitudeLoss()))
            .orElse(Losses.NONE);
    return new ModelledDescent(
        recovery,
        seen.isPresent(),
        delay,
        recorded.isPresent(),
        fromBehind,
        asRecorded.isPresent(),
        flight,
        losses);
  }

  /** Empty where the craft cannot begin so. */
  private static Optional<RecordedFlight> flown(Encounter encounter) {
    try {
      return Optional.of(encounter.record(Simulator.precise()));
    } catch (NoSteadyFlightException noStart) {
      return Optional.empty();
    }
  }

  private static Optional<Technique> briefed(ReviewRequest request) {
    return request
        .plan()
        .flatMap(
            plan ->
                Technique.ALL.stream()
                    .filter(one -> one.name().equals(plan.technique()) && one.wayOut())
                    .findFirst());
  }

  private static double delay(double seconds) {
    Quantity allowed = Recognition.DELAY;
    return Math.max(allowed.low(), Math.min(allowed.high(), seconds));
  }

  private static double track(ReviewRequest request, double time) {
    int last = request.file().recording().size() - 1;
    int at = Math.min(last, request.file().recording().indexAt(time));
    return request.file().recording().value(Channel.TRACK, at);
  }

  /** The entry in the wind along the track, as far as the entry takes it. */
  private static Approach approach(EntryKind kind, double fromBehind) {
    Quantity allowed = kind.wind().quantity();
    double wind = allowed.unit().fromSi(kind.windAlong(fromBehind));
    return new Approach(
        kind, Math.max(allowed.low(), Math.min(allowed.high(), wind)), OptionalDouble.empty());
  }
}
