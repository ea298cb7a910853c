package io.github.ringstate.cluster;

import io.github.ringstate.files.sweep.SweepFile;
import io.github.ringstate.files.whole.WholeFile;
import io.github.ringstate.instructor.sweep.SweepRequest;
import io.github.ringstate.instructor.sweep.SweepRun;
import io.github.ringstate.instructor.sweep.SweepWatch;
import java.io.IOException;
import java.nio.file.Path;

/** What the local tool's command {@code sweep} does. */
final class LocalTool {

  private LocalTool() {}

  /** Flies a sweep into a Parquet file and reads its rows. */
  static RowTable fly(Path spec, Path file) throws IOException {
    WholeFile place = WholeFile.named("--output", file.toString());
    SweepFile sweep = SweepFile.read(spec.toString());
    SweepRun.fly(
        new SweepRequest(sweep, file.toString(), place, "parquet", 2, false), SweepWatch.SILENT);
    return RowTable.of(file);
  }
}
