package io.github.ringstate.integrate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EventLogTest {

  private static EventLog<String> log(int size, int width) {
    EventLog<String> log = new EventLog<>();
    for (int i = 0; i < size; i++) {
      double[] state = new double[width];
      for (int j = 0; j < width; j++) {
        state[j] = 100 * i + j;
      }
      log.add("event " + i, 0.5 * i, state);
      state[0] = -1;
    }
    return log;
  }

  private static void assertHolds(int size, int width, EventLog<String> log) {
    assertEquals(size, log.size());
    for (int i = 0; i < size; i++) {
      assertEquals("event " + i, log.kind(i));
      assertEquals(0.5 * i, log.time(i));
      for (int j = 0; j < width; j++) {
        assertEquals(100 * i + j, log.state(i, j));
      }
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 20})
  void whatWasAddedIsKeptWithACopyOfItsState(int width) {
    for (int size : new int[] {0, 1, 7, 8, 9, 100}) {
      assertHolds(size, width, log(size, width));
    }
  }

  @Test
  void theLatestAreForgottenAndReplaced() {
    EventLog<String> log = log(10, 2);
    log.truncate(12);
    assertHolds(10, 2, log);
    log.truncate(10);
    assertHolds(10, 2, log);
    log.truncate(3);
    assertHolds(3, 2, log);
    log.add("event 3", 1.5, new double[] {300, 301});
    assertHolds(4, 2, log);
    assertThrows(IndexOutOfBoundsException.class, () -> log.kind(4));
  }

  @Test
  void anEmptyOneTakesStatesOfAnotherLength() {
    EventLog<String> log = log(10, 2);
    log.clear();
    assertEquals(0, log.size());
    log.add("event 0", 0, new double[] {0, 1, 2, 3, 4});
    log.add("event 1", 0.5, new double[] {100, 101, 102, 103, 104});
    assertHolds(2, 5, log);
  }
}
