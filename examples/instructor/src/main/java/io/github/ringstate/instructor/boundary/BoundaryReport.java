package io.github.ringstate.instructor.boundary;

import io.github.ringstate.files.report.Cell;
import io.github.ringstate.files.report.Column;
import io.github.ringstate.files.report.Sheet;
import io.github.ringstate.files.report.Sheet.GridColumn;
import io.github.ringstate.files.report.Table;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
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
 * The boundaries of the ring state for one craft.
 *
 * @param chart the boundaries
 * @param path the way of a flight, for the picture
 */
record BoundaryReport(Chart chart, Optional<FlightPath> path) implements Printable, Pictured {

  private static final List<Column<BoundaryRow>> COLUMNS =
      List.of(
          new Column<>("criterion", row -> Cell.text(row.criterion())),
          new Column<>("airspeed_kt", row -> Cell.given(row.airspeedKt())),
          new Column<>("onset_fpm", row -> Cell.number(row.onsetFpm())),
          new Column<>("exit_fpm", row -> Cell.number(row.exitFpm())));

  @Override
  public String title() {
    return "ring state boundaries";
  }

  @Override
  public Picture picture(PageSettings settings) {
    return new BoundaryPicture(chart, path, settings.units(), true);
  }

  @Override
  public Page page(PageSettings settings) {
    List<Term> words = new ArrayList<>(definitions());
    words.removeIf(term -> term.word().contains("_"));
    words.add(
        0,
        new Term(
            "ring state",
            "the speeds between the two branches of a line, by its criterion; published criteria"
                + " differ this much"));
    if (path.isPresent()) {
      words.add(
          new Term(
              "flight",
              "at recognition the delay is over and the pilot first moves the controls; the descent"
                  + " is arrested when the vertical speed is back to zero, which along a tilted"
                  + " shaft it need not be"));
    }
    words.add(
        new Term(
            "hover induced velocity",
            "the speed at which the rotor drives the air down in a hover out of ground effect"));
    return new Page(
        BoundaryReport.class,
        "boundary.mustache",
        "Vortex ring state: its boundary",
        false,
        Map.of(
            "heading",
            heading(settings.units()),
            "flight",
            path.map(FlightPath::inWords).orElse("none drawn"),
            "isMistaken",
            path.filter(flown -> flown.recovery().isMistaken()).isPresent(),
            "terms",
            words,
            "parameters",
            ModelNote.standard()),
        Map.of("picture", new BoundaryPicture(chart, path, settings.units(), false)));
  }

  @Override
  public Table<BoundaryRow> table() {
    return new Table<>(COLUMNS, chart.rows());
  }

  @Override
  public Map<String, Cell> facts() {
    Conditions conditions = chart.conditions();
    Map<String, Cell> facts = ConditionCells.facts(conditions, false);
    facts.put(
        "hover_induced_velocity_fpm",
        Cell.number(Unit.FOOT_PER_MINUTE.fromSi(conditions.hoverInduced())));
    facts.put("step_kt", Cell.given(chart.stepKt()));
    return facts;
  }

  @Override
  public List<Term> definitions() {
    List<Term> terms = new ArrayList<>();
    terms.add(
        new Term("onset_fpm", "rate of descent at which a slow descent enters the ring state"));
    terms.add(new Term("exit_fpm", "rate of descent at which a fast descent leaves it"));
    terms.addAll(criteria());
    return terms;
  }

  private static List<Term> criteria() {
    return List.of(
        new Term(
            "assumption", "the disc is level: airspeed is along it, the descent along the shaft"),
        new Term(
            "heave-damping",
            "a faster sink means less thrust, by the ring-state inflow model; the boundary that"
                + " loss and fly use"),
        new Term(
            "wake-transport",
            "the tip vortices are carried away from the disc too slowly (constants from memory,"
                + " unsure)"),
        new Term(
            "tip-vortex",
            "the descent is as fast as the tip vortices leave the disc; it knows no exit and never"
                + " closes, and is cut off where the others have closed"));
  }

  @Override
  public Map<String, Table<?>> tables() {
    return Map.of("boundary", table());
  }

  @Override
  public Sheet sheet(UnitSystem units) {
    List<Term> terms = new ArrayList<>();
    terms.add(
        new Term(
            "onset, exit",
            "the rates of descent between which the rotor is in the ring state; published criteria"
                + " differ this much"));
    terms.addAll(criteria());
    return new Sheet(
        List.of(
            new Sheet.Title("Vortex ring state: its boundary by three criteria"),
            new Sheet.Terms(heading(units)),
            grid(units),
            new Sheet.Terms(terms),
            new Sheet.Paragraph("CAUTION. " + Caution.TEXT)));
  }

  private List<Term> heading(UnitSystem units) {
    Conditions conditions = chart.conditions();
    List<Term> heading = new ArrayList<>();
    heading.add(
        new Term("Craft", conditions.craft().name() + ": " + conditions.craft().description()));
    heading.addAll(conditions.terms(units));
    heading.add(
        new Term(
            "Rotor",
            "hover induced velocity "
                + induced(conditions.hoverInduced(), units)
                + ", disc loading "
                + Decimals.fixed(conditions.craft().discLoading(), 0)
                + " N/m2"));
    return heading;
  }

  private static String induced(double si, UnitSystem units) {
    String vertical = units.fineVerticalSpeed(si) + " " + units.verticalSpeed().symbol();
    return units == UnitSystem.AVIATION
        ? vertical + " or " + Decimals.fixed(Unit.KNOT.fromSi(si), 1) + " kt"
        : vertical;
  }

  private Sheet.Grid grid(UnitSystem units) {
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
          units == UnitSystem.AVIATION
              ? Decimals.given(airspeed)
              : Decimals.fixed(Unit.KNOT.toSi(airspeed), 2));
      for (String criterion : chart.criteria()) {
        Optional<BoundaryRow> row = chart.at(criterion, airspeed);
        line.add(row.map(one -> sink(one.onsetFpm(), units)).orElse("-"));
        line.add(row.map(BoundaryRow::exitFpm).map(exit -> whole(exit, units)).orElse("-"));
      }
      lines.add(line);
    }
    return new Sheet.Grid(columns, lines);
  }

  private static String whole(OptionalDouble fpm, UnitSystem units) {
    return fpm.isPresent() ? sink(fpm.getAsDouble(), units) : "-";
  }

  private static String sink(double fpm, UnitSystem units) {
    return units.fineVerticalSpeed(Unit.FOOT_PER_MINUTE.toSi(fpm));
  }
}
