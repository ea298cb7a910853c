package io.github.ringstate.files.recording;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.toml.TextFile;
import io.github.ringstate.recording.Channel;
import io.github.ringstate.recording.Recording;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.temporal.Temporal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A recorded flight from a file.
 *
 * @param format how it was written down
 * @param recording the flight; its times are those of the file if that counts seconds, else seconds
 *     since the first reading
 * @param start when time zero was: an {@link Instant}, or a {@link java.time.LocalTime} if the file
 *     gives the time of day alone; empty if it does not say
 * @param columns the columns of a CSV file that were taken, each with the unit in which it was
 *     read; empty for other formats
 * @param repairs what was left out or mended, in the order of {@link RepairKind}
 */
public record RecordingFile(
    RecordingFormat format,
    Recording recording,
    Optional<Temporal> start,
    ColumnMap columns,
    List<Repair> repairs) {

  /** Bounds what is read by mistake: 5 hours of ten points a second fill half of it. */
  private static final int LARGEST = 96 << 20;

  private static final double DAY = 86_400;

  /** Copies the list. */
  public RecordingFile {
    repairs = List.copyOf(repairs);
  }

  /**
   * Reads a recorded flight.
   *
   * @param name the file, as the user named it
   * @param columns what the columns of a CSV file hold; other formats pass over it
   * @return what it holds
   * @throws UserError if the file cannot be read, holds no flight, or contradicts itself
   */
  public static RecordingFile read(String name, ColumnMap columns) {
    return of(name, TextFile.bytes(name, "a recording", LARGEST), columns);
  }

  /**
   * Reads a recorded flight from what a file holds.
   *
   * @param name the file's name, for messages
   * @param content its content
   * @param columns what the columns of a CSV file hold; other formats pass over it
   * @return what it holds
   * @throws UserError if it holds no flight, or contradicts itself
   */
  public static RecordingFile of(String name, byte[] content, ColumnMap columns) {
    String text = text(content);
    RecordingFormat format = RecordingFormat.of(text);
    Readings readings = new Readings(name);
    double midnight = Double.NaN;
    ColumnMap taken = ColumnMap.BY_NAMES;
    switch (format) {
      case GPX -> GpxReadings.read(text, readings);
      case NMEA -> midnight = NmeaReadings.read(text, readings);
      case CSV -> taken = CsvReadings.read(text, columns, readings);
    }
    int[] rows = TimeOrder.of(readings);
    if (rows.length == 0) {
      throw UserError.file(
          name, "holds no reading with a time (read as " + format.label() + "): " + format.needs());
    }
    double first = readings.time(rows[0]);
    // numbers of some size are moments; a clock that counts seconds is kept as it is
    boolean moments = first > 3650 * DAY;
    boolean shifted = moments || format != RecordingFormat.CSV || isOfDay(taken);
    Columns mended = new Columns(readings, rows, shifted ? first : 0);
    int placed = Places.addVelocity(mended);
    if (placed > 0) {
      readings.note(
          RepairKind.FROM_PLACES,
          RecordedQuantity.GROUND_SPEED,
          placed,
          rows[0],
          rows[rows.length - 1]);
    }
    new UnitCheck(mended, name).check();
    Spacing spacing = new Spacing(mended, readings, rows);
    spacing.gaps();
    spacing.standing();
    spacing.slow();
    Recording recording = mended.recording();
    refuseBlind(name, format, recording);
    boolean ofDay = format == RecordingFormat.NMEA || isOfDay(taken);
    return new RecordingFile(
        format,
        recording,
        ofDay
            ? Optional.of(ofDay(midnight, first))
            : Optional.of(first).filter(any -> moments).map(Moments::moment),
        taken,
        readings.repairs(times(readings, rows, recording)));
  }

  private static boolean isOfDay(ColumnMap taken) {
    ColumnMap.Column time = taken.columns().get(RecordedQuantity.TIME);
    return time != null && time.unit() == RecordedUnit.TIME_OF_DAY;
  }

  /** The moment so long after a midnight, of which the date may not be known. */
  private static Temporal ofDay(double midnight, double seconds) {
    return Double.isNaN(midnight) ? Moments.timeOfDay(seconds) : Moments.moment(midnight + seconds);
  }

  /** Nothing of a descent can be said without a height. */
  private static void refuseBlind(String name, RecordingFormat format, Recording recording) {
    if (!recording.channels().contains(Channel.HEIGHT)
        && !recording.channels().contains(Channel.PRESSURE_ALTITUDE)) {
      throw UserError.file(
          name, "holds no height (read as " + format.label() + "): " + format.needs());
    }
  }

  /** For each reading of the file the time of the first that is kept from there on. */
  private static double[] times(Readings readings, int[] rows, Recording recording) {
    double[] times = new double[Math.max(1, readings.size())];
    Arrays.fill(times, Double.NaN);
    for (int k = 0; k < rows.length; k++) {
      times[rows[k]] = recording.time(k);
    }
    double next = recording.time(rows.length - 1);
    for (int row = times.length - 1; row >= 0; row--) {
      next = Double.isNaN(times[row]) ? next : times[row];
      times[row] = next;
    }
    return times;
  }

  /** Bytes that are no character do not make the rest unreadable. */
  private static String text(byte[] content) {
    boolean wide =
        content.length > 1
            && (content[0] & 0xFF) + (content[1] & 0xFF) == 0xFE + 0xFF
            && Math.abs(content[0] - content[1]) == 1; // the mark of UTF-16 in either order
    Charset charset = wide ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8;
    String text = new String(content, charset);
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }
}
