package io.github.ringstate.validation.catalogue;

import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.Trim;
import io.github.ringstate.encounter.Settling;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.integrate.Propagator;
import io.github.ringstate.integrate.Sampler;
import io.github.ringstate.pilot.PilotView;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A descent from the hover with the collective lowered a little and then left alone.
 *
 * @param time s since the start
 * @param sink rate of descent, m/s
 * @param acceleration vertical acceleration, m/s2, positive up
 * @param vh hover induced velocity, m/s
 */
@SuppressWarnings("ArrayRecordComponent") // goes straight to a plot
record Descent(double[] time, double[] sink, double[] acceleration, double vh) {

  private static final double STEP = 0.02;
  private static final double DURATION = 60;

  static Descent fly(
      Models models,
      Helicopter declared,
      InflowModel inflow,
      Propagator<String, Motion> propagator) {
    Craft craft = Craft.of(models, declared, inflow);
    var start = new Settling().start(craft.motion());
    PilotView.of(craft.motion(), Trim.find(craft.motion(), 0, 0)).follow(start.law());
    List<double[]> samples = new ArrayList<>();
    propagator.sample(
        new Sampler<>(
            STEP,
            motion ->
                samples.add(
                    new double[] {
                      motion.time(), -motion.verticalSpeed(), motion.verticalAcceleration()
                    })));
    propagator.start(0, start.state());
    propagator.propagate(craft.motion(), DURATION, List.of());
    return new Descent(
        samples.stream().mapToDouble(s -> s[0]).toArray(),
        samples.stream().mapToDouble(s -> s[1]).toArray(),
        samples.stream().mapToDouble(s -> s[2]).toArray(),
        craft.motion().hoverInduced());
  }

  /** When the rate of descent first reaches a value, s; NaN if never. */
  double reaches(double feetPerMinute) {
    double wanted = Unit.FOOT_PER_MINUTE.toSi(feetPerMinute);
    for (int i = 1; i < time.length; i++) {
      if (sink[i] >= wanted) {
        double share = (wanted - sink[i - 1]) / (sink[i] - sink[i - 1]);
        return time[i - 1] + share * (time[i] - time[i - 1]);
      }
    }
    return Double.NaN;
  }

  /** Greatest downward acceleration, m/s2. */
  double fastestGrowth() {
    return Arrays.stream(acceleration).map(a -> -a).reduce(0, Math::max);
  }

  /** Rate of descent at the end, in hover induced velocities. */
  double settled() {
    return sink[sink.length - 1] / vh;
  }
}
