package io.github.ringstate.files.recording;

import io.github.ringstate.recording.Channel;
import io.github.ringstate.recording.Recording;
import java.util.EnumMap;
import java.util.Map;

/** Readings in the order of their times: one array for the times and one for each quantity. */
final class Columns {

  private static final double[] NONE = {};

  private final double[] time;
  private final Map<RecordedQuantity, double[]> values = new EnumMap<>(RecordedQuantity.class);

  /** Takes the readings of some rows, with times less that of a moment. */
  Columns(Readings readings, int[] rows, double moment) {
    time = new double[rows.length];
    for (int k = 0; k < rows.length; k++) {
      time[k] = readings.time(rows[k]) - moment;
    }
    for (RecordedQuantity quantity : readings.quantities()) {
      double[] column = new double[rows.length];
      boolean any = false;
      for (int k = 0; k < rows.length; k++) {
        column[k] = readings.value(quantity, rows[k]);
        any |= !Double.isNaN(column[k]);
      }
      if (any) {
        values.put(quantity, column);
      }
    }
  }

  int size() {
    return time.length;
  }

  double time(int k) {
    return time[k];
  }

  boolean has(RecordedQuantity quantity) {
    return values.containsKey(quantity);
  }

  /** The values of a quantity that is there; changes to them stay. */
  double[] get(RecordedQuantity quantity) {
    return values.getOrDefault(quantity, NONE);
  }

  void put(RecordedQuantity quantity, double[] column) {
    values.put(quantity, column);
  }

  Recording recording() {
    Map<Channel, double[]> channels = new EnumMap<>(Channel.class);
    values.forEach(
        (quantity, column) ->
            quantity.channel().ifPresent(channel -> channels.put(channel, column)));
    return new Recording(time, channels);
  }
}
