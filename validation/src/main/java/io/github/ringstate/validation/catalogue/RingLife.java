package io.github.ringstate.validation.catalogue;

import io.github.ringstate.inflow.RingMemory;
import io.github.ringstate.sheets.chart.Graph;
import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.Question;
import io.github.ringstate.validation.check.Section;
import io.github.ringstate.validation.numerics.Lag;
import java.util.List;

/** How the ring of the model deepens and dissolves. */
final class RingLife {

  private static final Prose TEXT = Prose.of(RingLife.class);

  private static final double DISSOLVING = 3.6;
  private static final double DEEPENING = 0.2;
  private static final double WIDTH = 0.02;

  private RingLife() {}

  static Section section(Models models) {
    RingMemory memory = models.ring().ring().memory();
    double first = -1.2 + WIDTH;
    double flow = -0.3;
    double level = after(memory, flow, -1.2, 4);
    Check dissolves =
        question("a ring that dissolves for 4 R/vh", "remembered axial speed")
            .near(
                flow + (first - flow) * Math.exp(-4 / DISSOLVING),
                1e-7,
                flow - memory.excess(flow, level),
                "dq/dt = (z - q) / tau with tau = 3.6 R/vh; the integrator's 1e-10.");
    double aim = -1.2 + WIDTH;
    Check deepens =
        question("a ring that deepens for 0.3 R/vh", "remembered level")
            .near(
                aim + (-0.55 - aim) * Math.exp(-0.3 / DEEPENING),
                1e-7,
                after(memory, -1.2, -0.55, 0.3),
                "ds/dt = (z + b - s) / t with t = 0.2 R/vh and b = 0.02; the integrator's 1e-10.");
    return TEXT.section(
        "ring-life",
        List.of(TEXT.figure("ring-life", () -> plot(memory))),
        List.of(dissolves, deepens));
  }

  private static Question question(String name, String quantity) {
    return Sources.MECHANICS
        .at("exact solution of a first-order lag")
        .closedForm(name, quantity, "1");
  }

  /** The level after a time at one axial speed, the ring feeding itself in full. */
  private static double after(RingMemory memory, double axial, double level, double time) {
    Lag rate = (t, at) -> memory.rate(axial, at, 1);
    return rate.after(0, level, time, 1e-8, 0.05);
  }

  private static Graph plot(RingMemory memory) {
    return Graph.of("time, R / vh", "axial speed over vh")
        .x(0, 12)
        .y(-1.3, 0)
        .line("axial speed", Pens.DASHED, new double[] {0, 12}, new double[] {-0.3, -0.3})
        .curve(
            "remembered",
            Pens.THICK,
            0.01,
            12,
            t -> -0.3 - memory.excess(-0.3, after(memory, -0.3, -1.2, t)));
  }
}
