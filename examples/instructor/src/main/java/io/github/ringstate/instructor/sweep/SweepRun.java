package io.github.ringstate.instructor.sweep;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.extension.Extensions;
import io.github.ringstate.files.provenance.Build;
import io.github.ringstate.files.provenance.Sidecar;
import io.github.ringstate.files.row.Chunk;
import io.github.ringstate.files.row.RowFile;
import io.github.ringstate.files.row.RowFormat;
import io.github.ringstate.study.Progress;
import io.github.ringstate.study.sweep.PointFaultException;
import io.github.ringstate.study.sweep.SweepFlight;
import java.util.ArrayList;
import java.util.List;

/** Flies a sweep into a file of rows, from where the file ends. */
public final class SweepRun {

  private SweepRun() {}

  /**
   * Flies what is missing.
   *
   * @param request what is flown, and where the rows go
   * @param watch hears how it comes on
   * @return what came of it
   * @throws UserError if the file cannot be written, or another run has begun it
   */
  public static SweepResult fly(SweepRequest request, SweepWatch watch) {
    RowFormat format = request.format();
    try (RowFile rows = new RowFile(request.place(), format)) {
      if (rows.begun() && !request.resume()) {
        throw UserError.file(
            request.output(),
            "has a run begun: go on with --resume, or, if none is at work, remove its .part and"
                + " .journal");
      }
      rows.open(asked(request));
      fly(request, format, rows, watch);
      rows.finish();
      if (request.needsSidecar()) {
        Sidecar.write(request.place(), "--output", request.output(), request.provenance());
      }
      return new SweepResult(request.sweep().sweep().count(), rows.failedCount());
    } catch (PointFaultException fault) {
      Extensions extensions = request.sweep().extensions();
      if (extensions.jars().isEmpty()) {
        throw fault;
      }
      throw UserError.file(
          extensions.names(),
          "cannot be flown: " + fault.getMessage() + ": " + fault.getCause(),
          fault);
    }
  }

  private static void fly(SweepRequest request, RowFormat format, RowFile rows, SweepWatch watch) {
    long from = rows.rowCount();
    long[] end = {from};
    watch.kept(from);
    new SweepFlight(request.sweep().sweep(), request.threads())
        .fly(
            from,
            request.sweep().sweep().count(),
            format::encode,
            encoded -> {
              rows.append(encoded);
              end[0] += encoded.rows();
              if (end[0] % Chunk.ROWS == 0) {
                rows.sync();
                watch.kept(end[0]);
              }
              watch.flown(end[0]);
            },
            Progress.SILENT);
  }

  private static List<String> asked(SweepRequest request) {
    List<String> lines = new ArrayList<>();
    lines.add("ringstate sweep");
    lines.add(Build.current().toString());
    lines.add("format " + request.ending());
    lines.add("points " + request.sweep().sweep().count());
    lines.addAll(request.sweep().digests());
    return lines;
  }
}
