package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.files.row.ParquetTable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The jar prints the same bytes whatever runs it. */
class SameBytesIT {

  private static final List<String> GERMAN = List.of("-Duser.language=de", "-Duser.country=DE");

  @TempDir static Path folder = Path.of("");

  /**
   * A comma for decimals (de), other digits (ar-EG, th with the extension nu), a dotless i (tr).
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "-Duser.language=tr -Duser.country=TR | loss --help",
        "-Duser.language=ar -Duser.country=EG | completion",
        "-Duser.language=th -Duser.extensions=u-nu-thai | completion",
        "-Duser.language=de -Duser.country=DE | loss --turbulence 15 --shaking-pct 5 --seed 7",
        "-Duser.language=ar -Duser.country=EG | floor --pilots 8 --state primed --format json",
        "-Duser.language=de -Duser.country=DE | fly --format json",
        "-Duser.language=th -Duser.extensions=u-nu-thai | boundary --step-kt 0.5",
        "-Duser.language=tr -Duser.country=TR | runs --wind-from-deg 240 --wind-kt 12 --pilots 8"
      })
  void theOutputIsTheSameTwiceAndUnderAnyLocaleAndForAnyNumberOfThreads(
      String locale, String command) throws IOException, InterruptedException {
    String[] args = command.split(" ", -1);
    List<String> options = new ArrayList<>(List.of(locale.split(" ", -1)));
    options.add("-Djava.util.concurrent.ForkJoinPool.common.parallelism=5");
    Run there = JarRun.of(JarRun.plain(options, args)); // whose compiler is another one than here
    assertEquals(0, there.status(), there.err());
    assertEquals("", there.err());
    // in this virtual machine other commands ran before; its classes are of no jar
    assertEquals(withoutBuild(Run.of(args).out()), withoutBuild(there.out()));
  }

  private static String withoutBuild(String json) {
    return json.replaceFirst("\"version\" : .*\n *\"build\" : .*\n", "");
  }

  @Test
  void aSweepIsTheSameUnderAGermanLocaleAndInThisVirtualMachine()
      throws IOException, InterruptedException {
    Path spec = folder.resolve("sweep.toml");
    Files.writeString(
        spec,
        JarRun.of(List.of(), "sweep", "--example").out().replace("points = 25", "points = 5"));
    for (String ending : List.of("csv", "parquet")) {
      Path out = folder.resolve("sweep." + ending);
      String[] args = {"sweep", spec.toString(), "--output", out.toString()};
      assertEquals(new Run(0, "", ""), JarRun.of(GERMAN, args));
      List<?> there = rows(out);
      assertEquals(new Run(0, "", ""), Run.of(args));
      assertEquals(there, rows(out));
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "loss --pilots 8 --delays 0,2.0 --format pdf",
        "runs --wind-from-deg 240 --wind-kt 12 --pilots 8 --recovery lateral --format pdf",
        "boundary --recovery forward --format png"
      })
  void aSheetIsTheSameByteForByteOnTheSameDate(String command)
      throws IOException, InterruptedException {
    // SOURCE_DATE_EPOCH of reproducible-builds.org
    assertArrayEquals(sheet(command, "first"), sheet(command, "second"));
  }

  /**
   * The rows alone: a Parquet file also says from which jar it comes, and these classes are of
   * none.
   */
  private static List<?> rows(Path file) throws IOException {
    return file.toString().endsWith("csv")
        ? Files.readAllLines(file)
        : ParquetTable.read(file).records();
  }

  private static byte[] sheet(String command, String name)
      throws IOException, InterruptedException {
    Path file = folder.resolve(name);
    ProcessBuilder builder =
        JarRun.process(List.of(), (command + " --output " + file).split(" ", -1)).inheritIO();
    builder.environment().put("SOURCE_DATE_EPOCH", "1790000000");
    assertEquals(0, builder.start().waitFor());
    byte[] bytes = Files.readAllBytes(file);
    assertTrue(bytes.length > 1000, command);
    return bytes;
  }
}
