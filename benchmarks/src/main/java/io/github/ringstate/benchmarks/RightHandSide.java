package io.github.ringstate.benchmarks;

import io.github.ringstate.air.Wind;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Trim;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.encounter.Trajectory;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.inflow.TabulatedInflow;
import io.github.ringstate.pilot.ControlLaw;
import io.github.ringstate.pilot.PilotView;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One right-hand side of the equations of motion, at states along an encounter. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class RightHandSide {

  private final List<double[]> states = new ArrayList<>();
  private final ControlLaw law =
      (seen, controls) -> {
        controls.pitch(seen.hoverPitch() - 0.2, 0.2);
        controls.collective(seen.collective() + 0.01, 0.2);
      };
  private final double[] rates = new double[io.github.ringstate.dynamics.State.SIZE];
  private EquationsOfMotion direct;
  private EquationsOfMotion tabulated;
  private int next;

  /** Flies an encounter for its states. */
  @Setup
  public void fly() {
    Encounter encounter = Encounter.of(DemoCraft.TRAINER).withDelay(3);
    encounter.fly(
        Simulator.precise(),
        new Trajectory(
            0.05,
            (phase, motion) -> {
              double[] state = new double[io.github.ringstate.dynamics.State.SIZE];
              for (int i = 0; i < state.length; i++) {
                state[i] = motion.state(i);
              }
              states.add(state);
            }));
    RingStateInflow ring = RingStateInflow.standard();
    direct = commanded(encounter, ring);
    tabulated = commanded(encounter, new TabulatedInflow(ring));
  }

  private EquationsOfMotion commanded(Encounter encounter, InflowModel inflow) {
    EquationsOfMotion motion =
        new EquationsOfMotion(encounter.craft(), encounter.air(), Wind.CALM, inflow, false);
    PilotView.of(motion, Trim.find(motion, 0, 0)).follow(law);
    return motion;
  }

  private double rate(EquationsOfMotion motion) {
    next = next + 1 < states.size() ? next + 1 : 0;
    motion.rates(0, states.get(next), rates);
    return rates[io.github.ringstate.dynamics.State.SPEED_UP];
  }

  /**
   * With the inflow by its roots.
   *
   * @return a rate
   */
  @Benchmark
  public double rootSolved() {
    return rate(direct);
  }

  /**
   * With the inflow from the table.
   *
   * @return a rate
   */
  @Benchmark
  public double tabulated() {
    return rate(tabulated);
  }
}
