package io.github.ringstate.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicIntegerArray;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SampleFlightsTest {

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 8})
  void everySampleIsFlownOnce(int threads) throws Exception {
    ForkJoinPool pool = new ForkJoinPool(threads);
    try {
      AtomicIntegerArray flown = new AtomicIntegerArray(1000);
      pool.submit(() -> SampleFlights.each(100, 1000, () -> flown::incrementAndGet)).get();
      for (int i = 0; i < 1000; i++) {
        assertEquals(i < 100 ? 0 : 1, flown.get(i));
      }
    } finally {
      pool.shutdown();
    }
  }

  @Test
  void theFirstFailureIsThrownItselfAndKeepsFurtherSamplesFromBeingBegun() throws Exception {
    AtomicInteger begun = new AtomicInteger();
    IllegalStateException failure = new IllegalStateException("the twentieth");
    ForkJoinPool single = new ForkJoinPool(1);
    try {
      single
          .submit(
              () -> {
                IllegalStateException thrown =
                    assertThrows(
                        IllegalStateException.class,
                        () ->
                            SampleFlights.each(
                                0,
                                1000,
                                () ->
                                    i -> {
                                      if (begun.incrementAndGet() == 20) {
                                        throw failure;
                                      }
                                    }));
                assertSame(failure, thrown);
              })
          .get();
    } finally {
      single.shutdown();
    }
    assertEquals(20, begun.get());
  }
}
