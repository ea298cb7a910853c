package io.github.ringstate.analysis.best;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.pilot.Limited;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

class BestRecoveryTest {

  private static final Encounter ENCOUNTER = Encounter.of(DemoCraft.TRAINER).withDelay(1);

  private static double[] start(long seed) {
    return new Random(seed).doubles(3L * BestRecovery.TIMES.size(), -1, 1).toArray();
  }

  /**
   * From random starts the searches end within a foot, and no technique does better. This craft has
   * a second optimum, banked to the other side, 2 ft higher.
   */
  @Test
  void searchesFromRandomStartsMeetAndNoTechniqueDoesBetter() {
    BestRecovery best =
        BestRecovery.find(
            ENCOUNTER, BestRecovery.ALL_POWER, 1, List.of(start(1), start(2), start(3)));
    double foot = Unit.FOOT.toSi(1);
    assertEquals(3, best.ends().size());
    assertEquals(best.ends().get(0), best.ends().get(2), foot);
    double loss = best.loss();
    // fast flights are within 0.1 ft of precise ones
    assertEquals(best.ends().get(0), loss, 0.15 * foot);
    assertEquals(ENCOUNTER.withRecovery(new Limited(best.history())).fly(), best.outcome());
    for (Technique technique : Technique.ALL) {
      OptionalDouble excess = best.excess(technique);
      assertTrue(excess.isEmpty() || excess.getAsDouble() > 0, technique.name());
    }
    assertTrue(best.excess(Technique.LATERAL).isPresent());
  }
}
