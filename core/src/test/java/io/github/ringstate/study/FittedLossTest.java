package io.github.ringstate.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.chance.Drawing;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Fitted;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.pilot.Technique;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;

class FittedLossTest {

  /** An invented fit that leaves next to nothing open of one number. */
  private static final Helicopter FITTED = DemoCraft.TRAINER.withFitted(Fitted.known(0.3));

  private static PilotStudy study(Helicopter craft, Encounter base) {
    return new PilotStudy(
        base.withCraft(craft), Technique.FORWARD, Optional.empty(), 1, Drawing.SOBOL);
  }

  private static double logarithms(LossSpread spread) {
    return FastMath.log(spread.loss(0.975) / spread.loss(0.025));
  }

  @Test
  void theFormOfTheModelWidensTheSpreadOfAFittedCraft() {
    Encounter base = Encounter.of(DemoCraft.TRAINER).withDelay(2);
    LossSpread known = study(DemoCraft.TRAINER, base).fly(Sampling.of(256), Progress.SILENT);
    LossSpread fitted = study(FITTED, base).fly(Sampling.of(256), Progress.SILENT);
    // independent spreads add in squares; the form's alone is 2 x 1.96 x 0.3 in the logarithm
    assertEquals(FastMath.hypot(logarithms(known), 2 * 1.96 * 0.3), logarithms(fitted), 0.15);
    assertEquals(known.loss(0.5), fitted.loss(0.5), 3);
  }

  @Test
  void onePilotAloneIsTheSameAsAmongTheOthers() {
    PilotStudy study = study(FITTED, Encounter.of(FITTED).withHeight(60).withDelay(2));
    LossSpread spread = study.fly(Sampling.of(64), Progress.SILENT);
    int ground = 0;
    for (PilotFlight flight : spread.flights()) {
      Outcome alone = study.fly(flight.number());
      assertEquals(alone.ending(), flight.outcome().ending());
      assertEquals(alone.altitudeLoss(), flight.outcome().altitudeLoss());
      assertEquals(alone.lossAfterRecognition(), flight.outcome().lossAfterRecognition());
      assertEquals(alone.timeToArrest(), flight.outcome().timeToArrest());
      ground += alone.ending() == Ending.GROUND ? 1 : 0;
    }
    assertTrue(ground > 0, "none of them reached the ground 60 m below");
  }

  @Test
  void aLossOfAllTheHeightReachesTheGround() {
    FittedLoss twice = new FittedLoss(2, OptionalDouble.of(60));
    assertEquals(
        Ending.ARRESTED, twice.ending(Ending.ARRESTED, 20 + twice.more(Ending.ARRESTED, 20)));
    assertEquals(
        Ending.GROUND, twice.ending(Ending.ARRESTED, 30 + twice.more(Ending.ARRESTED, 30)));
    assertEquals(0, new FittedLoss(0.5, OptionalDouble.of(60)).more(Ending.GROUND, 60));
  }
}
