package io.github.ringstate.files.recording;

import io.github.ringstate.quantity.Unit;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Readings from sentences of NMEA 0183 (National Marine Electronics Association, Standard for
 * Interfacing Marine Electronic Devices; fields from memory): GGA for time, place and height above
 * mean sea level, RMC for date, place, speed and track, VTG for speed and track. Sentences of one
 * time are one reading.
 */
final class NmeaReadings {

  /** Years of two digits are those from 1980, when the counting of satellite time begins. */
  private static final int FIRST_YEAR = 1980;

  /** Hours, minutes and seconds with two digits each, and a fraction. */
  private static final Pattern TIME_OF_DAY = Pattern.compile("\\s*\\d{6}(\\.\\d*)?\\s*");

  private final Readings readings;

  /** The clock of the reading that is being put together. */
  private final DayClock clock = new DayClock();

  /** Midnight of the day, s since 1970; NaN until a date is read. */
  private double date = Double.NaN;

  private NmeaReadings(Readings readings) {
    this.readings = readings;
  }

  /**
   * Reads all of a text.
   *
   * @return midnight of the first day, s since 1970, from which the readings count; NaN if no date
   *     is given
   */
  static double read(String text, Readings readings) {
    NmeaReadings sentences = new NmeaReadings(readings);
    text.lines().forEach(sentences::line);
    return sentences.date;
  }

  private void line(String line) {
    String bare = line.strip();
    int star = bare.lastIndexOf('*');
    if (!bare.startsWith("$")) {
      if (!bare.isEmpty()) {
        readings.note(RepairKind.UNREADABLE, null);
      }
      return;
    }
    if (star < 0 || !bare.substring(star + 1).equalsIgnoreCase(checksum(bare, star))) {
      readings.note(RepairKind.CHECKSUM, null);
      return;
    }
    String[] field = bare.substring(1, star).split(",", -1);
    if (field[0].endsWith("GGA") && field.length > 10) {
      gga(field);
    } else if (field[0].endsWith("RMC") && field.length > 9) {
      rmc(field);
    } else if (field[0].endsWith("VTG") && field.length > 7) {
      vtg(field);
    }
  }

  /** The exclusive or of all characters between the dollar and the star. */
  static String checksum(String sentence, int star) {
    int sum = 0;
    for (int i = 1; i < star; i++) {
      sum ^= sentence.charAt(i);
    }
    return String.format(Locale.ROOT, "%02X", sum);
  }

  private void gga(String... field) {
    if (!begin(field[1], !field[6].equals("0") && !field[6].isEmpty())) {
      return;
    }
    place(field, 2);
    if (field[10].equals("M")) {
      put(RecordedQuantity.HEIGHT, Numerals.number(field[9]), field[9]);
    }
  }

  private void rmc(String... field) {
    if (!begin(field[1], field[2].equals("A"))) {
      return;
    }
    if (Double.isNaN(date)) {
      date = midnight(field[9]) - clock.midnights() * DayClock.DAY;
    }
    place(field, 3);
    put(RecordedQuantity.GROUND_SPEED, Unit.KNOT.toSi(Numerals.number(field[7])), field[7]);
    put(RecordedQuantity.TRACK, Unit.DEGREE.toSi(Numerals.number(field[8])), field[8]);
  }

  /** It has no time of its own and belongs to the reading before it. */
  private void vtg(String... field) {
    if (Double.isNaN(clock.timeOfDay()) || readings.size() == 0) {
      readings.note(RepairKind.NO_TIME, null);
      return;
    }
    put(RecordedQuantity.TRACK, Unit.DEGREE.toSi(Numerals.number(field[1])), field[1]);
    put(RecordedQuantity.GROUND_SPEED, Unit.KNOT.toSi(Numerals.number(field[5])), field[5]);
  }

  /** The first sentence of a time that says something counts. */
  private void put(RecordedQuantity quantity, double value, String text) {
    if (Double.isNaN(value)) {
      if (!text.isBlank()) {
        readings.note(RepairKind.NOT_A_NUMBER, quantity);
      }
    } else if (Double.isNaN(readings.value(quantity, readings.size() - 1))) {
      readings.put(quantity, value);
    }
  }

  /** Goes on with the reading of a time, or begins it; false if time or position is none. */
  private boolean begin(String text, boolean fixed) {
    double digits = Numerals.number(text);
    int whole = (int) digits;
    double read = whole / 10_000 * 3600 + whole / 100 % 100 * 60 + whole % 100 + (digits - whole);
    // two digits that are lost may leave the checksum as it was
    if (!(TIME_OF_DAY.matcher(text).matches() && digits >= 0 && read < DayClock.DAY + 1)) {
      readings.note(RepairKind.NO_TIME, null);
      return false;
    }
    if (read != clock.timeOfDay()) {
      readings.add(clock.next(read));
    }
    if (!fixed) {
      readings.note(RepairKind.NO_FIX, null);
    }
    return fixed;
  }

  private void place(String[] field, int from) {
    put(RecordedQuantity.LATITUDE, angle(field[from], field[from + 1], "S"), field[from]);
    put(RecordedQuantity.LONGITUDE, angle(field[from + 2], field[from + 3], "W"), field[from + 2]);
  }

  /** Degrees and minutes in one number, dddmm.mmm. */
  private static double angle(String text, String side, String negative) {
    double value = Numerals.number(text);
    double degrees = Math.floor(value / 100);
    double angle = degrees + (value - 100 * degrees) / 60;
    return Unit.DEGREE.toSi(side.equals(negative) ? -angle : angle);
  }

  private static double midnight(String ddmmyy) {
    double number = Numerals.number(ddmmyy);
    if (!(number > 0)) {
      return Double.NaN;
    }
    int whole = (int) number;
    int year = whole % 100;
    try {
      return LocalDate.of(
              year + (year < FIRST_YEAR % 100 ? 2000 : 1900), whole / 100 % 100, whole / 10_000)
          .atStartOfDay(ZoneOffset.UTC)
          .toEpochSecond();
    } catch (DateTimeException none) {
      return Double.NaN;
    }
  }
}
