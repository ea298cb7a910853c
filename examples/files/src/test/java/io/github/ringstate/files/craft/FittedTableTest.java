package io.github.ringstate.files.craft;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.FittedModel;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.UncertainNumbers;
import io.github.ringstate.rotor.Rotor;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The table of a craft file with what was fitted. */
class FittedTableTest {

  @TempDir Path folder = Path.of("");

  private Helicopter read(String text) throws IOException {
    return CraftFile.read(Files.writeString(folder.resolve("craft.toml"), text).toString()).craft();
  }

  /** An invented fit of two numbers of the ring state and one of the craft. */
  private static Helicopter fitted() {
    UncertainNumbers numbers =
        new UncertainNumbers(
            List.of(RingStateInflow.EXIT_TOTAL, RingStateInflow.LOSSES, Rotor.INDUCED_POWER_FACTOR),
            new double[] {
              UncertainNumbers.logit(RingStateInflow.EXIT_TOTAL, 1.05 * exit()), 0.25, -1.5
            },
            new double[][] {{0.5, 0.125, 0}, {0.125, 0.25, -0.0625}, {0, -0.0625, 0.75}});
    FittedModel model =
        new FittedModel(
            ParameterSet.standard(RingStateInflow.PARAMETERS),
            numbers,
            3,
            List.of("one \"invented\".csv", "two.gpx"),
            "2030-01-31",
            "some model",
            0.125);
    return model.with(DemoCraft.TRAINER, numbers.median(0), numbers.median(1), numbers.median(2));
  }

  private static double exit() {
    return RingStateInflow.standard().numbers().get(RingStateInflow.EXIT_TOTAL);
  }

  private static String written() {
    return String.join("\n", CraftWriter.lines(fitted())) + "\n";
  }

  @Test
  void aFittedCraftIsReadBackEqual() throws IOException {
    Helicopter craft = read(written());
    assertEquals(fitted(), craft);
    assertEquals(fitted().inflow(), craft.inflow());
    assertNotEquals(RingStateInflow.standard(), craft.inflow());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "[0.5, 0.125, 0.0] | [0.5, 0.375, 0.0] | symmetric and positive",
        "[0.5, 0.125, 0.0] | [-0.5, 0.125, 0.0] | symmetric and positive",
        "[0.5, 0.125, 0.0] | [0.0, 0.125, 0.0] | symmetric and positive",
        "[0.5, 0.125, 0.0] | [nan, 0.125, 0.0] | symmetric and positive",
        "[0.5, 0.125, 0.0] | [inf, 0.125, 0.0] | symmetric and positive",
        "[0.5, 0.125, 0.0] | [0.5, 0.125] | symmetric and positive",
        "[0.5, 0.125, 0.0] | ['0.5', 0.125, 0.0] | symmetric and positive",
        "form_deviation = 0.125 | form_deviation = nan | a number from 0.0 to 1.0",
        "form_deviation = 0.125 | form_deviation = 1.5 | a number from 0.0 to 1.0",
        "form_deviation = 0.125 | form_deviation = '0' | a number from 0.0 to 1.0",
        "ring_losses | ring_nonsense | ring_exit_total_inflow",
        "ring_losses | ring_exit_total_inflow | each parameter once",
        "encounters = 3 | encounters = 0 | 1 or more",
        "encounters = 3 | encounters = 2.5 | 1 or more",
        "encounters = 3 | encounter = 3 | unknown key 'fitted.encounter'",
        "0.25, -1.5] | nan, -1.5] | one number for each",
        "0.25, -1.5] | 0.25, -1.25] | is not the fitted one",
        "0.25, -1.5] | 0.25] | one number for each",
        "revision = \"some model\" | revision = 1 | text in quotation marks",
      })
  void aSpoiltTableIsRefusedInOneSentence(String from, String to, String why) throws IOException {
    String text = written();
    assertTrue(text.contains(from), text);
    int at = text.indexOf(from, text.indexOf("\nencounters ="));
    String spoilt = text.substring(0, at) + to + text.substring(at + from.length());
    UserError error = assertThrows(UserError.class, () -> read(spoilt));
    assertEquals(UserError.FILE, error.status());
    String said = String.valueOf(error.getMessage());
    assertTrue(said.contains(why), said);
    assertEquals(1, said.lines().count(), said);
  }
}
