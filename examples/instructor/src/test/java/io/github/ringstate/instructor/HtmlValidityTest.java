package io.github.ringstate.instructor;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.files.text.Caution;
import java.io.ByteArrayInputStream;
import java.nio.file.Path;
import java.util.List;
import nu.validator.client.EmbeddedValidator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The pages against the checker of the HTML standard (Nu Html Checker). */
class HtmlValidityTest {

  private static final String SCRIPT = "<script>alert(1)</script>&\\\"'";

  private static List<String> complaints(byte[] page) throws Exception {
    EmbeddedValidator validator = new EmbeddedValidator();
    validator.setOutputFormat(EmbeddedValidator.OutputFormat.GNU);
    String said = validator.validate(new ByteArrayInputStream(page));
    return said.lines().filter(line -> line.contains("error") || line.contains("warning")).toList();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "loss --pilots 8 --delays 2 --mass-kg 520,600 --pressure-altitude-ft 0,3000 --units si --format html",
        "loss --pilots 8 --state startled --height-ft 200 --paper letter --format html",
        "floor --pilots 8 --height-ft 300 --mass-kg 550 --compare 50,10,1 --format html",
        "runs --wind-from-deg 240 --wind-kt 12 --pilots 8 --recovery lateral --mass-kg 550 --compare 50,10,1 --format html",
        "boundary --recovery lateral --units si --format html",
        "fly --height-ft 500 --terrain-ft 0:0,300:80 --format html",
        "fly --entry settling --wind-kt 40 --format html"
      })
  void everyPageIsValidHtmlAndCarriesTheCaution(String command) throws Exception {
    byte[] page = Documents.shared(command.split(" ", -1));
    assertEquals(List.of(), complaints(page), command);
    String text = new String(page, UTF_8).replaceAll("\\s+", " ");
    assertTrue(text.contains(Caution.TEXT.replace("'", "&#39;")), command);
    // complete in itself: nothing is fetched
    assertTrue(!text.matches(".*(src|href)=\"(?!data:)[^\"]*\".*"), command);
    assertTrue(!text.contains("@import"), command);
  }

  @Test
  void theCheckerSeesABrokenPage() throws Exception {
    assertTrue(!complaints("<!DOCTYPE html><html><body><p></b>".getBytes(UTF_8)).isEmpty());
  }

  @ParameterizedTest
  @CsvSource({
    "loss --pilots 8 --delays 0 --format html, false",
    "runs --wind-from-deg 240 --wind-kt 12 --pilots 8 --recovery lateral --format html, true",
    "boundary --format html, false",
    "fly --format html, true"
  })
  void whatUsersTypedIsEscaped(String command, boolean checked, @TempDir Path folder)
      throws Exception {
    Path craft = Documents.described(SCRIPT, folder.resolve("evil.toml"));
    byte[] page = Documents.of((command + " --craft " + craft).split(" ", -1));
    String text = new String(page, UTF_8);
    assertTrue(!text.contains("<script>alert"), command);
    assertTrue(text.contains("&lt;script&gt;alert(1)"), command);
    if (checked) {
      assertEquals(List.of(), complaints(page), command);
    }
  }
}
