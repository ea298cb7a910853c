package io.github.ringstate.files.recording;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.toml.Texts;
import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Times of a CSV file, and what is said to someone whose columns are not understood. */
class TimesAndHeadersTest {

  private static RecordingFile read(String text, ColumnMap map) {
    return RecordingFile.of("log.csv", text.getBytes(UTF_8), map);
  }

  private static ColumnMap map(String given) {
    return given.isEmpty()
        ? ColumnMap.BY_NAMES
        : ColumnMap.of(ColumnMap.OPTION, given, Texts.FILES);
  }

  private static String refusal(String text, String map) {
    return String.valueOf(assertThrows(UserError.class, () -> read(text, map(map))).getMessage());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "time_hms|''",
        "Time|''",
        "time_s|''",
        "time_iso|''",
        "Uhrzeit|time=Uhrzeit:hms,height=height_m:m",
        "Uhrzeit|time=Uhrzeit:s,height=height_m:m",
      })
  void aTimeOfDayGoesOnOverMidnight(String name, String map) {
    RecordingFile file =
        read(name + ",height_m\n23:59:58.5,9\n23:59:59,8\n0:00:00.25,7\n00:00:01Z,6\n", map(map));
    assertEquals(Optional.of(LocalTime.of(23, 59, 58, 500_000_000)), file.start());
    assertEquals(List.of(), file.repairs());
    assertEquals(RecordedUnit.TIME_OF_DAY, unitOfTime(file));
    double[] times = {0, 0.5, 1.75, 2.5};
    assertEquals(times.length, file.recording().size());
    for (int k = 0; k < times.length; k++) {
      assertEquals(times[k], file.recording().time(k), 1e-9);
    }
  }

  private static RecordedUnit unitOfTime(RecordingFile file) {
    return Optional.ofNullable(file.columns().columns().get(RecordedQuantity.TIME))
        .orElseThrow()
        .unit();
  }

  @Test
  void aDecimalCommaAndAWrongTimeOfDayDoNotMoveTheOthers() {
    RecordingFile file =
        read(
            "time_hms;height_m\n23:00:00,5;9\n03:00:00,5;8\n23:00:01,5;7\n23:00:02,5;6\n", map(""));
    assertEquals(3, file.recording().size());
    assertEquals(1, file.recording().time(1), 1e-9);
    assertEquals(RepairKind.BACKWARD, file.repairs().get(0).kind());
  }

  @Test
  void aColumnOfTimeWithoutAUnitMayHoldDates() {
    RecordingFile file =
        read("TIME,height_m\n2030-05-06T10:00:00Z,9\n2030-05-06T10:00:02Z,8\n", map(""));
    assertEquals(Optional.of(Instant.parse("2030-05-06T10:00:00Z")), file.start());
    assertEquals(RecordedUnit.ISO_TIME, unitOfTime(file));
  }

  @Test
  void aMapIsGivenBackAsItWasTaken() {
    String given = "time=t:s,height=GPS alt:ft";
    assertEquals(given, read("x,GPS alt,t\n1,2,3\n", map(given)).columns().given());
  }

  @ParameterizedTest
  @ValueSource(strings = {"29.11.2030 10:00:00", "11:58:40 PM", "58:40.5", "24:00:00", "10:60:00"})
  void aTimeThatIsNotReadIsQuotedWithWhatToDo(String time) {
    String said = refusal("time_s,height_m\n" + time + ",9\n" + time + ",8\n", "");
    assertTrue(said.contains("'time_s' as '" + time + "'"), said);
    assertTrue(said.contains("23:58:40.5"), said);
    assertTrue(said.contains("--columns time=COLUMN:UNIT"), said);
    assertTrue(said.contains("s, ms, iso, hms"), said);
  }

  @Test
  void numbersInAColumnOfTimeWithoutAUnitAreNotGuessed() {
    String said = refusal("time,height_m\n1,9\n2,8\n", "");
    assertTrue(said.contains("'time' as '1'"), said);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "clock;alt,m;speed~1;2,5;3;N;5~2;2,5;3;N;5|''|clock, alt,m, speed",
        "some logger~clock,alt~1,2,,,,~2,2,,,,|''|clock, alt",
        "clock,alt~1,2|time=t:s,height=alt:m|clock, alt",
        "clock,alt~1,2|height=alt:m|clock, alt",
      })
  void withoutATimeTheHeaderIsQuoted(String text, String map, String header) {
    String said = refusal(text.replace('~', '\n'), map);
    assertTrue(said.contains("no column for the time"), said);
    assertTrue(said.contains("--columns time=COLUMN:UNIT"), said);
    assertTrue(said.contains("its header is '" + header + "'"), said);
  }

  @Test
  void numbersAloneNeedAHeader() {
    String said = refusal("1,2,3\n2,2,3\n", "");
    assertTrue(said.contains("time_s,height_ft,ground_speed_kt,track_deg"), said);
  }

  @Test
  void withoutAHeightTheHeaderIsQuoted() {
    String said = refusal("time_s,elev,ground_speed_kt\n1,2,3\n2,2,3\n", "");
    assertTrue(said.contains("--columns height=COLUMN:UNIT (units of height: ft, m)"), said);
    assertTrue(said.contains("'time_s, elev, ground_speed_kt'"), said);
  }
}
