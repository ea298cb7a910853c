package io.github.ringstate.cluster;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.ringstate.instructor.sweep.SweepCommand;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import picocli.CommandLine;

/** The local tool's command {@code sweep}. */
final class LocalTool {

  private LocalTool() {}

  /** Flies a sweep into a Parquet file and reads its rows. */
  static RowTable fly(Path spec, Path file) throws IOException {
    int status =
        new CommandLine(new SweepCommand(OutputStream.nullOutputStream()))
            .execute(spec.toString(), "--output", file.toString());
    assertEquals(0, status);
    return RowTable.of(file);
  }
}
