package io.github.ringstate.instructor.manual;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.files.craft.CraftWriter;
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
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * How the model meets the manual.
 *
 * @param comparison manual and model
 */
record ManualReport(Comparison comparison) implements MadeCraft {

  /** Differences up to this part of the manual's number are not worth adjusting. */
  private static final double ALIKE = 0.1;

  /** A ceiling near sea level differs by much of little: m. */
  private static final double ALIKE_CEILING = 150;

  /** One line of the comparison, in SI units. */
  private record Line(
      String key,
      String what,
      Unit unit,
      OptionalDouble manual,
      OptionalDouble model,
      String whenHigh,
      String whenLow) {

    private boolean agrees() {
      double given = manual.orElse(Double.NaN);
      double alike = unit == Unit.FOOT ? ALIKE_CEILING : 0;
      return Math.abs(model.orElse(Double.NaN) - given) <= Math.max(alike, ALIKE * Math.abs(given));
    }

    private String adjust() {
      if (manual.isEmpty() || agrees()) {
        return manual.isEmpty() ? "" : ManualMessages.SAY.agrees();
      }
      // a model that finds none is below whatever the manual has
      return model.isPresent() && model.getAsDouble() > manual.getAsDouble() ? whenHigh : whenLow;
    }
  }

  @Override
  public String craftText() {
    return String.join("\n", CraftWriter.lines(comparison.made().craft())) + "\n";
  }

  @Override
  public String title() {
    return "a craft from its flight manual";
  }

  private List<Line> lines(UnitSystem units) {
    ManualNumbers manual = comparison.manual();
    String speed = units.speedInWords(manual.climbSpeed());
    ManualMessages say = ManualMessages.SAY;
    return List.of(
        new Line(
            "hover_ceiling_ft",
            say.ceiling(
                units.given(Unit.KILOGRAM, manual.ceilingMass()),
                Decimals.fixed(
                    manual.ceilingTemperature()
                        - StandardAtmosphere.at(manual.ceiling()).temperature(),
                    0)),
            Unit.FOOT,
            OptionalDouble.of(manual.ceiling()),
            comparison.ceiling(),
            say.ceilingHigh(),
            say.ceilingLow()),
        new Line(
            "climb_fpm",
            say.climb(speed),
            Unit.FOOT_PER_MINUTE,
            OptionalDouble.of(manual.climb()),
            comparison.climb(),
            say.climbHigh(),
            say.climbLow()),
        new Line(
            "autorotation_fpm",
            say.autorotation(speed),
            Unit.FOOT_PER_MINUTE,
            manual.autorotation(),
            comparison.autorotation(),
            say.descentHigh(),
            say.descentLow()));
  }

  @Override
  public Sheet sheet(UnitSystem units) {
    List<Sheet.Block> blocks = new ArrayList<>();
    blocks.add(
        new Sheet.Title("The model beside the flight manual: " + comparison.manual().name()));
    for (String warning : warnings()) {
      blocks.add(new Sheet.Paragraph(warning));
    }
    List<List<String>> rows = new ArrayList<>();
    List<Term> adjust = new ArrayList<>();
    for (Line line : lines(units)) {
      rows.add(
          List.of(
              line.what(),
              said(line.unit(), line.manual(), ManualMessages.SAY.notGiven(), units),
              said(line.unit(), line.model(), ManualMessages.SAY.notFound(), units)));
      if (!line.adjust().isEmpty()) {
        adjust.add(new Term(line.what(), line.adjust()));
      }
    }
    blocks.add(
        new Sheet.Grid(
            List.of(GridColumn.left("what"), GridColumn.right("manual"), GridColumn.right("model")),
            rows));
    blocks.add(new Sheet.Heading("Adjust"));
    blocks.add(new Sheet.Terms(adjust));
    blocks.add(new Sheet.Paragraph(ManualMessages.SAY.how()));
    blocks.add(new Sheet.Heading("Filled in by size"));
    blocks.add(
        new Sheet.Grid(
            List.of(
                GridColumn.left("number"), GridColumn.right("value"), GridColumn.right("range")),
            comparison.made().filled().stream()
                .map(
                    one ->
                        List.of(
                            one.parameter().name(),
                            Decimals.brief(Math.rint(one.value() * 100) / 100)
                                + " "
                                + one.parameter().unit().symbol(),
                            Decimals.brief(Math.rint(one.low() * 100) / 100)
                                + " to "
                                + Decimals.brief(Math.rint(one.high() * 100) / 100)))
                .toList()));
    blocks.add(new Sheet.Terms(ManualMessages.SAY.definitions()));
    blocks.add(new Sheet.Paragraph("CAUTION. " + Caution.TEXT));
    return new Sheet(blocks);
  }

  private static String said(Unit unit, OptionalDouble si, String none, UnitSystem units) {
    if (si.isEmpty()) {
      return none;
    }
    return unit == Unit.FOOT
        ? units.lengthInWords(si.getAsDouble())
        : units.verticalSpeedInWords(si.getAsDouble());
  }

  /** Ranges of helicopters in service: from memory, wider than any one textbook has them. */
  List<String> warnings() {
    ManualNumbers manual = comparison.manual();
    List<String> warnings = new ArrayList<>();
    warn(warnings, "tip speed, m/s", manual.tipSpeed(), 170, 240);
    warn(warnings, "solidity", manual.solidity(), 0.02, 0.13);
    warn(warnings, "disc loading, kg/m2", comparison.discLoading(), 8, 75);
    warn(warnings, "blade loading CT/s at the maximum mass", comparison.bladeLoading(), 0.04, 0.13);
    warn(
        warnings,
        "maximum mass over take-off power, kg/kW",
        manual.maximumMass() / manual.takeOffPower(),
        1.5,
        9);
    return warnings;
  }

  private static void warn(
      List<String> warnings, String what, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      warnings.add(
          ManualMessages.SAY.implausible(
              what, Decimals.brief(value), Decimals.brief(low), Decimals.brief(high)));
    }
  }

  @Override
  public Table<?> table() {
    return new Table<>(
        List.of(
            new Column<>("what", line -> Cell.text(line.key())),
            new Column<>("manual", line -> Cell.in(line.unit(), line.manual())),
            new Column<>("model", line -> Cell.in(line.unit(), line.model())),
            new Column<>("adjust", line -> Cell.text(line.adjust()))),
        lines(UnitSystem.AVIATION));
  }

  @Override
  public Map<String, Cell> facts() {
    Map<String, Cell> facts = new LinkedHashMap<>();
    facts.put("craft", Cell.text(comparison.manual().name()));
    facts.put("warnings", Cell.text(String.join(" ", warnings())));
    return facts;
  }

  @Override
  public List<Term> definitions() {
    return ManualMessages.SAY.definitions();
  }

  @Override
  public Map<String, Table<?>> tables() {
    return Map.of("comparison", table());
  }

  @Override
  public Map<String, Cell> settings() {
    return new ResolvedSettings()
        .craft(comparison.made().craft())
        .inflow(RingStateInflow.standard())
        .cells();
  }
}
