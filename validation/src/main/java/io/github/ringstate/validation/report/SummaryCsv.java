package io.github.ringstate.validation.report;

import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.Question;
import io.github.ringstate.validation.check.Section;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The summary as a file: one line a check. A range is given by its middle and half its width. Where
 * a check is a known difference the last column says so instead of {@code true} or {@code false}.
 */
public final class SummaryCsv {

  /** The first line. */
  public static final String HEADER =
      "check,kind,compared_with,source,unit,expected,actual,error,tolerance,passed";

  private SummaryCsv() {}

  /**
   * Writes the summary.
   *
   * @param sections the sections, in order
   * @return the file's content
   */
  public static String of(List<Section> sections) {
    return HEADER
        + "\n"
        + sections.stream()
            .flatMap(section -> section.checks().stream())
            .map(SummaryCsv::line)
            .collect(Collectors.joining());
  }

  private static String line(Check check) {
    Question question = check.question();
    return Stream.of(
                question.name(),
                question.kind().label(),
                question.comparedWith().label(),
                question.source().full(),
                question.unit(),
                Double.toString(check.expectation().value()),
                Double.toString(check.actual()),
                Double.toString(check.error()),
                Double.toString(check.expectation().tolerance()),
                check.status().key())
            .map(SummaryCsv::field)
            .collect(Collectors.joining(","))
        + "\n";
  }

  /** RFC 4180: quoted where it must be. */
  static String field(String text) {
    return text.matches("[^,\"\r\n]*") ? text : '"' + text.replace("\"", "\"\"") + '"';
  }
}
