package io.github.ringstate.encounter;

import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.integrate.Sampler;
import java.util.function.BiConsumer;

/** Takes samples of a flight at whole multiples of a time step, each with the name of its phase. */
public final class Trajectory {

  private final Sampler<Motion> sampler;
  private String phase = "";

  /**
   * Creates a trajectory that nothing has been taken of yet.
   *
   * @param step the time between samples, s; positive
   * @param sink takes each sample with the name of its phase; the motion is valid during the call
   *     only
   */
  public Trajectory(double step, BiConsumer<String, Motion> sink) {
    sampler = new Sampler<>(step, motion -> sink.accept(phase, motion));
  }

  /** Names the phase of the samples that follow. */
  void phase(String name) {
    phase = name;
  }

  Sampler<Motion> sampler() {
    return sampler;
  }
}
