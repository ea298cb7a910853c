package io.github.ringstate.instructor.review;

import io.github.ringstate.files.recording.ColumnMap;
import io.github.ringstate.files.recording.RecordingFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/**
 * A recording that comes with the tool. None is of a real flight: they are made by the library, and
 * a test makes them anew and compares.
 *
 * @param name what it is asked for by
 * @param file the file that holds it
 */
record DemoRecording(String name, String file) {

  static final List<DemoRecording> ALL =
      List.of(
          new DemoRecording("gnss-1hz", "invented-gnss-1hz.gpx"),
          new DemoRecording("gnss-5hz", "invented-gnss-5hz.nmea"),
          new DemoRecording("instruments", "invented-instruments.csv"),
          new DemoRecording("other-form", "invented-other-form.csv"));

  RecordingFile read() {
    return RecordingFile.of(file, content(), ColumnMap.BY_NAMES);
  }

  byte[] content() {
    try (InputStream in = DemoRecording.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalStateException("the recording " + file + " is missing from the tool");
      }
      return in.readAllBytes();
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }
}
