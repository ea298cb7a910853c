package io.github.ringstate.study.model;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Settling;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.inflow.WakeTransport;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.study.LossSpread;
import io.github.ringstate.study.PilotStudy;
import io.github.ringstate.study.Progress;
import io.github.ringstate.study.Quantile;
import io.github.ringstate.study.Sampling;
import io.github.ringstate.study.Share;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ModelSpreadTest {

  private static final PilotStudy STUDY =
      new PilotStudy(
          Encounter.of(DemoCraft.TRAINER).withEntry(new Settling()),
          Technique.LATERAL,
          Optional.of(PilotState.ATTENTIVE.delays()),
          4);

  private static final List<RingStateInflow> MODELS = OpenNumbers.accepted(24, 4).kept();

  @Test
  void theBandOverPeopleAndModelsIsWiderThanThatOverPeopleAlone() {
    Sampling sampling = Sampling.of(128);
    Quantile people = STUDY.fly(sampling, Progress.SILENT).quantile(0.9, 0.95);
    List<LossSpread> models = new ModelSpread(STUDY, MODELS).fly(sampling, Progress.SILENT);
    Quantile model = ModelSpread.band(models, 0.9);
    Quantile both = people.widenedBy(model);
    assertEquals(24, models.size());
    assertEquals(people.value(), both.value());
    assertTrue(both.halfWidth() > 1.2 * people.halfWidth(), both + " against " + people);
    assertTrue(both.low() <= people.low() && people.high() <= both.high());
    assertTrue(model.low() < people.value() && people.value() < model.high());
    // the same people fly each model: the first model is found again alone
    LossSpread first =
        new ModelSpread(STUDY, MODELS.subList(0, 2)).fly(sampling, Progress.SILENT).get(0);
    assertArrayEquals(models.get(0).losses(), first.losses(), 0.0);
    assertEquals(24 * 128, models.stream().mapToInt(LossSpread::samples).sum());
  }

  @Test
  void theBandIsThatOfNineModelsInTen() {
    List<LossSpread> models =
        java.util.stream.IntStream.rangeClosed(1, 20)
            .mapToObj(
                i -> {
                  Ending[] endings = new Ending[200];
                  Arrays.fill(endings, Ending.ARRESTED);
                  double[] losses = new double[200];
                  Arrays.fill(losses, i);
                  return LossSpread.of(endings, losses);
                })
            .toList();
    assertEquals(new Quantile(0.95, 10, 1, 19), ModelSpread.band(models, 0.95));
  }

  @Test
  void modelsThatNobodyMetTheRingStateWithAreLeftOut() {
    LossSpread nobody = LossSpread.of(new Ending[] {Ending.NO_ONSET}, new double[1]);
    assertThrows(
        IllegalArgumentException.class, () -> ModelSpread.band(List.of(nobody, nobody), 0.5));
    LossSpread some = LossSpread.of(new Ending[] {Ending.ARRESTED}, new double[] {7});
    assertEquals(7, ModelSpread.band(List.of(nobody, some), 0.5).value());
    assertThrows(
        IllegalArgumentException.class, () -> new ModelSpread(STUDY, MODELS.subList(0, 1)));
  }

  @Test
  void aBoundaryThatIsNotReadOffTheInflowStaysAsItWasChosen() {
    WakeTransport chosen = WakeTransport.standard();
    PilotStudy study =
        new PilotStudy(
            STUDY.base().withInflow(RingStateInflow.standard(), chosen),
            Technique.LATERAL,
            Optional.empty(),
            4);
    ModelSpread spread = new ModelSpread(study, MODELS.subList(0, 2));
    double[] drawn = spread.fly(Sampling.of(3), Progress.SILENT).get(0).losses();
    double[] alone =
        new PilotStudy(
                study.base().withInflow(MODELS.get(0), chosen),
                Technique.LATERAL,
                Optional.empty(),
                4)
            .fly(Sampling.of(3), Progress.SILENT)
            .losses();
    assertArrayEquals(alone, drawn, 0.0);
  }

  @Test
  void progressRunsOverAllModels() {
    long[] last = new long[1];
    new ModelSpread(STUDY, MODELS.subList(0, 3))
        .fly(
            Sampling.of(5),
            (flown, limit) -> {
              assertEquals(24, limit);
              assertEquals(last[0] + 1, flown);
              last[0] = flown;
            });
    assertEquals(24, last[0]);
  }

  /** By drawing: of models with evenly distributed losses the band holds what lies between. */
  @Test
  void whatABandHoldsOfAllModelsLiesInItsIntervalInNineteenOfTwentyStudies() {
    SplittableRandom random = new SplittableRandom(11);
    for (int models : new int[] {5, 24, 50, 200}) {
      Share held = ModelSpread.held(models);
      int studies = 20_000;
      int within = 0;
      double sum = 0;
      for (int i = 0; i < studies; i++) {
        double[] values = random.doubles(models).sorted().toArray();
        double part = Quantile.value(values, 0.95) - Quantile.value(values, 0.05);
        sum += part;
        within += part >= held.low() && part <= held.high() ? 1 : 0;
      }
      // five standard deviations of a count of 20,000
      assertEquals(0.95, (double) within / studies, 0.008, models + " models");
      assertEquals(held.value(), sum / studies, 0.006, models + " models");
    }
  }

  /** Of two models the band is their range, a third of all on average; one has no range. */
  @Test
  void twoModelsHoldAThirdAndOneHoldsNothing() {
    Share two = ModelSpread.held(2);
    assertEquals(1 / 3.0, two.value(), 1e-15);
    // a range of two even draws is at most r with probability r (2 - r)
    assertEquals(1 - Math.sqrt(0.975), two.low(), 1e-9);
    assertEquals(1 - Math.sqrt(0.025), two.high(), 1e-9);
    for (int models : new int[] {1, 0, -3}) {
      IllegalArgumentException refused =
          assertThrows(IllegalArgumentException.class, () -> ModelSpread.held(models));
      assertEquals("a spread of models takes at least two, not " + models, refused.getMessage());
    }
  }
}
