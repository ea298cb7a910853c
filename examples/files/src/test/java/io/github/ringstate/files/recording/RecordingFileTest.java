package io.github.ringstate.files.recording;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.toml.Texts;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.recording.Channel;
import io.github.ringstate.recording.Recording;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RecordingFileTest {

  static RecordingFile read(String text) {
    return read(text, ColumnMap.BY_NAMES);
  }

  private static RecordingFile read(String text, ColumnMap map) {
    return RecordingFile.of("flight", text.getBytes(UTF_8), map);
  }

  private static String lines(String header, int count, IntFunction<String> line) {
    return header
        + "\r\n"
        + IntStream.range(0, count).mapToObj(line).collect(Collectors.joining("\r\n"));
  }

  private static void assertRefused(String text, String why) {
    UserError refused = assertThrows(UserError.class, () -> read(text));
    assertTrue(String.valueOf(refused.getMessage()).contains(why), refused::getMessage);
  }

  /** Kinds of repair with their counts. */
  private static Map<RepairKind, Integer> counts(RecordingFile file) {
    return file.repairs().stream()
        .collect(Collectors.toMap(Repair::kind, Repair::count, Integer::sum));
  }

  @Test
  void columnsOfKnownNamesNeedNoMap() {
    RecordingFile file =
        read(
            """
            time_s,height_ft,ground_speed_kt,track_deg,vertical_speed_fpm,collective_pct,note
            12.5,1000,20,90,-300,45,"a, b"
            13.0,995,19,91,-310,46,
            """);
    assertEquals(RecordingFormat.CSV, file.format());
    assertEquals(Optional.empty(), file.start());
    Recording recording = file.recording();
    assertEquals(12.5, recording.time(0));
    // exact by definition: 1 ft = 0.3048 m, 1 kt = 1852 m / 3600 s
    assertEquals(304.8, recording.value(Channel.HEIGHT, 0), 1e-9);
    assertEquals(20 * 1852 / 3600.0, recording.value(Channel.GROUND_SPEED, 0), 1e-12);
    assertEquals(Math.PI / 2, recording.value(Channel.TRACK, 0), 1e-12);
    assertEquals(-300 * 0.3048 / 60, recording.value(Channel.VERTICAL_SPEED, 0), 1e-12);
    assertEquals(0.45, recording.value(Channel.COLLECTIVE, 0), 1e-12);
    assertEquals(List.of(), file.repairs());
  }

  @ParameterizedTest
  @CsvSource({"s,1", "ms,0.001"})
  void aMapNamesColumnsAndUnits(String unit, double seconds) {
    String toml =
        "[time]\ncolumn = 'T'\nunit = '"
            + unit
            + "'\n[height]\ncolumn = 'Alt (m)'\nunit = 'm'\n[ground_speed]\ncolumn='v'\nunit='km/h'\n";
    String csv = "some\tlogger\nT;Alt (m);v\n1;10,5;36\n2;11;36\n";
    for (ColumnMap map :
        List.of(
            ColumnMap.of("--columns", "map.toml", (name, what, largest) -> toml),
            ColumnMap.of(
                "--columns",
                "time=T:" + unit + ",height=Alt (m):m,ground_speed=v:km/h",
                Texts.FILES))) {
      Recording recording = read(csv, map).recording();
      assertEquals(seconds, recording.time(0), 1e-12);
      assertEquals(10.5, recording.value(Channel.HEIGHT, 0), 1e-12);
      assertEquals(10, recording.value(Channel.GROUND_SPEED, 0), 1e-12);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "time=t:h|units of time",
        "speed=v:kt|ground_speed",
        "time=t|QUANTITY=COLUMN:UNIT",
      })
  void aWrongMapIsRefusedWithWhatIsAllowed(String map, String allowed) {
    UserError error =
        assertThrows(UserError.class, () -> ColumnMap.of("--columns", map, Texts.FILES));
    assertTrue(String.valueOf(error.getMessage()).contains(allowed), error::getMessage);
  }

  @Test
  void aColumnThatIsMissingIsNamed() {
    ColumnMap map = ColumnMap.of("--columns", "time=t:s,height=alt:m", Texts.FILES);
    UserError error = assertThrows(UserError.class, () -> read("t,height\n1,2\n", map));
    assertTrue(String.valueOf(error.getMessage()).contains("'alt'"), error::getMessage);
  }

  @Test
  void isoTimesCountFromTheFirstReading() {
    RecordingFile file =
        read(
            """
            time_iso,height_m
            2030-05-06T10:00:00Z,5
            2030-05-06T12:00:01.5+02:00,6
            2030-05-06 10:00:03,7
            """);
    assertEquals(Optional.of(Instant.parse("2030-05-06T10:00:00Z")), file.start());
    assertEquals(0, file.recording().time(0));
    assertEquals(1.5, file.recording().time(1), 1e-6);
    assertEquals(3, file.recording().time(2), 1e-6);
  }

  @Test
  void sentencesOfOneTimeAreOneReading() {
    // checksums worked out by hand from the definition for the first, the others by the same rule
    String text =
        sentence("GPGGA,235959.00,6000.0000,N,02400.0000,E,1,08,0.9,100.0,M,18.0,M,,")
            + sentence("GPRMC,235959.00,A,6000.0000,N,02400.0000,E,10.0,180.0,311229,,,A")
            + sentence("GPVTG,181.0,T,,M,10.5,N,19.4,K,A")
            + sentence("GPGGA,000000.00,5959.9970,N,02400.0000,E,1,08,0.9,99.0,M,18.0,M,,")
            + sentence("GPVTG,181.0,T,,M,10.5,N,19.4,K,A")
            + "$GPGGA,000001.00,5959.9940,N,02400.0000,E,1,08,0.9,98.0,M,18.0,M,,*00\r\n"
            + sentence("GPGGA,000002.00,,,,,0,00,,,M,,M,,");
    RecordingFile file = read(text);
    assertEquals(RecordingFormat.NMEA, file.format());
    assertEquals(Optional.of(Instant.parse("2029-12-31T23:59:59Z")), file.start());
    Recording recording = file.recording();
    assertEquals(1, recording.time(1));
    assertEquals(100, recording.value(Channel.HEIGHT, 0));
    assertEquals(Unit.KNOT.toSi(10), recording.value(Channel.GROUND_SPEED, 0), 1e-12);
    assertEquals(Math.PI, recording.value(Channel.TRACK, 0), 1e-12);
    assertEquals(Unit.KNOT.toSi(10.5), recording.value(Channel.GROUND_SPEED, 1), 1e-12);
    assertEquals(Map.of(RepairKind.CHECKSUM, 1, RepairKind.NO_FIX, 1), counts(file));
  }

  @Test
  void aTimeThatLostTwoEqualDigitsIsNoneThoughItsChecksumFits() {
    String whole = sentence("GPGGA,100000.00,6000.0,N,02400.0,E,1,08,0.9,100.0,M,18.0,M,,");
    String lost = whole.replace("100000.00", "1000.00");
    String next = sentence("GPGGA,100001.00,6000.0,N,02400.0,E,1,08,0.9,99.0,M,18.0,M,,");
    RecordingFile file = read(lost + next);
    assertEquals(1, file.recording().size());
    assertEquals(Map.of(RepairKind.NO_TIME, 1), counts(file));
  }

  @Test
  void theChecksumIsTheExclusiveOrBetweenDollarAndStar() {
    // 'A' xor 'B' = 0x41 xor 0x42 = 0x03, xor 'C' = 0x40
    assertEquals("40", NmeaReadings.checksum("$ABC*", 4));
  }

  static String sentence(String content) {
    String open = "$" + content;
    return open + "*" + NmeaReadings.checksum(open + "*", open.length()) + "\r\n";
  }

  @Test
  void speedAndTrackFollowFromPlaces() {
    // one minute of latitude in a minute is a knot by its definition, but for the sphere's radius
    RecordingFile file =
        read(
            lines(
                "time_s,height_m,latitude_deg,longitude_deg",
                20,
                k -> k + ",100," + (60 - k * 30 / 3600.0 / 60) + "," + (k == 7 ? 25 : 24)));
    Recording recording = file.recording();
    for (int k = 0; k < 20; k++) {
      assertEquals(Unit.KNOT.toSi(30), recording.value(Channel.GROUND_SPEED, k), 0.03);
      assertEquals(0, Math.sin(recording.value(Channel.TRACK, k)), 0.01);
      assertTrue(Math.cos(recording.value(Channel.TRACK, k)) < 0);
    }
    assertEquals(Map.of(RepairKind.FROM_PLACES, 20), counts(file));
  }

  @Test
  void aWrongTimeCostsOneReadingAndARepeatedOneToo() {
    List<String> rows = new ArrayList<>();
    for (int k = 0; k < 60; k++) {
      rows.add(k + ".0," + (100 - k));
    }
    rows.set(20, "2000.0,80");
    rows.set(30, "3.0,70");
    rows.set(40, "39.0,60");
    RecordingFile file = read("time_s,height_m\n" + String.join("\n", rows));
    assertEquals(57, file.recording().size());
    assertEquals(61, file.recording().value(Channel.HEIGHT, file.recording().indexAt(39)));
    assertEquals(Map.of(RepairKind.BACKWARD, 2, RepairKind.REPEATED, 1), counts(file));
    Repair backward =
        file.repairs().stream()
            .filter(r -> r.kind() == RepairKind.BACKWARD)
            .findFirst()
            .orElseThrow();
    assertEquals(21, backward.first());
    assertEquals(31, backward.last());
  }

  @Test
  void readingsThatStandInTheWrongPlaceArePutInOrder() {
    String file =
        "time_s,height_m\n"
            + IntStream.concat(IntStream.range(100, 200), IntStream.range(0, 100))
                .mapToObj(k -> k + "," + k)
                .collect(Collectors.joining("\n"));
    RecordingFile read = read(file);
    assertEquals(200, read.recording().size());
    for (int k = 0; k < 200; k++) {
      assertEquals(k, read.recording().value(Channel.HEIGHT, k));
    }
    assertEquals(Map.of(RepairKind.OUT_OF_ORDER, 100), counts(read));
  }

  @Test
  void twoClocksInOneFileAreRefused() {
    String file =
        "time_s,height_m\n"
            + IntStream.concat(IntStream.range(0, 100), IntStream.range(1000, 1150))
                .mapToObj(k -> k % 1000 + "," + k)
                .collect(Collectors.joining("\n"));
    assertThrows(UserError.class, () -> read(file));
  }

  @ParameterizedTest
  @CsvSource({"height_m,vertical_speed_m_per_s", "height_ft,vertical_speed_fpm"})
  void feetThatAreTakenForMetresAreRefused(String height, String speed) {
    boolean feet = height.endsWith("ft");
    // a climb at 4 m/s: 787 ft/min, right and with a height in the other unit
    String right =
        lines(
            "time_s," + height + "," + speed,
            100,
            k -> k + "," + 4 * k / (feet ? 0.3048 : 1) + "," + (feet ? 787.4 : 4));
    assertEquals(100, read(right).recording().size());
    String wrong = right.replace(height, feet ? "height_m" : "height_ft");
    assertRefused(wrong, "the right unit by --columns");
    String down =
        lines(
            "time_s," + height + "," + speed,
            100,
            k -> k + "," + 4 * k / (feet ? 0.3048 : 1) + "," + (feet ? -787.4 : -4));
    assertRefused(down, "opposite signs");
    String both = down.replace(height, feet ? "height_m" : "height_ft");
    assertRefused(both, "opposite signs");
  }

  @ParameterizedTest
  @CsvSource({"height_m,vertical_speed_m_per_s", "pressure_altitude_m,height_m"})
  void aHeightThatStandsStillBesideWhatMovesIsRefused(String still, String moving) {
    boolean speed = moving.startsWith("v");
    String climb =
        lines("time_s," + still + "," + moving, 20, k -> k + ",100," + (speed ? 4 : 4 * k));
    assertRefused(climb, "100.0 m all the time");
    // up to 30 m may be what the other wavers by
    assertEquals(
        8, read(climb.lines().limit(9).collect(Collectors.joining("\n"))).recording().size());
  }

  @Test
  void slowerReadingsAreFilledAndGapsAreNot() {
    RecordingFile file =
        read(
            lines(
                "time_s,height_m,ground_speed_m_per_s,track_deg",
                100,
                k ->
                    (k < 50 ? k * 0.2 : k * 0.2 + 60)
                        + ",100,"
                        + (k % 5 == 0 ? k * 0.1 + "," + (359 + k / 5 * 2) % 360 : ",")));
    Recording recording = file.recording();
    assertEquals(0.3, recording.value(Channel.GROUND_SPEED, 3), 1e-9);
    double across = recording.value(Channel.TRACK, 3);
    assertEquals(0, Math.sin(across - Math.toRadians(359 + 1.2)), 1e-9);
    assertTrue(Double.isNaN(recording.value(Channel.GROUND_SPEED, 47)));
    Map<RepairKind, Integer> counts = counts(file);
    assertEquals(1, counts.get(RepairKind.GAP));
    assertEquals(2 * 2 * 9 * 4, counts.get(RepairKind.SLOW));
  }

  @Test
  void valuesBeyondWhatAHelicopterReachesAreLeftOut() {
    RecordingFile file =
        read("time_s,height_m,ground_speed_kt\n1,5,9999\n2,1e7,20\n3,x,20\n,5,20\n4,5,20\n");
    assertEquals(
        Map.of(RepairKind.IMPLAUSIBLE, 2, RepairKind.NOT_A_NUMBER, 1, RepairKind.NO_TIME, 1),
        counts(file));
  }

  @Test
  void aQuotationMarkThatIsNeverClosedCostsOneLine() {
    RecordingFile file = read(lines("time_s,height_m", 300, k -> (k == 50 ? "\"" : "") + k + ",9"));
    assertEquals(299, file.recording().size());
    assertEquals(Map.of(RepairKind.UNREADABLE, 1), counts(file));
  }

  @ParameterizedTest
  @CsvSource({"''", "hello", "time_s", "'<gpx></gpx>'", "'$GPGGA,1'", "'time_s,pitch_deg\n1,2'"})
  void aFileWithoutAFlightIsRefused(String text) {
    assertThrows(UserError.class, () -> read(text));
  }
}
