package io.github.ringstate.cluster.portion;

import io.github.ringstate.files.provenance.ProvenanceJson;
import io.github.ringstate.files.row.Chunk;
import io.github.ringstate.files.row.ChunkRows;
import io.github.ringstate.files.row.EncodedRows;
import io.github.ringstate.files.row.RowFormat;
import io.github.ringstate.files.sweep.SweepFile;
import io.github.ringstate.study.sweep.Sweep;
import io.github.ringstate.study.sweep.SweepFlight;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/**
 * Flies a portion into Parquet, a chunk at a time, so that a portion of any size takes the same
 * memory.
 *
 * @param file the sweep
 * @param provenance where the rows come from, as JSON
 * @param portion what to fly of it
 * @param cancelled whether nobody wants the rows any more
 */
public record PortionRows(
    SweepFile file, String provenance, Portion portion, BooleanSupplier cancelled) {

  /**
   * Flies and writes.
   *
   * @param out where the file goes
   * @throws IOException if the stream takes no more
   * @throws CancellationException if nobody wants the rows any more
   */
  public void writeTo(OutputStream out) throws IOException {
    Sweep sweep = file.sweep();
    RowFormat format =
        RowFormat.of(
            "parquet",
            sweep.rowColumns(),
            Map.of("sweep", file.text(), ProvenanceJson.NAME, provenance));
    out.write(format.head());
    List<Chunk> chunks = new ArrayList<>();
    for (int done = 0; done < portion.size(); done += Chunk.ROWS) {
      ChunkRows rows =
          ChunkRows.of(
              format,
              flown(
                  sweep,
                  format,
                  portion.from() + done,
                  Math.min(Chunk.ROWS, portion.size() - done)));
      for (byte[] piece : rows.pieces()) {
        out.write(piece);
      }
      chunks.add(rows.chunk());
    }
    out.write(format.tail(chunks));
  }

  private List<EncodedRows> flown(Sweep sweep, RowFormat format, long from, int size) {
    List<EncodedRows> blocks = new ArrayList<>();
    for (int done = 0; done < size; done += SweepFlight.BLOCK) {
      if (cancelled.getAsBoolean()) {
        throw new CancellationException("portion " + portion.number() + " is not wanted any more");
      }
      blocks.add(format.encode(sweep.rows(from + done, Math.min(SweepFlight.BLOCK, size - done))));
    }
    return blocks;
  }
}
