package io.github.ringstate.instructor.loss;

import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.instructor.option.RecoveryKind;
import io.github.ringstate.instructor.refusal.Refusal;
import io.github.ringstate.instructor.report.Decimals;
import io.github.ringstate.instructor.report.Feet;
import io.github.ringstate.instructor.report.Term;
import io.github.ringstate.instructor.sheet.ModelNote;
import io.github.ringstate.instructor.sheet.Page;
import io.github.ringstate.instructor.sheet.PageSettings;
import io.github.ringstate.instructor.sheet.UnitSystem;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** A loss table as a sheet for the briefing room. */
final class LossPage {

  /** Heights of the plots, in pixels: the lower one where tables need the room. */
  private static final int HIGH = 214;

  private static final int LOW = 178;

  private final LossReport report;
  private final LossRequest request;
  private final UnitSystem units;

  private LossPage(LossReport report, UnitSystem units) {
    this.report = report;
    this.request = report.request();
    this.units = units;
  }

  /** One field of the table. */
  record Field(String median, String most, boolean over) {}

  /** One line of the table. */
  record Line(String delay, List<Field> fields) {}

  /** The table at one mass in one air. */
  record Block(
      String name, String power, boolean isShort, List<String> recoveries, List<Line> lines) {}

  /** Blocks that stand side by side. */
  record Row(boolean isPair, List<Block> blocks) {}

  private static List<Row> rows(List<Block> blocks) {
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < blocks.size(); i += 2) {
      List<Block> row = blocks.subList(i, Math.min(i + 2, blocks.size()));
      rows.add(new Row(row.size() > 1, row));
    }
    return rows;
  }

  static Page of(LossReport report, PageSettings settings) {
    if (report.request().state().isPresent()) {
      throw Refusal.usage(
          "--state has no sheet in html or pdf: it gives each pilot a delay, and the sheet is by"
              + " delay; allowed: --delays with --pilots");
    }
    return new LossPage(report, settings.units()).page();
  }

  private Page page() {
    List<LossBands> bands =
        report.blocks().stream().map(block -> LossBands.fly(block.conditions(), request)).toList();
    LossCharts charts = new LossCharts(request, units, bands.size() > 2 ? LOW : HIGH);
    Conditions first = bands.get(0).conditions();
    OptionalDouble height = request.approach().heightFt();
    Map<String, Object> model = new HashMap<>();
    model.put("craft", first.craft().name());
    model.put("description", first.craft().description());
    model.put("entry", request.approach().kind().description());
    model.put("wind", request.approach().wind());
    model.put("planned", height.isPresent() ? length(Unit.FOOT.toSi(height.getAsDouble())) : "");
    model.put("isPlanned", height.isPresent());
    model.put("rows", rows(bands.stream().map(this::block).toList()));
    model.put("lengthUnit", units.length().symbol());
    model.put("plotted", name(first));
    model.put("shownDelay", Decimals.brief(charts.shownDelay()));
    model.put("terms", LossTerms.forSheet(request, LossBands.pool(request).pilots()));
    model.put("recoveries", recoveries());
    model.put("pilots", LossBands.pool(request).pilots());
    model.put("seed", LossBands.pool(request).seed());
    model.put("parameters", ModelNote.standard());
    return new Page(
        "loss.mustache",
        "Vortex ring state: altitude loss against delay",
        model,
        Map.of(
            "lossPlot",
            charts.lossAgainstDelay(bands.get(0)),
            "heightPlot",
            charts.heightAgainstTime(bands.get(0)),
            "legend",
            charts.legend()));
  }

  private List<Term> recoveries() {
    return request.recoveries().stream()
        .map(kind -> new Term(kind.label(), kind.description(request.loaded().get(0).sense())))
        .toList();
  }

  private Block block(LossBands bands) {
    Conditions conditions = bands.conditions();
    List<Line> lines = new ArrayList<>();
    for (double delay : request.delays()) {
      lines.add(
          new Line(
              Decimals.given(delay),
              request.recoveries().stream()
                  .map(recovery -> field(bands.cell(recovery, delay)))
                  .toList()));
    }
    return new Block(
        name(conditions),
        "hover "
            + Decimals.fixed(
                100 * conditions.hover().neededKw() / conditions.hover().continuousKw(), 0)
            + " %",
        conditions.hover().isShort(),
        request.recoveries().stream().map(RecoveryKind::label).toList(),
        lines);
  }

  private String name(Conditions conditions) {
    return Decimals.brief(conditions.massKg())
        + " kg, density altitude "
        + length(conditions.air().densityAltitude())
        + " (pressure "
        + length(conditions.air().pressureAltitude())
        + ", "
        + Decimals.fixed(conditions.oatC(), 0)
        + " °C)";
  }

  private String length(double si) {
    return units.length(si) + " " + units.length().symbol();
  }

  private Field field(LossBands.Cell cell) {
    OptionalDouble height = request.approach().heightFt();
    boolean over =
        height.isPresent()
            && cell.most().isPresent()
            && cell.most().getAsDouble() > Unit.FOOT.toSi(height.getAsDouble());
    return new Field(text(cell.median()), text(cell.most()), over);
  }

  private String text(OptionalDouble loss) {
    if (loss.isEmpty()) {
      return "–";
    }
    if (Double.isInfinite(loss.getAsDouble())) {
      return "open";
    }
    double value = units.length().fromSi(loss.getAsDouble());
    return units == UnitSystem.AVIATION ? Feet.text(value) : Decimals.fixed(value, 0);
  }
}
