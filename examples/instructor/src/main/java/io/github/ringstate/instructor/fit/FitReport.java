package io.github.ringstate.instructor.fit;

import io.github.ringstate.calibration.Fit;
import io.github.ringstate.calibration.FittedEncounter;
import io.github.ringstate.calibration.LeftOut;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.files.report.Cell;
import io.github.ringstate.files.report.Column;
import io.github.ringstate.files.report.Report;
import io.github.ringstate.files.report.Sheet;
import io.github.ringstate.files.report.Sheet.GridColumn;
import io.github.ringstate.files.report.Table;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.util.FastMath;

/**
 * A fit, number by number and encounter by encounter.
 *
 * @param craft the craft that was fitted
 * @param fit the fit with its test
 * @param skipped encounters that were not used, a name and a reason each
 * @param file the craft file that was written, if one was
 */
record FitReport(Helicopter craft, Fit fit, List<List<String>> skipped, Optional<String> file)
    implements Report {

  private static final double BAND = 1.96;

  @Override
  public String title() {
    return "a craft fitted to recordings of it";
  }

  private String number(double value) {
    return Decimals.brief(value);
  }

  @Override
  public Sheet sheet(UnitSystem units) {
    List<Sheet.Block> blocks = new ArrayList<>();
    blocks.add(new Sheet.Title("Fitted to recordings: " + craft.name()));
    blocks.add(
        new Sheet.Paragraph(
            FitMessages.SAY.fitted(
                craft.name(),
                Integer.toString(fit.encounters().size()),
                Decimals.fixed(fit.chiSquare(), 2),
                Decimals.fixed(fit.strain(), 1),
                Decimals.fixed(FastMath.exp(-BAND * fit.formDeviation()), 2),
                Decimals.fixed(FastMath.exp(BAND * fit.formDeviation()), 2))));
    file.ifPresent(name -> blocks.add(new Sheet.Paragraph(FitMessages.SAY.carried(name))));
    for (List<String> one : skipped) {
      blocks.add(new Sheet.Paragraph(FitMessages.SAY.skipped(one.get(0), one.get(1))));
    }
    blocks.add(
        new Sheet.Grid(
            List.of(
                GridColumn.left("number"),
                GridColumn.right("before"),
                GridColumn.right("fitted"),
                GridColumn.right("95 %"),
                GridColumn.right("sd after", "over before"),
                GridColumn.left("recordings")),
            places()
                .mapToObj(
                    i ->
                        List.of(
                            parameter(i).name(),
                            number(fit.prior().median(i)),
                            number(fit.posterior().median(i)) + unit(i),
                            number(fit.posterior().quantile(i, -BAND))
                                + " to "
                                + number(fit.posterior().quantile(i, BAND)),
                            Decimals.fixed(fit.ratio(i), 2),
                            fit.told(i).label()))
                .toList()));
    blocks.add(new Sheet.Heading("Encounters"));
    String length = units.length().symbol();
    List<List<String>> rows = new ArrayList<>();
    for (int d = 0; d < fit.encounters().size(); d++) {
      FittedEncounter one = fit.encounters().get(d);
      LeftOut test = fit.leftOut().get(d);
      rows.add(
          List.of(
              one.name(),
              Decimals.fixed(one.chiSquare(), 2),
              length(one.recordedLoss().value(), units),
              length(one.fittedLoss(), units),
              test.tells() ? length(test.predicted(), units) : "-",
              test.tells() ? length(test.low(), units) + " to " + length(test.high(), units) : "-",
              within(test)));
    }
    blocks.add(
        new Sheet.Grid(
            List.of(
                GridColumn.left("encounter"),
                GridColumn.right("chi-square"),
                GridColumn.right("recorded", "loss, " + length),
                GridColumn.right("fitted", "loss, " + length),
                GridColumn.right("left out", "loss, " + length),
                GridColumn.right("95 %", length),
                GridColumn.right("within")),
            rows));
    blocks.add(new Sheet.Heading("Definitions"));
    blocks.add(new Sheet.Terms(definitions()));
    blocks.add(new Sheet.Paragraph("CAUTION. " + Caution.TEXT));
    return new Sheet(blocks);
  }

  private static String length(double metres, UnitSystem units) {
    return Decimals.fixed(units.length().fromSi(metres), 0);
  }

  private static String within(LeftOut test) {
    if (!test.tells()) {
      return "cannot tell";
    }
    return test.within() ? "yes" : "no";
  }

  private Cell predicted(int place, double metres) {
    return fit.leftOut().get(place).tells() ? Cell.in(Unit.FOOT, metres) : Cell.NOTHING;
  }

  private IntStream places() {
    return IntStream.range(0, fit.posterior().parameters().size());
  }

  private Parameter parameter(int place) {
    return fit.posterior().parameters().get(place);
  }

  private String unit(int place) {
    String symbol = parameter(place).unit().symbol();
    return symbol.isEmpty() ? "" : " " + symbol;
  }

  @Override
  public Table<Integer> table() {
    return new Table<>(
        List.of(
            new Column<>("parameter", i -> Cell.text(parameter(i).key())),
            new Column<>("before", i -> Cell.exact(fit.prior().median(i))),
            new Column<>("fitted", i -> Cell.exact(fit.posterior().median(i))),
            new Column<>("low", i -> Cell.exact(fit.posterior().quantile(i, -BAND))),
            new Column<>("high", i -> Cell.exact(fit.posterior().quantile(i, BAND))),
            new Column<>("deviation_ratio", i -> Cell.number(fit.ratio(i), 4)),
            new Column<>("told", i -> Cell.text(fit.told(i).label()))),
        places().boxed().toList());
  }

  private Table<Integer> encounters() {
    return new Table<>(
        List.of(
            new Column<>("encounter", d -> Cell.text(fit.encounters().get(d).name())),
            new Column<>("chi_square", d -> Cell.number(fit.encounters().get(d).chiSquare(), 3)),
            new Column<>(
                "recorded_loss_ft",
                d -> Cell.in(Unit.FOOT, fit.encounters().get(d).recordedLoss().value())),
            new Column<>(
                "fitted_loss_ft", d -> Cell.in(Unit.FOOT, fit.encounters().get(d).fittedLoss())),
            new Column<>("left_out_loss_ft", d -> predicted(d, fit.leftOut().get(d).predicted())),
            new Column<>("left_out_low_ft", d -> predicted(d, fit.leftOut().get(d).low())),
            new Column<>("left_out_high_ft", d -> predicted(d, fit.leftOut().get(d).high())),
            new Column<>("within", d -> Cell.text(within(fit.leftOut().get(d))))),
        IntStream.range(0, fit.encounters().size()).boxed().toList());
  }

  private Table<Integer> correlation() {
    List<Column<Integer>> columns = new ArrayList<>();
    columns.add(new Column<>("parameter", i -> Cell.text(parameter(i).key())));
    places()
        .forEach(
            j ->
                columns.add(
                    new Column<>(
                        parameter(j).key(),
                        i -> Cell.number(fit.posterior().correlation(i, j), 4))));
    return new Table<>(columns, places().boxed().toList());
  }

  @Override
  public Map<String, Cell> facts() {
    Map<String, Cell> facts = new LinkedHashMap<>();
    facts.put("craft", Cell.text(craft.name()));
    facts.put("encounters", Cell.number(fit.encounters().size(), 0));
    facts.put("chi_square", Cell.number(fit.chiSquare(), 3));
    facts.put("strain", Cell.number(fit.strain(), 3));
    facts.put("form_deviation", Cell.number(fit.formDeviation(), 3));
    return facts;
  }

  @Override
  public List<Term> definitions() {
    return FitMessages.SAY.definitions();
  }

  @Override
  public Map<String, Table<?>> tables() {
    Map<String, Table<?>> tables = new LinkedHashMap<>();
    tables.put("encounters", encounters());
    tables.put("correlation", correlation());
    tables.put("numbers", table());
    return tables;
  }
}
