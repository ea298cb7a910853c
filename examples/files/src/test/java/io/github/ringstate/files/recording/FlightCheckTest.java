package io.github.ringstate.files.recording;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.files.error.UserError;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

class FlightCheckTest {

  private static void check(int size, IntToDoubleFunction time, IntToDoubleFunction height) {
    StringBuilder text = new StringBuilder("time_s,height_m,ground_speed_kt,track_deg\n");
    for (int k = 0; k < size; k++) {
      text.append(
          String.format(
              Locale.ROOT, "%.7f,%.2f,20,90%n", time.applyAsDouble(k), height.applyAsDouble(k)));
    }
    FlightCheck.require(
        "f.csv",
        RecordingFile.of("f.csv", text.toString().getBytes(UTF_8), ColumnMap.BY_NAMES).recording());
  }

  private static void assertRefused(
      int size, IntToDoubleFunction time, IntToDoubleFunction height, String why) {
    UserError refused = assertThrows(UserError.class, () -> check(size, time, height));
    assertTrue(String.valueOf(refused.getMessage()).contains(why), refused.getMessage());
  }

  @Test
  void aFlightPasses() {
    assertDoesNotThrow(() -> check(50, k -> k, k -> 100 - k));
  }

  @Test
  void timesThatAreAllTheSameLeaveOneReading() {
    assertRefused(50, k -> 5, k -> 100 - k, "holds 1 reading with a time of its own");
    assertRefused(1, k -> 5, k -> 100, "holds 1 reading");
  }

  @Test
  void timesInAnotherUnitAreRefused() {
    // a fifth of a second, in milliseconds taken for seconds and in seconds taken for nanoseconds
    assertRefused(50, k -> 200 * k, k -> 100 - k, "200 s apart");
    assertRefused(50, k -> 2e-7 * k, k -> 100 - k, " s apart");
  }

  @Test
  void aHeightThatNeverChangesIsRefused() {
    assertRefused(50, k -> k, k -> 100, "never changes");
  }
}
