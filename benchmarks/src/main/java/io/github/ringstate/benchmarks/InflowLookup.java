package io.github.ringstate.benchmarks;

import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.inflow.MomentumTheory;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.inflow.TabulatedInflow;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The induced velocity: a root of momentum theory, the ring-state model, and the model as a table.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class InflowLookup {

  private static final int POINTS = 4096;

  private final double[] edgewise = new double[POINTS];
  private final double[] axial = new double[POINTS];
  private final InflowModel momentum = new MomentumTheory();
  private final InflowModel ring = RingStateInflow.standard();
  private final InflowModel table = new TabulatedInflow(ring);

  /** Draws the speeds of the ring state and about it. */
  public InflowLookup() {
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < POINTS; i++) {
      edgewise[i] = 0.65 + random.nextDouble();
      axial[i] = -1.8 + 2 * random.nextDouble();
    }
  }

  private double sum(InflowModel model) {
    double sum = 0;
    for (int i = 0; i < POINTS; i++) {
      sum += model.induced(edgewise[i], axial[i]);
    }
    return sum;
  }

  /**
   * The baseline: momentum theory where it has one root.
   *
   * @return a sum over all points
   */
  @Benchmark
  @OperationsPerInvocation(POINTS)
  public double momentumTheory() {
    return sum(momentum);
  }

  /**
   * The ring-state model by its roots.
   *
   * @return a sum over all points
   */
  @Benchmark
  @OperationsPerInvocation(POINTS)
  public double ringState() {
    return sum(ring);
  }

  /**
   * The ring-state model as a table.
   *
   * @return a sum over all points
   */
  @Benchmark
  @OperationsPerInvocation(POINTS)
  public double tabulated() {
    return sum(table);
  }
}
