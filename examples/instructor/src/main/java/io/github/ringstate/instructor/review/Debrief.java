package io.github.ringstate.instructor.review;

import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.files.recording.FlightCheck;
import io.github.ringstate.files.recording.RecordedQuantity;
import io.github.ringstate.files.recording.Repair;
import io.github.ringstate.files.recording.RepairKind;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.recording.Channel;
import io.github.ringstate.recording.EncounterFinder;
import io.github.ringstate.recording.FoundEncounter;
import io.github.ringstate.recording.Recording;
import io.github.ringstate.recording.VerticalMotion;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.stream.IntStream;
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

  /**
   * No helicopter sinks faster: in a ring state that is let go on the rate may approach 6000 ft/min
   * (FAA-H-8083-21, Helicopter Flying Handbook, chapter 11, from memory), m/s.
   */
  private static final double FASTEST_DESCENT = Unit.FOOT_PER_MINUTE.toSi(6000);

  /** None climbs faster, twice what trainers do (common practice, no source), m/s. */
  private static final double FASTEST_CLIMB = Unit.FOOT_PER_MINUTE.toSi(4000);

  /** So many standard deviations of a speed may be its error. */
  private static final double DEVIATIONS = 3;

  Debrief {
    descents = List.copyOf(descents);
    repairs = List.copyOf(repairs);
  }

  /**
   * Reviews a flight.
   *
   * @param request what is asked for
   * @return what it shows
   * @throws io.github.ringstate.files.error.UserError if no descent can be seen in the recording
   */
  static Debrief of(ReviewRequest request) {
    Recording recording = request.file().recording();
    FlightCheck.require(request.name(), recording);
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
                smoothed(RepairKind.STEP, motion.steps(), recording),
                tooFast(motion))
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

  /** Heights in a unit that was taken wrongly change faster than a helicopter's can. */
  private static Stream<Repair> tooFast(VerticalMotion motion) {
    Recording recording = motion.recording();
    int[] fast =
        IntStream.range(0, recording.size())
            .filter(
                k -> {
                  double speed = motion.verticalSpeed(k);
                  double error = DEVIATIONS * motion.verticalSpeedDeviation(k);
                  return speed - error > FASTEST_CLIMB || -speed - error > FASTEST_DESCENT;
                })
            .toArray();
    Channel height =
        recording.channels().contains(Channel.HEIGHT) ? Channel.HEIGHT : Channel.PRESSURE_ALTITUDE;
    return fast.length == 0
        ? Stream.empty()
        : Stream.of(
            new Repair(
                RepairKind.TOO_FAST,
                quantity(height),
                fast.length,
                recording.time(fast[0]),
                recording.time(fast[fast.length - 1])));
  }

  /** The smoothed heights, m. */
  DoubleSummaryStatistics heights() {
    return IntStream.range(0, motion.recording().size())
        .mapToDouble(motion::height)
        .summaryStatistics();
  }

  private static Optional<RecordedQuantity> quantity(Channel channel) {
    return Stream.of(RecordedQuantity.values())
        .filter(quantity -> quantity.channel().equals(Optional.of(channel)))
        .findFirst();
  }
}
