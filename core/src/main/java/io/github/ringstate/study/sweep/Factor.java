package io.github.ringstate.study.sweep;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ObjIntConsumer;

/**
 * One of the factors of a sweep: its places times those of the others are the points.
 *
 * @param size how many places it has
 * @param groups groups of what it sets
 * @param setter sets what belongs to a place
 */
record Factor(int size, List<String> groups, ObjIntConsumer<Values> setter) {

  /** Sets what belongs to a place. */
  void set(int place, Values values) {
    setter.accept(values, place);
  }

  static Factor of(Axis axis, int slot) {
    return new Factor(
        axis.size(),
        List.of(Setting.group(axis.key())),
        (values, place) -> {
          if (axis instanceof Axis.Numbers numbers) {
            values.set(slot, numbers.values().get(place));
          } else if (axis instanceof Axis.Range range) {
            values.set(slot, range.value(place));
          } else if (axis instanceof Axis.Words words) {
            values.set(slot, words.words().get(place));
          }
        });
  }

  /** The points of a sample; the spread is not shared between threads, nor is the factor. */
  static Factor of(Sample sample, Spread spread, int[] slots, List<DoubleUnaryOperator> laws) {
    double[] unit = new double[slots.length];
    return new Factor(
        sample.points(),
        sample.dimensions().stream()
            .map(dimension -> Setting.group(dimension.key()))
            .distinct()
            .toList(),
        (values, place) -> {
          spread.at(place, unit);
          for (int i = 0; i < slots.length; i++) {
            values.set(slots[i], laws.get(i).applyAsDouble(unit[i]));
          }
        });
  }

  static Factor ofPilots(int count) {
    return new Factor(count, List.of("pilot"), Values::setPilot);
  }
}
