package io.github.ringstate.instructor.plan;

import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.files.plan.PlanFile;
import io.github.ringstate.files.plan.PlanWriter;
import io.github.ringstate.files.provenance.ResolvedSettings;
import io.github.ringstate.files.report.Cell;
import io.github.ringstate.files.report.Column;
import io.github.ringstate.files.report.Report;
import io.github.ringstate.files.report.Sheet;
import io.github.ringstate.files.report.Table;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.unit.UnitSystem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A plan: as text, the file that is read back.
 *
 * @param plan the plan
 * @param flown what is flown for its sheets, by the standard techniques
 */
record PlanReport(PlanFile plan, List<Encounter> flown) implements Report {

  PlanReport {
    flown = List.copyOf(flown);
  }

  private record Line(String part, String key, String value) {}

  @Override
  public String title() {
    return "plan";
  }

  @Override
  public Sheet sheet(UnitSystem units) {
    return new Sheet(
        List.of(new Sheet.Verbatim(PlanWriter.lines(plan, PlanCommandMessages.SAY.head()))));
  }

  @Override
  public Table<?> table() {
    List<Line> lines = new ArrayList<>();
    plan.options()
        .forEach(
            (part, options) ->
                options.forEach(
                    (name, value) ->
                        lines.add(new Line(part.key(), name.replace('-', '_'), value))));
    return new Table<>(
        List.of(
            new Column<>("part", line -> Cell.text(line.part())),
            new Column<>("key", line -> Cell.text(line.key())),
            new Column<>("value", line -> Cell.text(line.value()))),
        lines);
  }

  @Override
  public Map<String, Cell> facts() {
    Map<String, Cell> facts = new LinkedHashMap<>();
    for (PlanFile.Fact fact : PlanFile.Fact.values()) {
      facts.put(fact.key(), Cell.text(plan.facts().getOrDefault(fact, "")));
    }
    facts.put("crew", Cell.text(String.join(", ", plan.crew())));
    facts.put("technique", Cell.text(plan.technique()));
    for (PlanFile.AgreedHeight height : PlanFile.AgreedHeight.values()) {
      Double feet = plan.agreed().get(height);
      facts.put(height.key(), feet == null ? Cell.NOTHING : Cell.given(feet));
    }
    facts.put("model_revision", Cell.text(plan.revision()));
    return facts;
  }

  @Override
  public List<Term> definitions() {
    return PlanCommandMessages.SAY.definitions();
  }

  @Override
  public Map<String, Table<?>> tables() {
    return Map.of("options", table());
  }

  @Override
  public Map<String, Cell> settings() {
    return ResolvedSettings.of(flown);
  }
}
