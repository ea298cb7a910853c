package io.github.ringstate.benchmarks;

import io.github.ringstate.chance.IndependentStream;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Approach;
import io.github.ringstate.encounter.BulkFlight;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.inflow.TabulatedInflow;
import io.github.ringstate.pilot.Recognition;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.pilot.Technique;
import java.util.concurrent.TimeUnit;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;
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
 * One descent from onset to its end, delay two and a half seconds, many pilots in turn: fast, and
 * with Hipparchus' integrators on the same equations as the baseline.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class OneEncounter {

  private static final int PILOTS = 1000;

  /** The technique that is flown. */
  @Param({"forward", "lateral", "autorotation"})
  public String technique = "forward";

  private final Recovery[] recoveries = new Recovery[PILOTS];
  private final Recognition recognition = Recognition.afterOnset(2.5);
  private final Simulator dormandPrince853 = Simulator.dormandPrince(1e-5);
  private final Simulator dormandPrince54 = Simulator.with(DormandPrince54Integrator::new, 1e-5);
  private Encounter direct;
  private Approach directApproach;
  private BulkFlight fast;
  private BulkFlight fastTabulated;
  private int next;

  /** Draws the pilots and flies the approach. */
  @Setup
  public void prepare() {
    Technique drawn = Technique.named(technique).orElseThrow();
    for (int i = 0; i < PILOTS; i++) {
      recoveries[i] = drawn.draw(new IndependentStream(1, i));
    }
    RingStateInflow ring = RingStateInflow.standard();
    direct = Encounter.of(DemoCraft.TRAINER).withRecognition(recognition);
    directApproach = Approach.fly(direct, Simulator.precise());
    fast = new BulkFlight(directApproach);
    fastTabulated =
        new BulkFlight(
            Approach.fly(
                direct.withInflow(new TabulatedInflow(ring), new HeaveDamping(ring)),
                Simulator.precise()));
  }

  private double loss(Simulator simulator) {
    return direct
        .withRecovery(recovery())
        .fly(directApproach, simulator, null)
        .altitudeLoss()
        .orElse(0);
  }

  private Recovery recovery() {
    next = next + 1 < PILOTS ? next + 1 : 0;
    return recoveries[next];
  }

  /**
   * Baseline: Dormand and Prince's 8(5,3) of Hipparchus.
   *
   * @return altitude loss, m
   */
  @Benchmark
  public double dormandPrince853() {
    return loss(dormandPrince853);
  }

  /**
   * Baseline: Dormand and Prince's 5(4) of Hipparchus.
   *
   * @return altitude loss, m
   */
  @Benchmark
  public double dormandPrince54() {
    return loss(dormandPrince54);
  }

  /**
   * Fast, the inflow by its roots.
   *
   * @return altitude loss, m
   */
  @Benchmark
  public double fast() {
    fast.fly(recovery(), recognition);
    return fast.altitudeLoss();
  }

  /**
   * Fast, the inflow from the table.
   *
   * @return altitude loss, m
   */
  @Benchmark
  public double fastTabulated() {
    fastTabulated.fly(recovery(), recognition);
    return fastTabulated.altitudeLoss();
  }
}
