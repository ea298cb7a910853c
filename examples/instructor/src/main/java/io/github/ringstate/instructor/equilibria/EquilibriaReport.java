package io.github.ringstate.instructor.equilibria;

import io.github.ringstate.analysis.equilibrium.Equilibrium;
import io.github.ringstate.analysis.equilibrium.HysteresisLoop;
import io.github.ringstate.files.provenance.ResolvedSettings;
import io.github.ringstate.files.report.Cell;
import io.github.ringstate.files.report.Column;
import io.github.ringstate.files.report.Sheet;
import io.github.ringstate.files.report.Sheet.GridColumn;
import io.github.ringstate.files.report.Table;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.conditions.Captioned;
import io.github.ringstate.instructor.conditions.ConditionCells;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.instructor.conditions.ModelNote;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.sheets.page.Page;
import io.github.ringstate.sheets.page.PageSettings;
import io.github.ringstate.sheets.page.Pictured;
import io.github.ringstate.sheets.page.Printable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * The steady descents of a craft.
 *
 * @param conditions craft, mass and air
 * @param result what was found
 */
record EquilibriaReport(Conditions conditions, EquilibriaResult result)
    implements Printable, Pictured {

  /** About so many lines of text between the folds. */
  private static final int LINES = 24;

  private static final List<Column<EquilibriaResult.Row>> COLUMNS =
      List.of(
          column("collective_deg", at -> Cell.number(Unit.DEGREE.fromSi(at.collective()), 3)),
          column("vertical_speed_fpm", at -> Cell.in(Unit.FOOT_PER_MINUTE, at.verticalSpeed())),
          new Column<>("fold", row -> row.fold().isEmpty() ? Cell.NOTHING : Cell.text(row.fold())),
          column("rotor_speed_pct", at -> Cell.number(100 * at.rotorSpeed(), 2)),
          column("power_kw", at -> Cell.in(Unit.KILOWATT, at.power())),
          column("pitch_deg", at -> Cell.number(Unit.DEGREE.fromSi(at.pitch()), 2)),
          column("bank_deg", at -> Cell.number(Unit.DEGREE.fromSi(at.bank()), 2)),
          column("axial_over_hover", at -> Cell.number(at.axial(), 4)),
          column("edgewise_over_hover", at -> Cell.number(at.edgewise(), 4)),
          column("growth_per_s", at -> Cell.number(at.growth(), 4)),
          new Column<>(
              "stable",
              row -> row.fold().isEmpty() ? Cell.yesNo(row.descent().stable()) : Cell.NOTHING));

  private static final List<Column<HysteresisLoop.Sample>> LOOP =
      List.of(
          new Column<>("time_s", at -> Cell.number(at.time())),
          new Column<>("collective_deg", at -> Cell.number(Unit.DEGREE.fromSi(at.collective()), 3)),
          new Column<>(
              "vertical_speed_fpm", at -> Cell.in(Unit.FOOT_PER_MINUTE, at.verticalSpeed())),
          new Column<>("rotor_speed_pct", at -> Cell.number(100 * at.rotorSpeed(), 2)));

  private interface Value {
    Cell of(Equilibrium at);
  }

  private static Column<EquilibriaResult.Row> column(String name, Value value) {
    return new Column<>(name, row -> value.of(row.descent()));
  }

  @Override
  public String title() {
    return "steady descents";
  }

  @Override
  public Picture picture(PageSettings settings) {
    UnitSystem units = settings.units();
    return new Captioned(
        new EquilibriaPicture(conditions, result, units).picture(),
        EquilibriaMessages.SAY.title(
            conditions.craft().name(),
            Decimals.brief(conditions.massKg()),
            units.lengthInWords(conditions.air().densityAltitude())));
  }

  @Override
  public Page page(PageSettings settings) {
    return new Page(
        EquilibriaReport.class,
        "equilibria.mustache",
        "Steady descents and their folds",
        false,
        Map.of(
            "heading",
            heading(settings.units()),
            "said",
            said(),
            "terms",
            EquilibriaMessages.SAY.definitions(),
            "parameters",
            ModelNote.of(conditions.craft())),
        Map.of("picture", new EquilibriaPicture(conditions, result, settings.units()).picture()));
  }

  @Override
  public Table<EquilibriaResult.Row> table() {
    return new Table<>(COLUMNS, result.rows());
  }

  @Override
  public Map<String, Cell> facts() {
    Map<String, Cell> facts = ConditionCells.facts(conditions, true);
    facts.put("airspeed_kt", Cell.given(Unit.KNOT, result.descents().airspeed()));
    for (int i = 0; i < result.inflowAlone().size(); i++) {
      OptionalDouble alone = result.inflowAlone().get(i);
      facts.put(
          EquilibriaResult.NAMES.get(i) + "_inflow_alone_axial_over_hover",
          alone.isPresent() ? Cell.number(alone.getAsDouble(), 4) : Cell.NOTHING);
    }
    return facts;
  }

  @Override
  public List<Term> definitions() {
    return EquilibriaMessages.SAY.dataDefinitions();
  }

  @Override
  public Map<String, Table<?>> tables() {
    Map<String, Table<?>> tables = new LinkedHashMap<>();
    result
        .loop()
        .ifPresent(
            loop ->
                tables.put(
                    "loop",
                    new Table<>(
                        LOOP,
                        Stream.concat(loop.lowering().stream(), loop.raising().stream())
                            .toList())));
    tables.put("descents", table());
    return tables;
  }

  @Override
  public Sheet sheet(UnitSystem units) {
    List<Sheet.Block> blocks = new ArrayList<>();
    blocks.add(new Sheet.Title("Vortex ring state: steady descents and their folds"));
    blocks.add(new Sheet.Terms(heading(units)));
    if (!result.folds().isEmpty()) {
      blocks.add(folds(units));
    }
    if (!said().isEmpty()) {
      blocks.add(new Sheet.Paragraph(said()));
    }
    blocks.add(descents(units));
    blocks.add(new Sheet.Terms(EquilibriaMessages.SAY.definitions()));
    blocks.add(new Sheet.Paragraph("CAUTION. " + Caution.TEXT));
    return new Sheet(blocks);
  }

  private String said() {
    if (result.folds().isEmpty()) {
      return EquilibriaMessages.SAY.noFold();
    }
    return result
        .loop()
        .map(
            loop ->
                EquilibriaMessages.SAY.jumps(
                    degrees(loop.jumpDown().collective()), degrees(loop.jumpUp().collective())))
        .orElse("");
  }

  private List<Term> heading(UnitSystem units) {
    return conditions.heading(
        units, EquilibriaMessages.SAY.held(units.typed(Unit.KNOT, result.descents().airspeed())));
  }

  private Sheet.Grid folds(UnitSystem units) {
    List<GridColumn> columns =
        List.of(
            GridColumn.left("fold"),
            GridColumn.right("collective", "deg"),
            GridColumn.right("vertical speed", units.verticalSpeed().symbol()),
            GridColumn.right("rotor", "speed, %"),
            GridColumn.right("power", "kW"),
            GridColumn.right("axial"),
            GridColumn.right("inflow", "alone"));
    List<List<String>> lines = new ArrayList<>();
    for (int i = 0; i < Math.min(result.folds().size(), EquilibriaResult.NAMES.size()); i++) {
      Equilibrium fold = result.folds().get(i);
      OptionalDouble alone = result.inflowAlone().get(i);
      lines.add(
          List.of(
              EquilibriaResult.NAMES.get(i),
              degrees(fold.collective()),
              units.fineVerticalSpeed(fold.verticalSpeed()),
              Decimals.fixed(100 * fold.rotorSpeed(), 1),
              Decimals.fixed(Unit.KILOWATT.fromSi(fold.power()), 0),
              Decimals.fixed(fold.axial(), 3),
              alone.isPresent() ? Decimals.fixed(alone.getAsDouble(), 3) : "-"));
    }
    return new Sheet.Grid(columns, lines);
  }

  private Sheet.Grid descents(UnitSystem units) {
    List<GridColumn> columns =
        List.of(
            GridColumn.right("collective", "deg"),
            GridColumn.right("vertical speed", units.verticalSpeed().symbol()),
            GridColumn.right("rotor", "speed, %"),
            GridColumn.right("power", "kW"),
            GridColumn.right("growth", "1/s"),
            GridColumn.left(""));
    List<List<String>> lines = new ArrayList<>();
    List<EquilibriaResult.Row> rows = result.rows();
    int every = Math.max(1, rows.size() / LINES);
    for (int i = 0; i < rows.size(); i++) {
      EquilibriaResult.Row row = rows.get(i);
      if (i % every == 0 || !row.fold().isEmpty()) {
        Equilibrium at = row.descent();
        lines.add(
            List.of(
                degrees(at.collective()),
                units.fineVerticalSpeed(at.verticalSpeed()),
                Decimals.fixed(100 * at.rotorSpeed(), 1),
                Decimals.fixed(Unit.KILOWATT.fromSi(at.power()), 0),
                Decimals.fixed(row.fold().isEmpty() ? at.growth() : 0, 3),
                row.fold().isEmpty() ? at.stable() ? "stable" : "unstable" : row.fold()));
      }
    }
    return new Sheet.Grid(columns, lines);
  }

  private static String degrees(double angle) {
    return Decimals.fixed(Unit.DEGREE.fromSi(angle), 2);
  }

  @Override
  public Map<String, Cell> settings() {
    return new ResolvedSettings()
        .craft(conditions.craft())
        .air(conditions.air())
        .inflow(result.descents().inflow())
        .value("descent.airspeed_m_per_s", Cell.exact(result.descents().airspeed()))
        .cells();
  }
}
