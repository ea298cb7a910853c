package io.github.ringstate.instructor.sweep;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.files.row.ParquetTable;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.instructor.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SweepCommandTest {

  /** One mass of three is beyond the craft's limits. */
  private static final String SWEEP =
      """
      [craft]
      mass_kg = [560, 600, 640]
      [pilot]
      technique = ["forward", "lateral"]
      """;

  @TempDir Path folder = Path.of("");
  private String spec = "";

  @BeforeEach
  void writeSweep() throws IOException {
    spec = Files.writeString(folder.resolve("my.toml"), SWEEP).toString();
  }

  private Path out(String name) {
    return folder.resolve(name);
  }

  private String line(String output) {
    return "sweep " + spec + " --output " + out(output);
  }

  private Run sweep(String output) {
    return Run.typed(line(output));
  }

  private List<CSVRecord> records(String name) throws IOException {
    return new Run(0, Files.readString(out(name)), "").records();
  }

  @Test
  void aPointThatCannotBeFlownIsARowAndIsCounted() throws IOException {
    Run run = sweep("a.csv");
    assertEquals(0, run.status(), run.err());
    assertEquals("", run.out());
    assertTrue(run.err().contains("2 of 6 points"), run.err());
    List<CSVRecord> records = records("a.csv");
    assertEquals(6, records.size());
    for (int i = 0; i < 6; i++) {
      CSVRecord record = records.get(i);
      assertEquals(String.valueOf(i), record.get("index"));
      assertEquals(i % 2 == 0 ? "forward" : "lateral", record.get("recovery"));
      boolean bad = i >= 4;
      assertEquals(bad ? "" : "arrested", record.get("outcome"));
      assertEquals(bad, record.get("altitude_loss_ft").isEmpty());
      assertEquals(bad, record.get("error").contains("640"));
    }
  }

  @Test
  void parquetHasTheRowsOfTheCsvAndSaysWhatWasFlown() throws IOException {
    sweep("a.csv");
    sweep("a.parquet");
    ParquetTable table = ParquetTable.read(out("a.parquet"));
    assertEquals(
        records("a.csv").stream().map(record -> record.stream().toList()).toList(),
        table.records());
    assertEquals(SWEEP, table.said().get("sweep"));
    assertEquals(Caution.TEXT, table.said().get("caution"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"csv", "parquet"})
  void theFileIsTheSameForAnyNumberOfThreads(String ending) throws IOException {
    Run.line(line("1." + ending) + " --threads 1");
    for (String threads : List.of("2", "8")) {
      Run.line(line("n." + ending) + " --threads " + threads);
      assertArrayEquals(
          Files.readAllBytes(out("1." + ending)), Files.readAllBytes(out("n." + ending)));
    }
  }

  @Test
  void theExampleFlies() throws IOException {
    Run example = Run.of("sweep", "--example");
    assertEquals(0, example.status());
    assertTrue(example.out().replaceAll("\\s+#?\\s*", " ").contains(Caution.TEXT), example.out());
    spec = Files.writeString(folder.resolve("example.toml"), example.out()).toString();
    assertEquals(new Run(0, "", ""), sweep("example.csv"));
    assertEquals(900, records("example.csv").size());
  }

  @Test
  void anOldFileIsReplacedAndNothingElseIsLeft() throws IOException {
    Files.writeString(out("a.csv"), "old");
    Run.line(line("a.csv") + " --resume");
    assertEquals(6, records("a.csv").size());
    try (Stream<Path> files = Files.list(folder)) {
      assertEquals(
          List.of("a.csv", "a.csv.provenance.json", "my.toml"),
          files.map(file -> file.getFileName().toString()).sorted().toList());
    }
  }

  @Test
  void aRunBegunIsNotBegunAnewUnasked() throws IOException {
    Files.writeString(out("a.csv.part"), "rows of hours");
    Run.assertFileRefused(line("a.csv"), "--resume");
    assertEquals("rows of hours", Files.readString(out("a.csv.part")));
  }

  @Test
  void aBadSweepLeavesNothingBehind() throws IOException {
    Files.writeString(Path.of(spec), "[craft]\nmass_kg = -1\n");
    Run.assertFileRefused(line("a.csv"), "my.toml, line 2: craft.mass_kg");
    try (Stream<Path> files = Files.list(folder)) {
      assertEquals(1, files.count());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "# nothing\n"})
  void anEmptySweepIsRefused(String text) throws IOException {
    Files.writeString(Path.of(spec), text);
    Run.assertFileRefused(line("a.csv"), "my.toml: the sweep is empty");
    assertFalse(Files.exists(out("a.csv")));
  }

  @Test
  void whereNoPointCanBeFlownTheStatusSaysSo() throws IOException {
    Files.writeString(Path.of(spec), "[craft]\nmass_kg = [700, 710]\n");
    Run.assertFileRefused(line("a.csv"), "2 of 2 points");
    assertEquals(2, records("a.csv").size());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "sweep",
        "sweep SPEC",
        "sweep --output DIR/a.csv",
        "sweep SPEC --output DIR/a.json",
        "sweep SPEC --output DIR/csv",
        "sweep SPEC --output DIR/a.csv --threads 0",
        "sweep SPEC --output DIR/a.csv --threads 1.5",
        "sweep SPEC --output DIR/a.csv --threads many"
      })
  void wrongOptionsAreRefusedWithStatus2(String line) {
    Run.assertRefused(line.replace("SPEC", spec).replace("DIR", folder.toString()), "allowed: ");
  }
}
