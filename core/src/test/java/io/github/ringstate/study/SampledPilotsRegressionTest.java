package io.github.ringstate.study;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.ringstate.chance.IndependentStream;
import io.github.ringstate.chance.RandomStream;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.dynamics.RingStateShaking;
import io.github.ringstate.encounter.Disturbances;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Settling;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.pilot.Delays;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.study.model.OpenNumbers;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Against ourselves: the bits that this library gave, on any Java release and machine. A change of
 * the model changes them, and is then written down here; a change of platform must not.
 */
class SampledPilotsRegressionTest {

  private static void assertBits(double expected, double actual) {
    assertEquals(Double.toHexString(expected), Double.toHexString(actual), () -> "now " + actual);
  }

  private static PilotStudy study(Technique technique, Disturbances disturbances) {
    return new PilotStudy(
        Encounter.of(DemoCraft.TRAINER).withEntry(new Settling()).withDisturbances(disturbances),
        technique,
        Optional.of(PilotState.ATTENTIVE.delays()),
        42);
  }

  @Test
  void aSampleDrawsTheNumbersThatItDrewBefore() {
    RandomStream draws = new IndependentStream(42, 7);
    assertBits(0x1.a04657dd4c7d9p-1, draws.uniform());
    assertBits(0x1.d3af22517807fp-1, draws.uniform());
    assertEquals(1061252013998382209L, draws.seed());
  }

  @Test
  void delaysAreWhatTheyWere() {
    assertBits(
        0x1.bdc164e230faap1, PilotState.DISTRACTED.delays().inverseCumulativeProbability(0.73));
    assertBits(0x1.efc68ca8319dfp0, Delays.gamma(1.5, 2.5).inverseCumulativeProbability(0.73));
  }

  @Test
  void singlePilotsLoseWhatTheyLost() {
    assertBits(
        0x1.af990bf3ac8cap5,
        study(Technique.FORWARD, Disturbances.NONE).fly(0).altitudeLoss().orElseThrow());
    assertBits(
        0x1.32878a51af9d8p4,
        study(Technique.LATERAL, Disturbances.NONE).fly(1).altitudeLoss().orElseThrow());
    assertBits(
        0x1.f5e7b8587962cp6,
        study(Technique.AUTOROTATION, Disturbances.NONE).fly(2).altitudeLoss().orElseThrow());
    assertBits(
        0x1.81c9ae5013cp3,
        study(Technique.COLLECTIVE, Disturbances.NONE).fly(3).altitudeLoss().orElseThrow());
  }

  @Test
  void aDisturbedPilotLosesWhatWasLost() {
    Disturbances rough =
        Disturbances.NONE
            .with(Disturbances.SHAKING, 5)
            .with(Disturbances.GUST_WIND, 10)
            .with(Disturbances.SHEAR, 0.14)
            .with(Disturbances.WIND_TURN, 90);
    assertBits(
        0x1.40dea7eac0728p4, study(Technique.LATERAL, rough).fly(1).altitudeLoss().orElseThrow());
  }

  @Test
  void theQuantileOfAStudyIsWhatItWas() {
    Quantile quantile =
        study(Technique.LATERAL, Disturbances.NONE)
            .fly(Sampling.of(256), Progress.SILENT)
            .quantile(0.95, 0.95);
    assertBits(0x1.45a7a3e53b337p5, quantile.value());
    assertBits(0x1.1f9743c4597f6p5, quantile.low());
    assertBits(0x1.57a899eb73a64p5, quantile.high());
  }

  @Test
  void aModelThatIsDrawnAndTheShakingAreWhatTheyWere() {
    RingStateInflow model = OpenNumbers.accepted(5, 4).kept().get(4);
    assertBits(0x1.11730ca988aa1p1, model.induced(0.2, -1.1));
    RingStateShaking shaking =
        new RingStateShaking(ParameterSet.standard(RingStateShaking.PARAMETERS), 50, 6);
    assertBits(0x1.04d43aded41e8p0, shaking.factor(12.5, 0.1, -1.1));
  }
}
