package io.github.ringstate.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Approach;
import io.github.ringstate.encounter.BulkFlight;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.FlightQuantity;
import io.github.ringstate.encounter.History;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Recognition;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.pilot.Technique;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** What says that it may be shared is flown by eight threads at once, with the same bits. */
class SharedByThreadsTest {

  private static final int THREADS = 8;
  private static final Encounter ENCOUNTER =
      Encounter.of(DemoCraft.TRAINER).withDelay(1.5).withHeight(120);

  /** What each of eight threads gets that begin at the same time. */
  private static <T> List<T> byEight(Callable<T> work) throws Exception {
    ExecutorService pool = Executors.newFixedThreadPool(THREADS);
    try {
      CountDownLatch together = new CountDownLatch(THREADS);
      List<Future<T>> results = new ArrayList<>();
      for (int i = 0; i < THREADS; i++) {
        results.add(
            pool.submit(
                () -> {
                  together.countDown();
                  together.await();
                  return work.call();
                }));
      }
      List<T> values = new ArrayList<>();
      for (Future<T> result : results) {
        values.add(result.get());
      }
      return values;
    } finally {
      pool.shutdown();
    }
  }

  private static <T> void sameInAll(Callable<T> work) throws Exception {
    T alone = work.call();
    for (T one : byEight(work)) {
      assertEquals(alone, one);
    }
  }

  @Test
  void oneCraftOneEncounterOneSimulatorAndOneApproachAreShared() throws Exception {
    sameInAll(() -> Encounter.of(DemoCraft.TRAINER).fly(Simulator.fast(), null));
    Simulator simulator = Simulator.fast();
    sameInAll(() -> ENCOUNTER.fly(simulator, null));
    sameInAll(ENCOUNTER::fly);
    Approach approach = Approach.fly(ENCOUNTER, simulator);
    sameInAll(
        () -> {
          BulkFlight flight = new BulkFlight(approach);
          flight.fly(ENCOUNTER.recovery(), ENCOUNTER.recognition());
          return flight.altitudeLoss();
        });
  }

  @Test
  void oneStudyIsShared() throws Exception {
    PilotStudy study =
        new PilotStudy(
            ENCOUNTER, Technique.LATERAL, Optional.of(PilotState.DISTRACTED.delays()), 3);
    sameInAll(
        () -> {
          LossSpread spread = study.fly(Sampling.of(30), Progress.SILENT);
          return List.of(spread.loss(0.5), spread.flights().get(7));
        });
  }

  @Test
  void oneHistoryIsShared() throws Exception {
    History history = ENCOUNTER.record(Simulator.fast()).history();
    sameInAll(() -> history.sampled(0.1).get(30).get(FlightQuantity.THRUST));
    sameInAll(() -> history.steps().toString());
  }

  /** Every loss that eight threads get from one flight is right, or refused. */
  @Test
  void aFlightInBulkThatTwoThreadsUseNeverGivesTheLossOfTheOther() throws Exception {
    BulkFlight shared = new BulkFlight(Approach.fly(ENCOUNTER, Simulator.fast()));
    Recovery recovery = Technique.LATERAL.standard();
    double[] right = new double[THREADS];
    for (int i = 0; i < THREADS; i++) {
      shared.fly(recovery, Recognition.afterOnset(0.3 * i));
      right[i] = shared.altitudeLoss();
    }
    AtomicInteger next = new AtomicInteger();
    AtomicInteger refused = new AtomicInteger();
    AtomicInteger given = new AtomicInteger();
    byEight(
        () -> {
          int mine = next.getAndIncrement();
          for (int i = 0; i < 400; i++) {
            try {
              shared.fly(recovery, Recognition.afterOnset(0.3 * mine));
              assertEquals(right[mine], shared.altitudeLoss());
              given.incrementAndGet();
            } catch (IllegalStateException twoThreads) {
              assertEquals(BulkFlight.TWO_THREADS, twoThreads.getMessage());
              refused.incrementAndGet();
            }
          }
          return mine;
        });
    assertEquals(400 * THREADS, refused.get() + given.get());
    assertTrue(refused.get() > 0, "no two threads met");
  }

  @Test
  void whoDidNotFlyTheLastDescentIsNotToldOfIt() throws Exception {
    BulkFlight flight = new BulkFlight(Approach.fly(ENCOUNTER, Simulator.fast()));
    Thread other = new Thread(() -> flight.fly(ENCOUNTER.recovery(), ENCOUNTER.recognition()));
    other.start();
    other.join();
    assertThrows(IllegalStateException.class, flight::altitudeLoss);
    flight.fly(ENCOUNTER.recovery(), ENCOUNTER.recognition());
    assertTrue(flight.altitudeLoss() > 0);
  }
}
