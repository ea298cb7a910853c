package io.github.ringstate.instructor.boundary;

import io.github.ringstate.files.provenance.ResolvedSettings;
import io.github.ringstate.files.report.Cell;
import io.github.ringstate.files.report.Column;
import io.github.ringstate.files.report.Sheet;
import io.github.ringstate.files.report.Sheet.GridColumn;
import io.github.ringstate.files.report.Table;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.text.NotAWayOut;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.inflow.DescentLimits;
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
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Between which rates of descent the ring state lies.
 *
 * @param request what was asked for
 * @param result what was found
 */
record BoundaryReport(BoundaryRequest request, BoundaryResult result)
    implements Printable, Pictured {

  private static final List<Column<BoundaryRow>> COLUMNS =
      List.of(
          new Column<>("criterion", row -> Cell.text(row.criterion())),
          new Column<>("airspeed_kt", row -> Cell.given(Unit.KNOT, row.airspeed())),
          new Column<>("onset_fpm", row -> Cell.in(Unit.FOOT_PER_MINUTE, row.onset())),
          new Column<>("exit_fpm", row -> Cell.in(Unit.FOOT_PER_MINUTE, row.exit())));

  @Override
  public String title() {
    return "ring state boundaries";
  }

  @Override
  public Picture picture(PageSettings settings) {
    UnitSystem units = settings.units();
    Conditions conditions = request.conditions();
    return new Captioned(
        new BoundaryPicture(result, units).picture(),
        BoundaryMessages.SAY.title(
            conditions.craft().name(),
            units.given(Unit.KILOGRAM, conditions.massKg()),
            units.lengthInWords(conditions.air().densityAltitude())),
        result.isMistaken() ? NotAWayOut.TEXT : "");
  }

  @Override
  public Page page(PageSettings settings) {
    return new Page(
        BoundaryReport.class,
        "boundary.mustache",
        "Vortex ring state: its boundary",
        false,
        Map.of(
            "heading",
            heading(settings.units()),
            "flight",
            result.path().map(FlightPath::inWords).orElse(BoundaryMessages.SAY.noFlight()),
            "isMistaken",
            result.isMistaken(),
            "terms",
            BoundaryMessages.SAY.pageDefinitions(result.path().isPresent()),
            "parameters",
            ModelNote.of(result.chart().conditions().craft())),
        Map.of("picture", new BoundaryPicture(result, settings.units()).picture()));
  }

  @Override
  public Table<BoundaryRow> table() {
    return new Table<>(COLUMNS, result.chart().rows());
  }

  @Override
  public Map<String, Cell> facts() {
    Conditions conditions = request.conditions();
    Map<String, Cell> facts = ConditionCells.facts(conditions, false);
    facts.put(
        "hover_induced_velocity_fpm", Cell.in(Unit.FOOT_PER_MINUTE, conditions.hoverInduced()));
    facts.put("step_kt", Cell.given(Unit.KNOT, request.step()));
    return facts;
  }

  @Override
  public List<Term> definitions() {
    return BoundaryMessages.SAY.dataDefinitions();
  }

  @Override
  public Map<String, Table<?>> tables() {
    return Map.of("boundary", table());
  }

  @Override
  public Sheet sheet(UnitSystem units) {
    return new Sheet(
        List.of(
            new Sheet.Title("Vortex ring state: its boundary by three criteria, and limits taught"),
            new Sheet.Terms(heading(units)),
            grid(units),
            new Sheet.Terms(BoundaryMessages.SAY.definitions()),
            new Sheet.Paragraph("CAUTION. " + Caution.TEXT)));
  }

  private List<Term> heading(UnitSystem units) {
    Conditions conditions = request.conditions();
    List<Term> more =
        new ArrayList<>(
            BoundaryMessages.SAY.rotor(
                units.fineVerticalSpeedInWords(conditions.hoverInduced()),
                units.isMetric()
                    ? ""
                    : Decimals.fixed(Unit.KNOT.fromSi(conditions.hoverInduced()), 1) + " kt",
                Decimals.fixed(conditions.craft().discLoading(), 0)));
    more.addAll(teach(units));
    return conditions.heading(units, more);
  }

  private List<Term> teach(UnitSystem units) {
    double sink = request.limits().si(DescentLimits.SINK);
    double airspeed = request.limits().si(DescentLimits.AIRSPEED);
    OptionalDouble slowest = result.chart().slowest(airspeed);
    return BoundaryMessages.SAY.teach(
        units.typed(Unit.FOOT_PER_MINUTE, sink),
        units.typed(Unit.KNOT, airspeed),
        slowest.isPresent() ? units.fineVerticalSpeedInWords(slowest.getAsDouble()) : "",
        slowest.isPresent() && slowest.getAsDouble() <= sink);
  }

  private Sheet.Grid grid(UnitSystem units) {
    Chart chart = result.chart();
    String sink = units.verticalSpeed().symbol();
    List<GridColumn> columns = new ArrayList<>();
    columns.add(GridColumn.right("airspeed", "", units.speed().symbol()));
    for (String criterion : chart.criteria()) {
      columns.add(GridColumn.right(criterion, "onset", sink));
      columns.add(GridColumn.right("", "exit", sink));
    }
    List<List<String>> lines = new ArrayList<>();
    for (double airspeed : chart.airspeeds()) {
      List<String> line = new ArrayList<>();
      line.add(
          units.isMetric()
              ? Decimals.fixed(airspeed, 2)
              : Decimals.given(Unit.KNOT.fromSi(airspeed)));
      for (String criterion : chart.criteria()) {
        Optional<BoundaryRow> row = chart.at(criterion, airspeed);
        line.add(row.map(one -> units.fineVerticalSpeed(one.onset())).orElse("-"));
        line.add(row.map(BoundaryRow::exit).map(exit -> whole(exit, units)).orElse("-"));
      }
      lines.add(line);
    }
    return new Sheet.Grid(columns, lines);
  }

  private static String whole(OptionalDouble sink, UnitSystem units) {
    return sink.isPresent() ? units.fineVerticalSpeed(sink.getAsDouble()) : "-";
  }

  @Override
  public Map<String, Cell> settings() {
    return new ResolvedSettings()
        .craft(request.conditions().craft())
        .air(request.conditions().air())
        .inflow(request.conditions().craft().inflow())
        .value("model.boundaries", Cell.text(String.join(", ", result.chart().criteria())))
        .value("boundary.step_m_per_s", Cell.exact(request.step()))
        .encounters(
            request.flight().map(flight -> flight.encounter(request.conditions())).stream()
                .toList())
        .cells();
  }
}
