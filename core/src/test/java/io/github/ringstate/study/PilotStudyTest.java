package io.github.ringstate.study;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.chance.Drawing;
import io.github.ringstate.chance.RandomStream;
import io.github.ringstate.chance.SobolStream;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Disturbances;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.encounter.Settling;
import io.github.ringstate.pilot.PilotGroups;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Pilots;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PilotStudyTest {

  private static final Encounter TRAINER =
      Encounter.of(DemoCraft.TRAINER).withEntry(new Settling());
  private static final Encounter UTILITY =
      Encounter.of(DemoCraft.UTILITY).withEntry(new Settling());

  private static final Disturbances ROUGH =
      Disturbances.NONE
          .with(Disturbances.SHAKING, 5)
          .with(Disturbances.GUST_WIND, 10)
          .with(Disturbances.SHEAR, 0.14);

  private static PilotStudy distracted(Encounter base, Pilots pilots) {
    return new PilotStudy(base, pilots, Optional.of(PilotState.DISTRACTED.delays()), 42);
  }

  static List<PilotStudy> studies() {
    return List.of(
        distracted(TRAINER, Technique.FORWARD),
        distracted(TRAINER.withHeight(40), Technique.LATERAL),
        distracted(UTILITY.withDisturbances(ROUGH), Technique.LATERAL));
  }

  @ParameterizedTest
  @MethodSource("studies")
  void anyNumberOfThreadsGivesTheSameBits(PilotStudy study) throws Exception {
    Sampling sampling = Sampling.of(24);
    double[] one = Workers.with(1, () -> study.fly(sampling, Progress.SILENT)).losses();
    for (int threads : new int[] {2, 8}) {
      double[] many = Workers.with(threads, () -> study.fly(sampling, Progress.SILENT)).losses();
      assertArrayEquals(one, many, 0.0);
    }
    assertArrayEquals(one, study.fly(sampling, Progress.SILENT).losses(), 0.0);
  }

  @ParameterizedTest
  @MethodSource("studies")
  void anySampleFlownAloneEqualsItsValueInTheStudy(PilotStudy study) {
    double[] alone = new double[16];
    for (int i = alone.length - 1; i >= 0; i--) {
      alone[i] = loss(study.fly(i));
    }
    Arrays.sort(alone);
    assertArrayEquals(alone, study.fly(Sampling.of(16), Progress.SILENT).losses(), 0.0);
  }

  @Test
  void fewerPilotsAreTheFirstOfMore() {
    PilotStudy study = distracted(UTILITY, Technique.LATERAL);
    List<Double> ten = boxed(study.fly(Sampling.of(10), Progress.SILENT).losses());
    List<Double> thirty = boxed(study.fly(Sampling.of(30), Progress.SILENT).losses());
    assertEquals(16, ten.size());
    assertEquals(32, thirty.size());
    assertTrue(thirty.containsAll(ten));
    PilotStudy other = new PilotStudy(UTILITY, Technique.LATERAL, study.delays(), 43);
    assertNotEquals(ten, boxed(other.fly(Sampling.of(10), Progress.SILENT).losses()));
  }

  private static List<Double> boxed(double[] values) {
    return Arrays.stream(values).boxed().toList();
  }

  @Test
  void pilotsOfANumberAreTheSamePeopleAtAnyFixedDelayAndDelaysAreTheirOwn() {
    PilotStudy sampled = distracted(TRAINER, Technique.FORWARD);
    PilotStudy fixed = new PilotStudy(TRAINER, Technique.FORWARD, Optional.empty(), 42);
    PilotStudy later =
        new PilotStudy(TRAINER.withDelay(3), Technique.FORWARD, Optional.empty(), 42);
    for (int i = 0; i < 3; i++) {
      assertEquals(1, fixed.encounter(i).delay());
      assertEquals(
          fixed.encounter(i).withDelay(3).fly().altitudeLoss(),
          later.encounter(i).fly().altitudeLoss());
      double own = sampled.encounter(i).delay();
      assertEquals(
          PilotState.DISTRACTED
              .delays()
              .inverseCumulativeProbability(new SobolStream(42, i).uniform()),
          own);
      assertEquals(
          fixed.encounter(i).withDelay(own).fly().altitudeLoss(),
          sampled.encounter(i).fly().altitudeLoss());
    }
  }

  @Test
  void theSamplingStopsAtTheSamePilotForAnyNumberOfThreads() throws Exception {
    PilotStudy study =
        new PilotStudy(UTILITY, Technique.LATERAL, Optional.of(PilotState.PRIMED.delays()), 1);
    Sampling sampling = new Sampling(5000, 0.95, 0.95, 0.4);
    LossSpread one = Workers.with(1, () -> study.fly(sampling, Progress.SILENT));
    assertTrue(one.samples() > Sampling.FIRST && one.samples() < 5000, one.samples() + " pilots");
    assertEquals(Drawing.SOBOL.samples(one.samples()), one.samples());
    assertTrue(one.quantile(0.95, 0.95).halfWidth() <= sampling.precision());
    for (int threads : new int[] {2, 8}) {
      LossSpread many = Workers.with(threads, () -> study.fly(sampling, Progress.SILENT));
      assertArrayEquals(one.losses(), many.losses(), 0.0);
    }
  }

  @Test
  void progressCountsEveryPilotOnceAndInOrder() {
    List<Long> heard = new ArrayList<>();
    distracted(UTILITY, Technique.LATERAL)
        .fly(
            Sampling.of(32),
            (flown, limit) -> {
              assertEquals(32, limit);
              heard.add(flown);
            });
    assertEquals(LongStream.rangeClosed(1, 32).boxed().toList(), heard);
  }

  @Test
  void afterACancellationNoMoreThanTheFlightsUnderWayAreFlown() {
    int threads = 4;
    AtomicInteger heard = new AtomicInteger();
    Progress progress = new Listener(flown -> heard.incrementAndGet(), () -> heard.get() >= 10);
    PilotStudy study = distracted(UTILITY, Technique.LATERAL);
    ExecutionException thrown =
        assertThrows(
            ExecutionException.class,
            () -> Workers.with(threads, () -> study.fly(Sampling.of(100_000), progress)));
    assertTrue(thrown.getCause() instanceof CancellationException, thrown.toString());
    assertTrue(heard.get() >= 10 && heard.get() < 10 + threads, heard + " were flown");
  }

  @Test
  void anInterruptedStudyEndsWithTheFlightsUnderWayAndItsThreadStaysInterrupted() throws Exception {
    AtomicInteger begun = new AtomicInteger();
    CountDownLatch underWay = new CountDownLatch(10);
    Pilots counted =
        new Pilots() {
          @Override
          public String name() {
            return "counted";
          }

          @Override
          public Recovery draw(RandomStream draws) {
            begun.incrementAndGet();
            underWay.countDown();
            return Technique.LATERAL.draw(draws);
          }
        };
    AtomicReference<Throwable> thrown = new AtomicReference<>();
    AtomicBoolean interrupted = new AtomicBoolean();
    Thread caller =
        new Thread(
            () -> {
              try {
                distracted(UTILITY, counted).fly(Sampling.of(1_000_000), Progress.SILENT);
              } catch (Throwable ended) {
                thrown.set(ended);
                interrupted.set(Thread.currentThread().isInterrupted());
              }
            });
    caller.start();
    assertTrue(underWay.await(60, TimeUnit.SECONDS), "ended by " + thrown);
    caller.interrupt();
    int threads = ForkJoinPool.getCommonPoolParallelism() + 1;
    int atInterrupt = begun.get();
    caller.join(60_000);
    assertFalse(caller.isAlive());
    assertTrue(thrown.get() instanceof CancellationException, "ended by " + thrown);
    assertTrue(interrupted.get());
    assertTrue(
        begun.get() <= atInterrupt + threads,
        (begun.get() - atInterrupt) + " were begun after the interruption");
  }

  /**
   * Without gusts and shaking the longer wait starts lower and sinks at least as fast. Not tried
   * where the lever is raised whatever the rotor does: an arrest that the slowing rotor undoes has
   * no loss, and it may undo one after a short wait and none after a longer one.
   */
  @ParameterizedTest
  @MethodSource("techniquesThatKeepTheRotor")
  void moreDelayNeverLosesLess(Technique technique) {
    for (Encounter base : List.of(TRAINER, UTILITY)) {
      int pilots = technique.equals(Technique.NONE) ? 1 : 30;
      double[] last = new double[pilots];
      for (double delay = 0; delay <= 6; delay += 0.25) {
        PilotStudy study = new PilotStudy(base.withDelay(delay), technique, Optional.empty(), 9);
        for (int i = 0; i < pilots; i++) {
          double loss = loss(study.fly(i));
          assertTrue(
              loss >= last[i],
              technique.name()
                  + " pilot "
                  + i
                  + " at "
                  + delay
                  + " s: "
                  + loss
                  + " after "
                  + last[i]);
          last[i] = loss;
        }
      }
    }
  }

  static List<Technique> techniquesThatKeepTheRotor() {
    return Technique.ALL.stream()
        .filter(technique -> !technique.equals(Technique.COLLECTIVE_RAISED))
        .toList();
  }

  /** What is flown fast is what is flown precisely, within half a foot. */
  @ParameterizedTest
  @MethodSource("studies")
  void theFastLossesAreThoseOfThePreciseFlight(PilotStudy study) {
    for (int i = 0; i < 12; i++) {
      double precise = loss(study.encounter(i).fly());
      assertEquals(precise, loss(study.fly(i)), Unit.FOOT.toSi(0.5), "pilot " + i);
    }
  }

  private static double loss(Outcome outcome) {
    return outcome.ending() == Ending.ARRESTED
        ? outcome.altitudeLoss().orElseThrow()
        : Double.POSITIVE_INFINITY;
  }

  @Test
  void onlyChanceInTheDisturbancesMakesFlightsOfTheirOwn() {
    PilotStudy rough =
        new PilotStudy(
            UTILITY.withDisturbances(ROUGH),
            PilotGroups.all(Technique.LATERAL.standard()),
            Optional.empty(),
            1);
    assertNotEquals(rough.fly(0), rough.fly(1));
    assertEquals(rough.fly(0), rough.fly(0));
    Disturbances shear = Disturbances.NONE.with(Disturbances.SHEAR, 0.14);
    PilotStudy sheared =
        new PilotStudy(
            UTILITY.withDisturbances(shear),
            PilotGroups.all(Technique.LATERAL.standard()),
            Optional.empty(),
            1);
    assertEquals(sheared.fly(0), sheared.fly(1));
  }
}
