package io.github.ringstate.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.github.ringstate.air.Air;
import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Approach;
import io.github.ringstate.encounter.BulkFlight;
import io.github.ringstate.encounter.EdgeCheck;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Occurrence;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.pilot.CollectiveOnly;
import io.github.ringstate.pilot.Forward;
import io.github.ringstate.pilot.Lateral;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.quantity.OutOfRangeException;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LossTableTest {

  private static final Encounter BASE = Encounter.of(DemoCraft.TRAINER);
  private static final List<Helicopter> CRAFT =
      List.of(DemoCraft.TRAINER, DemoCraft.TRAINER.with(Helicopter.MASS, 500));
  private static final List<Air> AIRS =
      List.of(StandardAtmosphere.at(0), StandardAtmosphere.at(1500));
  private static final List<Recovery> RECOVERIES = List.of(new Lateral(), new Forward());
  private static final List<Double> DELAYS = List.of(2.0, 0.5);

  private static LossTable table() {
    return LossTable.fly(BASE, CRAFT, AIRS, RECOVERIES, DELAYS);
  }

  @Test
  void cellsNestCraftThenAirThenRecoveryThenDelayInTheOrderGiven() {
    List<LossCell> cells = table().cells();
    List<Encounter> expected = new ArrayList<>();
    for (Helicopter craft : CRAFT) {
      for (Air air : AIRS) {
        for (Recovery recovery : RECOVERIES) {
          for (double delay : DELAYS) {
            expected.add(
                BASE.withCraft(craft).withAir(air).withRecovery(recovery).withDelay(delay));
          }
        }
      }
    }
    assertEquals(expected, cells.stream().map(LossCell::encounter).toList());
  }

  @Test
  void everyCellIsTheEncounterFlownAlone() {
    for (LossCell cell : table().cells()) {
      Encounter encounter = cell.encounter();
      BulkFlight alone = BulkFlight.withEvents(Approach.fly(encounter, Simulator.fast()));
      alone.fly(encounter.recovery(), encounter.recognition());
      assertEquals(alone.outcome(), cell.outcome());
    }
  }

  /** Second method: each cell by Dormand and Prince's 8(5,3), and all that happened on the way. */
  @Test
  void everyCellIsWithinATenthOfAFootOfItsPreciseFlight() {
    for (LossCell cell : table().cells()) {
      Outcome precise = cell.encounter().fly();
      Outcome fast = cell.outcome();
      assertEquals(precise.ending(), fast.ending());
      assertEquals(
          precise.altitudeLoss().orElseThrow(),
          fast.altitudeLoss().orElseThrow(),
          Unit.FOOT.toSi(0.1));
      assertEquals(
          precise.occurrences().stream().map(Occurrence::kind).toList(),
          fast.occurrences().stream().map(Occurrence::kind).toList());
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 7})
  void anyNumberOfThreadsGivesTheSameBits(int threads) throws Exception {
    assertEquals(table(), Workers.with(threads, LossTableTest::table));
  }

  @Test
  void anEmptyListGivesAnEmptyTable() {
    assertEquals(List.of(), LossTable.fly(BASE, CRAFT, AIRS, RECOVERIES, List.of()).cells());
  }

  @Test
  void aDelayThatIsNoDelayIsRefused() {
    assertThrows(
        OutOfRangeException.class,
        () -> LossTable.fly(BASE, CRAFT, AIRS, RECOVERIES, List.of(1.0, -1.0)));
  }

  @Test
  void theTableCannotBeChanged() {
    List<LossCell> cells = table().cells();
    assertThrows(UnsupportedOperationException.class, () -> cells.remove(0));
  }

  /** Second method: each cell by a check of its own. */
  @Test
  void aCellIsSensitiveIfACheckOfItAloneSaysSo() {
    LossTable table =
        LossTable.fly(
            BASE,
            CRAFT,
            AIRS.subList(0, 1),
            List.of(new Forward(), new CollectiveOnly()),
            List.of(0.5, 1.5, 2.0, 2.5));
    List<Boolean> all = table.sensitive();
    assertEquals(table.cells().size(), all.size());
    for (int i = 0; i < all.size(); i++) {
      LossCell cell = table.cells().get(i);
      Encounter flown = cell.encounter();
      assertEquals(
          new EdgeCheck(flown).isSensitive(flown.recovery(), flown.recognition(), cell.outcome()),
          all.get(i),
          flown.toString());
    }
  }
}
