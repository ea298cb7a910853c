package io.github.ringstate.files.sweep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.study.sweep.Column;
import io.github.ringstate.study.sweep.Rows;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.distribution.RealDistribution;
import org.hipparchus.distribution.continuous.GammaDistribution;
import org.hipparchus.distribution.continuous.LogNormalDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TriangularDistribution;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values at the edges of what a sweep file may hold, distributions and units of its rows. */
class SweepValuesTest {

  private static Rows rows(String text) {
    SweepFile file = SweepFile.parse("s", text);
    return file.sweep().rows(0, (int) Math.min(file.sweep().count(), 4000));
  }

  private static List<String> names(Rows rows) {
    return rows.columns().stream().map(Column::name).toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'[craft]\nmass_kg = { from = 500, to = 600, values = 3, sampled = \"yes\" }' | true or false",
        "'[craft]\nmass_kg = { from = 500, to = 600, values = 3, sampled = 1 }' | true or false",
        "'[craft]\nmass_kg = { from = 500, to = 600, values = 3, scale = 2 }' | log",
        "'seed = 1e99999999999' | Invalid number",
        "'seed = 1.5' | whole number",
        "'seed = 1e30' | whole number",
        "'[pilot]\ncount = 2.5' | whole number",
        "'[craft]\nmass_kg = 1e400' | 200 to 20000 kg",
        "'[output]\nunits = \"imperial\"' | \"aviation\" or \"si\"",
        "'[output]\ndrawn_numbers = 1' | true or false",
        "'[output]\nsensitive = \"true\"' | true or false, without quotation marks",
        "'[craft]\nmass_kg = { distribution = \"cauchy\" }' | normal",
        "'[craft]\nmass_kg = { distribution = \"normal\", mean = 560 }' | sd",
        "'[craft]\nmass_kg = { distribution = \"normal\", mean = 560, sd = 0 }' | positive sd",
        "'[craft]\nmass_kg = { distribution = \"normal\", mean = 560, sd = 20, mode = 3 }' | mode",
        "'[craft]\nmass_kg = { distribution = \"normal\", mean = 200, sd = 20 }' | bounds of your own",
        "'[craft]\nmass_kg = { distribution = \"normal\", mean = 560, sd = 20, from = 10 }' | 200 to 20000 kg",
        "'[craft]\nmass_kg = { distribution = \"normal\", mean = 560, sd = 20, from = 900 }' | at least 1 %",
        "'[craft]\nmass_kg = { distribution = \"triangular\", from = 1, mode = 3, to = 2 }' | mode",
        "'[craft]\nname = { distribution = \"uniform\", from = 1, to = 2 }' | trainer",
      })
  void whatCannotBeIsRefusedInASentence(String text, String said) {
    String sampled =
        text.contains("distribution") ? "[sample]\nmethod = \"sobol\"\npoints = 4\n" : "";
    UserError error =
        assertThrows(UserError.class, () -> SweepFile.parse("s", text + "\n" + sampled));
    String message = String.valueOf(error.getMessage());
    assertTrue(message.contains(said), message);
    assertFalse(message.contains("java."), message);
  }

  @Test
  void aWholeNumberMayBeWrittenWithAPoint() {
    assertEquals(3, SweepFile.parse("s", "seed = 1.0\n[pilot]\ncount = 3.0\n").sweep().count());
  }

  private static double[] drawn(String distribution) {
    Rows rows =
        rows(
            "[sample]\nmethod = \"latin-hypercube\"\npoints = 2000\n[craft]\nmass_kg = 5000000\n"
                    .replace("mass_kg = 5000000", "engine_time_s = " + distribution)
                + "[pilot]\ntechnique = \"none\"\n[entry]\nheight_ft = 4\n");
    int column = names(rows).indexOf("craft_engine_time_s");
    double[] values = new double[rows.size()];
    Arrays.setAll(values, row -> rows.number(column, row));
    return values;
  }

  /** A Latin hypercube has one value in each stratum of equal probability (McKay et al. 1979). */
  private static void assertDrawnFrom(RealDistribution expected, String distribution) {
    double[] values = drawn(distribution);
    Arrays.sort(values);
    for (int i = 0; i < values.length; i++) {
      // the range of the setting, 0 to 3 s, cuts off what lies outside
      double part = values.length * expected.probability(0, values[i]) / expected.probability(0, 3);
      assertTrue(part > i - 1e-6 && part < i + 1 + 1e-6, distribution + ": " + i + " at " + part);
    }
  }

  @Test
  void valuesFollowTheirDistribution() {
    assertDrawnFrom(
        new NormalDistribution(1.5, 0.2), "{ distribution = \"normal\", mean = 1.5, sd = 0.2 }");
    double z = 1.2815515655446004; // the 90 per cent point of the standard normal: tables
    assertDrawnFrom(
        new LogNormalDistribution(FastMath.log(0.5), FastMath.log(2) / z),
        "{ distribution = \"log-normal\", median = 0.5, p90 = 1 }");
    assertDrawnFrom(
        new GammaDistribution(16, 0.0625), "{ distribution = \"gamma\", mean = 1, sd = 0.25 }");
    assertDrawnFrom(
        new TriangularDistribution(0.5, 1, 2.5),
        "{ distribution = \"triangular\", from = 0.5, mode = 1, to = 2.5 }");
  }

  @Test
  void aUniformDistributionIsThatOfAPlainSample() {
    double[] plain = drawn("{ from = 0.5, to = 2.5, sampled = true }");
    double[] uniform = drawn("{ distribution = \"uniform\", from = 0.5, to = 2.5 }");
    for (int i = 0; i < plain.length; i++) {
      assertEquals(plain[i], uniform[i], 1e-12);
    }
  }

  @Test
  void boundsCutOffWhatLiesOutside() {
    double[] cut = drawn("{ distribution = \"normal\", mean = 1, sd = 1, from = 0.5, to = 1.5 }");
    assertTrue(Arrays.stream(cut).min().orElseThrow() >= 0.5);
    assertTrue(Arrays.stream(cut).max().orElseThrow() <= 1.5);
    // symmetric bounds about the mean leave the mean
    assertEquals(1, Arrays.stream(cut).average().orElseThrow(), 1e-3);
  }

  @Test
  void rowsInSiAreThoseInAviationUnits() {
    String sweep = "[craft]\nmass_kg = [560, 600]\n[entry]\nheight_ft = [100, 900]\n";
    Rows aviation = rows(sweep);
    Rows si = rows(sweep + "[output]\nunits = \"si\"\n");
    assertTrue(names(si).contains("altitude_loss_m"), names(si).toString());
    assertTrue(names(si).contains("impact_m_per_s"));
    for (int row = 0; row < 4; row++) {
      // both are rounded to a thousandth of their unit
      assertEquals(
          0.3048 * aviation.number(names(aviation).indexOf("altitude_loss_ft"), row),
          si.number(names(si).indexOf("altitude_loss_m"), row),
          0.0007);
      assertEquals(
          0.3048 / 60 * aviation.number(names(aviation).indexOf("peak_descent_fpm"), row),
          si.number(names(si).indexOf("peak_descent_m_per_s"), row),
          0.0006);
    }
  }

  @Test
  void drawnNumbersAreColumnsAndThoseOfOtherTechniquesEmpty() {
    Rows rows =
        rows(
            """
            [craft]
            mass_kg = [600, 700]
            [pilot]
            technique = ["forward", "lateral"]
            count = 50
            state = "primed"
            [output]
            drawn_numbers = true
            """);
    List<String> names = names(rows);
    int nose = names.indexOf("pilot_nose_down_deg");
    int bank = names.indexOf("pilot_bank_deg");
    int delay = names.indexOf("delay_s");
    for (int row = 0; row < rows.size(); row++) {
      boolean forward = "forward".equals(rows.word(names.indexOf("recovery"), row));
      assertEquals(forward, !Double.isNaN(rows.number(nose, row)));
      assertEquals(forward, Double.isNaN(rows.number(bank, row)));
      assertFalse(Double.isNaN(rows.number(delay, row)), "a failed row keeps its delay");
    }
    // 700 kg is beyond the trainer: the same pilots all the same
    assertEquals(100, rows.failed());
    for (int row = 0; row < 100; row++) {
      assertEquals(rows.number(nose, row), rows.number(nose, row + 100));
      assertEquals(rows.number(delay, row), rows.number(delay, row + 100));
    }
  }
}
