package outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.study.LossSpread;
import io.github.ringstate.study.PilotStudy;
import io.github.ringstate.study.Progress;
import io.github.ringstate.study.Sampling;
import io.github.ringstate.study.sweep.Axis;
import io.github.ringstate.study.sweep.Column;
import io.github.ringstate.study.sweep.Rows;
import io.github.ringstate.study.sweep.Sample;
import io.github.ringstate.study.sweep.Settings;
import io.github.ringstate.study.sweep.Sweep;
import io.github.ringstate.study.sweep.SweepExtension;
import io.github.ringstate.study.sweep.SweepSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;

/** Sweeps with a recovery and a column of one's own, studies, and eight threads on one of each. */
class ManyTest {

  private static final Encounter BASE = Encounter.of(DemoCraft.TRAINER).withDelay(1.5);
  private static final PilotStudy STUDY =
      new PilotStudy(BASE, Technique.LATERAL, Optional.of(PilotState.DISTRACTED.delays()), 3);

  private static Sweep sweep(int pilots) {
    List<SweepExtension> found = new ArrayList<>();
    ServiceLoader.load(SweepExtension.class).forEach(found::add);
    assertEquals(1, found.size());
    return new Sweep(
        new SweepSpec(
            5,
            pilots,
            List.of(new Axis.Words(Settings.TECHNIQUE, List.of("diagonal"))),
            List.of(new Axis.Numbers(Settings.DELAY, List.of(1.0, 2.0, 3.0))),
            Sample.NONE),
        Settings.of(found, Map.of()));
  }

  private static int column(Sweep sweep, String name) {
    return sweep.rowColumns().stream().map(Column::name).toList().indexOf(name);
  }

  /** Second way: the encounter of the point, flown precisely; a sweep's rows are within 0.1 ft. */
  @Test
  void aSweepFliesARecoveryAndTellsAColumnThatItFoundByTheServiceLoader() {
    Sweep sweep = sweep(0);
    Rows rows = sweep.rows(0, 3);
    assertEquals(0, rows.failed());
    for (int i = 0; i < 3; i++) {
      Encounter encounter = sweep.encounter(i);
      assertEquals(new Diagonal(), encounter.recovery());
      double feet = rows.number(column(sweep, "altitude_loss_ft"), i);
      double loss = encounter.fly().altitudeLoss().orElseThrow();
      assertEquals(loss / 0.3048, feet, 0.1);
      double seconds = rows.number(column(sweep, "time_to_arrest_s"), i);
      double own = rows.number(column(sweep, "loss_per_second_m_per_s"), i);
      assertEquals(loss / seconds, own, 0.02 * own);
    }
  }

  @Test
  void pilotsOfARecoveryOfOnesOwnAreDrawn() {
    Sweep sweep = sweep(8);
    assertEquals(24, sweep.count());
    assertEquals(0, sweep.rows(0, 24).failed());
  }

  /** Definition: at a share of 0.95 no more than 5 in 100 lose more. */
  @Test
  void aStudyKeepsWhatEachPilotWasLikeAndLost() {
    LossSpread spread = STUDY.fly(Sampling.of(64), Progress.SILENT);
    assertEquals(64, spread.flights().size());
    double most = spread.loss(0.95);
    long above =
        spread.flights().stream()
            .filter(flight -> flight.outcome().altitudeLoss().orElse(1e9) > most)
            .count();
    assertTrue(above <= 64 * 0.05, above + " of 64");
    assertEquals(STUDY.fly(7).altitudeLoss(), spread.flights().get(7).outcome().altitudeLoss());
  }

  @Test
  void eightThreadsShareACraftAnEncounterAStudyAndASweep() throws Exception {
    Simulator simulator = Simulator.fast();
    Sweep sweep = sweep(0);
    Callable<List<Object>> work =
        () ->
            List.of(
                BASE.fly(simulator, null),
                Encounter.of(DemoCraft.TRAINER).fly(simulator, null),
                STUDY.fly(Sampling.of(16), Progress.SILENT).flights().get(9).outcome(),
                sweep.rows(1, 1).number(column(sweep, "altitude_loss_ft"), 0));
    List<Object> alone = work.call();
    ExecutorService pool = Executors.newFixedThreadPool(8);
    try {
      List<Future<List<Object>>> all = new ArrayList<>();
      for (int i = 0; i < 8; i++) {
        all.add(pool.submit(work));
      }
      for (Future<List<Object>> one : all) {
        assertEquals(alone, one.get());
      }
    } finally {
      pool.shutdown();
    }
  }
}
