package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.sheets.message.Words;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sheet of floors beside its text. */
class FloorSheetTest {

  private static final String QUESTION =
      "floor --pilots 72 --height-ft 300 --recovery forward,lateral --state primed,distracted";

  private static String out(String command) {
    return Documents.text(command);
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

  /**
   * None of 64 on the ground leaves up to 5.6 % of very many, none of 128 up to 2.8 % (1 less the
   * root of 0.025 of that order: arithmetic), and 5 % are the standard limit.
   */
  @ParameterizedTest
  @CsvSource({"64, false", "128, true"})
  void textPageAndRowsBriefATechniqueOnlyOnEnoughPilots(int pilots, boolean briefed)
      throws IOException {
    String question = "floor --height-ft 390 --recovery lateral --state primed --pilots " + pilots;
    String order = briefed ? "brief lateral" : "brief no technique: 64 pilots are too few to tell";
    assertTrue(out(question).replaceAll("\\s+", " ").contains("primed " + order), order);
    String onPaper = Words.capital(order);
    assertTrue(bare(out(question + " --format html")).contains(onPaper), onPaper);
    try (PDDocument pdf =
        Loader.loadPDF(Documents.of((question + " --format pdf").split(" ", -1)))) {
      String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
      assertTrue(text.contains(onPaper), text);
    }
    CSVRecord row = Run.csv(question).get(0);
    assertEquals(0, Run.number(row, "ground_share"));
    assertEquals(1 - Math.pow(0.025, 1.0 / pilots), Run.number(row, "ground_high_share"), 1e-4);
    assertEquals(briefed ? "yes" : "no", row.get("briefed"));
    assertEquals(order, Run.json(question).at("/briefings/0/order").asText());
    String card = out("card --technique lateral --state primed --pilots " + pilots);
    assertEquals(!briefed, card.contains("64 pilots are too few to bound it"), card);
  }
}
