package io.github.ringstate.files.plan;

import io.github.ringstate.files.plan.PlanFile.AgreedHeight;
import io.github.ringstate.files.plan.PlanFile.Fact;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.toml.TomlLines;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Writes a plan down as TOML that {@link PlanFile} reads back. */
public final class PlanWriter {

  /** Whole and decimal numbers as TOML 1.0.0 writes them. */
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(0|[1-9][0-9]{0,14})(\\.[0-9]{1,15})?");

  private PlanWriter() {}

  /**
   * Writes a plan down.
   *
   * @param plan the plan
   * @param inWords what the head of the file says of it
   * @return the lines of the file
   */
  public static List<String> lines(PlanFile plan, String inWords) {
    List<String> lines = new ArrayList<>();
    TomlLines.comment(lines, inWords);
    lines.add("#");
    TomlLines.comment(lines, Caution.TEXT);
    lines.add("");
    for (Fact fact : Fact.values()) {
      lines.add(fact.key() + " = " + TomlLines.quoted(plan.facts().getOrDefault(fact, "")));
    }
    lines.add(
        plan.crew().stream()
            .map(TomlLines::quoted)
            .collect(Collectors.joining(", ", PlanReader.CREW + " = [", "]")));
    lines.add(PlanReader.TECHNIQUE + " = " + TomlLines.quoted(plan.technique()));
    plan.options()
        .forEach(
            (part, options) -> {
              lines.add("");
              lines.add("[" + part.key() + "]");
              options.forEach(
                  (name, value) -> lines.add(name.replace('-', '_') + " = " + value(value)));
            });
    lines.add("");
    lines.add("[" + PlanReader.AGREED + "]");
    for (AgreedHeight height : AgreedHeight.values()) {
      Double feet = plan.agreed().get(height);
      lines.add(
          feet == null
              ? TomlLines.COMMENT + height.key() + " = 0"
              : height.key() + " = " + Decimals.brief(feet));
    }
    lines.add("");
    lines.add("[" + PlanReader.RECORD + "]");
    lines.add(PlanReader.REVISION + " = " + TomlLines.quoted(plan.revision()));
    return lines;
  }

  private static String value(String text) {
    return NUMBER.matcher(text).matches() ? text : TomlLines.quoted(text);
  }
}
