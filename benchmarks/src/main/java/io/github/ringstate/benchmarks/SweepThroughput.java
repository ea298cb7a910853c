package io.github.ringstate.benchmarks;

import io.github.ringstate.study.Progress;
import io.github.ringstate.study.sweep.Axis;
import io.github.ringstate.study.sweep.Sample;
import io.github.ringstate.study.sweep.Scale;
import io.github.ringstate.study.sweep.Sweep;
import io.github.ringstate.study.sweep.SweepFlight;
import io.github.ringstate.study.sweep.SweepSpec;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A row of a sweep, by one thread and by two: pilots drawn by number, who share the approach of
 * their craft, and masses, each with an approach of its own.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class SweepThroughput {

  private static final int POINTS = 16_384;

  /** Threads that fly. */
  @Param({"1", "2"})
  public int threads;

  private final Sweep pilots =
      sweep(POINTS / 4, new Axis.Range("pilot.delay_s", 0, 3, 4, Scale.LINEAR));
  private final Sweep masses =
      sweep(0, new Axis.Range("craft.mass_kg", 450, 620, POINTS, Scale.LINEAR));

  private static Sweep sweep(int pilots, Axis axis) {
    Axis technique = new Axis.Words("pilot.technique", List.of("lateral"));
    return new Sweep(new SweepSpec(1, pilots, List.of(technique), List.of(axis), Sample.NONE));
  }

  private long rows(Sweep sweep) {
    long[] rows = new long[1];
    new SweepFlight(sweep, threads)
        .fly(0, POINTS, block -> rows[0] += block.size() - block.failed(), Progress.SILENT);
    return rows[0];
  }

  /**
   * Rows that differ in the pilot.
   *
   * @return how many could be flown
   */
  @Benchmark
  @OperationsPerInvocation(POINTS)
  public long pilots() {
    return rows(pilots);
  }

  /**
   * Rows that differ in the craft.
   *
   * @return how many could be flown
   */
  @Benchmark
  @OperationsPerInvocation(POINTS)
  public long masses() {
    return rows(masses);
  }
}
