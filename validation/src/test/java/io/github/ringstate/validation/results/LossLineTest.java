package io.github.ringstate.validation.results;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.analysis.best.BestRecovery;
import io.github.ringstate.chance.Drawing;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.pilot.Limited;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.model.OpenNumbers;
import io.github.ringstate.validation.results.LossPoint.Way;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** A small form of what the page shows. */
class LossLineTest {

  /** Three kilometres up the heavy craft is too heavy to fly the entry; that point is left out. */
  private static final double TOO_HIGH = 9000;

  private static BestRecovery oneSearch(Encounter encounter) {
    return BestRecovery.find(
        encounter, BestRecovery.ALL_POWER, 1, List.of(new double[3 * BestRecovery.TIMES.size()]));
  }

  /** Second methods: the precise simulator, and the techniques within the limits of the best. */
  @Test
  void aPointHoldsWhatFlightsByThemselvesGive() {
    Effort effort =
        new Effort(
            16,
            LongStream.range(0, 4).mapToObj(i -> OpenNumbers.drawn(1, i, Drawing.SOBOL)).toList(),
            LossLineTest::oneSearch);
    LossLine line =
        LossLine.fly(DemoCraft.HEAVY, Against.DENSITY_ALTITUDE, List.of(600.0, TOO_HIGH), effort);
    assertEquals(1, line.points().size());
    LossPoint point = line.points().get(0);
    Encounter encounter = Against.DENSITY_ALTITUDE.encounter(DemoCraft.HEAVY, 600);
    double tenth = Unit.FOOT.toSi(0.15);
    for (Way way : point.ways()) {
      Encounter flown = encounter.withRecovery(way.technique().standard());
      assertEquals(flown.fly().altitudeLoss().orElseThrow(), way.standard(), tenth);
      assertTrue(way.people().low() <= way.people().high(), way.toString());
      Encounter limited = encounter.withRecovery(new Limited(way.technique().standard()));
      assertEquals(
          limited.fly().altitudeLoss().orElseThrow() - point.best().orElseThrow(),
          way.excess().orElseThrow(),
          tenth);
      assertTrue(way.excess().orElseThrow() > 0, way.toString());
    }
  }
}
