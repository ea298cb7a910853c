package io.github.ringstate.instructor.craftlist;

import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.files.provenance.ResolvedSettings;
import io.github.ringstate.files.report.Cell;
import io.github.ringstate.files.report.Column;
import io.github.ringstate.files.report.Report;
import io.github.ringstate.files.report.Sheet;
import io.github.ringstate.files.report.Sheet.GridColumn;
import io.github.ringstate.files.report.Table;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.rotor.Rotor;
import java.util.List;
import java.util.Map;

/**
 * Some craft with their main figures.
 *
 * @param craft the craft
 */
record CraftListReport(List<Helicopter> craft) implements Report {

  private static final List<Column<Helicopter>> COLUMNS =
      List.of(
          new Column<>("craft", craft -> Cell.text(craft.name())),
          new Column<>("mass_kg", craft -> Cell.number(craft.mass())),
          new Column<>(
              "maximum_mass_kg",
              craft -> Cell.number(craft.numbers().get(Helicopter.MAXIMUM_MASS))),
          new Column<>("radius_m", craft -> Cell.number(craft.numbers().get(Rotor.RADIUS))),
          new Column<>("disc_loading_n_per_m2", craft -> Cell.number(craft.discLoading())),
          new Column<>(
              "continuous_power_kw",
              craft -> Cell.number(craft.numbers().get(Helicopter.CONTINUOUS_POWER))),
          new Column<>("engine_kind", craft -> Cell.text(craft.engine().label())),
          new Column<>("rotation", craft -> Cell.text(craft.sense().label())),
          new Column<>("description", craft -> Cell.text(craft.description())));

  CraftListReport {
    craft = List.copyOf(craft);
  }

  @Override
  public String title() {
    return "demo craft";
  }

  @Override
  public Table<Helicopter> table() {
    return new Table<>(COLUMNS, craft);
  }

  @Override
  public Map<String, Cell> facts() {
    return Map.of();
  }

  @Override
  public List<Term> definitions() {
    return CraftMessages.SAY.listDefinitions();
  }

  @Override
  public Map<String, Table<?>> tables() {
    return Map.of("craft", table());
  }

  @Override
  public Sheet sheet(UnitSystem units) {
    List<GridColumn> columns =
        List.of(
            GridColumn.left("craft"),
            GridColumn.right("mass", "kg"),
            GridColumn.right("maximum", "mass, kg"),
            GridColumn.right("radius", "m"),
            GridColumn.right("disc load", "N/m2"),
            GridColumn.right("continuous", "power, kW"),
            GridColumn.left("engine"),
            GridColumn.left("rotation"));
    return new Sheet(
        List.of(
            new Sheet.Title("Demo craft"),
            new Sheet.Grid(
                columns,
                table()
                    .records()
                    .map(row -> row.subList(0, columns.size()).stream().map(Cell::text).toList())
                    .toList()),
            new Sheet.Terms(
                craft.stream().map(one -> new Term(one.name(), one.description())).toList()),
            new Sheet.Paragraph(CraftMessages.SAY.copy()),
            new Sheet.Paragraph("CAUTION. " + Caution.TEXT)));
  }

  @Override
  public Map<String, Cell> settings() {
    ResolvedSettings settings = new ResolvedSettings();
    craft.forEach(settings::craft);
    return settings.cells();
  }
}
