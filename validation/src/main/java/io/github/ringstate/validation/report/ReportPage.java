package io.github.ringstate.validation.report;

import io.github.ringstate.sheets.page.HtmlWriter;
import io.github.ringstate.sheets.page.Page;
import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.ComparedWith;
import io.github.ringstate.validation.check.Figure;
import io.github.ringstate.validation.check.KnownDifference;
import io.github.ringstate.validation.check.Obtained;
import io.github.ringstate.validation.check.Section;
import io.github.ringstate.validation.check.Status;
import io.github.ringstate.validation.check.Tally;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The report as one page that needs nothing but itself: what {@code report.mustache} is filled
 * with.
 */
public final class ReportPage {

  private static final String UNEXPLAINED = "There is no explanation for it.";

  private final List<Section> sections;
  private final Bibliography bibliography;
  private int figures;

  private ReportPage(List<Section> sections) {
    this.sections = sections.stream().sorted(Comparator.comparing(Section::worst)).toList();
    this.bibliography = Bibliography.of(this.sections);
  }

  /**
   * Writes the page.
   *
   * @param headline the figures that come first
   * @param sections the sections, in order; those with failed checks and known differences are put
   *     first
   * @return the whole of it
   */
  public static String of(List<Figure> headline, List<Section> sections) {
    return HtmlWriter.html(new ReportPage(sections).page(headline));
  }

  /** Checks that do not pass for one reason. */
  private record Open(String explanation, List<CheckEntry> checks) {}

  /**
   * How many checks compare the library with one thing, by how the expected number was obtained,
   * and in all.
   */
  private record Comparison(String label, List<Long> counts) {}

  private record Work(int number, String text) {}

  private Page page(List<Figure> headline) {
    List<FigureEntry> first = drawn(headline);
    List<SectionEntry> rest =
        sections.stream()
            .map(section -> SectionEntry.of(section, drawn(section.figures()), bibliography))
            .toList();
    return new Page(
        ReportPage.class,
        "report.mustache",
        "ringstate: validation report",
        false,
        Map.of(
            "outcomes",
            Outcomes.of(checks()),
            "confrontation",
            Confrontation.of(Tally.of(sections), bibliography),
            "headline",
            first,
            "sections",
            rest,
            "obtained",
            Stream.of(Obtained.values()).map(Obtained::label).toList(),
            "comparisons",
            Stream.of(ComparedWith.values()).map(this::comparison).toList(),
            "isOpen",
            !open().isEmpty(),
            "open",
            open(),
            "works",
            IntStream.range(0, bibliography.works().size())
                .mapToObj(i -> new Work(i + 1, bibliography.works().get(i)))
                .toList()),
        Map.of());
  }

  private List<Check> checks() {
    return sections.stream().flatMap(section -> section.checks().stream()).toList();
  }

  private List<FigureEntry> drawn(List<Figure> some) {
    return some.stream().map(figure -> FigureEntry.of(++figures, figure)).toList();
  }

  private Comparison comparison(ComparedWith other) {
    Stream<Predicate<Check>> columns =
        Stream.concat(
            Stream.of(Obtained.values()).map(by -> check -> check.question().obtained() == by),
            Stream.of(check -> true));
    return new Comparison(
        other.label(),
        columns
            .map(
                column ->
                    checks().stream()
                        .filter(check -> check.question().comparedWith() == other)
                        .filter(column)
                        .count())
            .toList());
  }

  private List<Open> open() {
    Map<String, List<CheckEntry>> byExplanation =
        checks().stream()
            .filter(check -> check.status() != Status.PASSED)
            .sorted(Comparator.comparing(Check::status))
            .collect(
                Collectors.groupingBy(
                    check ->
                        check.difference().map(KnownDifference::explanation).orElse(UNEXPLAINED),
                    LinkedHashMap::new,
                    Collectors.mapping(
                        check -> CheckEntry.of(check, bibliography), Collectors.toList())));
    return byExplanation.entrySet().stream()
        .map(entry -> new Open(entry.getKey(), entry.getValue()))
        .toList();
  }
}
