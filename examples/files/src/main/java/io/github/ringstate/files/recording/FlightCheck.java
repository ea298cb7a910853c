package io.github.ringstate.files.recording;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.recording.Channel;
import io.github.ringstate.recording.Recording;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Refuses recordings in which no descent can be seen, whatever was flown. */
public final class FlightCheck {

  private static final int FEWEST = 10;

  /** An encounter takes some seconds; what is between readings further apart is not known, s. */
  private static final double LONGEST = 5;

  /** No instrument writes more often, s. */
  private static final double SHORTEST = 0.001;

  private FlightCheck() {}

  /**
   * Refuses what shows no descent.
   *
   * @param name the file, for the message
   * @param recording what it holds
   * @throws UserError if it has too few readings, readings too far apart or too near, no velocity
   *     over the ground, or a height that never changes
   */
  public static void require(String name, Recording recording) {
    for (Channel needed : List.of(Channel.GROUND_SPEED, Channel.TRACK)) {
      if (!recording.channels().contains(needed)) {
        throw UserError.file(
            name,
            "holds neither ground speed with track nor latitude with longitude, without which"
                + " nothing can be said of the airspeed: of CSV, say which columns they are by "
                + ColumnMap.OPTION
                + " ground_speed=COLUMN:UNIT,track=COLUMN:UNIT; of NMEA 0183, record RMC or VTG;"
                + " of GPX, points with lat and lon");
      }
    }
    if (recording.size() < FEWEST) {
      throw UserError.file(
          name,
          "holds "
              + recording.size()
              + (recording.size() == 1
                  ? " reading with a time of its own"
                  : " readings with times of their own")
              + "; a descent takes "
              + FEWEST
              + " or more");
    }
    double interval = interval(recording);
    if (!(interval >= SHORTEST && interval <= LONGEST)) {
      throw UserError.file(
          name,
          "has readings "
              + Decimals.brief(interval)
              + " s apart; allowed: "
              + SHORTEST
              + " to "
              + Decimals.brief(LONGEST)
              + " s. Are its times in the unit that is said");
    }
    boolean moves =
        List.of(Channel.HEIGHT, Channel.PRESSURE_ALTITUDE).stream()
            .anyMatch(channel -> moves(recording, channel));
    if (!moves) {
      throw UserError.file(
          name, "holds a height that never changes, in which no descent can be seen");
    }
  }

  /** Half of the readings are nearer to the next. */
  private static double interval(Recording recording) {
    double[] intervals =
        IntStream.range(1, recording.size())
            .mapToDouble(k -> recording.time(k) - recording.time(k - 1))
            .toArray();
    Arrays.sort(intervals);
    return intervals[intervals.length / 2];
  }

  private static boolean moves(Recording recording, Channel channel) {
    return IntStream.range(0, recording.size())
            .mapToDouble(k -> recording.value(channel, k))
            .filter(value -> !Double.isNaN(value))
            .distinct()
            .limit(2)
            .count()
        > 1;
  }
}
