package io.github.ringstate.benchmarks;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.study.PilotStudy;
import io.github.ringstate.study.Progress;
import io.github.ringstate.study.Sampling;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A study of a thousand distracted pilots, lateral recovery, by one thread and by two. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 10)
@Measurement(iterations = 15)
@Fork(1)
public class PilotsAtOnce {

  private static final int PILOTS = 1000;

  /** Threads that fly. */
  @Param({"1", "2"})
  public int threads;

  /**
   * Flies the study.
   *
   * @return the part that arrested the descent
   */
  @Benchmark
  public double study() {
    PilotStudy study =
        new PilotStudy(
            Encounter.of(DemoCraft.TRAINER),
            Technique.LATERAL,
            Optional.of(PilotState.DISTRACTED.delays()),
            1);
    ForkJoinPool pool = new ForkJoinPool(threads);
    try {
      return pool.submit(() -> study.fly(Sampling.of(PILOTS), Progress.SILENT))
          .join()
          .arrestedShare();
    } finally {
      pool.shutdown();
    }
  }
}
