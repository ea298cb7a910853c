package io.github.ringstate.instructor.sweep;

import io.github.ringstate.files.row.Chunk;
import io.github.ringstate.files.row.RowFile;
import io.github.ringstate.files.row.RowFormat;
import io.github.ringstate.files.sweep.SweepFile;
import io.github.ringstate.study.Progress;
import io.github.ringstate.study.sweep.SweepFlight;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Flies a sweep into a file of rows, from where the file ends. */
record SweepRun(SweepFile sweep, String ending, RowFormat format, int threads) {

  /**
   * Flies what is missing; returns how many of all points could not be flown.
   *
   * @param rows the file
   * @param err takes what is said if the run is ended from outside
   */
  long into(RowFile rows, Consumer<String> err) {
    rows.open(asked());
    long from = rows.rowCount();
    long count = sweep.sweep().count();
    long[] end = {from};
    try (Interruption interruption = new Interruption(count, err)) {
      interruption.kept(from);
      new SweepFlight(sweep.sweep(), threads)
          .fly(
              from,
              count,
              format::encode,
              encoded -> {
                rows.append(encoded);
                end[0] += encoded.rows();
                if (end[0] % Chunk.ROWS == 0) {
                  rows.sync();
                  interruption.kept(end[0]);
                }
              },
              Progress.SILENT);
    }
    rows.finish();
    return rows.failedCount();
  }

  private List<String> asked() {
    @Nullable String version = SweepRun.class.getPackage().getImplementationVersion();
    return List.of(
        "ringstate sweep",
        "version " + (version == null ? "outside its jar" : version),
        "format " + ending,
        "points " + sweep.sweep().count(),
        "digest of SPEC " + sweep.digest());
  }
}
