package io.github.ringstate.files.toml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.files.craft.CraftFile;
import io.github.ringstate.files.craft.CraftWriter;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.sweep.SweepFile;
import io.github.ringstate.study.sweep.Setting;
import io.github.ringstate.study.sweep.Settings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RenamedKeysTest {

  private static final Map<String, String> NAMES = RenamedKeys.SINCE_0_1_0.names();

  @TempDir Path folder = Path.of("");

  @Test
  void everyNewNameIsThatOfASettingAndNoOldOneIs() {
    List<String> settings = Settings.BUILT_IN.all().stream().map(Setting::name).toList();
    NAMES.forEach(
        (old, now) -> {
          assertTrue(settings.contains(now), now);
          assertFalse(settings.contains(old), old);
        });
  }

  @Test
  void aCraftSavedUnderOldNamesIsTheSameCraft() throws IOException {
    Helicopter craft = DemoCraft.TWIN;
    String saved =
        CraftWriter.lines(craft).stream()
            .map(RenamedKeysTest::inOldWords)
            .collect(Collectors.joining("\n"));
    CraftFile read =
        CraftFile.read(Files.writeString(folder.resolve("old.toml"), saved).toString());
    assertEquals(craft, read.craft());
    String anew = String.join("\n", CraftWriter.lines(craft));
    // all are a craft's but the drift of the pilot
    assertEquals(NAMES.size() - 1, read.notices().size(), read.notices().toString());
    for (String notice : read.notices()) {
      int line = Integer.parseInt(notice.replaceFirst(".*line (\\d+):.*", "$1"));
      String written = saved.lines().toList().get(line - 1);
      String old = written.substring(0, written.indexOf(' '));
      assertTrue(notice.contains("." + old + " is called " + NAMES.get(old) + " now"), notice);
    }
    assertEquals(
        List.of(),
        CraftFile.read(Files.writeString(folder.resolve("new.toml"), anew).toString()).notices());
  }

  private static String inOldWords(String line) {
    return NAMES.entrySet().stream()
        .filter(name -> line.startsWith(name.getValue() + " = "))
        .map(name -> name.getKey() + line.substring(name.getValue().length()))
        .findFirst()
        .orElse(line);
  }

  @Test
  void aSweepSavedUnderOldNamesFliesTheSameInTheSameOrder() {
    String saved =
        """
        [craft]
        mass_kg = 600
        short_time_power_kw = { from = 85, to = 90, values = 2 }
        download = [0.01, 0.02]
        [pilot]
        bank_speed_deg_per_s = [10, 20]
        technique = "lateral"
        [entry]
        kind = "settling"
        greatest_drift_bank_rad = 0.1
        """;
    String anew =
        saved
            .replace("short_time_power_kw", "take_off_power_kw")
            .replace("bank_speed_deg_per_s", "bank_rate_deg_per_s")
            .replace("greatest_drift_bank_rad", "maximum_drift_bank_rad");
    SweepFile old = SweepFile.parse("old.toml", saved);
    SweepFile now = SweepFile.parse("new.toml", anew);
    assertEquals(now.sweep().spec(), old.sweep().spec());
    assertEquals(List.of(), now.notices());
    assertEquals(3, old.notices().size());
    assertTrue(old.notices().get(0).startsWith("old.toml, line 3: craft.short_time_power_kw is"));
    assertTrue(old.notices().get(1).startsWith("old.toml, line 6: pilot.bank_speed_deg_per_s is"));
    assertTrue(
        old.notices().get(2).startsWith("old.toml, line 10: entry.greatest_drift_bank_rad is"));
  }

  @Test
  void aBadValueUnderAnOldNameIsFoundOnItsLine() {
    UserError error =
        assertThrows(
            UserError.class,
            () -> SweepFile.parse("old.toml", "[craft]\n\nshort_time_power_kw = -1\n"));
    assertTrue(
        String.valueOf(error.getMessage()).startsWith("old.toml, line 3: "), error::getMessage);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "[craft]\nshort_time_power_kw = 1\ntake_off_power_kw = 2\n",
        "[craft]\ntake_off_power_kw = 2\nshort_time_power_kw = 1\n"
      })
  void aKeyUnderBothNamesIsRefused(String text) {
    UserError error =
        assertThrows(
            UserError.class, () -> TomlDocument.parse("both.toml", text, RenamedKeys.SINCE_0_1_0));
    assertTrue(
        String.valueOf(error.getMessage()).contains("take_off_power_kw, which is set too"),
        error.getMessage());
  }

  @Test
  void onlyKeysInTablesAreRenamed() {
    TomlDocument document =
        TomlDocument.parse("top.toml", "power_loss = 1\n", RenamedKeys.SINCE_0_1_0);
    assertEquals(List.of("power_loss"), document.keys());
    assertEquals(List.of(), document.notices());
  }
}
