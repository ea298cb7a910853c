package io.github.ringstate.files.recording;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.recording.Channel;
import io.jenetics.jpx.GPX;
import io.jenetics.jpx.WayPoint;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GpxTest {

  private static final String OPENING =
      "<?xml version='1.0' encoding='UTF-8'?>\n"
          + "<gpx version='1.1' creator='ringstate' xmlns='http://www.topografix.com/GPX/1/1'"
          + " xmlns:x='urn:example'><trk><trkseg>\n";
  private static final String CLOSING = "</trkseg></trk></gpx>";

  private static RecordingFile read(String text) {
    return RecordingFile.of("flight.gpx", text.getBytes(UTF_8), ColumnMap.BY_NAMES);
  }

  private static String point(int k) {
    return String.format(
        java.util.Locale.ROOT,
        "<trkpt lat='%.7f' lon='24.5'><ele>%.1f</ele><time>2030-01-01T10:%02d:%02dZ</time>"
            + "<extensions><x:speed>3.5</x:speed><x:course>90</x:course></extensions></trkpt>%n",
        60 + k * 1e-5,
        500.0 - k,
        k / 60,
        k % 60);
  }

  private static String points(int from, int to) {
    return IntStream.range(from, to).mapToObj(GpxTest::point).collect(Collectors.joining());
  }

  @Test
  void anIndependentReaderSeesTheSamePoints() throws IOException {
    String text = OPENING + points(0, 100) + CLOSING;
    List<WayPoint> points =
        GPX.Reader.DEFAULT
            .read(new ByteArrayInputStream(text.getBytes(UTF_8)))
            .tracks()
            .flatMap(track -> track.segments())
            .flatMap(segment -> segment.points())
            .toList();
    RecordingFile file = read(text);
    assertEquals(points.size(), file.recording().size());
    for (int k = 0; k < points.size(); k++) {
      assertEquals(
          points.get(k).getElevation().orElseThrow().doubleValue(),
          file.recording().value(Channel.HEIGHT, k));
      assertEquals(
          points.get(k).getTime().orElseThrow(),
          file.start()
              .orElseThrow()
              .plus(Math.round(1e3 * file.recording().time(k)), ChronoUnit.MILLIS));
      assertEquals(3.5, file.recording().value(Channel.GROUND_SPEED, k));
      assertEquals(Math.PI / 2, file.recording().value(Channel.TRACK, k), 1e-12);
    }
  }

  @Test
  void aFileThatBreaksOffKeepsWhatIsWhole() {
    String text = OPENING + points(0, 100);
    RecordingFile file = read(text.substring(0, text.length() - 60));
    assertEquals(99, file.recording().size());
    assertEquals(RepairKind.UNREADABLE, file.repairs().get(0).kind());
  }

  @Test
  void aPlaceThatIsNoXmlCostsItsPoint() {
    String text =
        OPENING + points(0, 40) + "<trkpt lat='60' lon=<<& \u0001" + points(41, 100) + CLOSING;
    RecordingFile file = read(text);
    assertEquals(99, file.recording().size());
    assertEquals(3.5, file.recording().value(Channel.GROUND_SPEED, 98));
    assertEquals(99, file.recording().time(98), 1e-6);
  }

  @Test
  void nothingOutsideTheFileIsRead(@TempDir Path folder) throws IOException {
    Path secret = folder.resolve("secret.txt");
    Files.writeString(secret, "500");
    for (String entity :
        List.of(
            "<!ENTITY e SYSTEM '" + secret.toUri() + "'>",
            "<!ENTITY % e SYSTEM '" + secret.toUri() + "'> %e;",
            "<!ENTITY a 'aaaaaaaaaa'><!ENTITY b '&a;&a;&a;&a;&a;&a;&a;&a;'><!ENTITY e '&b;&b;'>")) {
      String text =
          "<?xml version='1.0'?><!DOCTYPE gpx ["
              + entity
              + "]><gpx><trk><trkseg><trkpt lat='60' lon='24'><ele>&e;</ele>"
              + "<time>2030-01-01T10:00:00Z</time></trkpt></trkseg></trk></gpx>";
      assertThrows(UserError.class, () -> read(text));
    }
    assertThrows(
        UserError.class,
        () ->
            read(
                "<!DOCTYPE gpx SYSTEM '"
                    + secret.toUri()
                    + "'>"
                    + OPENING
                    + points(0, 9)
                    + CLOSING));
  }

  @Test
  void aMillionNestedElementsAreRefusedAtOnce() {
    for (String opening : List.of("<gpx>", OPENING + "<trkpt lat='60' lon='24'><extensions>")) {
      String text = opening + "<a>".repeat(1_000_000);
      assertTimeoutPreemptively(
          Duration.ofSeconds(10), () -> assertThrows(UserError.class, () -> read(text)));
    }
  }
}
