package io.github.ringstate.files.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.ringstate.Soak;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.recording.Channel;
import io.github.ringstate.recording.Recording;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Files with random faults: what is whole in them is read. */
@Tag("soak")
class BrokenFilesTest {

  private static final int FILES = 50_000;
  private static final int READINGS = 120;

  /** What else a fault may cost beside the readings that it hits. */
  private static final int NEIGHBOURS = 3;

  /** A file in parts: what opens it, a part for each reading, what closes it. */
  private static List<String> parts(RecordingFormat format) {
    List<String> parts = new ArrayList<>();
    parts.add(
        switch (format) {
          case GPX ->
              "<?xml version=\"1.0\"?>\n<gpx version=\"1.1\" creator=\"ringstate\""
                  + " xmlns=\"http://www.topografix.com/GPX/1/1\"><trk><trkseg>\n";
          case NMEA -> "";
          case CSV -> "time_s,height_ft,ground_speed_kt,track_deg,vertical_speed_fpm,remark\r\n";
        });
    for (int k = 0; k < READINGS; k++) {
      parts.add(part(format, k));
    }
    parts.add(format == RecordingFormat.GPX ? "</trkseg></trk></gpx>\n" : "");
    return parts;
  }

  private static String part(RecordingFormat format, int k) {
    return switch (format) {
      case GPX ->
          String.format(
              Locale.ROOT,
              "<trkpt lat=\"%.7f\" lon=\"24.5\"><ele>%.1f</ele>"
                  + "<time>2030-01-01T10:%02d:%02dZ</time></trkpt>\n",
              60 + k * 1e-5,
              height(k),
              k / 60,
              k % 60);
      case NMEA ->
          RecordingFileTest.sentence(
                  String.format(
                      Locale.ROOT,
                      "GPGGA,10%02d%02d.00,60%07.4f,N,02430.0000,E,1,08,0.9,%.1f,M,18.0,M,,",
                      k / 60,
                      k % 60,
                      k * 6e-4,
                      height(k)))
              + RecordingFileTest.sentence(
                  String.format(
                      Locale.ROOT,
                      "GPRMC,10%02d%02d.00,A,60%07.4f,N,02430.0000,E,2.2,0.0,010130,,,A",
                      k / 60,
                      k % 60,
                      k * 6e-4));
      case CSV ->
          String.format(
              Locale.ROOT, "%d.0,%.1f,2.2,0.0,-393.7,\"a, b\"\r\n", k, height(k) / 0.3048);
    };
  }

  private static double height(int k) {
    return 500 - 2.0 * k;
  }

  /** A broken file, the readings that the fault hit, and whether it hit what opens the file. */
  @SuppressWarnings("ArrayRecordComponent") // read at once, in this test alone
  private record Broken(byte[] content, TreeSet<Integer> hit, boolean opening) {}

  private static Broken broken(List<String> parts, SplittableRandom random) {
    byte[] whole = String.join("", parts).getBytes(StandardCharsets.US_ASCII);
    int at = random.nextInt(whole.length);
    int length = 1 + random.nextInt(random.nextBoolean() ? 3 : 400);
    int end = Math.min(whole.length, at + length);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(whole, 0, at);
    switch (random.nextInt(5)) {
      case 0 -> { // other bytes
        byte[] other = new byte[end - at];
        random.nextBytes(other);
        out.writeBytes(other);
        out.write(whole, end, whole.length - end);
      }
      case 1 -> { // missing
        out.write(whole, end, whole.length - end);
      }
      case 2 -> { // twice
        out.write(whole, at, end - at);
        out.write(whole, at, whole.length - at);
      }
      case 3 -> { // more bytes
        byte[] more = new byte[length];
        random.nextBytes(more);
        out.writeBytes(more);
        out.write(whole, at, whole.length - at);
        end = at + 1;
      }
      default -> end = whole.length; // broken off
    }
    TreeSet<Integer> hit = new TreeSet<>();
    int from = 0;
    for (int i = 0; i < parts.size(); i++) {
      int to = from + parts.get(i).length();
      if (from < end && to > at) {
        hit.add(i - 1);
      }
      from = to;
    }
    return new Broken(out.toByteArray(), hit, hit.contains(-1));
  }

  @ParameterizedTest
  @EnumSource
  void whatIsWholeInABrokenFileIsRead(RecordingFormat format) {
    List<String> parts = parts(format);
    Recording whole = read(parts, format);
    assertEquals(READINGS, whole.size());
    Soak.assertNoFaults(
        "broken-recordings-" + format,
        FILES,
        number -> fault(broken(parts, new SplittableRandom(number))));
  }

  private static String fault(Broken broken) {
    try {
      Recording found =
          RecordingFile.of("flight", broken.content(), ColumnMap.BY_NAMES).recording();
      int lost = 0;
      for (int k = 0; k < READINGS; k++) {
        lost += broken.hit().contains(k) || isThere(k, found, broken) ? 0 : 1;
      }
      return broken.opening() || lost <= NEIGHBOURS
          ? ""
          : lost + " lost beside " + broken.hit().size() + " hit";
    } catch (UserError refused) {
      boolean little = READINGS - broken.hit().size() < 5;
      return broken.opening() || little ? "" : String.valueOf(refused.getMessage());
    } catch (RuntimeException | StackOverflowError crashed) {
      return crashed.toString();
    }
  }

  private static Recording read(List<String> parts, RecordingFormat format) {
    byte[] content = String.join("", parts).getBytes(StandardCharsets.US_ASCII);
    RecordingFile file = RecordingFile.of("flight", content, ColumnMap.BY_NAMES);
    assertEquals(format, file.format());
    return file.recording();
  }

  /** Whether a reading is there, on a clock that may begin at the first that was left. */
  private static boolean isThere(int k, Recording found, Broken broken) {
    for (int first = 0; first <= Math.min(READINGS - 1, broken.hit().last() + 1); first++) {
      int at = found.indexAt(k - first - 1e-3);
      if (at < found.size()
          && Math.abs(found.time(at) - (k - first)) < 1e-3
          && Math.abs(found.value(Channel.HEIGHT, at) - height(k)) < 0.02) {
        return true;
      }
    }
    return false;
  }
}
