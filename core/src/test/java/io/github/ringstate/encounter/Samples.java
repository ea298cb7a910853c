package io.github.ringstate.encounter;

import io.github.ringstate.dynamics.Motion;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** What is seen at equal steps along a precise flight. */
final class Samples {

  private Samples() {}

  static <T> List<T> of(Encounter encounter, double step, Function<Motion, T> seen) {
    return in("", encounter, step, seen);
  }

  /** The same in one phase alone, or in all if its name is empty. */
  static <T> List<T> in(String only, Encounter encounter, double step, Function<Motion, T> seen) {
    List<T> samples = new ArrayList<>();
    Trajectory trajectory =
        new Trajectory(
            step,
            (phase, motion) -> {
              if (only.isEmpty() || phase.equals(only)) {
                samples.add(seen.apply(motion));
              }
            });
    encounter.fly(Simulator.precise(), trajectory);
    return samples;
  }
}
