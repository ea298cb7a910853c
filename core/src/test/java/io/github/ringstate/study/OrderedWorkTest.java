package io.github.ringstate.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OrderedWorkTest {

  private static OrderedWork on(int threads) {
    return new OrderedWork(threads, Progress.SILENT);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 8})
  void everyPieceIsDoneOnceAndComesOutInOrderOnTheCallersThread(int threads) {
    List<Long> out = new ArrayList<>();
    AtomicInteger workers = new AtomicInteger();
    Thread caller = Thread.currentThread();
    on(threads)
        .run(
            1000,
            () -> {
              workers.incrementAndGet();
              return (number, ended) -> number;
            },
            number -> {
              assertSame(caller, Thread.currentThread());
              out.add(number);
            });
    assertEquals(LongStream.range(0, 1000).boxed().toList(), out);
    assertTrue(workers.get() >= 1 && workers.get() <= threads, workers + " workers");
  }

  @Test
  void noPieceIsNoWork() {
    on(2)
        .run(
            0,
            () -> {
              throw new AssertionError("a worker was made");
            },
            result -> {
              throw new AssertionError("something came out");
            });
  }

  @Test
  void aWorkerDoesOnePieceAtATime() {
    Set<Object> busy = ConcurrentHashMap.newKeySet();
    on(4)
        .run(
            400,
            () -> {
              Object worker = new Object();
              return (number, ended) -> {
                assertTrue(busy.add(worker));
                Thread.onSpinWait();
                busy.remove(worker);
                return number;
              };
            },
            number -> {});
  }

  @Test
  void onlyAFewResultsAreHeldWhileTheSinkIsBusy() {
    AtomicLong begun = new AtomicLong();
    long[] out = {0};
    on(2)
        .run(
            500,
            () -> (number, ended) -> begun.incrementAndGet(),
            result -> {
              assertTrue(begun.get() <= out[0] + 2 * 4, begun + " begun, " + out[0] + " taken");
              out[0]++;
            });
  }

  /** The failure does not depend on which thread was first. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 8})
  void theFirstFailureInOrderIsThrownItself(int threads) {
    List<IllegalStateException> failures =
        LongStream.range(0, 100)
            .mapToObj(number -> new IllegalStateException("piece " + number))
            .toList();
    AtomicLong last = new AtomicLong();
    IllegalStateException thrown =
        assertThrows(
            IllegalStateException.class,
            () ->
                on(threads)
                    .run(
                        10_000,
                        () ->
                            (number, ended) -> {
                              last.accumulateAndGet(number, Math::max);
                              if (number >= 20 && number < 100) {
                                throw failures.get((int) number);
                              }
                              return number;
                            },
                        number -> assertTrue(number < 20)));
    assertSame(failures.get(20), thrown);
    // those that had been taken when the first failed
    assertTrue(last.get() <= 20 + threads, "piece " + last + " was begun");
  }

  @Test
  void anErrorComesThroughToo() {
    AssertionError error = new AssertionError("broken");
    AssertionError thrown =
        assertThrows(
            AssertionError.class,
            () ->
                on(2)
                    .run(
                        3,
                        () ->
                            (number, ended) -> {
                              throw error;
                            },
                        result -> {}));
    assertSame(error, thrown);
  }

  @Test
  void whatTheSinkThrowsEndsTheWorkWithNoPieceUnderWay() {
    AtomicInteger underWay = new AtomicInteger();
    assertThrows(
        ArithmeticException.class,
        () ->
            on(4)
                .run(
                    10_000,
                    () ->
                        (number, ended) -> {
                          underWay.incrementAndGet();
                          Thread.onSpinWait();
                          underWay.decrementAndGet();
                          return number;
                        },
                    number -> {
                      throw new ArithmeticException("full");
                    }));
    assertEquals(0, underWay.get());
  }

  @Test
  void aLongPieceHearsOfAnInterruptionAndTheCallerStaysInterrupted() {
    CountDownLatch begun = new CountDownLatch(1);
    Thread caller = Thread.currentThread();
    new Thread(
            () -> {
              awaitQuietly(begun);
              caller.interrupt();
            })
        .start();
    assertThrows(
        CancellationException.class,
        () ->
            on(1)
                .run(
                    2,
                    () ->
                        (number, ended) -> {
                          begun.countDown();
                          while (!ended.getAsBoolean()) {
                            Thread.onSpinWait();
                          }
                          throw new CancellationException("heard");
                        },
                    result -> {}));
    assertTrue(Thread.interrupted());
  }

  private static void awaitQuietly(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException interrupted) {
      throw new AssertionError(interrupted);
    }
  }

  @Test
  void aListenerEndsTheWork() {
    AtomicLong out = new AtomicLong();
    Progress ending = new Listener(flown -> {}, () -> out.get() >= 10);
    assertThrows(
        CancellationException.class,
        () ->
            new OrderedWork(2, ending)
                .run(1_000_000, () -> (number, ended) -> number, number -> out.incrementAndGet()));
    assertTrue(out.get() >= 10 && out.get() <= 10 + 2 * 4, out + " came out");
  }

  @Test
  void unlessToldItTakesTheThreadsOfTheCallersPool() throws Exception {
    assertEquals(3, Workers.with(3, () -> OrderedWork.of(Progress.SILENT)).threads());
    assertThrows(IllegalArgumentException.class, () -> on(0));
  }
}
