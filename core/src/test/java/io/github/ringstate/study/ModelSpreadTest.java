package io.github.ringstate.study;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Settling;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.RingBand;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.inflow.WakeTransport;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Technique;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ModelSpreadTest {

  private static final PilotStudy STUDY =
      new PilotStudy(
          Encounter.of(DemoCraft.TRAINER).withEntry(new Settling()),
          Technique.LATERAL,
          Optional.of(PilotState.ATTENTIVE.delays()),
          4);

  /**
   * Sought: flight reports put the band of vertical descent near -0.4..-0.6 to -1.4..-1.6, and the
   * boundary is closed and reaches 0.7 to 1 hover induced velocities of edgewise speed.
   */
  @Test
  void everyModelThatIsDrawnHasOneFoldAndAClosedBoundaryWhereReportsPutIt() {
    ModelSpread spread = new ModelSpread(STUDY, 60);
    for (int i = 0; i < 60; i++) {
      RingStateInflow model = spread.model(i);
      HeaveDamping damping = new HeaveDamping(model);
      List<RingBand> bands = damping.bands(0);
      assertEquals(1, bands.size());
      double onset = bands.get(0).onset();
      double exit = bands.get(0).exit().orElseThrow();
      assertTrue(onset >= -0.6 && onset <= -0.4, "onset " + onset);
      assertTrue(exit >= -1.6 && exit <= -1.4, "exit " + exit);
      double reach = damping.reach().orElseThrow();
      assertTrue(reach > 0.7 && reach < 1, "reach " + reach);
      assertEquals(1, damping.bands(0.5 * reach).size());
    }
  }

  @Test
  void aModelDependsOnSeedAndNumberAlone() {
    RingStateInflow once = new ModelSpread(STUDY, 2).model(5);
    RingStateInflow again = new ModelSpread(STUDY, 9).model(5);
    RingStateInflow other = new ModelSpread(STUDY, 9).model(6);
    assertEquals(once.induced(0.1, -1), again.induced(0.1, -1));
    assertTrue(once.induced(0.1, -1) != other.induced(0.1, -1));
  }

  @Test
  void theBandOverPeopleAndModelsIsWiderThanThatOverPeopleAlone() {
    Sampling sampling = Sampling.of(128);
    Quantile people = STUDY.fly(sampling, Progress.SILENT).quantile(0.9, 0.95);
    List<LossSpread> models = new ModelSpread(STUDY, 24).fly(sampling, Progress.SILENT);
    Quantile model = ModelSpread.band(models, 0.9);
    Quantile both = people.widenedBy(model);
    assertEquals(24, models.size());
    assertEquals(people.value(), both.value());
    assertTrue(both.halfWidth() > 1.2 * people.halfWidth(), both + " against " + people);
    assertTrue(both.low() <= people.low() && people.high() <= both.high());
    assertTrue(model.low() < people.value() && people.value() < model.high());
    // the same people fly each model: the first model is found again alone
    LossSpread first = new ModelSpread(STUDY, 2).fly(sampling, Progress.SILENT).get(0);
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
    assertThrows(IllegalArgumentException.class, () -> new ModelSpread(STUDY, 1));
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
    ModelSpread spread = new ModelSpread(study, 2);
    double[] drawn = spread.fly(Sampling.of(3), Progress.SILENT).get(0).losses();
    double[] alone =
        new PilotStudy(
                study.base().withInflow(spread.model(0), chosen),
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
    new ModelSpread(STUDY, 3)
        .fly(
            Sampling.of(5),
            (flown, limit) -> {
              assertEquals(24, limit);
              assertEquals(last[0] + 1, flown);
              last[0] = flown;
            });
    assertEquals(24, last[0]);
  }
}
