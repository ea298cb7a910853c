package io.github.ringstate.files.extension;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.files.craft.CraftWriter;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.sweep.SweepFile;
import io.github.ringstate.files.toml.Texts;
import io.github.ringstate.study.sweep.Column;
import io.github.ringstate.study.sweep.PointFaultException;
import io.github.ringstate.study.sweep.Rows;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Extensions as users write them: compiled, packed, named by a jar. */
class ExtensionsTest {

  private static final String ALL =
      """
      public final class Mine implements SweepExtension {
        public String name() { return "mine"; }
        public List<Technique> recoveries() {
          Technique f = Technique.FORWARD;
          return List.of(new Technique("own-forward", "own", "the same as forward", f.purpose(),
              f.remark(), f.parameters(), f.spreads(), f.maker()));
        }
        public List<EntryKind> entries() {
          EntryKind s = EntryKind.SETTLING;
          return List.of(new EntryKind("own-settling", "own", s.text(), s.remark(), s.wind(),
              s.windFrom(), s.parameters(), s.maker()));
        }
        public List<InflowKind> inflows() {
          return List.of(new InflowKind("own-ring", RingStateInflow.PARAMETERS,
              RingStateInflow::new, HeaveDamping::new));
        }
        public List<DelayKind> delays() {
          return List.of(DelayKind.of("sleepy", new NormalDistribution(3, 0.5)));
        }
        public List<OutputColumn> columns() {
          return List.of(new OutputColumn("energy_lost_j", p -> p.altitudeLoss() > 0
              ? OptionalDouble.of(9.81 * p.altitudeLoss()
                  * p.encounter().craft().numbers().get(io.github.ringstate.craft.Helicopter.MASS))
              : OptionalDouble.empty()));
        }
      }
      """;

  @TempDir Path folder = Path.of("");

  private static Rows rows(String sweep, Extensions extensions) {
    SweepFile file = SweepFile.read("s", extensions, (name, what, largest) -> sweep);
    return file.sweep().rows(0, (int) file.sweep().count());
  }

  private static int column(Rows rows, String name) {
    return rows.columns().stream().map(Column::name).toList().indexOf(name);
  }

  @Test
  void whatIsTheSameAsBuiltInFliesTheSame() throws IOException {
    Extensions mine = BuiltJar.load(BuiltJar.of(folder, "Mine", ALL));
    Rows own =
        rows(
            """
            [model]
            kind = ["own-ring", "ring-state"]
            ring_exit_total_inflow = 1.3
            [entry]
            kind = ["own-settling", "settling"]
            wind_kt = 3
            [pilot]
            technique = ["own-forward", "forward"]
            nose_down_deg = 12
            """,
            mine);
    assertEquals(8, own.size());
    int loss = column(own, "altitude_loss_ft");
    for (int row = 0; row < own.size(); row++) {
      assertEquals(own.number(loss, 0), own.number(loss, row));
      // the weight of 600 kg times the height: m g h, with g as the extension has it
      assertEquals(
          600 * 9.81 * 0.3048 * own.number(loss, row),
          own.number(column(own, "energy_lost_j"), row),
          5);
    }
    assertEquals("own-forward", own.word(column(own, "recovery"), 0));
    assertEquals("own-ring", own.word(column(own, "model_kind"), 0));
    assertEquals(own.columns().size() - 2, column(own, "energy_lost_j"));
  }

  @Test
  void aDistributionOfDelaysHasItsMedianAndIsDrawn() throws IOException {
    Extensions mine = BuiltJar.load(BuiltJar.of(folder, "Mine", ALL));
    Rows one = rows("[pilot]\nstate = \"sleepy\"\n", mine);
    assertEquals(3, one.number(column(one, "delay_s"), 0), 1e-9);
    Rows drawn = rows("[pilot]\nstate = \"sleepy\"\ncount = 400\n", mine);
    double sum = 0;
    for (int row = 0; row < drawn.size(); row++) {
      sum += drawn.number(column(drawn, "delay_s"), row);
    }
    // a mean of 400 has deviation 0.5 / 20; five of them
    assertEquals(3, sum / drawn.size(), 0.125);
  }

  @Test
  void aJarIsToldByItsDigestInWhatASweepDependsOn() throws IOException {
    Path jar = BuiltJar.of(folder, "Mine", ALL);
    Extensions mine = BuiltJar.load(jar);
    Path changed =
        BuiltJar.of(Files.createDirectory(folder.resolve("b")), "Mine", ALL.replace("9.81", "9.8"));
    List<String> one = SweepFile.read("s", mine, (n, w, l) -> "seed = 1").digests();
    List<String> other =
        SweepFile.read("s", BuiltJar.load(changed), (n, w, l) -> "seed = 1").digests();
    assertEquals(one.get(0), other.get(0));
    assertNotEquals(one.get(1), other.get(1));
  }

  private static String refused(Path... jars) {
    UserError error = assertThrows(UserError.class, () -> BuiltJar.load(jars));
    String message = String.valueOf(error.getMessage());
    assertEquals(1, message.lines().count(), message);
    assertFalse(message.contains("\tat "), message);
    return message;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'public String name() { return null; }' | gives null",
        "'public String name() { throw new IllegalStateException(\"no\"); }' | IllegalStateException: no",
        "'public String name() { return \"My Own\"; }' | My Own",
        "'X(int i) {} public String name() { return \"x\"; }' | constructor",
        "'public X() { throw new IllegalStateException(\"no\"); } public String name() { return \"x\"; }' | IllegalStateException: no",
        "'public String name() { return \"x\"; } public List<Technique> recoveries() { return List.of(Technique.FORWARD); }' | 'forward'",
        "'public String name() { return \"x\"; } public List<EntryKind> entries() { return List.of(EntryKind.STEEP); }' | 'steep'",
        "'public String name() { return \"x\"; } public List<EntryKind> entries() { return null; }' | NullPointerException",
        "'public String name() { return \"x\"; } public List<OutputColumn> columns() { return List.of(new OutputColumn(\"impact_fpm\", p -> OptionalDouble.empty())); }' | 'impact_fpm'",
        "'public String name() { return \"x\"; } public List<OutputColumn> columns() { return List.of(new OutputColumn(\"craft_mass_kg\", p -> OptionalDouble.empty())); }' | 'craft_mass_kg'",
        "'public String name() { return \"x\"; } public List<DelayKind> delays() { return List.of(DelayKind.of(\"early\", new NormalDistribution(1, 1))); }' | early",
        "'public String name() { return \"x\"; } public List<DelayKind> delays() { return List.of(new DelayKind(\"nan\", Double.NaN, new NormalDistribution(5, 1))); }' | NaN",
        "'public String name() { return \"x\"; } static double f(ParameterSet s) { throw new IllegalStateException(\"maker\"); } public List<Technique> recoveries() { return List.of(new Technique(\"y\", \"y\", \"y\", Technique.Purpose.NOTHING, \"y\", List.of(), List.of(), n -> { f(n); return null; })); }' | maker",
      })
  void aBadExtensionIsRefusedInASentence(String body, String said) throws IOException {
    Path jar =
        BuiltJar.of(folder, "X", "public final class X implements SweepExtension {" + body + "}");
    String message = refused(jar);
    assertTrue(message.contains(said), message);
    assertTrue(message.contains("X.jar"), message);
  }

  @Test
  void anInflowModelThatIsNoNumberIsRefused() throws IOException {
    String nan =
        """
        public final class X implements SweepExtension {
          public String name() { return "x"; }
          public List<InflowKind> inflows() {
            return List.of(new InflowKind("nan", List.of(), n -> new InflowModel() {
              public String name() { return "nan"; }
              public double induced(double x, double z) { return Double.NaN; }
              public double slope(double x, double z) { return 1; }
              public double lossShare(double x, double z) { return 0; }
            }, HeaveDamping::new));
          }
        }
        """;
    String message = refused(BuiltJar.of(folder, "X", nan));
    assertTrue(message.contains("induced velocity is NaN"), message);
  }

  @Test
  void aWrongClassAMissingOneAndWhatIsNoJarAreRefused() throws IOException {
    String plain = "public final class X {}";
    assertTrue(refused(BuiltJar.of(folder, "X", plain)).contains("not a subtype"));
    assertTrue(refused(BuiltJar.of(folder, "X", plain, "Y")).contains("not found"));
    assertTrue(refused(BuiltJar.of(folder, "X", plain, "")).contains("META-INF"));
    Path text = Files.writeString(folder.resolve("text.jar"), "no jar");
    assertTrue(refused(text).contains("no jar"));
    assertTrue(refused(folder.resolve("none.jar")).contains("no such"));
  }

  @Test
  void theSameJarTwiceIsRefused() throws IOException {
    Path jar = BuiltJar.of(folder, "Mine", ALL);
    assertTrue(refused(jar, jar).contains("taken"));
  }

  @Test
  void aColumnThatIsNoNumberEndsTheSweepAtItsPoint() throws IOException {
    Extensions bad =
        BuiltJar.load(
            BuiltJar.of(
                folder,
                "X",
                """
                public final class X implements SweepExtension {
                  public String name() { return "x"; }
                  public List<OutputColumn> columns() {
                    return List.of(new OutputColumn("mine", p -> OptionalDouble.of(0.0 / (p.index() - 1))));
                  }
                }
                """));
    PointFaultException fault =
        assertThrows(PointFaultException.class, () -> rows("[pilot]\ndelay_s = [1, 2]\n", bad));
    assertTrue(String.valueOf(fault.getMessage()).contains("point 1 "), fault.getMessage());
    assertTrue(String.valueOf(fault.getCause()).contains("the column mine is NaN"));
  }

  @Test
  void aRecoveryThatSwitchesForEverIsARowThatSaysSo() throws IOException {
    Extensions switching =
        BuiltJar.load(
            BuiltJar.of(
                folder,
                "X",
                """
                public final class X implements SweepExtension {
                  public String name() { return "x"; }
                  record Bang() implements Recovery {
                    public String name() { return "bang"; }
                    public List<Phase> phases() {
                      return List.of(Phase.last("bang bang",
                          (seen, c) -> c.collective(seen.power() < 1 ? 1 : 0, 0.1)));
                    }
                  }
                  public List<Technique> recoveries() {
                    return List.of(new Technique("bang", "bang", "pulls and drops",
                        Technique.Purpose.NOTHING, "", List.of(), List.of(), n -> new Bang()));
                  }
                }
                """));
    Rows rows = rows("[pilot]\ntechnique = [\"bang\", \"forward\"]\n", switching);
    assertEquals(1, rows.failed());
    String error = rows.word(rows.columns().size() - 1, 0);
    assertTrue(error.contains("'bang bang'"), error);
    assertTrue(rows.number(column(rows, "altitude_loss_ft"), 1) > 0);
  }

  @Test
  void aSweepReadsCraftFromFilesBesideIt() throws IOException {
    Path own = folder.resolve("own.toml");
    Files.writeString(own, String.join("\n", CraftWriter.lines(DemoCraft.TWIN)));
    Path spec =
        Files.writeString(folder.resolve("s.toml"), "[craft]\nname = [\"twin\", \"own.toml\"]\n");
    SweepFile file = SweepFile.read(spec.toString());
    Rows rows = file.sweep().rows(0, 2);
    int loss = column(rows, "altitude_loss_ft");
    assertEquals(rows.number(loss, 0), rows.number(loss, 1));
    assertEquals("own.toml", rows.word(column(rows, "craft"), 1));
    assertEquals(2, file.digests().size());
    Files.writeString(
        own, Files.readString(own).replaceFirst("mass_kg = [0-9.]+", "mass_kg = 4000.0"));
    assertNotEquals(
        file.digests(), SweepFile.read(spec.toString(), Extensions.NONE, Texts.FILES).digests());
  }
}
