package io.github.ringstate.validation.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.ComparedWith;
import io.github.ringstate.validation.check.Section;
import io.github.ringstate.validation.check.Status;
import io.github.ringstate.validation.report.SummaryCsv;
import io.github.ringstate.validation.report.ValidationReport;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The library as it is, against everything in the catalogue; writes the report on the way. */
class CatalogueTest {

  private static final Path FOLDER = Path.of("target", "report");

  /** Worked out once, for every test that asks. */
  static final List<Section> SECTIONS = Catalogue.sections(new Models());

  @BeforeAll
  static void workOutAndWriteTheReport() throws IOException {
    ValidationReport.write(SECTIONS, new Models(), FOLDER);
  }

  private static List<Check> checks() {
    return SECTIONS.stream().flatMap(section -> section.checks().stream()).toList();
  }

  @Test
  void noCheckFails() {
    List<String> failed =
        checks().stream()
            .filter(check -> check.status() == Status.FAILED)
            .map(
                check ->
                    check.question().name()
                        + ": "
                        + check.expectation()
                        + ", but the library gives "
                        + check.actual()
                        + check.difference().map(known -> ", outside " + known).orElse(""))
            .toList();
    assertTrue(failed.isEmpty(), () -> String.join("\n", failed));
  }

  @Test
  void thereAreSixtyChecksOrMoreOfEveryKindAndAllHaveASourceAndAReasonForTheirTolerance() {
    assertTrue(checks().size() >= 60);
    Set<String> names = new HashSet<>();
    Set<ComparedWith> kinds = new HashSet<>();
    for (Check check : checks()) {
      assertTrue(names.add(check.question().name()), check.question().name());
      kinds.add(check.question().comparedWith());
      assertFalse(check.question().source().work().isEmpty(), check.question().name());
      assertFalse(check.why().isBlank(), check.question().name());
    }
    assertEquals(ComparedWith.values().length, kinds.size());
  }

  @Test
  void everySectionHasAFigureAndWords() {
    for (Section section : SECTIONS) {
      assertFalse(section.figures().isEmpty(), section.title());
      assertFalse(section.text().isEmpty(), section.title());
    }
  }

  @Test
  void theReportIsOnePageThatNeedsNothingButItselfAndCarriesTheCaution() throws IOException {
    String page = Files.readString(FOLDER.resolve("index.html"));

    assertTrue(page.contains("a licensed instructor come first"));
    assertTrue(page.contains("@bottom-left"), "and on every page that is printed");
    for (String outside : List.of("<script", "<link", "@import", "<img", "url(http", "src=")) {
      assertFalse(page.contains(outside), outside);
    }
  }

  @Test
  void theSummaryHasOneLineACheckUnderItsHeader() throws IOException {
    List<String> lines = Files.readAllLines(FOLDER.resolve("summary.csv"));

    assertEquals(
        "check,kind,compared_with,source,unit,expected,actual,error,tolerance,passed",
        lines.get(0));
    assertEquals(SummaryCsv.HEADER, lines.get(0));
    assertEquals(checks().size(), lines.size() - 1);
    for (String line : lines.subList(1, lines.size())) {
      assertTrue(line.endsWith(",true") || line.endsWith(",known difference"), line);
    }
  }
}
