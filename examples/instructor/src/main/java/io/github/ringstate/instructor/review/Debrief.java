package io.github.ringstate.instructor.review;

import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.recording.RecordedQuantity;
import io.github.ringstate.files.recording.Repair;
import io.github.ringstate.files.recording.RepairKind;
import io.github.ringstate.recording.Channel;
import io.github.ringstate.recording.EncounterFinder;
import io.github.ringstate.recording.FoundEncounter;
import io.github.ringstate.recording.Recording;
import io.github.ringstate.recording.VerticalMotion;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.stream.Stream;

/**
 * What a recorded flight shows.
 *
 * @param request what was asked for
 * @param motion the smoothed vertical motion
 * @param descents the descents into the ring state or to its edge
 * @param repairs what was left out or mended, in the file and by the smoother
 */
record Debrief(
    ReviewRequest request,
    VerticalMotion motion,
    List<FlownDescent> descents,
    List<Repair> repairs) {

  /**
   * A receiver's own ground speed, and one worked out from places, are off so far (assumed), m/s.
   */
  private static final double RECEIVER_SPEED = 0.1;

  private static final double PLACES_SPEED = 0.4;

  Debrief {
    descents = List.copyOf(descents);
    repairs = List.copyOf(repairs);
  }

  /**
   * Reviews a flight.
   *
   * @param request what is asked for
   * @return what it shows
   * @throws UserError if the recording has no velocity over the ground
   */
  static Debrief of(ReviewRequest request) {
    Recording recording = request.file().recording();
    for (Channel needed : List.of(Channel.GROUND_SPEED, Channel.TRACK)) {
      if (!recording.channels().contains(needed)) {
        throw UserError.file(
            request.name(),
            "holds neither ground speed with track nor latitude with longitude, without which"
                + " nothing can be said of the airspeed",
            null);
      }
    }
    boolean fromPlaces =
        request.file().repairs().stream()
            .anyMatch(repair -> repair.kind() == RepairKind.FROM_PLACES);
    VerticalMotion motion = VerticalMotion.of(recording);
    List<FoundEncounter> found =
        new EncounterFinder(
                request.conditions().craft(),
                request.conditions().air(),
                request.wind().wind(),
                request.wind().deviation(),
                fromPlaces ? PLACES_SPEED : RECEIVER_SPEED,
                Encounter.of(request.conditions().craft()).boundary())
            .find(motion);
    List<FlownDescent> descents = new ArrayList<>();
    for (FoundEncounter one : found) {
      descents.add(
          new FlownDescent(descents.size() + 1, one, ModelledDescent.of(request, motion, one)));
    }
    return new Debrief(
        request,
        motion,
        descents,
        Stream.of(
                request.file().repairs().stream(),
                smoothed(RepairKind.OUTLIER, motion.outliers(), recording),
                smoothed(RepairKind.STEP, motion.steps(), recording))
            .flatMap(part -> part)
            .toList());
  }

  private static Stream<Repair> smoothed(
      RepairKind kind, Map<Channel, SortedSet<Integer>> places, Recording recording) {
    return places.entrySet().stream()
        .map(
            entry ->
                new Repair(
                    kind,
                    quantity(entry.getKey()),
                    entry.getValue().size(),
                    recording.time(entry.getValue().first()),
                    recording.time(entry.getValue().last())));
  }

  private static Optional<RecordedQuantity> quantity(Channel channel) {
    return Stream.of(RecordedQuantity.values())
        .filter(quantity -> quantity.channel().equals(Optional.of(channel)))
        .findFirst();
  }
}
