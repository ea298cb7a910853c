package io.github.ringstate.files.recording;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A clock that gives the time of day, and goes on over midnight: of two readings in a row that are
 * more than half a day apart the second belongs to the next day, or to the one before.
 */
final class DayClock {

  /** Length of a day, s. */
  static final double DAY = 86_400;

  /** Hours, minutes and seconds, with a leap second, a fraction and the mark of UTC. */
  private static final Pattern TIME =
      Pattern.compile("([01]?\\d|2[0-3]):([0-5]\\d):([0-5]\\d|60)([.,]\\d{1,9})?Z?");

  private double timeOfDay = Double.NaN;
  private int midnights;

  /** Seconds since midnight of a text such as 23:58:40.5; NaN if it is no such time. */
  static double seconds(String text) {
    Matcher time = TIME.matcher(text.strip());
    if (!time.matches()) {
      return Double.NaN;
    }
    String fraction = time.group(4);
    return Integer.parseInt(time.group(1)) * 3600
        + Integer.parseInt(time.group(2)) * 60
        + Integer.parseInt(time.group(3))
        + (fraction == null ? 0 : Double.parseDouble("0." + fraction.substring(1)));
  }

  /**
   * The next reading.
   *
   * @param read its time of day, s; NaN passes through and changes nothing
   * @return seconds since midnight of the first day
   */
  double next(double read) {
    if (Double.isNaN(read)) {
      return read;
    }
    if (read - timeOfDay < -DAY / 2) {
      midnights++;
    } else if (read - timeOfDay > DAY / 2) {
      midnights--;
    }
    timeOfDay = read;
    return midnights * DAY + read;
  }

  /** Time of day of the last reading, s; NaN before the first. */
  double timeOfDay() {
    return timeOfDay;
  }

  /** How many midnights went by. */
  int midnights() {
    return midnights;
  }
}
