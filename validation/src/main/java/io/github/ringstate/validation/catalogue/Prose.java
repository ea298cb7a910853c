package io.github.ringstate.validation.catalogue;

import io.github.ringstate.sheets.chart.Graph;
import io.github.ringstate.sheets.message.MessageFile;
import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.Figure;
import io.github.ringstate.validation.check.KnownDifference;
import io.github.ringstate.validation.check.Section;
import io.github.ringstate.validation.reference.ReferenceTable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;

/**
 * What a topic says in words: the texts of the file of its name. That of a section or a figure has
 * its title in the first paragraph; another explains why the library differs from a source.
 *
 * @param file the texts
 * @param values what is filled in
 */
record Prose(MessageFile file, Map<String, String> values) {

  private static final String SECTION = "section";

  static Prose of(Class<?> topic) {
    return new Prose(MessageFile.of(topic), Map.of());
  }

  Prose with(String name, String value) {
    return new Prose(file, Map.of(name, value));
  }

  /** A text in one line. */
  String say(String name) {
    return String.join(" ", paragraphs(name));
  }

  Figure figure(String id, Supplier<Graph> graph) {
    List<String> text = paragraphs(id);
    return new Figure(id, text.get(0), text.get(1), graph);
  }

  /** The section, with the origin of its reference data as its last paragraphs. */
  Section section(
      String id, List<Figure> figures, List<Check> checks, ReferenceTable... references) {
    List<String> text = new ArrayList<>(paragraphs(SECTION));
    String title = text.remove(0);
    for (ReferenceTable reference : references) {
      text.add("Reference data: " + String.join(" ", reference.origin()));
    }
    Set<String> unsaid = new TreeSet<>(file.names());
    unsaid.remove(SECTION);
    figures.forEach(figure -> unsaid.remove(figure.id()));
    checks.forEach(
        check ->
            check
                .difference()
                .map(KnownDifference::explanation)
                .ifPresent(said -> unsaid.removeIf(name -> say(name).equals(said))));
    if (!unsaid.isEmpty()) {
      throw new IllegalStateException("the section " + id + " never says " + unsaid);
    }
    return new Section(id, title, text, figures, checks);
  }

  private List<String> paragraphs(String name) {
    return Arrays.stream(file.template(name).execute(values).split("\n\\s*\n", -1))
        .map(paragraph -> paragraph.strip().replaceAll("\\s+", " "))
        .toList();
  }
}
