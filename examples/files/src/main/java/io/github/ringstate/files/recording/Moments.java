package io.github.ringstate.files.recording;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;

/** Dates and times by ISO 8601. */
final class Moments {

  private static final int LONGEST = 40;

  private Moments() {}

  /** Seconds since the beginning of 1970, UTC; NaN if a text is no moment. */
  static double seconds(String text) {
    String bare = text.strip();
    if (bare.isEmpty() || bare.length() > LONGEST) {
      return Double.NaN;
    }
    try {
      TemporalAccessor read =
          DateTimeFormatter.ISO_DATE_TIME.parseBest(
              bare.replace(' ', 'T'), OffsetDateTime::from, LocalDateTime::from);
      Instant moment =
          read instanceof OffsetDateTime offset
              ? offset.toInstant()
              : ((LocalDateTime) read).toInstant(ZoneOffset.UTC);
      return moment.getEpochSecond() + moment.getNano() * 1e-9;
    } catch (DateTimeException none) {
      return Double.NaN;
    }
  }

  /** The moment of {@link #seconds}, to the millisecond. */
  static Instant moment(double seconds) {
    return Instant.ofEpochMilli(Math.round(seconds * 1e3));
  }

  /** The time of day so long after a midnight, to the millisecond. */
  static LocalTime timeOfDay(double seconds) {
    long ofDay = Math.floorMod(Math.round(seconds * 1e3), Math.round(DayClock.DAY * 1e3));
    return LocalTime.ofNanoOfDay(ofDay * 1_000_000);
  }
}
