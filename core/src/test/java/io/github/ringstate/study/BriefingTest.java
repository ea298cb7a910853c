package io.github.ringstate.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Downwind;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Entry;
import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.encounter.Settling;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.OutOfRangeException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class BriefingTest {

  private static final Encounter TRAINER = Encounter.of(DemoCraft.TRAINER);
  private static final Briefing BRIEFING = new Briefing(0.95, 15, Sampling.of(128));

  private static PilotStudy study(Technique technique) {
    return new PilotStudy(TRAINER, technique, Optional.of(PilotState.ATTENTIVE.delays()), 4);
  }

  /** A line with losses made up evenly between two values. */
  private static Briefing.Line line(Technique technique, double low, double high, int hopeless) {
    int n = 200;
    Ending[] endings = new Ending[n];
    Arrays.fill(endings, Ending.ARRESTED);
    Arrays.fill(endings, 0, hopeless, Ending.NOT_ARRESTED);
    double[] losses =
        IntStream.range(0, n).mapToDouble(i -> low + (high - low) * (i + 0.5) / n).toArray();
    LossSpread spread = LossSpread.of(endings, losses);
    return new Briefing.Line(study(technique), spread, spread.quantile(0.95, 0.95).plus(15));
  }

  @Test
  void theFloorIsTheQuantileOfTheLossesWithTheMargin() {
    Briefing.Line line = BRIEFING.line(study(Technique.LATERAL), Progress.SILENT).orElseThrow();
    Quantile losses = line.losses().quantile(0.95, 0.95);
    assertEquals(losses.value() + 15, line.floor().value());
    assertEquals(losses.low() + 15, line.floor().low());
    assertEquals(losses.high() + 15, line.floor().high());
    assertEquals(128, line.losses().samples());
    // of those simulated pilots no more than one in twenty would have kept less than the margin
    assertTrue(line.losses().shareLosing(line.floor().value() - 15 + 1e-9) <= 0.05);
  }

  @Test
  void theFloorOfATechniqueThatArrestsNobodyIsInfinite() {
    Briefing.Line line =
        new Briefing(0.95, 15, Sampling.of(20))
            .line(study(Technique.NONE), Progress.SILENT)
            .orElseThrow();
    assertEquals(Double.POSITIVE_INFINITY, line.floor().value());
    assertEquals(List.of(), Briefing.leastHeight(List.of(line)));
  }

  @Test
  void whoDoesNotMeetTheRingStateHasNoFloor() {
    Entry windy = EntryKind.SETTLING.with(Settling.WIND, 30);
    PilotStudy none =
        new PilotStudy(TRAINER.withEntry(windy), Technique.FORWARD, Optional.empty(), 4);
    assertTrue(BRIEFING.line(none, Progress.SILENT).isEmpty());
    assertEquals(OptionalDouble.empty(), BRIEFING.latestMoment(none, 100, Progress.SILENT));
  }

  @Test
  void theSampleMustTellTechniquesApartBeforeOneIsBriefedAlone() {
    Briefing.Line best = line(Technique.LATERAL, 10, 40, 0);
    Briefing.Line near = line(Technique.FORWARD, 10, 41, 0);
    Briefing.Line far = line(Technique.AUTOROTATION, 100, 200, 0);
    Briefing.Line hopeless = line(Technique.COLLECTIVE, 10, 20, 100);
    assertEquals(List.of(best, near), Briefing.leastHeight(List.of(hopeless, far, near, best)));
    assertEquals(List.of(best), Briefing.leastHeight(List.of(far, best)));
    assertFalse(best.floor().overlaps(far.floor()));
    assertThrows(IllegalArgumentException.class, () -> Briefing.leastHeight(List.of()));
  }

  @Test
  void moreHeightLeavesALaterLatestMoment() {
    Briefing briefing = new Briefing(0.9, 15, Sampling.of(40));
    double last = -1;
    for (double height : new double[] {20, 30, 45, 60, 90, 120}) {
      double latest =
          briefing.latestMoment(study(Technique.LATERAL), height, Progress.SILENT).orElse(-1);
      assertTrue(latest >= last, height + " m: " + latest + " s");
      last = latest;
    }
    assertTrue(last > 2 && last <= 8);
    assertEquals(
        OptionalDouble.empty(),
        briefing.latestMoment(study(Technique.LATERAL), 15, Progress.SILENT));
    assertEquals(
        OptionalDouble.of(8),
        briefing.latestMoment(study(Technique.LATERAL), 3000, Progress.SILENT));
    assertEquals(
        OptionalDouble.empty(),
        briefing.latestMoment(study(Technique.NONE), 3000, Progress.SILENT));
  }

  @Test
  void theLatestMomentAndAllBeforeItWorkAndAStepLaterDoesNot() {
    Briefing briefing = new Briefing(0.9, 15, Sampling.of(40));
    double height = 60;
    PilotStudy study = study(Technique.FORWARD);
    double latest = briefing.latestMoment(study, height, Progress.SILENT).orElseThrow();
    for (double delay = 0; delay <= latest; delay += 0.25) {
      assertTrue(floorAt(study, delay) <= height, delay + " s");
    }
    assertTrue(floorAt(study, latest + 0.25) > height);
  }

  @Test
  void aLongerDelayThatDoesBetterAgainIsNotReliedOn() {
    // A wind of 40 kt from behind carries those who wait out of the ring state; those who put the
    // nose down at once stay in it for longer.
    Encounter tailwind = TRAINER.withEntry(EntryKind.DOWNWIND.with(Downwind.WIND, 40));
    PilotStudy study = new PilotStudy(tailwind, Technique.FORWARD, Optional.empty(), 4);
    double atOnce = floorAt(study, 0);
    double later = floorAt(study, 4);
    assertTrue(later < atOnce, later + " m against " + atOnce + " m");
    assertEquals(
        OptionalDouble.empty(),
        new Briefing(0.9, 15, Sampling.of(40))
            .latestMoment(study, (atOnce + later) / 2, Progress.SILENT));
  }

  private static double floorAt(PilotStudy study, double delay) {
    PilotStudy fixed =
        new PilotStudy(
            study.base().withDelay(delay), study.pilots(), Optional.empty(), study.seed());
    return fixed.fly(Sampling.of(40), Progress.SILENT).quantile(0.9, 0.95).value() + 15;
  }

  @Test
  void theShareThatIsAskedForMayBeSmallerForALaterMoment() {
    Sampling sampling = Sampling.of(60);
    double most =
        new Briefing(0.95, 15, sampling)
            .latestMoment(study(Technique.FORWARD), 60, Progress.SILENT)
            .orElse(-1);
    double half =
        new Briefing(0.5, 15, sampling)
            .latestMoment(study(Technique.FORWARD), 60, Progress.SILENT)
            .orElse(-1);
    assertTrue(half > most, half + " s against " + most + " s");
  }

  @Test
  void progressGoesForwardAndMayEndIt() {
    long[] heard = new long[2];
    BRIEFING.latestMoment(
        study(Technique.LATERAL),
        60,
        (flown, limit) -> {
          assertTrue(flown > heard[0] && flown <= limit);
          heard[0] = flown;
          heard[1] = limit;
        });
    assertEquals(0, heard[1] % 128);
    Progress ending = new Listener(flown -> {}, () -> true);
    assertThrows(
        CancellationException.class,
        () -> BRIEFING.latestMoment(study(Technique.LATERAL), 60, ending));
  }

  @Test
  void whatCannotBeIsRefused() {
    assertThrows(OutOfRangeException.class, () -> new Briefing(1, 15, Sampling.of(1)));
    assertThrows(OutOfRangeException.class, () -> new Briefing(0.95, -1, Sampling.of(1)));
    assertThrows(OutOfRangeException.class, () -> new Briefing(Double.NaN, 1, Sampling.of(1)));
    PilotStudy above =
        new PilotStudy(TRAINER.withHeight(50), Technique.FORWARD, Optional.empty(), 4);
    assertThrows(IllegalArgumentException.class, () -> BRIEFING.line(above, Progress.SILENT));
    assertThrows(
        IllegalArgumentException.class, () -> BRIEFING.latestMoment(above, 50, Progress.SILENT));
  }
}
