package io.github.ringstate.instructor.progress;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.study.Progress;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class WorkTest {

  private final ByteArrayOutputStream shown = new ByteArrayOutputStream();
  private final AtomicLong clock = new AtomicLong();
  private final List<String> lines = new ArrayList<>();

  private String fly(boolean terminal, long nanoseconds) {
    try (Work work =
        new Work(
            100,
            0,
            (flown, rate, left) -> lines.add(flown + " at " + rate + ", " + left + " s left"),
            new PrintStream(shown, true, UTF_8),
            () -> terminal,
            clock::get)) {
      work.part(50).flown(50, 50);
      clock.addAndGet(nanoseconds);
      work.part(50).flown(25, 50);
    }
    return shown.toString(UTF_8);
  }

  @Test
  void aBarIsShownAtATerminalAfterASecondAndWipedAway() {
    String bar = fly(true, 1_000_000_001);
    assertTrue(bar.contains("75/100"), bar);
    assertTrue(bar.endsWith(" \r"), bar);
    assertTrue(bar.chars().allMatch(c -> c == '\r' || (c >= ' ' && c <= '~')), bar);
  }

  @Test
  void nothingIsShownBeforeASecond() {
    assertEquals("", fly(true, 999_999_999));
  }

  @Test
  void nothingIsShownWhereNobodyWatches() {
    assertEquals("", fly(false, 60_000_000_000L));
  }

  @Test
  void whereNobodyWatchesALineIsSaidEveryHalfMinute() {
    fly(false, 29_999_999_999L);
    assertEquals(List.of(), lines);
    clock.set(0);
    fly(false, 30_000_000_000L);
    assertEquals(List.of("75 at 2.5, 10.0 s left"), lines);
  }

  @Test
  void rateAndTimeLeftAreThoseOfThisRun() {
    try (Work work =
        new Work(
            1000,
            400,
            (flown, rate, left) -> lines.add(flown + " at " + rate + ", " + left + " s left"),
            new PrintStream(shown, true, UTF_8),
            () -> false,
            clock::get)) {
      Progress part = work.part(600);
      clock.set(30_000_000_000L);
      part.flown(300, 600);
      clock.set(59_000_000_000L);
      part.flown(400, 600);
      clock.set(60_000_000_000L);
      part.flown(450, 600);
    }
    assertEquals(List.of("700 at 10.0, 30.0 s left", "850 at 7.5, 20.0 s left"), lines);
  }

  @Test
  void aBarHasTheRateAndTheTimeLeft() {
    String bar = fly(true, 1_500_000_000);
    assertTrue(bar.contains("/s"), bar);
  }
}
