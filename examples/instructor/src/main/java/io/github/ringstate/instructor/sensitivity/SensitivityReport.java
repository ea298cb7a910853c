package io.github.ringstate.instructor.sensitivity;

import io.github.ringstate.analysis.sensitivity.Tornado;
import io.github.ringstate.files.provenance.ResolvedSettings;
import io.github.ringstate.files.report.Cell;
import io.github.ringstate.files.report.Column;
import io.github.ringstate.files.report.Sheet;
import io.github.ringstate.files.report.Table;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.report.TextColumn;
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
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * What each number does to the altitude loss.
 *
 * @param request what was asked for
 * @param tornado what was found
 */
record SensitivityReport(SensitivityRequest request, Tornado tornado)
    implements Printable, Pictured {

  /** Bars that people are shown. */
  private static final int SHOWN = 20;

  private static final int DIGITS = 4;

  private static final List<Column<Tornado.Bar>> COLUMNS =
      List.of(
          new Column<>("group", bar -> Cell.text(bar.input().group())),
          new Column<>("number", bar -> Cell.text(bar.input().name())),
          new Column<>("unit", bar -> Cell.text(unit(bar))),
          new Column<>("value", bar -> Cell.number(bar.input().standard(), DIGITS)),
          new Column<>("low", bar -> Cell.number(bar.input().range().low(), DIGITS)),
          new Column<>("high", bar -> Cell.number(bar.input().range().high(), DIGITS)),
          new Column<>("altitude_loss_low_ft", bar -> Cell.in(Unit.FOOT, bar.low())),
          new Column<>("altitude_loss_high_ft", bar -> Cell.in(Unit.FOOT, bar.high())),
          new Column<>("change_ft", bar -> Cell.in(Unit.FOOT, change(bar))),
          new Column<>(
              "derivative_ft_per_unit",
              bar -> bar.derivative().map(one -> feet(one.value())).orElse(Cell.NOTHING)),
          new Column<>(
              "error_ft_per_unit",
              bar -> bar.derivative().map(one -> feet(one.error())).orElse(Cell.NOTHING)),
          new Column<>(
              "second_way_ft_per_unit",
              bar ->
                  bar.secondWay().isPresent() ? feet(bar.secondWay().getAsDouble()) : Cell.NOTHING),
          new Column<>("agree", bar -> Cell.yesNo(bar.agrees())));

  private static String unit(Tornado.Bar bar) {
    Unit unit = bar.input().range().unit();
    return unit == Unit.ONE ? "1" : unit.symbol();
  }

  private static OptionalDouble change(Tornado.Bar bar) {
    return bar.low().isPresent() && bar.high().isPresent()
        ? OptionalDouble.of(bar.high().getAsDouble() - bar.low().getAsDouble())
        : OptionalDouble.empty();
  }

  private static Cell feet(double metres) {
    return Cell.number(Unit.FOOT.fromSi(metres), DIGITS);
  }

  @Override
  public String title() {
    return "sensitivity of the altitude loss";
  }

  private Conditions conditions() {
    return request.conditions();
  }

  private String delay() {
    return Decimals.given(request.delay());
  }

  private List<Tornado.Bar> shown() {
    return tornado.bars().subList(0, Math.min(SHOWN, tornado.bars().size()));
  }

  private TornadoPicture drawn(UnitSystem units) {
    return new TornadoPicture(
        tornado.base(),
        shown(),
        units,
        SensitivityMessages.SAY.description(
            conditions().craft().name(), request.technique().label(), delay(), base(units)));
  }

  private String base(UnitSystem units) {
    return units.loss(tornado.base()) + " " + units.length().symbol();
  }

  private String shownInWords() {
    return SensitivityMessages.SAY.shown(
        Integer.toString(shown().size()), Integer.toString(tornado.bars().size()));
  }

  @Override
  public Picture picture(PageSettings settings) {
    return new Captioned(
        drawn(settings.units()),
        SensitivityMessages.SAY.title(
            conditions().craft().name(), request.technique().label(), delay()));
  }

  @Override
  public Page page(PageSettings settings) {
    return new Page(
        SensitivityReport.class,
        "sensitivity.mustache",
        "What the altitude loss depends on",
        false,
        Map.of(
            "heading",
            heading(settings.units()),
            "shown",
            shownInWords(),
            "terms",
            SensitivityMessages.SAY.definitions(),
            "parameters",
            ModelNote.of(conditions().craft())),
        Map.of("picture", drawn(settings.units())));
  }

  @Override
  public Table<Tornado.Bar> table() {
    return new Table<>(COLUMNS, tornado.bars());
  }

  @Override
  public Map<String, Cell> facts() {
    Map<String, Cell> facts = ConditionCells.facts(conditions(), true);
    facts.put("entry", Cell.text(request.approach().kind().name()));
    facts.put("recovery", Cell.text(request.technique().name()));
    facts.put("delay_s", Cell.given(request.delay()));
    facts.put("altitude_loss_ft", Cell.in(Unit.FOOT, tornado.base()));
    return facts;
  }

  @Override
  public List<Term> definitions() {
    return SensitivityMessages.SAY.dataDefinitions();
  }

  @Override
  public Map<String, Table<?>> tables() {
    return Map.of("numbers", table());
  }

  @Override
  public Sheet sheet(UnitSystem units) {
    return new Sheet(
        List.of(
            new Sheet.Title("Vortex ring state: what the altitude loss depends on"),
            new Sheet.Terms(heading(units)),
            numbers(units),
            new Sheet.Paragraph(shownInWords()),
            new Sheet.Terms(SensitivityMessages.SAY.definitions()),
            new Sheet.Paragraph("CAUTION. " + Caution.TEXT)));
  }

  private List<Term> heading(UnitSystem units) {
    return conditions()
        .heading(
            units,
            SensitivityMessages.SAY.flown(
                request.approach().description(units),
                request.technique().label(),
                delay(),
                base(units)));
  }

  private Sheet.Grid numbers(UnitSystem units) {
    String symbol = units.length().symbol();
    return TextColumn.grid(
        List.of(
            TextColumn.left(bar -> bar.input().name(), "number"),
            TextColumn.left(bar -> bar.input().group(), "of"),
            TextColumn.right(bar -> Decimals.brief(bar.input().range().low()), "low"),
            TextColumn.right(bar -> Decimals.brief(bar.input().range().high()), "high"),
            TextColumn.left(SensitivityReport::unit, "unit"),
            TextColumn.right(bar -> loss(bar.low(), units), "loss at", "low, " + symbol),
            TextColumn.right(bar -> loss(bar.high(), units), "loss at", "high, " + symbol),
            TextColumn.right(bar -> slope(bar, units), "slope", symbol + " per unit")),
        shown());
  }

  private static String slope(Tornado.Bar bar, UnitSystem units) {
    return bar.agrees()
        ? Decimals.fixed(units.length().fromSi(bar.derivative().orElseThrow().value()), 2)
        : "-";
  }

  private static String loss(OptionalDouble metres, UnitSystem units) {
    return metres.isPresent() ? units.loss(metres.getAsDouble()) : "-";
  }

  @Override
  public Map<String, Cell> settings() {
    Map<String, Cell> settings = new TreeMap<>(ResolvedSettings.of(List.of(request.encounter())));
    settings.put("sensitivity.groups", Cell.text(String.join(",", request.groups())));
    return settings;
  }
}
