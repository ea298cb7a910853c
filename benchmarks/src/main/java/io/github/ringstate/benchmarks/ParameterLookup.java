package io.github.ringstate.benchmarks;

import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Reading the last parameter of a set in SI units, which looks it up by name, against converting a
 * value already at hand. Shows what a model saves by reading its parameters once, when built.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class ParameterLookup {

  /** How many parameters the set holds. */
  @Param({"1", "10", "40"})
  public int size;

  private ParameterSet set;
  private Parameter last;
  private double value;

  /** Builds a set of that size. */
  @Setup
  public void build() {
    List<Parameter> parameters =
        IntStream.range(0, size)
            .mapToObj(
                i -> Parameter.of("speed " + i, Unit.KNOT, 0, 100, 50, "Invented for timing."))
            .toList();
    set = ParameterSet.standard(parameters);
    last = parameters.get(size - 1);
    value = set.get(last);
  }

  /**
   * The baseline: the conversion alone.
   *
   * @return a speed, m/s
   */
  @Benchmark
  public double convert() {
    return last.unit().toSi(value);
  }

  /**
   * Lookup and conversion.
   *
   * @return a speed, m/s
   */
  @Benchmark
  public double lookUpAndConvert() {
    return set.si(last);
  }
}
