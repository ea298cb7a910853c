package io.github.ringstate.cluster;

import io.github.ringstate.files.provenance.Build;
import io.github.ringstate.files.provenance.Provenance;
import io.github.ringstate.files.sweep.SweepFile;
import io.github.ringstate.files.whole.WholeFile;
import io.github.ringstate.instructor.sweep.SweepRequest;
import io.github.ringstate.instructor.sweep.SweepRun;
import io.github.ringstate.instructor.sweep.SweepWatch;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** What the local tool's command {@code sweep} does. */
final class LocalTool {

  private LocalTool() {}

  /** Flies a sweep into a Parquet file and reads its rows. */
  static RowTable fly(Path spec, Path file) throws IOException {
    WholeFile place = WholeFile.named("--output", file.toString());
    SweepFile sweep = SweepFile.read(spec.toString());
    Provenance none =
        new Provenance(Build.current(), List.of(), List.of(), Map.of(), Map.of(), Map.of());
    SweepRun.fly(
        new SweepRequest(sweep, file.toString(), place, "parquet", 2, false, none),
        SweepWatch.SILENT);
    return RowTable.of(file);
  }
}
