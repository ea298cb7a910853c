package io.github.ringstate.validation.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.Obtained;
import io.github.ringstate.validation.check.Question;
import io.github.ringstate.validation.check.Section;
import io.github.ringstate.validation.check.Source;
import java.util.List;
import org.junit.jupiter.api.Test;

class ReportTest {

  private static final Question QUESTION =
      new Source("author", "title & more", "", "1900", "table <1>")
          .published("a \"quoted\" <b>, with a comma", "quantity", "m")
          .as(Obtained.PRINTED);

  private static List<Section> sections(Check check) {
    return List.of(
        new Section("one", "A <title>", List.of("text & more"), List.of(), List.of(check)));
  }

  @Test
  void fieldsWithCommasAndQuotesAreQuoted() {
    String[] lines = SummaryCsv.of(sections(QUESTION.near(1, 0.5, 1.25, "why"))).split("\n", -1);

    assertEquals(SummaryCsv.HEADER, lines[0]);
    assertEquals(
        "\"a \"\"quoted\"\" <b>, with a comma\",verification,published value,"
            + "\"author, title & more, 1900, table <1>\",m,1.0,1.25,0.25,0.5,true",
        lines[1]);
  }

  @Test
  void aFailureAndAKnownDifferenceAreNotCalledPassed() {
    Check failed = QUESTION.near(1, 0.1, 2, "why");
    assertTrue(SummaryCsv.of(sections(failed)).endsWith(",false\n"));
    assertTrue(
        SummaryCsv.of(sections(failed.butDiffers(1.5, 2.5, "reason")))
            .endsWith(",known difference\n"));
  }

  @Test
  void thePageEscapesWhatItIsGiven() {
    String page = ReportPage.of(List.of(), sections(QUESTION.near(1, 0.1, 2, "5 < 6 & so on")));

    assertTrue(page.contains("a &quot;quoted&quot; &lt;b&gt;, with a comma"));
    assertTrue(page.contains("A &lt;title&gt;"));
    assertTrue(page.contains("5 &lt; 6 &amp; so on"));
    assertFalse(page.contains("<b>, with"));
  }

  @Test
  void whatFailedComesFirstOnThePage() {
    Section good =
        new Section("good", "Good", List.of(), List.of(), List.of(QUESTION.near(1, 0.1, 1, "why")));
    Section bad =
        new Section("bad", "Bad", List.of(), List.of(), List.of(QUESTION.near(1, 0.1, 2, "why")));

    String page = ReportPage.of(List.of(), List.of(good, bad));

    assertTrue(page.indexOf("id=\"bad\"") < page.indexOf("id=\"good\""));
  }

  @Test
  void numbersAreRoundedAndLargeOnesArePowersOfTen() {
    assertEquals("0.123457", Digits.of(0.12345678, 6));
    assertEquals("−2.5", Digits.of(-2.5, 6));
    assertEquals("1\u202f×\u202f10⁻⁹", Digits.of(1e-9, 2));
    assertEquals("not a number", Digits.of(Double.NaN, 3));
  }
}
