package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A clock that starts at limits that pilots are taught, before the ring state. */
class TaughtLimitsTest {

  private static List<CSVRecord> table(String options) throws IOException {
    return Run.csv("loss --delays 0,1,2" + options);
  }

  private static double loss(CSVRecord record) {
    return Run.number(record, "altitude_loss_ft");
  }

  @ParameterizedTest
  @CsvSource({"tailwind-approach", "quick-stop"})
  void actionBeforeTheRingStateCostsLittleAndNotNothing(String entry) throws IOException {
    List<CSVRecord> early = table(" --clock limits --entry " + entry);
    List<CSVRecord> late = table(" --entry " + entry);
    for (int i = 0; i < early.size(); i++) {
      assertTrue(loss(early.get(i)) > 0, early.get(i)::toString);
      assertTrue(loss(early.get(i)) < loss(late.get(i)), early.get(i)::toString);
    }
  }

  @Test
  void limitsThatAreNeverKeptStartTheClockWithTheEntry() throws IOException {
    // the entry begins at 22 kt of airspeed and some 640 ft/min, beyond 50 ft/min below 60 kt
    String text = Run.words("loss --delays 1 --clock limits --limit-fpm 50 --limit-kt 60");
    assertTrue(text.contains("more than 50 ft/min of sink below 60 kt"), text);
    double later = untilRing(text);
    double handbook = untilRing(Run.words("loss --delays 1 --clock limits"));
    assertTrue(later > handbook && handbook > 0, later + " and " + handbook);
  }

  private static double untilRing(String text) {
    return Double.parseDouble(
        text.replaceFirst(".*the ring state begins ([0-9.]+) s after the limits.*", "$1"));
  }

  @Test
  void limitsNeedTheirClock() {
    Run.assertRefused("loss --limit-fpm 400", "need --clock limits");
  }

  @Test
  void theChartOfBoundariesSaysWhatToTeach() {
    String chart = Run.words("boundary --step-kt 4");
    assertTrue(chart.contains("below 16 kt of airspeed keep the sink below 300 ft/min"), chart);
    String late = Run.words("boundary --step-kt 4 --limit-fpm 1000 --units si");
    assertTrue(late.contains("WARNING: that is no later than the limit"), late);
  }
}
