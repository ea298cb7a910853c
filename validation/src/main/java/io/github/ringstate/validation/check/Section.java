package io.github.ringstate.validation.check;

import java.util.List;

/**
 * The checks on one subject, with what a reader has to know about them.
 *
 * @param id a word that is unique among sections, for links
 * @param title the subject
 * @param text paragraphs: what is compared, what that proves and what it does not
 * @param figures the figures, in order
 * @param checks the checks, in order
 */
public record Section(
    String id, String title, List<String> text, List<Figure> figures, List<Check> checks) {

  /** Copies the lists. */
  public Section {
    text = List.copyOf(text);
    figures = List.copyOf(figures);
    checks = List.copyOf(checks);
  }

  /**
   * The worst status of the section's checks.
   *
   * @return the status; passed if there are no checks
   */
  public Status worst() {
    return checks.stream().map(Check::status).min(Status::compareTo).orElse(Status.PASSED);
  }
}
