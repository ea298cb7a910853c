package io.github.ringstate.benchmarks;

import io.github.ringstate.pilot.Technique;
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
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * All that a full sheet of altitude losses asks for, once, in a process that has just begun: four
 * masses, three heights of the field, nine delays, pilots, and every way out that there is; or
 * those with collective alone, of which figures from before it left the default set are known. 512
 * evenly spread pilots know the 95 per cent losses as well as a thousand independent ones ({@link
 * SheetError}).
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 0)
@Measurement(iterations = 1)
@Fork(3)
public class InstructorsSheet {

  private static final int CELLS_OF_ONE = 4 * 3 * 9;

  /** What is flown. */
  @Param({"ways-out", "with-collective"})
  public String techniques = "";

  /** Pilots of each cell. */
  @Param({"512", "1000"})
  public int pilots;

  /** Threads that fly. */
  @Param({"1", "2"})
  public int threads;

  /**
   * Flies the sheet.
   *
   * @return how many encounters could be flown
   */
  @Benchmark
  public long sheet() {
    boolean collective = techniques.equals("with-collective");
    List<String> flown =
        Technique.ALL.stream()
            .filter(
                technique ->
                    technique.wayOut() || (collective && technique.equals(Technique.COLLECTIVE)))
            .map(Technique::name)
            .toList();
    long encounters = (long) CELLS_OF_ONE * flown.size() * pilots;
    Sweep sweep =
        new Sweep(
            new SweepSpec(
                1,
                pilots,
                List.of(),
                List.of(
                    new Axis.Numbers("craft.mass_kg", List.of(500.0, 540.0, 580.0, 620.0)),
                    new Axis.Numbers("air.pressure_altitude_ft", List.of(0.0, 2000.0, 4000.0)),
                    new Axis.Range("pilot.delay_s", 0, 4, 9, Scale.LINEAR),
                    new Axis.Words("pilot.technique", flown)),
                Sample.NONE));
    if (sweep.count() != encounters) {
      throw new IllegalStateException("the sheet has " + sweep.count() + " encounters");
    }
    long[] rows = new long[1];
    new SweepFlight(sweep, threads)
        .fly(0, encounters, block -> rows[0] += block.size() - block.failed(), Progress.SILENT);
    return rows[0];
  }
}
