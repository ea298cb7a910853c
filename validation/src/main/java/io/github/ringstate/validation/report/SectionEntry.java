package io.github.ringstate.validation.report;

import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.Section;
import io.github.ringstate.validation.check.Status;
import java.util.Comparator;
import java.util.List;

/**
 * A section as the report prints it.
 *
 * @param id a word that is unique among sections
 * @param title the subject
 * @param text paragraphs
 * @param outcomes how its checks came out
 * @param share the largest share of a tolerance among the checks that passed
 * @param closest the check that has it
 * @param isPair whether figures stand beside each other
 * @param figures the figures
 * @param checks the checks, those that did not pass first
 */
record SectionEntry(
    String id,
    String title,
    List<String> text,
    Outcomes outcomes,
    String share,
    String closest,
    boolean isPair,
    List<FigureEntry> figures,
    List<CheckEntry> checks) {

  static SectionEntry of(Section section, List<FigureEntry> figures, Bibliography bibliography) {
    List<Check> checks = section.checks();
    Check closest =
        checks.stream()
            .filter(check -> check.status() == Status.PASSED)
            .max(Comparator.comparingDouble(Check::share))
            .orElse(checks.get(0));
    return new SectionEntry(
        section.id(),
        section.title(),
        section.text(),
        Outcomes.of(checks),
        CheckEntry.share(closest),
        closest.question().name(),
        figures.size() > 1,
        figures,
        checks.stream()
            .sorted(Comparator.comparing(Check::status))
            .map(check -> CheckEntry.of(check, bibliography))
            .toList());
  }
}
