package io.github.ringstate.validation.report;

import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.ComparedWith;
import io.github.ringstate.validation.check.Expectation;
import io.github.ringstate.validation.check.KnownDifference;
import io.github.ringstate.validation.check.Obtained;
import io.github.ringstate.validation.check.Question;
import io.github.ringstate.validation.check.Section;
import io.github.ringstate.validation.check.Status;
import io.github.ringstate.validation.figure.Drawing;
import io.github.ringstate.validation.figure.Figure;
import io.github.ringstate.validation.figure.Key;
import io.github.ringstate.validation.figure.SvgDrawing;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The report as one page that needs nothing but itself. */
public final class HtmlReport {

  /** What every page says. */
  public static final String CAUTION =
      "Training aid from a simplified model. The flight manual, the operator's procedures, local"
          + " rules and a licensed instructor come first. No height is called safe here.";

  private final List<Figure> headline;
  private final List<Section> sections;
  private final Bibliography bibliography;
  private final StringBuilder page = new StringBuilder();
  private int figures;

  /**
   * Prepares a report.
   *
   * @param headline the figures that come first
   * @param sections the sections, in order; those with failed checks and known differences are put
   *     first
   */
  public HtmlReport(List<Figure> headline, List<Section> sections) {
    this.headline = List.copyOf(headline);
    this.sections = sections.stream().sorted(Comparator.comparing(Section::worst)).toList();
    this.bibliography = new Bibliography(this.sections);
  }

  /**
   * Writes the page.
   *
   * @return the whole of it
   */
  public String write() {
    page.setLength(0);
    figures = 0;
    page.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
        .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
        .append("<title>ringstate: validation report</title>\n<style>\n")
        .append(stylesheet().replace("CAUTION", CAUTION.replace("'", "\\2019 ")))
        .append("</style>\n</head>\n<body>\n");
    opening();
    page.append("<main>\n");
    headline();
    verdict();
    openEnds();
    for (Section section : sections) {
      section(section);
    }
    sources();
    page.append("</main>\n<footer><p class=\"caution\">")
        .append(Html.escape(CAUTION))
        .append("</p></footer>\n</body>\n</html>\n");
    return page.toString();
  }

  private static String stylesheet() {
    try (InputStream stream = HtmlReport.class.getResourceAsStream("report.css")) {
      if (stream == null) {
        throw new IllegalStateException("the style sheet report.css is missing");
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("the style sheet cannot be read", e);
    }
  }

  private long count(Status status) {
    return checks().stream().filter(check -> check.status() == status).count();
  }

  private List<Check> checks() {
    return sections.stream().flatMap(section -> section.checks().stream()).toList();
  }

  private void opening() {
    page.append("<header>\n<h1>What the model is held against</h1>\n<p class=\"lead\">")
        .append(
            "Validation of <strong>ringstate</strong>, a library for what a helicopter rotor does"
                + " in descent: every published value, closed form and second method beside what"
                + " the library gives.</p>\n<p class=\"caution\">")
        .append(Html.escape(CAUTION))
        .append("</p>\n");
    long failed = count(Status.FAILED);
    long known = count(Status.KNOWN_DIFFERENCE);
    page.append("<p class=\"tally\"><span><b>")
        .append(checks().size())
        .append("</b> checks</span> <span><b>")
        .append(count(Status.PASSED))
        .append("</b> passed</span> <span><b>")
        .append(known)
        .append("</b> known differences</span> <span><b>")
        .append(failed)
        .append("</b> failed</span></p>\n</header>\n");
  }

  private void headline() {
    page.append("<section aria-labelledby=\"headline-heading\">\n<h2 id=\"headline-heading\">")
        .append("Induced velocity and the boundary of the ring state</h2>\n")
        .append("<div class=\"pair headline\">\n");
    headline.forEach(this::figure);
    page.append("</div>\n</section>\n");
  }

  private void figure(Figure figure) {
    figures++;
    Drawing drawing = SvgDrawing.of(figure);
    page.append("<figure id=\"figure-")
        .append(Html.escape(figure.id()))
        .append("\">\n")
        .append(drawing.svg())
        .append("\n<ul class=\"legend\">");
    for (Key key : drawing.keys()) {
      page.append("<li>")
          .append(key.sample())
          .append(' ')
          .append(Html.escape(key.name()))
          .append("</li>");
    }
    page.append("</ul>\n<figcaption><b>Figure ")
        .append(figures)
        .append(". ")
        .append(Html.escape(figure.title()))
        .append(".</b> ")
        .append(Html.escape(figure.caption()))
        .append("</figcaption>\n</figure>\n");
  }

  private void verdict() {
    page.append("<section aria-labelledby=\"summary\">\n<h2 id=\"summary\">Summary</h2>\n");
    page.append("<table class=\"summary\">\n<caption>Checks by subject. \"Largest share\" is the")
        .append(" largest error over its tolerance among the checks that passed: 100 % is the edge")
        .append(" of the tolerance, or the end of a published range.</caption>\n<thead><tr>")
        .append("<th scope=\"col\">Subject</th><th scope=\"col\">Checks</th><th scope=\"col\">")
        .append("Passed</th><th scope=\"col\">Known differences</th><th scope=\"col\">Failed</th>")
        .append("<th scope=\"col\">Largest share</th><th scope=\"col\">in</th></tr></thead>\n")
        .append("<tbody>\n");
    for (Section section : sections) {
      Check worst =
          section.checks().stream()
              .filter(check -> check.status() == Status.PASSED)
              .max(Comparator.comparingDouble(Check::share))
              .orElse(section.checks().get(0));
      page.append("<tr><th scope=\"row\"><a href=\"#")
          .append(section.id())
          .append("\">")
          .append(Html.escape(section.title()))
          .append("</a></th>");
      cell(section.checks().size());
      for (Status status : List.of(Status.PASSED, Status.KNOWN_DIFFERENCE, Status.FAILED)) {
        cell(section.checks().stream().filter(check -> check.status() == status).count());
      }
      page.append("<td class=\"number\">")
          .append(share(worst))
          .append("</td><td class=\"words\">")
          .append(Html.escape(worst.question().name()))
          .append("</td></tr>\n");
    }
    page.append("</tbody>\n<tfoot><tr><th scope=\"row\">All</th>");
    cell(checks().size());
    for (Status status : List.of(Status.PASSED, Status.KNOWN_DIFFERENCE, Status.FAILED)) {
      cell(count(status));
    }
    page.append("<td></td><td></td></tr></tfoot>\n</table>\n");
    kinds();
    page.append("</section>\n");
  }

  private void cell(long number) {
    page.append("<td class=\"number\">").append(number == 0 ? "&ndash;" : number).append("</td>");
  }

  private void kinds() {
    page.append("<table class=\"summary small\">\n<caption>Checks by kind, and by how the expected")
        .append(" number was obtained.</caption>\n<thead><tr><th scope=\"col\">Kind</th>");
    for (Obtained obtained : Obtained.values()) {
      page.append("<th scope=\"col\">").append(Html.escape(obtained.label())).append("</th>");
    }
    page.append("<th scope=\"col\">all</th></tr></thead>\n<tbody>\n");
    for (ComparedWith kind : ComparedWith.values()) {
      page.append("<tr><th scope=\"row\">").append(Html.escape(kind.label())).append("</th>");
      for (Obtained obtained : Obtained.values()) {
        cell(
            checks().stream()
                .map(Check::question)
                .filter(q -> q.comparedWith() == kind && q.obtained() == obtained)
                .count());
      }
      cell(checks().stream().filter(check -> check.question().comparedWith() == kind).count());
      page.append("</tr>\n");
    }
    page.append(
            "</tbody>\n</table>\n<p><b>Printed</b>: read in the source or in a text that quotes")
        .append(
            " it. <b>Computed from the formula</b>: arithmetic from a formula that stands in any")
        .append(
            " textbook, or the result of a second method. <b>From memory</b>: the number or the")
        .append(
            " formula was written down from memory of the source, which was not at hand.</p>\n");
  }

  private void openEnds() {
    List<Check> open =
        checks().stream()
            .filter(check -> check.status() != Status.PASSED)
            .sorted(Comparator.comparing(Check::status))
            .toList();
    if (open.isEmpty()) {
      return;
    }
    page.append("<section aria-labelledby=\"open\">\n<h2 id=\"open\">Where the library does not")
        .append(
            " agree</h2>\n<p>A known difference is a check that does not pass and is explained.")
        .append(" Its size is held too: should it grow, or vanish, the check fails.</p>\n<dl>\n");
    Map<String, List<Check>> byExplanation =
        open.stream()
            .collect(
                Collectors.groupingBy(
                    HtmlReport::explanation, LinkedHashMap::new, Collectors.toList()));
    byExplanation.forEach(
        (explanation, alike) -> {
          for (Check check : alike) {
            page.append("<dt><span class=\"status ")
                .append(style(check.status()))
                .append("\">")
                .append(Html.escape(check.status().label()))
                .append("</span> ")
                .append(Html.escape(check.question().name()))
                .append(" <span class=\"figures\">expected ")
                .append(expected(check))
                .append(", library ")
                .append(Html.number(check.actual(), 4))
                .append(unit(check))
                .append("</span></dt>\n");
          }
          page.append("<dd>").append(Html.escape(explanation)).append("</dd>\n");
        });
    page.append("</dl>\n</section>\n");
  }

  private static String explanation(Check check) {
    return check
        .difference()
        .map(KnownDifference::explanation)
        .orElse("There is no explanation for it.");
  }

  private void section(Section section) {
    page.append("<section class=\"subject\" aria-labelledby=\"")
        .append(section.id())
        .append("\">\n<h2 id=\"")
        .append(section.id())
        .append("\">")
        .append(Html.escape(section.title()))
        .append("</h2>\n");
    for (String paragraph : section.text()) {
      page.append("<p>").append(Html.escape(paragraph)).append("</p>\n");
    }
    page.append(section.figures().size() > 1 ? "<div class=\"pair\">\n" : "<div>\n");
    section.figures().forEach(this::figure);
    page.append("</div>\n<table class=\"checks\">\n<caption class=\"hidden\">Checks: ")
        .append(Html.escape(section.title()))
        .append("</caption>\n<thead><tr><th scope=\"col\">Check</th>")
        .append("<th scope=\"col\">Expected</th><th scope=\"col\">Library</th>")
        .append("<th scope=\"col\">Error</th><th scope=\"col\">Share of tolerance</th>")
        .append("<th scope=\"col\">Result</th></tr></thead>\n");
    section.checks().stream().sorted(Comparator.comparing(Check::status)).forEach(this::row);
    page.append("</table>\n</section>\n");
  }

  private void row(Check check) {
    Question question = check.question();
    page.append("<tbody class=\"check\"><tr><th scope=\"row\">")
        .append(Html.escape(question.name()))
        .append("</th><td class=\"number\">")
        .append(expected(check))
        .append("</td><td class=\"number\">")
        .append(Html.number(check.actual(), check.expectation().range() ? 4 : 6))
        .append(unit(check))
        .append("</td><td class=\"number\">")
        .append(Html.number(check.error(), 3))
        .append("</td><td class=\"number\">")
        .append(share(check))
        .append("</td><td><span class=\"status ")
        .append(style(check.status()))
        .append("\">")
        .append(Html.escape(check.status().label()))
        .append("</span></td></tr>\n<tr><td class=\"note\" colspan=\"6\">")
        .append(
            question.name().endsWith(question.quantity())
                ? ""
                : Html.escape(question.quantity()) + " &middot; ")
        .append(Html.escape(question.comparedWith().label()))
        .append(", ")
        .append(Html.escape(question.obtained().label()))
        .append(" &middot; <a href=\"#source-")
        .append(bibliography.number(question.source()))
        .append("\">[")
        .append(bibliography.number(question.source()))
        .append("]</a> ")
        .append(Html.escape(question.source().place()))
        .append("<br>Tolerance: ")
        .append(Html.escape(check.why()));
    check
        .difference()
        .ifPresent(
            difference ->
                page.append("<br><b>Known difference:</b> ")
                    .append(Html.escape(difference.explanation())));
    page.append("</td></tr></tbody>\n");
  }

  private void sources() {
    page.append("<section aria-labelledby=\"sources\">\n<h2 id=\"sources\">Sources</h2>\n<p>")
        .append(
            "Titles and numbers of works are from memory where the work itself was not at hand.")
        .append("</p>\n<ol class=\"sources\">\n");
    for (int i = 0; i < bibliography.works().size(); i++) {
      page.append("<li id=\"source-")
          .append(i + 1)
          .append("\">")
          .append(Html.escape(bibliography.works().get(i)))
          .append("</li>\n");
    }
    page.append("</ol>\n</section>\n");
  }

  private static String expected(Check check) {
    Expectation e = check.expectation();
    if (e.range()) {
      return Html.number(e.value() - e.tolerance(), 4)
          + " to "
          + Html.number(e.value() + e.tolerance(), 4)
          + unit(check);
    }
    if (e.value() == 0) {
      return "at most " + Html.number(e.tolerance(), 2) + unit(check);
    }
    return Html.number(e.value(), 6)
        + unit(check)
        + " <span class=\"tolerance\">&plusmn;&nbsp;"
        + Html.number(e.tolerance(), 2)
        + "</span>";
  }

  private static String unit(Check check) {
    String unit = check.question().unit();
    return unit.equals("1") ? "" : "&nbsp;" + Html.escape(unit);
  }

  private static String share(Check check) {
    double percent = 100 * check.share();
    if (percent > 1000) {
      return "over 1000&nbsp;%";
    }
    return percent > 0 && percent < 0.1
        ? "under 0.1&nbsp;%"
        : Html.number(percent, percent < 10 ? 1 : 3) + "&nbsp;%";
  }

  private static String style(Status status) {
    return switch (status) {
      case PASSED -> "passed";
      case KNOWN_DIFFERENCE -> "known";
      case FAILED -> "failed";
    };
  }
}
