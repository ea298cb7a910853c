package io.github.ringstate.files.craft;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.CraftLimits;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.EngineKind;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.craft.RotationSense;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.toml.RenamedKeys;
import io.github.ringstate.files.toml.TomlDocument;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class CraftFileTest {

  @TempDir Path folder = Path.of("");

  private Helicopter read(String text) throws IOException {
    return CraftFile.read(Files.writeString(folder.resolve("craft.toml"), text).toString()).craft();
  }

  private static String written(Helicopter craft) {
    return String.join("\n", CraftWriter.lines(craft)) + "\n";
  }

  static List<Helicopter> demoCraft() {
    return DemoCraft.ALL;
  }

  @ParameterizedTest
  @MethodSource("demoCraft")
  void aDemoCraftIsReadBackEqual(Helicopter craft) throws IOException {
    assertEquals(craft, read(written(craft)));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void anyNumbersAreReadBackToTheLastBit(long seed) throws IOException {
    SplittableRandom random = new SplittableRandom(seed);
    ParameterSet numbers = Helicopter.STANDARD_NUMBERS;
    for (Parameter parameter : Helicopter.STANDARD_NUMBERS.parameters().stream().toList()) {
      double low = parameter.quantity().low();
      double high = parameter.quantity().high();
      numbers = numbers.with(parameter, low + (high - low) * random.nextDouble());
    }
    // in the order that a craft needs
    numbers = inOrder(numbers, Helicopter.MINIMUM_MASS, Helicopter.MASS, Helicopter.MAXIMUM_MASS);
    numbers =
        inOrder(
            numbers,
            Helicopter.CONTINUOUS_POWER,
            Helicopter.TAKE_OFF_POWER,
            Helicopter.SEA_LEVEL_POWER);
    numbers = inOrder(numbers, CraftLimits.MINIMUM_COLLECTIVE, CraftLimits.MAXIMUM_COLLECTIVE);
    Helicopter craft =
        new Helicopter(
            "any_craft-" + seed,
            "Quotes \" and \\ backslashes, commas, and an umlaut: \u00fc",
            RotationSense.CLOCKWISE,
            EngineKind.TURBINE,
            numbers);
    assertEquals(craft, read(written(craft)));
  }

  private static ParameterSet inOrder(ParameterSet numbers, Parameter... parameters) {
    double[] sorted =
        java.util.stream.Stream.of(parameters).mapToDouble(numbers::get).sorted().toArray();
    ParameterSet ordered = numbers;
    for (int i = 0; i < parameters.length; i++) {
      double low = parameters[i].quantity().low();
      double high = parameters[i].quantity().high();
      ordered = ordered.with(parameters[i], Math.max(low, Math.min(high, sorted[i])));
    }
    return ordered;
  }

  /** A craft that was written down before the engine had a time and the polar a rise. */
  @ParameterizedTest
  @MethodSource("demoCraft")
  void whatMayBeLeftOutIsUsualForTheEngine(Helicopter craft) throws IOException {
    String text = written(craft);
    for (Parameter parameter : EngineKind.optional()) {
      String without = text.replaceAll("(?m)^" + parameter.key() + " = .*\n", "");
      assertTrue(without.length() < text.length(), parameter.key());
      text = without;
    }
    assertEquals(craft, read(text));
  }

  @Test
  void lineEndsAndAMarkOfOtherSystemsDoNotMatter() throws IOException {
    String text = written(DemoCraft.TWIN);
    assertEquals(DemoCraft.TWIN, read("\uFEFF" + text.replace("\n", "\r\n")));
  }

  @Test
  void tomlMayBeWrittenInOtherWays() throws IOException {
    // TOML 1.0: dotted keys, quoted keys, underscores in numbers, integers, literal strings.
    String text =
        written(DemoCraft.HEAVY)
            .replace("mass_kg = 8800.0", "\"mass_kg\" = 8_800")
            .replace("name = \"heavy\"", "name = 'heavy'");
    assertEquals(DemoCraft.HEAVY, read(text));
  }

  @Test
  void everyNumberStandsBelowItsRangeAndOrigin() {
    List<String> lines = CraftWriter.lines(DemoCraft.UTILITY);
    for (Parameter parameter : Helicopter.STANDARD_NUMBERS.parameters().stream().toList()) {
      int at = lines.indexOf(parameter.key() + " = " + DemoCraft.UTILITY.numbers().get(parameter));
      assertTrue(at > 0, parameter.key());
      assertTrue(lines.get(at - 1).startsWith("# "), parameter.key());
    }
  }

  @Test
  void theLineOfABadValueIsFoundInsideLongerStatements() throws IOException {
    // Lines that look like the key, in a comment and in a text over several lines, are not it.
    String text =
        "description = \"\"\"\nradius_m = 99\\\n  radius_m = 99\"\"\"\n# radius_m = 99\n"
            + "[rotor]\n\nradius_m = 99\n";
    String name = Files.writeString(folder.resolve("craft.toml"), text).toString();
    TomlDocument document =
        TomlDocument.parse(name, Files.readString(Path.of(name)), RenamedKeys.NONE);
    UserError error = document.bad(List.of("rotor", "radius_m"), "less");
    assertTrue(String.valueOf(error.getMessage()).contains("line 7: "), error.getMessage());
    UserError other = document.bad(List.of("description"), "less");
    assertTrue(String.valueOf(other.getMessage()).contains("line 1: "), other.getMessage());
  }

  @Test
  void aKeyByItsFullNameIsFoundToo() {
    TomlDocument document =
        TomlDocument.parse("craft.toml", "a = 1\n\n\nrotor.radius_m = 99\n", RenamedKeys.NONE);
    UserError error = document.bad(List.of("rotor", "radius_m"), "less");
    assertTrue(String.valueOf(error.getMessage()).contains("line 4: "), error.getMessage());
  }

  @ParameterizedTest
  @ValueSource(strings = {"x = ", "[x", "x = [", "x = \"", "= 3", "x = 1 y = 2", "[[[[", "\u0001"})
  void whatIsNoTomlIsRefusedWithItsLine(String line) {
    UserError error =
        assertThrows(
            UserError.class,
            () -> TomlDocument.parse("craft.toml", "# first\na = 1\n" + line, RenamedKeys.NONE));
    assertEquals(UserError.FILE, error.status());
    assertTrue(
        String.valueOf(error.getMessage()).startsWith("craft.toml, line 3: "), error.getMessage());
  }

  @Test
  void aKeyThatStandsTwiceIsFoundWhereItStandsAgain() {
    UserError error =
        assertThrows(
            UserError.class,
            () ->
                TomlDocument.parse("a.toml", "x = 1\nx = [\n2]\n\n# y\ny = 2\n", RenamedKeys.NONE));
    assertTrue(String.valueOf(error.getMessage()).startsWith("a.toml, line 2: 'x = ['"));
  }

  @Test
  void nestingWithoutEndIsRefused() {
    UserError error =
        assertThrows(
            UserError.class,
            () -> TomlDocument.parse("craft.toml", "x = " + "[".repeat(20_000), RenamedKeys.NONE));
    assertEquals(UserError.FILE, error.status());
  }
}
