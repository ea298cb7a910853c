package io.github.ringstate.validation.report;

import io.github.ringstate.validation.check.Section;
import io.github.ringstate.validation.check.Source;
import java.util.List;

/**
 * The works cited, numbered in the order in which they are met.
 *
 * @param works the works without their places
 */
record Bibliography(List<String> works) {

  static Bibliography of(List<Section> sections) {
    return new Bibliography(
        sections.stream()
            .flatMap(section -> section.checks().stream())
            .map(check -> check.question().source().work())
            .distinct()
            .toList());
  }

  int number(Source source) {
    return works.indexOf(source.work()) + 1;
  }
}
