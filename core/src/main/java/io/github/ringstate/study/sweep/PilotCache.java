package io.github.ringstate.study.sweep;

import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.pilot.Recognition;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import java.util.List;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.Supplier;

/**
 * What the pilots of a scene do, kept for the next scene: the same pilots fly every one, and
 * drawing them takes longer than flying. Safe to share between threads, which at worst draw a pilot
 * twice.
 */
final class PilotCache {

  /** Some tens of megabytes at most. */
  private static final long MOST = 1 << 16;

  private final AtomicReferenceArray<Pilot> pilots;

  /**
   * What a pilot does, and when.
   *
   * @param numbers the numbers of the technique that have a column, NaN where it has none
   */
  @SuppressWarnings("ArrayRecordComponent") // never compared, never changed
  record Pilot(Recovery recovery, Recognition recognition, double[] numbers) {

    static Pilot of(Encounter encounter, List<String> keys) {
      double[] numbers = new double[keys.size()];
      ParameterSet all = encounter.recovery().numbers();
      for (int i = 0; i < numbers.length; i++) {
        numbers[i] = number(all, keys.get(i));
      }
      return new Pilot(encounter.recovery(), encounter.recognition(), numbers);
    }

    private static double number(ParameterSet numbers, String key) {
      for (Parameter parameter : numbers.parameters()) {
        if (parameter.key().equals(key)) {
          return numbers.get(parameter);
        }
      }
      return Double.NaN;
    }
  }

  PilotCache(Cursor cursor) {
    boolean pays = cursor.pilotsApart() && cursor.count() > cursor.perScene();
    pilots =
        new AtomicReferenceArray<>(pays && cursor.perScene() <= MOST ? (int) cursor.perScene() : 0);
  }

  Pilot get(long placeInScene, Supplier<Pilot> draw) {
    if (placeInScene >= pilots.length()) {
      return draw.get();
    }
    Pilot pilot = pilots.get((int) placeInScene);
    if (pilot == null) {
      pilot = draw.get();
      pilots.set((int) placeInScene, pilot);
    }
    return pilot;
  }
}
