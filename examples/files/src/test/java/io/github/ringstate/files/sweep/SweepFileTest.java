package io.github.ringstate.files.sweep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.chance.Drawing;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.study.sweep.Axis;
import io.github.ringstate.study.sweep.Sample;
import io.github.ringstate.study.sweep.Scale;
import io.github.ringstate.study.sweep.SweepSpec;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SweepFileTest {

  private static SweepSpec spec(String text) {
    return SweepFile.parse("my.toml", text).sweep().spec();
  }

  @Test
  void everyFormOfASettingIsRead() {
    SweepSpec spec =
        spec(
            """
            seed = -3
            sample = { method = "sobol", points = 64 }
            craft.name = "twin"
            craft.mass_kg = { from = 3000, to = 4000.5, sampled = true }
            [air]
            pressure_altitude_ft = [0, 4e3]
            [pilot]
            count = 12
            draws = "independent"
            state = ["primed", "startled"]
            technique = "lateral"
            [entry]
            wind_kt = { from = 0, to = 8, values = 3 }
            [model]
            ring_exit_total_inflow = { from = 1.2, to = 1.5, values = 4, scale = "log" }
            """);
    assertEquals(-3, spec.seed());
    assertEquals(12, spec.pilots());
    assertEquals(Drawing.INDEPENDENT, spec.drawing());
    assertEquals(
        List.of(
            new Axis.Words("craft.name", List.of("twin")),
            new Axis.Words("pilot.technique", List.of("lateral"))),
        spec.fixed());
    assertEquals(
        List.of(
            new Axis.Range("model.ring_exit_total_inflow", 1.2, 1.5, 4, Scale.LOG),
            new Axis.Numbers("air.pressure_altitude_ft", List.of(0.0, 4000.0)),
            new Axis.Range("entry.wind_kt", 0, 8, 3, Scale.LINEAR),
            new Axis.Words("pilot.state", List.of("primed", "startled"))),
        spec.axes());
    assertEquals(
        new Sample(
            Sample.Method.SOBOL,
            64,
            List.of(new Sample.Dimension("craft.mass_kg", 3000, 4000.5, Scale.LINEAR))),
        spec.sample());
  }

  @Test
  void aFileThatSetsNothingFliesTheStandardEncounterAndAnEmptyOneIsAMistake() {
    assertThrows(UserError.class, () -> SweepFile.parse("my.toml", "# nothing\n"));
    Encounter encounter = SweepFile.parse("my.toml", "seed = 1").sweep().encounter(0);
    Encounter standard = Encounter.of(DemoCraft.TRAINER);
    assertEquals(standard.fly(), encounter.fly());
  }

  @Test
  void linesOfACraftFileCanBePasted() {
    Helicopter utility = DemoCraft.UTILITY;
    String lines =
        Helicopter.STANDARD_NUMBERS.parameters().stream()
            .map(parameter -> parameter.key() + " = " + utility.numbers().get(parameter) + "\n")
            .collect(Collectors.joining());
    Helicopter pasted =
        SweepFile.parse(
                "my.toml", "[craft]\nrotation = \"clockwise\"\nengine_kind = \"turbine\"\n" + lines)
            .sweep()
            .encounter(0)
            .craft();
    assertEquals(utility.numbers(), pasted.numbers());
    assertEquals(utility.sense(), pasted.sense());
    assertEquals(utility.engine(), pasted.engine());
  }

  @Test
  void theExampleIsASweep() {
    assertEquals(900, SweepFile.parse("example", SweepFile.example()).sweep().count());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      ignoreLeadingAndTrailingWhitespace = true,
      value = {
        "[craft];mass_lb = 1200                              | 2 | craft.mass_lb    | mass_kg",
        "[craft];mass_kg = 1e6                               | 2 | craft.mass_kg    | 200 to 20000 kg",
        "[craft];mass_kg = nan                               | 2 | craft.mass_kg    | 200 to 20000 kg",
        "[craft];mass_kg = true                              | 2 | craft.mass_kg    | a list",
        "[craft];mass_kg = []                                | 2 | craft.mass_kg    | at least one",
        "[craft];mass_kg = [500, 500.0]                      | 2 | 'twice'          | each value once",
        "[craft];mass_kg = [500, \"much\"]                   | 2 | craft.mass_kg    | a list",
        "[craft];mass_kg = { from = 500, to = 600 }          | 2 | craft.mass_kg    | values = n",
        "[craft];mass_kg = { from = 500, values = 3 }        | 2 | craft.mass_kg    | values = n",
        "[craft];mass_kg = { from = 5, to = 600, values = 3 }| 2 | '5.0'            | 200 to 20000",
        "[craft];mass_kg = { from = 5e2, to = 5e2, values = 3 }| 2 | 500.0 to 500.0 | different",
        "[craft];mass_kg = { from = 500, to = 600, values = 1 }| 2 | values         | 2 to 1000000",
        "[craft];mass_kg = { from = 500, to = 600, step = 1 }| 2 | mass_kg.step     | values",
        "[craft];mass_kg = { from = 500, to = 600, values = 3, scale = \"x\" }|2| mass_kg | log",
        "[craft];name = \"gyro\"                             | 2 | 'gyro'           | trainer",
        "[craft];name = 3                                    | 2 | craft.name       | trainer",
        "[entry];final_airspeed_kt = 5                       | 2 | tailwind-approach | with steep",
        "[entry];kind = \"spiral\"                           | 2 | 'spiral'         | steep",
        "[pilot];delay_s = -1                                | 2 | '-1.0'           | 0 to 60 s",
        "[pilot];count = 0                                   | 2 | pilot.count      | 1 to 10000000",
        "[pilot];count = 9;draws = \"even\"                 | 3 | pilot.draws      | \"sobol\" or \"independent\"",
        "[pilot];count = 2.5                                 | 2 | pilot.count      | a whole number",
        "[pilot];state = \"primed\";delay_s = 1              | 2 | pilot.state      | one of them",
        "[pilot];count = 9;bank_deg = 15;technique = \"lateral\"| 3 | bank_deg      | no pilot.count",
        "seed = 1.5                                          | 1 | seed             | a whole number",
        "sead = 1                                            | 1 | 'sead'           | [sample] [model]",
        "craft = 3                                           | 1 | craft            | a table, [craft]",
        "[sample];method = \"sobol\";points = 3              | 1 | sample           | sampled = true",
        "[sample];method = \"best\";points = 3               | 2 | 'best'           | \"sobol\"",
        "[sample];method = \"sobol\";points = 0              | 3 | sample.points    | 1 to 1000000000",
        "[sample];method = \"sobol\";point = 3               | 3 | sample.point     | points",
        "[craft];mass_kg 3                                   | 2 | 'mass_kg 3'      | TOML",
      })
  void aMistakeIsRefusedWithLineKeyAndWhatIsAllowed(
      String text, int line, String named, String allowed) {
    UserError error = assertThrows(UserError.class, () -> spec(text.replace(';', '\n')));
    String message = String.valueOf(error.getMessage());
    assertEquals(UserError.FILE, error.status());
    assertTrue(message.contains("my.toml, line " + line + ":"), message);
    assertTrue(message.contains(named), message);
    assertTrue(message.contains(allowed), message);
    assertEquals(1, message.lines().count());
  }

  @Test
  void whatIsMissingIsNamedThoughItHasNoLine() {
    UserError error =
        assertThrows(
            UserError.class,
            () -> spec("[craft]\nmass_kg = { from = 500, to = 600, sampled = true }\n"));
    assertTrue(String.valueOf(error.getMessage()).contains("sample.method is missing"));
  }
}
