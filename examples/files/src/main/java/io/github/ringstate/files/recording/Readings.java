package io.github.ringstate.files.recording;

import io.github.ringstate.files.error.UserError;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Readings in the order of a file, in SI units, and what was found wrong with them on the way. A
 * reading without a time has NaN for it.
 */
final class Readings {

  /** More than 11 hours at ten readings a second; smoothing them needs some 500 bytes for each. */
  static final int MOST = 400_000;

  private static final int FIRST_ROOM = 1024;

  private final String file;
  private final Map<RecordedQuantity, double[]> values = new EnumMap<>(RecordedQuantity.class);
  private final Map<RepairKind, Map<Optional<RecordedQuantity>, Tally>> tallies =
      new EnumMap<>(RepairKind.class);
  private double[] time = new double[FIRST_ROOM];
  private int size;

  /** One sort of finding: how often, and beside which readings. */
  private static final class Tally {
    private int count;
    private int first;
    private int last;
  }

  Readings(String file) {
    this.file = file;
  }

  String file() {
    return file;
  }

  int size() {
    return size;
  }

  double time(int row) {
    return time[row];
  }

  /** Begins a reading. */
  void add(double at) {
    if (size == MOST) {
      throw UserError.file(
          file, "holds more than " + MOST + " readings; cut out the part of the flight");
    }
    if (size == time.length) {
      int room = Math.min(MOST, 2 * size);
      time = Arrays.copyOf(time, room);
      values.replaceAll((quantity, column) -> grown(column, room));
    }
    time[size++] = at;
  }

  private double[] grown(double[] column, int room) {
    double[] wider = Arrays.copyOf(column, room);
    Arrays.fill(wider, column.length, room, Double.NaN);
    return wider;
  }

  /** A value of the reading begun last; what cannot be a reading is left out and noted. */
  void put(RecordedQuantity quantity, double value) {
    if (Double.isNaN(value)) {
      return;
    }
    if (!quantity.holds(value)) {
      note(RepairKind.IMPLAUSIBLE, quantity);
      return;
    }
    column(quantity)[size - 1] = value;
  }

  private double[] column(RecordedQuantity quantity) {
    return values.computeIfAbsent(
        quantity,
        any -> {
          double[] empty = new double[time.length];
          Arrays.fill(empty, Double.NaN);
          return empty;
        });
  }

  double value(RecordedQuantity quantity, int row) {
    double[] column = values.get(quantity);
    return column == null ? Double.NaN : column[row];
  }

  /** Fills what a reading lacks from another of the same time; false if it has all that too. */
  boolean merge(int into, int from) {
    boolean filled = false;
    for (double[] column : values.values()) {
      if (Double.isNaN(column[into]) && !Double.isNaN(column[from])) {
        column[into] = column[from];
        filled = true;
      }
    }
    return filled;
  }

  /** Whether two readings say the same. */
  boolean isSame(int one, int other) {
    return values.values().stream()
        .allMatch(column -> Double.compare(column[one], column[other]) == 0);
  }

  Set<RecordedQuantity> quantities() {
    return values.keySet();
  }

  /** Notes a finding beside the reading that comes next, or is being read. */
  void note(RepairKind kind, @Nullable RecordedQuantity quantity) {
    note(kind, quantity, 1, Math.max(0, size - 1), Math.max(0, size - 1));
  }

  void note(RepairKind kind, @Nullable RecordedQuantity quantity, int count, int first, int last) {
    Tally tally =
        tallies
            .computeIfAbsent(kind, any -> new LinkedHashMap<>())
            .computeIfAbsent(Optional.ofNullable(quantity), any -> new Tally());
    tally.first = tally.count == 0 ? first : Math.min(first, tally.first);
    tally.last = tally.count == 0 ? last : Math.max(last, tally.last);
    tally.count += count;
  }

  /** The findings, by the times that readings beside them have in the end. */
  List<Repair> repairs(double[] timeOfRow) {
    List<Repair> all = new ArrayList<>();
    tallies.forEach(
        (kind, byQuantity) ->
            byQuantity.forEach(
                (quantity, tally) ->
                    all.add(
                        new Repair(
                            kind,
                            quantity,
                            tally.count,
                            timeOfRow[tally.first],
                            timeOfRow[tally.last]))));
    return all;
  }
}
