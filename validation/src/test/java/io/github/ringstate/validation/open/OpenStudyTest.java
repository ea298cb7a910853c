package io.github.ringstate.validation.open;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.study.model.PublishedRanges;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;

class OpenStudyTest {

  private static final ModelSets MODELS = ModelSets.draw(60);

  @Test
  void theSharesAreThoseOfARecountAndNoEvenSetMeetsAll() {
    for (ModelSets.RangeShare share : MODELS.ranges()) {
      long met = MODELS.even().stream().filter(share.range()::holds).count();
      assertEquals(met / 60.0, share.share(), 1e-12, share.range().name());
    }
    assertTrue(MODELS.even().stream().noneMatch(PublishedRanges::hold));
    assertTrue(MODELS.accepted().kept().stream().allMatch(PublishedRanges::hold));
  }

  @Test
  void lossesAndWorthsDoNotDependOnTheNumberOfThreads() throws Exception {
    List<RingStateInflow> models = MODELS.accepted().kept();
    ForkJoinPool one = new ForkJoinPool(1);
    try {
      assertEquals(
          LossBand.fly(DemoCraft.TRAINER, MODELS, 20),
          one.submit(() -> LossBand.fly(DemoCraft.TRAINER, MODELS, 20)).get());
      assertEquals(
          Worth.fly(DemoCraft.TRAINER, models),
          one.submit(() -> Worth.fly(DemoCraft.TRAINER, models)).get());
    } finally {
      one.shutdown();
    }
  }

  @Test
  void everyNumberOfModelEngineAndPilotHasAWorth() {
    for (Worth worth : Worth.fly(DemoCraft.HEAVY, MODELS.accepted().kept())) {
      assertEquals(13 + 1 + worth.technique().spreads().size(), worth.numbers().size());
      assertEquals(60, worth.flights() + worth.lost());
      assertTrue(worth.delayed().width() > worth.band().width(), worth.technique().name());
    }
  }
}
