package io.github.ringstate.instructor.progress;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class WorkTest {

  private final ByteArrayOutputStream shown = new ByteArrayOutputStream();
  private final AtomicLong clock = new AtomicLong();

  private String fly(boolean terminal, long nanoseconds) {
    try (Work work =
        new Work(100, new PrintStream(shown, true, UTF_8), () -> terminal, clock::get)) {
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
}
