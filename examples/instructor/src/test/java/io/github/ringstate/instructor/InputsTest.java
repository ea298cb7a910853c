package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.HeightVelocityCurve;
import io.github.ringstate.files.craft.CraftFile;
import io.github.ringstate.files.craft.CraftWriter;
import io.github.ringstate.quantity.Unit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What users give the tool to read stays theirs, and nothing of it is dropped. */
class InputsTest {

  private static final CraftFile CRAFT =
      new CraftFile(
          DemoCraft.UTILITY,
          new HeightVelocityCurve(List.of(point(0, 400), point(45.5, 90))),
          List.of());

  @TempDir private Path folder;

  private static HeightVelocityCurve.Point point(double knots, double feet) {
    return new HeightVelocityCurve.Point(Unit.KNOT.toSi(knots), Unit.FOOT.toSi(feet));
  }

  private Path written() throws IOException {
    return Files.write(folder.resolve("mine.toml"), CraftWriter.lines(CRAFT));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "craft FILE --output FILE",
        "craft FILE --output LINK",
        "craft LINK --output FILE",
        "loss --craft FILE --format csv --output FILE",
        "loss --craft=FILE --format csv --output=LINK"
      })
  void aCraftThatIsReadIsNotWrittenOver(String line) throws IOException {
    Path file = written();
    Path link = Files.createSymbolicLink(folder.resolve("link.toml"), file);
    String before = Files.readString(file);

    Run run =
        Run.of(line.replace("FILE", file.toString()).replace("LINK", link.toString()).split(" "));

    assertEquals(2, run.status(), run.err());
    assertTrue(run.err().contains("--output"), run.err());
    assertEquals(before, Files.readString(file));
  }

  @Test
  void aSweepThatIsReadIsNotWrittenOver() throws IOException {
    Path file = Files.writeString(folder.resolve("sweep.csv"), Run.of("sweep", "--example").out());
    String before = Files.readString(file);

    Run run = Run.of("sweep", file.toString(), "--output", file.toString());

    assertEquals(2, run.status(), run.err());
    assertEquals(before, Files.readString(file));
  }

  @Test
  void aCraftIsWrittenWithTheHeightVelocityPointsOfItsFile() throws IOException {
    Path copy = folder.resolve("copy.toml");
    Run run = Run.of("craft", written().toString(), "--output", copy.toString());

    assertEquals(0, run.status(), run.err());
    assertEquals(CRAFT, CraftFile.read(copy.toString()));
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void aCraftFromAPipeIsReadOnce() throws IOException, InterruptedException {
    Path pipe = folder.resolve("pipe.toml");
    assertEquals(0, new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor());
    Process writer =
        new ProcessBuilder("sh", "-c", "cat \"$0\" > \"$1\"", written().toString(), pipe.toString())
            .start();

    Run run =
        Run.of("runs", "--calm", "--craft", pipe.toString(), "--pilots", "20", "--format", "html");

    assertEquals(0, run.status(), run.err());
    assertEquals(0, writer.waitFor());
    assertTrue(run.out().contains("45.5"), "the height-velocity curve is on the sheet");
  }
}
