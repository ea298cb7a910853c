package io.github.ringstate.study.sweep;

import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** One of the factors of a sweep: its places times those of the others are the points. */
interface Factor {

  /** How many places it has. */
  int size();

  /** Groups of what it sets. */
  List<String> groups();

  /** Sets what belongs to a place. */
  void set(int place, Values values);

  static Factor of(Axis axis, int slot) {
    return new Factor() {
      @Override
      public int size() {
        return axis.size();
      }

      @Override
      public List<String> groups() {
        return List.of(Setting.group(axis.key()));
      }

      @Override
      public void set(int place, Values values) {
        if (axis instanceof Axis.Numbers numbers) {
          values.set(slot, numbers.values().get(place));
        } else if (axis instanceof Axis.Range range) {
          values.set(slot, range.value(place));
        } else if (axis instanceof Axis.Words words) {
          values.set(slot, words.words().get(place));
        }
      }
    };
  }

  /** The points of a sample; the spread is not shared between threads, nor is the factor. */
  static Factor of(Sample sample, Spread spread, int[] slots, List<DoubleUnaryOperator> laws) {
    double[] unit = new double[slots.length];
    return new Factor() {
      @Override
      public int size() {
        return sample.points();
      }

      @Override
      public List<String> groups() {
        return sample.dimensions().stream()
            .map(dimension -> Setting.group(dimension.key()))
            .distinct()
            .toList();
      }

      @Override
      public void set(int place, Values values) {
        spread.at(place, unit);
        for (int i = 0; i < slots.length; i++) {
          values.set(slots[i], laws.get(i).applyAsDouble(unit[i]));
        }
      }
    };
  }

  static Factor ofPilots(int count) {
    return new Factor() {
      @Override
      public int size() {
        return count;
      }

      @Override
      public List<String> groups() {
        return List.of("pilot");
      }

      @Override
      public void set(int place, Values values) {
        values.setPilot(place);
      }
    };
  }
}
