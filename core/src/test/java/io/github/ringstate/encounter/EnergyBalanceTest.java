package io.github.ringstate.encounter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.Every;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.State;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.pilot.Technique;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * First law for craft and rotor: what the engine gives, less what goes into the air and into tail
 * rotor and gears, is the growth of kinetic, potential and rotational energy. Integrated by
 * Simpson's rule over samples of the flight, beside the integrator that flew it.
 */
class EnergyBalanceTest {

  private static final double STEP = 0.005;
  private static final double GRAVITY = 9.80665;

  static Stream<Arguments> flights() {
    return Every.of(DemoCraft.ALL, Technique.ALL.stream().map(Technique::standard).toList());
  }

  private static double energy(Helicopter craft, Motion m) {
    double north = m.state(State.SPEED_NORTH);
    double east = m.state(State.SPEED_EAST);
    double up = m.verticalSpeed();
    double turning = m.state(State.ROTOR_SPEED);
    return craft.mass() * ((north * north + east * east + up * up) / 2 + GRAVITY * m.height())
        + craft.rotor().inertia() * turning * turning / 2;
  }

  @ParameterizedTest
  @MethodSource("flights")
  void theEnergyOfAWholeFlightBalancesToATenthOfAPerCent(Helicopter craft, Recovery recovery) {
    List<Double> net = new ArrayList<>();
    List<Double> turnover = new ArrayList<>();
    List<Double> energy = new ArrayList<>();
    Trajectory trajectory =
        new Trajectory(
            STEP,
            (phase, m) -> {
              double lost =
                  (m.loads().shaftPower() - m.loads().rotorPower())
                      + m.loads().inducedPower()
                      + m.loads().profilePower();
              double work = m.dragPower() + m.sidePower() + m.downloadPower();
              net.add(m.loads().enginePower() - lost + work);
              turnover.add(Math.abs(m.loads().enginePower()) + Math.abs(lost) + Math.abs(work));
              energy.add(energy(craft, m));
            });
    Encounter.of(craft)
        .withEntry(new Settling())
        .withRecovery(recovery)
        .withDelay(2)
        .fly(Simulator.precise(), trajectory);

    int intervals = (net.size() - 1) / 2 * 2;
    assertTrue(intervals > 1000, "samples " + net.size());
    double grown = energy.get(intervals) - energy.get(0);
    double supplied = simpson(net, intervals);
    double scale = simpson(turnover, intervals) / 2;
    assertEquals(grown, supplied, 1e-3 * scale);
    assertEquals(grown, supplied, 1e-3 * Math.abs(grown), "against the growth itself");
  }

  private static double simpson(List<Double> values, int intervals) {
    double sum = values.get(0) + values.get(intervals);
    for (int i = 1; i < intervals; i++) {
      sum += (i % 2 == 1 ? 4 : 2) * values.get(i);
    }
    return sum * STEP / 3;
  }
}
