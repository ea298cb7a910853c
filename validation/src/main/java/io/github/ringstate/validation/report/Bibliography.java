package io.github.ringstate.validation.report;

import io.github.ringstate.validation.check.Section;
import io.github.ringstate.validation.check.Source;
import java.util.List;

/** The works cited, numbered in the order in which they are met. */
final class Bibliography {

  private final List<String> works;

  Bibliography(List<Section> sections) {
    works =
        sections.stream()
            .flatMap(section -> section.checks().stream())
            .map(check -> check.question().source().work())
            .distinct()
            .toList();
  }

  int number(Source source) {
    return works.indexOf(source.work()) + 1;
  }

  List<String> works() {
    return works;
  }
}
