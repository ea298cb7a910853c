package io.github.ringstate.instructor.sweep;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class InterruptionTest {

  private final List<String> said = new ArrayList<>();

  private void endDuring(Interruption interruption) throws InterruptedException {
    Thread hook = new Thread(interruption::say);
    hook.start();
    hook.join();
  }

  @Test
  void itSaysHowManyRowsAreKept() throws InterruptedException {
    Interruption interruption = new Interruption(50_000, said::add);
    interruption.kept(16_384);
    interruption.kept(32_768);
    endDuring(interruption);
    assertEquals(
        List.of(
            "interrupted; 32768 of 50000 rows are kept, and the same command with --resume goes"
                + " on"),
        said);
  }

  @Test
  void itSaysNothingWhileNoRowIsKept() throws InterruptedException {
    endDuring(new Interruption(50_000, said::add));
    assertEquals(List.of(), said);
  }

  @Test
  void itSaysNothingOnceTheRunIsAtItsEnd() throws InterruptedException {
    Interruption interruption = new Interruption(50_000, said::add);
    interruption.kept(16_384);
    interruption.close();
    endDuring(interruption);
    assertEquals(List.of(), said);
  }
}
