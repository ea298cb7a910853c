package io.github.ringstate.instructor.best;

import io.github.ringstate.analysis.best.ControlHistory.Knot;
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
import io.github.ringstate.pilot.Technique;
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
import java.util.TreeMap;

/**
 * The least altitude loss found, and what each way out loses more.
 *
 * @param request what was asked for
 * @param result what was found
 */
record BestReport(BestRequest request, BestResult result) implements Printable, Pictured {

  private static final String BEST = "best";

  private record Line(
      double delay,
      String recovery,
      OptionalDouble loss,
      OptionalDouble excess,
      OptionalDouble apart) {}

  private record Command(double delay, Knot knot) {}

  private static final List<Column<Line>> COLUMNS =
      List.of(
          new Column<>("delay_s", line -> Cell.given(line.delay())),
          new Column<>("recovery", line -> Cell.text(line.recovery())),
          new Column<>("altitude_loss_ft", line -> Cell.in(Unit.FOOT, line.loss())),
          new Column<>("excess_ft", line -> Cell.in(Unit.FOOT, line.excess())),
          new Column<>("searches_apart_ft", line -> Cell.in(Unit.FOOT, line.apart())));

  private static final List<Column<Command>> COMMANDS =
      List.of(
          new Column<>("delay_s", line -> Cell.given(line.delay())),
          new Column<>("time_s", line -> Cell.number(line.knot().time())),
          new Column<>("pitch_deg", line -> Cell.in(Unit.DEGREE, line.knot().pitch())),
          new Column<>("bank_deg", line -> Cell.in(Unit.DEGREE, line.knot().bank())),
          new Column<>(
              "collective_deg",
              line -> Cell.number(Unit.DEGREE.fromSi(line.knot().collective()), 2)));

  @Override
  public String title() {
    return "least altitude loss";
  }

  @Override
  public Picture picture(PageSettings settings) {
    Conditions conditions = request.conditions();
    UnitSystem units = settings.units();
    return new Captioned(
        new BestPicture(conditions, result, units).picture(),
        BestMessages.SAY.title(
            conditions.craft().name(),
            Decimals.brief(conditions.massKg()),
            units.lengthInWords(conditions.air().densityAltitude())));
  }

  @Override
  public Page page(PageSettings settings) {
    return new Page(
        BestReport.class,
        "best.mustache",
        "The least altitude loss found",
        false,
        Map.of(
            "heading",
            heading(settings.units()),
            "modelResult",
            BestMessages.SAY.modelResult(),
            "terms",
            BestMessages.SAY.definitions(),
            "parameters",
            ModelNote.of(request.conditions().craft())),
        Map.of(
            "picture", new BestPicture(request.conditions(), result, settings.units()).picture()));
  }

  @Override
  public Table<?> table() {
    List<Line> lines = new ArrayList<>();
    for (BestResult.Case one : result.cases()) {
      lines.add(
          new Line(
              one.delay(),
              BEST,
              OptionalDouble.of(one.best().loss()),
              OptionalDouble.of(0),
              OptionalDouble.of(one.apart())));
      for (Technique technique : BestResult.TECHNIQUES) {
        lines.add(
            new Line(
                one.delay(),
                technique.name(),
                one.loss(technique),
                one.excess(technique),
                OptionalDouble.empty()));
      }
    }
    return new Table<>(COLUMNS, lines);
  }

  @Override
  public Map<String, Cell> facts() {
    Map<String, Cell> facts = ConditionCells.facts(request.conditions(), true);
    facts.put("entry", Cell.text(request.approach().kind().name()));
    facts.put("power", Cell.text(request.powerInWords()));
    return facts;
  }

  @Override
  public List<Term> definitions() {
    return BestMessages.SAY.dataDefinitions();
  }

  @Override
  public Map<String, Table<?>> tables() {
    Map<String, Table<?>> tables = new LinkedHashMap<>();
    tables.put("commands", new Table<>(COMMANDS, commands()));
    tables.put("losses", table());
    return tables;
  }

  private List<Command> commands() {
    return result.cases().stream()
        .flatMap(
            one ->
                one.best().history().knots().stream().map(knot -> new Command(one.delay(), knot)))
        .toList();
  }

  @Override
  public Sheet sheet(UnitSystem units) {
    return new Sheet(
        List.of(
            new Sheet.Title("Vortex ring state: the least altitude loss found"),
            new Sheet.Terms(heading(units)),
            losses(units),
            commandGrid(),
            new Sheet.Paragraph(BestMessages.SAY.modelResult()),
            new Sheet.Terms(BestMessages.SAY.definitions()),
            new Sheet.Paragraph("CAUTION. " + Caution.TEXT)));
  }

  private List<Term> heading(UnitSystem units) {
    return request
        .conditions()
        .heading(
            units,
            BestMessages.SAY.searched(
                request.approach().description(units), request.powerInWords()));
  }

  private Sheet.Grid losses(UnitSystem units) {
    String symbol = units.length().symbol();
    List<TextColumn<BestResult.Case>> columns = new ArrayList<>();
    columns.add(TextColumn.right(one -> Decimals.given(one.delay()), "delay", "s"));
    columns.add(TextColumn.right(one -> number(one.best().loss(), units), "best", symbol));
    columns.add(TextColumn.right(one -> number(one.apart(), units), "apart", symbol));
    for (Technique technique : BestResult.TECHNIQUES) {
      columns.add(
          TextColumn.right(one -> number(one.loss(technique), units), technique.label(), symbol));
      columns.add(TextColumn.right(one -> number(one.excess(technique), units), "excess", symbol));
    }
    return TextColumn.grid(columns, result.cases());
  }

  private static String number(OptionalDouble metres, UnitSystem units) {
    return metres.isPresent() ? number(metres.getAsDouble(), units) : "-";
  }

  private static String number(double metres, UnitSystem units) {
    return Decimals.fixed(units.length().fromSi(metres), 1);
  }

  private Sheet.Grid commandGrid() {
    return TextColumn.grid(
        List.of(
            TextColumn.right(line -> Decimals.given(line.delay()), "delay", "s"),
            TextColumn.right(line -> Decimals.fixed(line.knot().time(), 1), "time", "s"),
            TextColumn.right(line -> degrees(line.knot().pitch()), "pitch", "deg"),
            TextColumn.right(line -> degrees(line.knot().bank()), "bank", "deg"),
            TextColumn.right(line -> degrees(line.knot().collective()), "collective", "deg")),
        commands());
  }

  private static String degrees(double angle) {
    return Decimals.fixed(Unit.DEGREE.fromSi(angle), 1);
  }

  @Override
  public Map<String, Cell> settings() {
    Map<String, Cell> settings =
        new TreeMap<>(
            ResolvedSettings.of(request.delays().stream().map(request::encounter).toList()));
    settings.put("search.power", Cell.text(request.powerInWords()));
    settings.put("search.seed", Cell.text(Long.toString(request.seed())));
    return settings;
  }
}
