package io.github.ringstate.files.recording;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.quantity.Unit;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.Optional;

/**
 * Finds a unit that was named wrongly, where two quantities of a recording say the same in two
 * ways: a height changes as fast as the vertical speed says, and as another height does. If the
 * ratio of the two is that of two units, one of them is wrong, and which one cannot be seen.
 *
 * @param columns the readings
 * @param file the file's name, for messages
 */
record UnitCheck(Columns columns, String file) {

  /** Changes are compared over so long, s. */
  private static final double STRETCH = 10;

  /** Smaller changes say too little, m. */
  private static final double SMALLEST = 10;

  /** With fewer stretches nothing is said. */
  private static final int FEWEST = 3;

  /** A ratio this near to that of two units is one; feet and metres are 3.28 apart. */
  private static final double NEAR = 0.15;

  /** Through so much another instrument may go while a height stands still, m. */
  private static final double STANDING = 30;

  /** Refuses a recording in which two quantities differ as two units do. */
  void check() {
    for (RecordedQuantity height :
        new RecordedQuantity[] {RecordedQuantity.HEIGHT, RecordedQuantity.PRESSURE_ALTITUDE}) {
      if (columns.has(height) && columns.has(RecordedQuantity.VERTICAL_SPEED)) {
        double[] way = integral(columns.get(RecordedQuantity.VERTICAL_SPEED));
        refuse(ratio(columns.get(height), way), height, RecordedQuantity.VERTICAL_SPEED);
        refuseStanding(height, RecordedQuantity.VERTICAL_SPEED, way);
      }
    }
    if (columns.has(RecordedQuantity.HEIGHT) && columns.has(RecordedQuantity.PRESSURE_ALTITUDE)) {
      double[] height = columns.get(RecordedQuantity.HEIGHT);
      double[] altitude = columns.get(RecordedQuantity.PRESSURE_ALTITUDE);
      refuse(ratio(height, altitude), RecordedQuantity.HEIGHT, RecordedQuantity.PRESSURE_ALTITUDE);
      refuseStanding(RecordedQuantity.HEIGHT, RecordedQuantity.PRESSURE_ALTITUDE, altitude);
      refuseStanding(RecordedQuantity.PRESSURE_ALTITUDE, RecordedQuantity.HEIGHT, height);
    }
  }

  /** An instrument that stands still beside one that moves is broken. */
  private void refuseStanding(RecordedQuantity still, RecordedQuantity moving, double... way) {
    DoubleSummaryStatistics stood = range(columns.get(still));
    DoubleSummaryStatistics moved = range(way);
    double through = moved.getMax() - moved.getMin();
    if (stood.getMin() == stood.getMax() && stood.getCount() >= FEWEST && through > STANDING) {
      throw UserError.file(
          file,
          "gives "
              + still.key()
              + " as "
              + Decimals.fixed(stood.getMin(), 1)
              + " m all the time, while "
              + moving.key()
              + " goes through "
              + Decimals.fixed(through, 0)
              + " m; a height that does not change goes with no more than "
              + Decimals.fixed(STANDING, 0)
              + " m");
    }
  }

  private static DoubleSummaryStatistics range(double... values) {
    return Arrays.stream(values).filter(value -> !Double.isNaN(value)).summaryStatistics();
  }

  private void refuse(Optional<Double> ratio, RecordedQuantity one, RecordedQuantity other) {
    if (ratio.isEmpty()) {
      return;
    }
    if (ratio.get() < -NEAR) {
      throw UserError.file(
          file,
          "gives "
              + one.key()
              + " and "
              + other.key()
              + " with opposite signs: the first changes "
              + Decimals.fixed(ratio.get(), 3)
              + " times as fast as the second; heights and vertical speeds are positive upwards");
    }
    double foot = Unit.FOOT.toSi(1);
    double perMinute = Unit.FOOT_PER_MINUTE.toSi(1);
    double knot = Unit.KNOT.toSi(1);
    for (double units :
        new double[] {foot, perMinute, perMinute / foot, knot, knot / foot, perMinute / knot}) {
      for (double wrong : new double[] {units, 1 / units}) {
        if (Math.abs(ratio.get() / wrong - 1) < NEAR) {
          throw UserError.file(
              file,
              "gives "
                  + one.key()
                  + " or "
                  + other.key()
                  + " in another unit than is said: the first changes "
                  + Decimals.fixed(ratio.get(), 3)
                  + " times as fast as the second; of CSV, name the right unit by "
                  + ColumnMap.OPTION
                  + ", or leave the wrong one out of the map");
        }
      }
    }
  }

  /** The middle of the ratios of changes; empty if there are too few to tell. */
  private Optional<Double> ratio(double[] one, double[] other) {
    double[] found = new double[columns.size()];
    int count = 0;
    int from = -1;
    for (int k = 0; k < columns.size(); k++) {
      if (Double.isNaN(one[k]) || Double.isNaN(other[k])) {
        continue;
      }
      from = from < 0 ? k : from;
      if (columns.time(k) - columns.time(from) < STRETCH) {
        continue;
      }
      double first = one[k] - one[from];
      double second = other[k] - other[from];
      boolean gap = columns.time(k) - columns.time(from) > 2 * STRETCH;
      if (!gap && Math.abs(second) * Math.abs(first) > SMALLEST * SMALLEST / 3) {
        found[count++] = first / second;
      }
      from = k;
    }
    if (count < FEWEST) {
      return Optional.empty();
    }
    Arrays.sort(found, 0, count);
    return Optional.of(found[count / 2]);
  }

  /** The way that a speed takes, by the trapezium rule. */
  private double[] integral(double[] speed) {
    double[] way = new double[speed.length];
    int before = -1;
    double sum = 0;
    Arrays.fill(way, Double.NaN);
    for (int k = 0; k < speed.length; k++) {
      if (Double.isNaN(speed[k])) {
        continue;
      }
      if (before >= 0) {
        sum += (speed[k] + speed[before]) / 2 * (columns.time(k) - columns.time(before));
      }
      way[k] = sum;
      before = k;
    }
    return way;
  }
}
