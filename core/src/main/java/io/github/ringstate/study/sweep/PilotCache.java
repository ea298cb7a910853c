package io.github.ringstate.study.sweep;

import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.pilot.Recognition;
import io.github.ringstate.pilot.Recovery;
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

  /** What a pilot does, and when. */
  record Pilot(Recovery recovery, Recognition recognition) {

    static Pilot of(Encounter encounter) {
      return new Pilot(encounter.recovery(), encounter.recognition());
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
