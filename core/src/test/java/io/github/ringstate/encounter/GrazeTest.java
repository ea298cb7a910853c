package io.github.ringstate.encounter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.quantity.Parameter;
import java.util.function.DoubleFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Descents that just touch the boundary: whether they meet the ring state is no matter of steps.
 */
class GrazeTest {

  private static final double NARROW = 1e-7;

  private static Encounter downwind(Parameter one, double value) {
    return Encounter.of(DemoCraft.TRAINER).withEntry(EntryKind.DOWNWIND.with(one, value));
  }

  /** Between a value with onset and one without, where the onset is lost. */
  private static double edge(
      DoubleFunction<Encounter> family, Simulator simulator, double with, double without) {
    assertTrue(Approach.fly(family.apply(with), simulator).onset());
    assertFalse(Approach.fly(family.apply(without), simulator).onset());
    double on = with;
    double off = without;
    while (Math.abs(on - off) > NARROW) {
      double middle = 0.5 * (on + off);
      if (Approach.fly(family.apply(middle), simulator).onset()) {
        on = middle;
      } else {
        off = middle;
      }
    }
    return 0.5 * (on + off);
  }

  /**
   * A run that turns downwind in too little wind, which creeps along the boundary, and one that is
   * so fast that it touches the boundary for an instant.
   */
  @ParameterizedTest
  @CsvSource({"wind, 10, 8, 1e-4", "ground speed, 27, 30, 1e-5"})
  void theEdgeOfOnsetIsTheSameForEveryStep(String name, double with, double without, double fast) {
    Parameter parameter =
        Downwind.PARAMETERS.stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow();
    DoubleFunction<Encounter> family = value -> downwind(parameter, value);
    double precise = edge(family, Simulator.precise(), with, without);
    assertEquals(precise, edge(family, Simulator.extrapolation(1e-10), with, without), 1e-6);
    assertEquals(precise, edge(family, Simulator.fast(), with, without), fast);
  }
}
