package io.github.ringstate.cluster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.files.row.Chunk;
import io.github.ringstate.files.row.ChunkRows;
import io.github.ringstate.files.row.RowFormat;
import io.github.ringstate.study.sweep.Column;
import io.github.ringstate.study.sweep.Rows;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.SplittableRandom;
import org.duckdb.DuckDBDriver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * DuckDB, written in C++, reads rows as they were written, and finds the bounds of columns true.
 */
class SecondReaderTest {

  private static final List<String> WORDS = List.of("forward", "lateral", "a, \"quoted\" \u00fc");
  private static final List<Column> COLUMNS =
      List.of(
          new Column("index", Column.Type.INTEGER),
          new Column("loss_m", Column.Type.NUMBER),
          new Column("technique", Column.Type.WORD, WORDS),
          new Column("reason", Column.Type.WORD));

  @TempDir private Path folder;

  private final SplittableRandom random = new SplittableRandom(31);

  private List<Object> row(long index) {
    boolean failed = random.nextInt(4) == 0;
    return Arrays.asList(
        index - 50,
        failed ? Double.NaN : random.nextDouble(-1e3, 1e3),
        WORDS.get(random.nextInt(WORDS.size())),
        failed ? "reason " + random.nextInt(1000) : null);
  }

  private List<List<Object>> write(Path file, int groups, int size) throws IOException {
    RowFormat format = RowFormat.of("parquet", COLUMNS, Map.of("about", "rows of a test"));
    List<List<Object>> all = new ArrayList<>();
    List<Chunk> chunks = new ArrayList<>();
    try (OutputStream out = Files.newOutputStream(file)) {
      out.write(format.head());
      for (int group = 0; group < groups; group++) {
        List<List<Object>> rows = new ArrayList<>();
        for (int i = 0; i < size; i++) {
          rows.add(row(all.size() + i));
        }
        all.addAll(rows);
        ChunkRows chunk = ChunkRows.of(format, List.of(format.encode(Rows.of(COLUMNS, rows))));
        for (byte[] piece : chunk.pieces()) {
          out.write(piece);
        }
        chunks.add(chunk.chunk());
      }
      out.write(format.tail(chunks));
    }
    return all;
  }

  @Test
  void rowsAreReadAsTheyWereWrittenAndBoundsAreTrue() throws IOException, SQLException {
    Path file = folder.resolve("rows.parquet");
    List<List<Object>> rows = write(file, 3, 200);
    try (Connection database = new DuckDBDriver().connect("jdbc:duckdb:", new Properties());
        Statement ask = database.createStatement()) {
      try (ResultSet read = ask.executeQuery("select * from '" + file + "'")) {
        for (int i = 0; i < COLUMNS.size(); i++) {
          assertEquals(COLUMNS.get(i).name(), read.getMetaData().getColumnName(i + 1));
        }
        for (List<Object> row : rows) {
          assertTrue(read.next());
          assertEquals(row.get(0), read.getLong(1));
          if (Double.isNaN((Double) row.get(1))) {
            assertNull(read.getObject(2));
          } else {
            assertEquals(row.get(1), read.getDouble(2));
          }
          assertEquals(row.get(2), read.getString(3));
          assertEquals(row.get(3), read.getString(4));
        }
        assertFalse(read.next());
      }
      try (ResultSet bounds =
          ask.executeQuery(
              "select row_group_id, stats_min_value, stats_max_value, stats_null_count"
                  + " from parquet_metadata('"
                  + file
                  + "') where path_in_schema = 'loss_m' order by row_group_id")) {
        for (int group = 0; group < 3; group++) {
          double[] losses =
              rows.subList(200 * group, 200 * (group + 1)).stream()
                  .mapToDouble(row -> (Double) row.get(1))
                  .filter(loss -> !Double.isNaN(loss))
                  .sorted()
                  .toArray();
          assertTrue(bounds.next());
          assertEquals(losses[0], Double.parseDouble(bounds.getString(2)));
          assertEquals(losses[losses.length - 1], Double.parseDouble(bounds.getString(3)));
          assertEquals(200 - losses.length, bounds.getLong(4));
        }
        assertFalse(bounds.next());
      }
      try (ResultSet said =
          ask.executeQuery(
              "select decode(value) from parquet_kv_metadata('"
                  + file
                  + "') where decode(key) = 'about'")) {
        assertTrue(said.next());
        assertEquals("rows of a test", said.getString(1));
      }
    }
  }
}
