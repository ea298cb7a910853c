package io.github.ringstate.files.row;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import blue.strategic.parquet.ParquetReader;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.sweep.SweepFile;
import io.github.ringstate.files.whole.WholeFile;
import io.github.ringstate.study.sweep.Rows;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.parquet.ParquetReadOptions;
import org.apache.parquet.column.Encoding;
import org.apache.parquet.conf.PlainParquetConfiguration;
import org.apache.parquet.hadoop.ParquetFileReader;
import org.apache.parquet.hadoop.metadata.BlockMetaData;
import org.apache.parquet.hadoop.metadata.ColumnChunkMetaData;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A run that ends after any byte that it wrote goes on to the same file. */
class RowFileTest {

  private static final List<String> ASKED = List.of("rows of a test", "spec 1");

  /** Cheap rows, of which half have a reason in place of results. */
  private static final SweepFile SWEEP =
      SweepFile.parse(
          "test",
          """
          [craft]
          mass_kg = { from = 500, to = 740, values = 20 }
          [pilot]
          delay_s = [0, 1, 2]
          """);

  private static final int CHUNKS = 6;
  private static final int PER_CHUNK = 10;

  private static final List<Rows> HALVES =
      IntStream.range(0, 2 * CHUNKS)
          .mapToObj(i -> SWEEP.sweep().rows((long) i * (PER_CHUNK / 2), PER_CHUNK / 2))
          .toList();

  @TempDir Path folder = Path.of("");

  private Path out(String ending) {
    return folder.resolve("out." + ending);
  }

  private RowFile file(String ending) {
    return new RowFile(WholeFile.named("--output", out(ending).toString()), format(ending));
  }

  private static RowFormat format(String ending) {
    return RowFormat.of(ending, SWEEP.sweep().rowColumns(), Map.of("sweep", SWEEP.text()));
  }

  /** Writes on from where the file ends, some chunks at most; true if the file became whole. */
  private boolean write(String ending, int most) {
    try (RowFile rows = file(ending)) {
      rows.open(ASKED);
      int done = (int) rows.rowCount() / PER_CHUNK;
      for (int chunk = done; chunk < Math.min(CHUNKS, done + most); chunk++) {
        append(rows, ending, chunk);
      }
      if (rows.rowCount() < (long) CHUNKS * PER_CHUNK) {
        return false;
      }
      rows.finish();
      return true;
    }
  }

  private static void append(RowFile rows, String ending, int chunk) {
    for (int half = 0; half < 2; half++) {
      int from = chunk * PER_CHUNK + half * PER_CHUNK / 2;
      rows.append(format(ending).encode(HALVES.get(from * 2 / PER_CHUNK)));
    }
    rows.sync();
  }

  private byte[] undisturbed(String ending) throws IOException {
    assertTrue(write(ending, CHUNKS));
    byte[] whole = Files.readAllBytes(out(ending));
    Files.delete(out(ending));
    return whole;
  }

  private void assertOnlyTheFileIsLeft(String ending) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      assertEquals(List.of(out(ending)), files.toList());
    }
  }

  private Path beside(String ending, String what) {
    return folder.resolve("out." + ending + "." + what);
  }

  @ParameterizedTest
  @ValueSource(strings = {"csv", "parquet"})
  void aRunInPortionsEndsWithTheFileOfOneInAGo(String ending) throws IOException {
    byte[] whole = undisturbed(ending);
    assertFalse(write(ending, 2));
    assertFalse(Files.exists(out(ending)), "nothing is there before all is");
    assertFalse(write(ending, 3));
    assertTrue(write(ending, 3));
    assertArrayEquals(whole, Files.readAllBytes(out(ending)));
    assertOnlyTheFileIsLeft(ending);
  }

  @ParameterizedTest
  @ValueSource(strings = {"csv", "parquet"})
  void whatWasWrittenBehindTheLastWholeChunkIsCutOff(String ending) throws IOException {
    byte[] whole = undisturbed(ending);
    SplittableRandom random = new SplittableRandom(4);
    for (int i = 0; i < 20; i++) {
      write(ending, random.nextInt(CHUNKS));
      // half a chunk, and half a line of the journal
      byte[] torn = new byte[random.nextInt(3000)];
      Arrays.fill(torn, (byte) '7');
      Files.write(beside(ending, "part"), torn, StandardOpenOption.APPEND);
      if (random.nextBoolean()) {
        Files.writeString(beside(ending, "journal"), "chunk 10 0 17", StandardOpenOption.APPEND);
      }
      assertTrue(write(ending, CHUNKS));
      assertArrayEquals(whole, Files.readAllBytes(out(ending)));
      assertOnlyTheFileIsLeft(ending);
      Files.delete(out(ending));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"csv", "parquet"})
  void aJournalThatEndsAfterAnyOfItsBytesIsGoneOnFrom(String ending) throws IOException {
    byte[] whole = undisturbed(ending);
    write(ending, 3);
    byte[] journal = Files.readAllBytes(beside(ending, "journal"));
    byte[] part = Files.readAllBytes(beside(ending, "part"));
    Files.delete(beside(ending, "part"));
    int head = new String(journal, UTF_8).indexOf("chunk");
    for (int length = 0; length <= journal.length; length += 11) {
      Files.write(beside(ending, "journal"), Arrays.copyOf(journal, length));
      // no rows are begun before the head of the journal is whole
      if (length >= head) {
        Files.write(beside(ending, "part"), part);
      }
      assertTrue(write(ending, CHUNKS));
      assertArrayEquals(whole, Files.readAllBytes(out(ending)));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"csv", "parquet"})
  void aRunThatEndsBetweenTheMoveAndTheEndOfTheJournalIsWhole(String ending) throws IOException {
    byte[] whole = undisturbed(ending);
    write(ending, CHUNKS - 1);
    byte[] before = Files.readAllBytes(beside(ending, "journal"));
    try (RowFile rows = file(ending)) {
      rows.open(ASKED);
      append(rows, ending, CHUNKS - 1);
    }
    byte[] journal = Files.readAllBytes(beside(ending, "journal"));
    assertTrue(journal.length > before.length);
    assertTrue(write(ending, 1));
    // as after a kill: the rows are in their place, the journal still there
    Files.write(beside(ending, "journal"), journal);
    assertTrue(write(ending, CHUNKS));
    assertArrayEquals(whole, Files.readAllBytes(out(ending)));
    assertOnlyTheFileIsLeft(ending);
  }

  @ParameterizedTest
  @ValueSource(strings = {"csv", "parquet"})
  void rowsThatWereChangedSinceAreNotGoneOnFrom(String ending) throws IOException {
    write(ending, 3);
    byte[] part = Files.readAllBytes(beside(ending, "part"));
    for (int at : new int[] {0, part.length / 2, part.length - 1}) {
      byte[] changed = part.clone();
      changed[at] ^= 1;
      Files.write(beside(ending, "part"), changed);
      assertEquals(UserError.FILE, assertThrows(UserError.class, () -> write(ending, 1)).status());
      assertArrayEquals(changed, Files.readAllBytes(beside(ending, "part")));
    }
    Files.write(beside(ending, "part"), Arrays.copyOf(part, part.length - 1));
    assertThrows(UserError.class, () -> write(ending, 1));
    Files.delete(beside(ending, "part"));
    assertThrows(UserError.class, () -> write(ending, 1));
  }

  @Test
  void aFileOfSomeoneElseIsNotTakenForRows() throws IOException {
    Files.writeString(beside("csv", "part"), "mine");
    assertThrows(UserError.class, () -> write("csv", 1));
    assertEquals("mine", Files.readString(beside("csv", "part")));
  }

  @Test
  void aRunOfSomethingElseIsNotGoneOnFrom() {
    write("csv", 2);
    try (RowFile rows = file("csv")) {
      UserError error =
          assertThrows(UserError.class, () -> rows.open(List.of(ASKED.get(0), "spec 2")));
      assertTrue(String.valueOf(error.getMessage()).contains("spec 2"));
    }
  }

  @Test
  void twoRunsDoNotWriteOneFile() {
    try (RowFile rows = file("csv");
        RowFile other = file("csv")) {
      rows.open(ASKED);
      UserError error = assertThrows(UserError.class, () -> other.open(ASKED));
      assertTrue(String.valueOf(error.getMessage()).contains("another run"));
    }
  }

  @Test
  void parquetHoldsTheRowsOfTheCsv() throws IOException {
    String csv = new String(undisturbed("csv"), UTF_8);
    write("parquet", CHUNKS);
    ParquetTable table = ParquetTable.read(out("parquet"));
    assertEquals(CHUNKS, table.groups());
    assertEquals(SWEEP.text(), table.said().get("sweep"));
    List<String> lines = csv.lines().toList();
    assertEquals(lines.get(0), String.join(",", table.header()));
    assertEquals(lines.size() - 1, table.records().size());
    for (int i = 0; i < table.records().size(); i++) {
      // this sweep's reasons have no comma, so no field is quoted
      assertEquals(lines.get(i + 1), String.join(",", table.records().get(i)));
    }
  }

  @Test
  void aRefusedRunLeavesTheJournalAsItIs() throws IOException {
    write("csv", 2);
    Files.writeString(beside("csv", "journal"), "chunk 10 0 17", StandardOpenOption.APPEND);
    byte[] journal = Files.readAllBytes(beside("csv", "journal"));
    for (List<String> other :
        List.of(
            List.of(ASKED.get(0), "spec 2"),
            List.of(ASKED.get(0)),
            List.of(ASKED.get(0), ASKED.get(1), "digest of extension 1"))) {
      try (RowFile rows = file("csv")) {
        assertThrows(UserError.class, () -> rows.open(other));
      }
      assertArrayEquals(journal, Files.readAllBytes(beside("csv", "journal")));
    }
    assertTrue(write("csv", CHUNKS));
  }

  @Test
  void aJournalThatIsNotOursIsNotOverwritten() throws IOException {
    for (String text : List.of("my diary\n", "another program #1f2e\n", "rows of a tesT")) {
      Files.writeString(beside("csv", "journal"), text);
      UserError error = assertThrows(UserError.class, () -> write("csv", 1));
      assertTrue(String.valueOf(error.getMessage()).contains("no journal"), error.getMessage());
      assertEquals(text, Files.readString(beside("csv", "journal")));
      assertFalse(Files.exists(beside("csv", "part")));
    }
  }

  /** What the reference implementation says of a column of a row group. */
  private static String described(ColumnChunkMetaData column) {
    var statistics = column.getStatistics();
    return statistics.getNumNulls()
        + " "
        + statistics.minAsString()
        + " "
        + statistics.maxAsString()
        + " "
        + column.getEncodings().contains(Encoding.RLE_DICTIONARY);
  }

  @Test
  void parquetHasTheStatisticsOfItsColumnsAndDictionariesOfItsWords() throws IOException {
    assertFalse(write("parquet", 2)); // the statistics outlast the end of a run in the journal
    assertTrue(write("parquet", CHUNKS));
    try (ParquetFileReader reader =
        ParquetFileReader.open(
            ParquetReader.makeInputFile(out("parquet").toFile()),
            ParquetReadOptions.builder(new PlainParquetConfiguration()).build())) {
      List<BlockMetaData> groups = reader.getFooter().getBlocks();
      List<String> header = ParquetTable.read(out("parquet")).header();
      int index = header.indexOf("index");
      int craft = header.indexOf("craft");
      int loss = header.indexOf("altitude_loss_ft");
      for (int chunk = 0; chunk < CHUNKS; chunk++) {
        List<ColumnChunkMetaData> columns = groups.get(chunk).getColumns();
        int from = chunk * PER_CHUNK;
        assertEquals(
            "0 " + from + " " + (from + PER_CHUNK - 1) + " false", described(columns.get(index)));
        assertEquals("0 trainer trainer true", described(columns.get(craft)));
        double[] losses =
            IntStream.range(2 * chunk, 2 * chunk + 2)
                .mapToObj(HALVES::get)
                .flatMapToDouble(
                    rows -> IntStream.range(0, rows.size()).mapToDouble(r -> rows.number(loss, r)))
                .filter(value -> !Double.isNaN(value))
                .toArray();
        var statistics = columns.get(loss).getStatistics();
        assertEquals(PER_CHUNK - losses.length, statistics.getNumNulls());
        assertEquals(losses.length > 0, statistics.hasNonNullValue());
        if (losses.length > 0) {
          assertEquals(Arrays.stream(losses).min().orElseThrow(), statistics.genericGetMin());
          assertEquals(Arrays.stream(losses).max().orElseThrow(), statistics.genericGetMax());
        }
      }
    }
  }
}
