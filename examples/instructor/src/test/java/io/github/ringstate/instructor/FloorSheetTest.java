package io.github.ringstate.instructor;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The sheet of floors beside its text. */
class FloorSheetTest {

  private static final String QUESTION =
      "floor --pilots 72 --height-ft 300 --recovery forward,lateral --state primed,distracted";

  private static String out(String command) {
    return new String(Documents.of(command.split(" ", -1)), UTF_8);
  }

  /** What stands between the tags of a part of the page, one blank between two words. */
  private static String bare(String html) {
    return html.replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ").strip();
  }

  @Test
  void textAndSheetShowTheSameNumbersAndTheSameSentences() {
    String text = out(QUESTION).replaceAll("\\s+", " ");
    String page = bare(out(QUESTION + " --format html"));
    Matcher cells =
        Pattern.compile("(forward|lateral) [0-9.]+ [0-9.]+ [0-9]+ [^%]*%").matcher(text);
    List<String> lines = new ArrayList<>();
    while (cells.find()) {
      lines.add(cells.group());
    }
    assertEquals(4, lines.size(), text);
    for (String line : lines) {
      assertTrue(page.contains(line), line + " is not in " + page);
    }
    Matcher inShort = Pattern.compile("Lowest height at onset [^.]*\\.").matcher(text);
    assertTrue(inShort.find());
    assertTrue(page.contains(inShort.group()), page);
  }

  @Test
  void theShareOnTheGroundThatTheUserSetsDecidesWhetherATechniqueIsBriefed() {
    String lenient = bare(out(QUESTION + " --ground-share 0.5 --format html"));
    String strict = bare(out(QUESTION + " --ground-share 0.001 --format html"));
    assertEquals(
        2, lenient.split("(Brief|flown at all, brief) (forward|lateral)", -1).length - 1, lenient);
    assertFalse(lenient.contains("Do not fly below"), lenient);
    assertTrue(strict.contains("Do not fly below"), strict);
  }
}
