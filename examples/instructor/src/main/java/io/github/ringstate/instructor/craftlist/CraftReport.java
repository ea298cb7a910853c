package io.github.ringstate.instructor.craftlist;

import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.files.craft.CraftFile;
import io.github.ringstate.files.craft.CraftWriter;
import io.github.ringstate.files.provenance.ResolvedSettings;
import io.github.ringstate.files.report.Cell;
import io.github.ringstate.files.report.Column;
import io.github.ringstate.files.report.Report;
import io.github.ringstate.files.report.Sheet;
import io.github.ringstate.files.report.Table;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.quantity.Parameter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One craft with all its numbers, unrounded: as text, the file that is read back.
 *
 * @param file the craft, with all that its file holds
 */
record CraftReport(CraftFile file) implements Report {

  private record Line(String section, Parameter parameter) {}

  @Override
  public String title() {
    return "craft";
  }

  @Override
  public Sheet sheet(UnitSystem units) {
    return new Sheet(List.of(new Sheet.Verbatim(CraftWriter.lines(file))));
  }

  @Override
  public Table<?> table() {
    List<Line> lines =
        Helicopter.SECTIONS.stream()
            .flatMap(
                section ->
                    section.parameters().stream()
                        .map(parameter -> new Line(section.title(), parameter)))
            .toList();
    return new Table<>(
        List.of(
            new Column<>("section", line -> Cell.text(line.section())),
            new Column<>("key", line -> Cell.text(line.parameter().key())),
            new Column<>("value", line -> Cell.exact(file.craft().numbers().get(line.parameter()))),
            new Column<>("unit", line -> Cell.text(line.parameter().unit().symbol())),
            new Column<>("low", line -> Cell.exact(line.parameter().quantity().low())),
            new Column<>("high", line -> Cell.exact(line.parameter().quantity().high())),
            new Column<>(
                "origin", line -> Cell.text(CraftWriter.origin(file.craft(), line.parameter())))),
        lines);
  }

  @Override
  public Map<String, Cell> facts() {
    Map<String, Cell> facts = new LinkedHashMap<>();
    facts.put("name", Cell.text(file.craft().name()));
    facts.put("description", Cell.text(file.craft().description()));
    facts.put("rotation", Cell.text(file.craft().sense().label()));
    facts.put("engine_kind", Cell.text(file.craft().engine().label()));
    facts.put(
        "height_velocity_kt_ft",
        file.curve().isKnown() ? Cell.text(CraftWriter.points(file.curve())) : Cell.NOTHING);
    return facts;
  }

  @Override
  public List<Term> definitions() {
    return CraftMessages.SAY.definitions();
  }

  @Override
  public Map<String, Table<?>> tables() {
    return Map.of("numbers", table());
  }

  @Override
  public Map<String, Cell> settings() {
    return new ResolvedSettings().craft(file.craft()).cells();
  }
}
