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
import java.util.Collections;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
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

  /**
   * From such steps of the heights on it is to be said why losses are so unsure where no vertical
   * speed is recorded, m (assumed). Of fifty invented descents, read five times a second in a wind
   * that is known, 48 are found in fine heights, 45 in steps of 10 m and 40 of 30 m, and losses are
   * off by 5, 11 and 39 ft (root mean square; 5, 15 and 41 ft are stated).
   */
  private static final double COARSE = 9;

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
    return fast.length == 0
        ? Stream.empty()
        : Stream.of(
            new Repair(
                RepairKind.TOO_FAST,
                quantity(height(recording)),
                fast.length,
                recording.time(fast[0]),
                recording.time(fast[fast.length - 1])));
  }

  /**
   * A step of the level from which heights count.
   *
   * @param time of the first reading after it, s
   * @param change of the level, m, positive up
   */
  record LevelStep(double time, double change) {}

  /** The steps of the level of the heights that are shown. */
  List<LevelStep> levelSteps() {
    Channel height = height(motion.recording());
    return motion.steps().getOrDefault(height, Collections.emptySortedSet()).stream()
        .map(k -> new LevelStep(motion.recording().time(k), motion.levelChange(height, k)))
        .toList();
  }

  /** In what steps heights are written, m, if so coarsely that it is to be said. */
  OptionalDouble coarse() {
    Recording recording = motion.recording();
    if (recording.channels().contains(Channel.VERTICAL_SPEED)) {
      return OptionalDouble.empty();
    }
    double step = recording.heightResolution();
    return step >= COARSE ? OptionalDouble.of(step) : OptionalDouble.empty();
  }

  private static Channel height(Recording recording) {
    return recording.channels().contains(Channel.HEIGHT)
        ? Channel.HEIGHT
        : Channel.PRESSURE_ALTITUDE;
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
