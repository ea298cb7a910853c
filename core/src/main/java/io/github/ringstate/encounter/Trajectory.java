package io.github.ringstate.encounter;

import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.integrate.Sampler;
import java.util.Objects;
import java.util.function.BiConsumer;

/**
 * Takes samples of a flight at whole multiples of a time step, each with the name of its phase, and
 * hands them on at once; nothing is kept. {@link Encounter#record()} keeps a flight.
 *
 * <p>It may be used for one flight after the other, each from its start, and by one thread at a
 * time.
 */
public final class Trajectory {

  private final double step;
  private final BiConsumer<String, Motion> sink;
  private String phase = "";

  /**
   * Creates a trajectory that nothing has been taken of yet.
   *
   * @param step the time between samples, s; positive
   * @param sink takes each sample with the name of its phase; the motion is valid during the call
   *     only
   */
  public Trajectory(double step, BiConsumer<String, Motion> sink) {
    this.step = step;
    this.sink = Objects.requireNonNull(sink, "sink");
    begin(0);
  }

  /** Begins a flight, of which samples are taken up to a time, s. */
  Sampler<Motion> begin(double end) {
    return new Sampler<>(
        step,
        motion -> {
          if (motion.time() <= end) {
            sink.accept(phase, motion);
          }
        });
  }

  /** Names the phase of the samples that follow. */
  void phase(String name) {
    phase = name;
  }
}
