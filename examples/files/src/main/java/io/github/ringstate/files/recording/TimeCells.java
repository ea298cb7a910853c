package io.github.ringstate.files.recording;

import java.util.stream.Stream;

/**
 * The cells of the time in a CSV file. A time of day and a date with its time cannot be taken for
 * anything else, so that cells that are such count as what they are, whatever unit is named.
 */
final class TimeCells {

  private final DayClock clock = new DayClock();
  private RecordedUnit unit;
  private String unread = "";
  private boolean known;

  /** Cells in the unit that a header or a map names, unless the first that is a time is another. */
  TimeCells(RecordedUnit named) {
    unit = named;
  }

  /** Seconds of a cell on the clock of the file; NaN if it is no time. */
  double seconds(String cell) {
    if (!known && !cell.isBlank()) {
      decide(cell);
    }
    double read = unit.read(cell);
    return unit == RecordedUnit.TIME_OF_DAY ? clock.next(read) : read;
  }

  private void decide(String cell) {
    Stream.of(unit, RecordedUnit.TIME_OF_DAY, RecordedUnit.ISO_TIME)
        .filter(any -> !Double.isNaN(any.read(cell)))
        .findFirst()
        .ifPresentOrElse(
            found -> {
              unit = found;
              known = true;
            },
            () -> unread = unread.isEmpty() ? cell : unread);
  }

  RecordedUnit unit() {
    return unit;
  }

  /** The first cell that is no time if no other is one either; else empty. */
  String unread() {
    return known ? "" : unread;
  }
}
