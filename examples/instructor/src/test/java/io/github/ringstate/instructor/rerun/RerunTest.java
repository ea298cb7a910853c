package io.github.ringstate.instructor.rerun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.files.provenance.Build;
import io.github.ringstate.files.provenance.Provenance;
import io.github.ringstate.files.provenance.Sidecar;
import io.github.ringstate.instructor.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every file says where it comes from, and is made again from that alone. */
class RerunTest {

  private static final String SWEEP =
      "[craft]\nname = [\"trainer\", \"own.toml\"]\n[pilot]\ntechnique = [\"forward\", \"none\"]\n";

  @TempDir Path folder = Path.of("");

  private String path(String name) {
    return folder.resolve(name).toString();
  }

  private void write(String line, String name) {
    Run.line(line.replace("DIR", folder.toString()) + " --output " + path(name));
  }

  private void writeCraft(String name) {
    write("craft twin", name);
  }

  @ParameterizedTest
  @CsvSource({
    "loss --craft heavy --mass-kg 8000 --delays 1 --recovery forward, txt, craft.heavy.mass_kg",
    "loss --delays 1 --recovery forward --format csv, csv, model.ring-state.ring_exit_total_inflow",
    "loss --delays 1 --recovery forward --format json, json, entry.tailwind-approach.wind_kt",
    "loss --delays 1 --recovery forward --pilots 20 --format html, html, pilot.forward.nose_down_deg",
    "floor --pilots 20 --recovery forward --state primed --format json, json, pilot.delay_s",
    "fly --craft DIR/own.toml --format csv, csv, craft.twin.mass_kg",
    "fly --format json, json, disturbance.gust_wind_kt",
    "boundary --step-kt 10 --format svg, svg, model.ring-state.ring_exit_total_inflow",
    "boundary --step-kt 10 --format png, png, air.density_kg_per_m3",
    "boundary --step-kt 10 --format parquet, parquet, air.density_kg_per_m3",
    "boundary --step-kt 10 --recovery lateral --format svg, svg, pilot.lateral.bank_deg",
    "runs --calm --pilots 20 --format json, json, run.lowest_height_m",
    "runs --wind-from-deg 270 --wind-kt 12 --pilots 20, txt, entry.downwind.ground_speed_kt",
    "craft heavy, toml, craft.heavy.mass_kg",
    "card --pilots 20 --plan DIR/plan.toml --format html, html, pilot.forward.nose_down_deg",
    "lesson --pilots 20 --format json, json, model.ring-state.ring_exit_total_inflow",
    "plan --craft heavy --pilots 20, toml, craft.heavy.mass_kg",
    "sweep DIR/s.toml, csv, entry.tailwind-approach.wind_kt",
    "sweep DIR/s.toml --threads 1, parquet, craft.trainer.mass_kg",
  })
  void aFileIsMadeAgainFromWhatItSays(String line, String ending, String setting)
      throws IOException {
    writeCraft("own.toml");
    Files.writeString(folder.resolve("s.toml"), SWEEP);
    if (line.contains("plan.toml")) {
      write("plan --craft DIR/own.toml --recovery forward --state primed", "plan.toml");
    }
    write(line, "one." + ending);
    Provenance provenance = KeptProvenance.read(path("one." + ending));
    assertEquals(Build.current(), provenance.build());
    assertTrue(setting.isEmpty() || provenance.settings().containsKey(setting), setting);
    assertFalse(provenance.command().contains("--threads"), provenance.command().toString());
    // what was read is kept in the file: the originals may go
    Files.delete(folder.resolve("own.toml"));
    Files.deleteIfExists(folder.resolve("plan.toml"));
    Files.delete(folder.resolve("s.toml"));
    Run again = Run.line("rerun " + path("one." + ending) + " --output " + path("two." + ending));
    assertTrue(again.err().contains("has the same bytes as"), again.err());
    assertEquals(
        -1, Files.mismatch(folder.resolve("one." + ending), folder.resolve("two." + ending)));
  }

  @Test
  void aPdfKeepsItInItsInformation() throws IOException {
    write("loss --delays 1 --recovery forward --pilots 20 --format pdf", "a.pdf");
    Provenance provenance = KeptProvenance.read(path("a.pdf"));
    assertEquals("a4", provenance.options().get("--paper"));
    assertEquals("loss", provenance.command().get(0));
    Run.line("rerun " + path("a.pdf") + " --output " + path("b.pdf"));
    assertEquals(provenance, KeptProvenance.read(path("b.pdf")));
  }

  @Test
  void aPictureStaysOne() throws IOException {
    write("boundary --step-kt 10 --format png", "a.png");
    assertTrue(ImageIO.read(folder.resolve("a.png").toFile()).getWidth() > 100);
  }

  @Test
  void whatIsNotPartOfTheResultIsNotInIt() throws IOException {
    write("loss --delays 1 --recovery forward --format json", "a.json");
    String text = Files.readString(folder.resolve("a.json"));
    assertFalse(text.contains(folder.toString()), "the folder of the output");
    assertFalse(text.contains(System.getProperty("user.name") + "@"), "the user");
    write("loss --delays 1 --recovery forward --format json", "b.json");
    assertEquals(text, Files.readString(folder.resolve("b.json")));
  }

  @Test
  void unitsOfColumnsStandByTheirNames() throws IOException {
    write("fly --format csv", "a.csv");
    Provenance provenance = KeptProvenance.read(path("a.csv"));
    assertEquals("ft/min", provenance.units().get("vertical_speed_fpm"));
    assertEquals("deg", provenance.units().get("pitch_deg"));
    assertEquals("ft", provenance.units().get("height_ft"));
    assertFalse(provenance.units().containsKey("phase"));
  }

  @Test
  void aFileOfAnotherBuildIsRefusedUnlessAskedFor() throws IOException {
    write("loss --delays 1 --recovery forward --format json", "a.json");
    Path file = folder.resolve("a.json");
    String build = "\"build\" : \"" + Build.current().digest() + "\"";
    String text = Files.readString(file);
    assertTrue(text.contains(build), text);
    Files.writeString(file, text.replace(build, "\"build\" : \"0123456789abcdef\""));
    Run.assertFileRefused("rerun " + file, "0123456789abcdef");
    Run any = Run.line("rerun " + file + " --any-build");
    assertTrue(any.err().contains("may differ"), any.err());
    assertEquals(text, any.out());
  }

  @Test
  void aSidecarOfAnotherContentIsNotTaken() throws IOException {
    write("loss --delays 1 --recovery forward --format csv", "a.csv");
    assertTrue(Files.exists(Path.of(Sidecar.name(path("a.csv")))));
    Files.writeString(folder.resolve("a.csv"), "1,2\r\n");
    Run.assertFileRefused("rerun " + path("a.csv"), "another content");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{",
        "PAR1",
        "%PDF-1.7",
        "\u0089PNG",
        "<svg/>",
        "",
        "PAR1\u0001\u0001\u0001\u0001PAR1"
      })
  void whatSaysNothingIsRefusedInASentence(String content) throws IOException {
    Files.writeString(folder.resolve("x"), content);
    Run refused = Run.of("rerun", path("x"));
    assertEquals(1, refused.status(), refused.err());
    assertEquals(1, refused.err().lines().count(), refused.err());
    assertFalse(refused.err().contains("an error in the tool"), refused.err());
    assertEquals(1, Run.of("rerun", path("none")).status());
  }
}
