package io.github.ringstate.files.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.plan.PlanFile.AgreedHeight;
import io.github.ringstate.files.plan.PlanFile.Fact;
import io.github.ringstate.files.plan.PlanFile.Part;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.files.toml.Texts;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlanFileTest {

  @TempDir Path folder;

  private PlanFile read(String text) throws IOException {
    Path file = folder.resolve("plan.toml");
    Files.writeString(file, text);
    return PlanFile.read(file.toString(), Texts.FILES);
  }

  @Test
  void aPlanIsReadBackAsItWasWritten() throws IOException {
    Map<Part, Map<String, String>> options = new LinkedHashMap<>();
    options.put(Part.CONDITIONS, Map.of("mass-kg", "560", "craft", "trainer"));
    options.put(Part.ENCOUNTER, Map.of("state", "primed,startled", "height-ft", "300.5"));
    options.put(Part.RUN, Map.of("wind-from-deg", "020"));
    PlanFile plan =
        new PlanFile(
            Map.of(
                Fact.PLACE,
                "Field \"A\" \\ north (invented)",
                Fact.DATE,
                "",
                Fact.REGISTRATION,
                "X-1"),
            List.of("A (invented)", "B"),
            "lateral",
            options,
            Map.of(AgreedHeight.LEAST, 500.0, AgreedHeight.ABORT, 1250.5),
            "c95eaa22");
    List<String> lines = PlanWriter.lines(plan, "A plan.");
    assertEquals(plan, read(String.join("\n", lines)));
    assertTrue(String.join(" ", lines).replace(" # ", " ").contains(Caution.TEXT));
  }

  @Test
  void whatIsNotSettledMayBeLeftOut() throws IOException {
    PlanFile plan = read("place = \"Field (invented)\"\n");
    assertEquals("", plan.facts().get(Fact.DATE));
    assertEquals(List.of(), plan.crew());
    assertEquals(Map.of(), plan.options(Part.RUN));
    assertEquals(Map.of(), plan.agreed());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "places = 'A'|line 1: unknown key 'places'",
        "run = 3|line 1: run cannot be",
        "date = 3|line 1: date cannot be",
        "crew = 'A'|line 1: crew cannot be",
        "[agreed];least_ft = 3|line 2: unknown key 'agreed.least_ft'",
        "[agreed];least_height_ft = -3|line 2: agreed.least_height_ft cannot be '-3'",
        "[agreed];least_height_ft = nan|line 2: agreed.least_height_ft cannot be 'nan'",
        "[encounter];height_ft = [3]|line 2: encounter.height_ft cannot be"
      })
  void whatIsNoPlanIsRefusedWithItsLine(String text, String message) {
    UserError refused =
        assertThrows(UserError.class, () -> read(text.replace(';', '\n').replace('\'', '"')));
    assertTrue(
        String.valueOf(refused.getMessage()).contains(message.replace('\'', '"'))
            || String.valueOf(refused.getMessage()).contains(message),
        refused.getMessage());
  }
}
