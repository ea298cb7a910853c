package io.github.ringstate.study.sweep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.study.Listener;
import io.github.ringstate.study.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class SweepFlightTest {

  @Test
  void rowsComeInOrderAndProgressCountsThem() {
    Sweep sweep = new Sweep(Sweeps.pilots(400));
    List<Long> indices = new ArrayList<>();
    AtomicLong heard = new AtomicLong();
    new SweepFlight(sweep, 4)
        .fly(
            100,
            sweep.count(),
            rows -> {
              for (int row = 0; row < rows.size(); row++) {
                indices.add(rows.integer(0, row));
              }
            },
            (flown, limit) -> {
              assertEquals(sweep.count() - 100, limit);
              assertTrue(flown > heard.getAndSet(flown));
            });
    assertEquals(sweep.count() - 100, heard.get());
    assertEquals(LongStream.range(100, sweep.count()).boxed().toList(), indices);
  }

  @Test
  void aSweepThatIsCancelledEndsWithoutFlyingOn() {
    Sweep sweep = new Sweep(Sweeps.pilots(100_000));
    AtomicLong heard = new AtomicLong();
    assertThrows(
        CancellationException.class,
        () ->
            new SweepFlight(sweep, 2)
                .fly(
                    0, sweep.count(), rows -> {}, new Listener(heard::set, () -> heard.get() > 0)));
    assertTrue(heard.get() > 0 && heard.get() < 20 * SweepFlight.BLOCK, "at " + heard);
  }

  @Test
  void anErrorInTheSinkEndsTheSweepAndComesThrough() {
    Sweep sweep = new Sweep(Sweeps.pilots(100_000));
    ArithmeticException thrown =
        assertThrows(
            ArithmeticException.class,
            () ->
                new SweepFlight(sweep, 2)
                    .fly(
                        0,
                        sweep.count(),
                        rows -> {
                          throw new ArithmeticException("full");
                        },
                        Progress.SILENT));
    assertEquals("full", thrown.getMessage());
  }
}
