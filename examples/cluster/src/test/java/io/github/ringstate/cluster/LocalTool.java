package io.github.ringstate.cluster;

import io.github.ringstate.files.row.RowFile;
import io.github.ringstate.files.row.RowFormat;
import io.github.ringstate.files.sweep.SweepFile;
import io.github.ringstate.files.whole.WholeFile;
import io.github.ringstate.study.Progress;
import io.github.ringstate.study.sweep.Sweep;
import io.github.ringstate.study.sweep.SweepFlight;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** What the local tool's command {@code sweep} makes of a sweep, by the classes that it uses. */
final class LocalTool {

  private LocalTool() {}

  /** Flies a sweep into a Parquet file and reads its rows. */
  static RowTable fly(Path spec, Path file) throws IOException {
    Sweep sweep = SweepFile.read(spec.toString()).sweep();
    RowFormat format = RowFormat.of("parquet", sweep.rowColumns(), Map.of());
    try (RowFile rows = new RowFile(WholeFile.named("--output", file.toString()), format)) {
      rows.open(List.of("rows of a test"));
      new SweepFlight(sweep, 2)
          .fly(0, sweep.count(), format::encode, rows::append, Progress.SILENT);
      rows.finish();
    }
    return RowTable.of(file);
  }
}
