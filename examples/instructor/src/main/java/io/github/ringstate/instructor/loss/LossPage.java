package io.github.ringstate.instructor.loss;

import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.instructor.conditions.HoverPower;
import io.github.ringstate.instructor.conditions.ModelNote;
import io.github.ringstate.instructor.pilots.PilotCells;
import io.github.ringstate.instructor.pilots.PilotLosses;
import io.github.ringstate.instructor.pilots.PilotTerms;
import io.github.ringstate.instructor.pilots.Pool;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.sheets.page.Page;
import io.github.ringstate.study.Quantile;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** A loss table of many pilots as a sheet for the briefing room. */
record LossPage(LossReport report, UnitSystem units) {

  /** The shares of the pilots that a sheet shows. */
  static final double MEDIAN = 0.5;

  static final double MOST = 0.95;

  private static final int PLOT_WIDTH = 331;
  private static final int LEGEND_WIDTH = 690;

  /** Heights of the plots, in pixels: the lower ones where tables need the room. */
  private static final int HIGH = 280;

  private static final int MIDDLE = 214;
  private static final int LOW = 140;

  /** Lines beyond which a sheet takes more than one page, each of which then has the caution. */
  private static final int MOST_ON_A_PAGE = 20;

  /** One number, and whether it is marked as more than the planned height. */
  record Figure(String text, boolean over) {}

  /** One field of the table. */
  record Field(String standard, Figure median, Figure most) {}

  /** One line of the table. */
  record Line(String delay, List<Field> fields) {}

  /** The table at one mass in one air. */
  record Block(
      String name,
      String power,
      boolean isShort,
      String inShort,
      List<Head> recoveries,
      List<Line> lines) {}

  /** The head of a recovery's columns. */
  record Head(String name, boolean isMistaken) {}

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

  private LossRequest request() {
    return report.request();
  }

  Page page() {
    Pool pool = request().pool().orElseThrow();
    LossBlock first = report.result().blocks().get(0);
    int height = plotHeight();
    Map<String, Object> model = new HashMap<>();
    LossFacts facts = LossFacts.of(request(), units, report.result().anySensitive());
    model.put("heading", LossMessages.SAY.sheetHeading(request().situation(units), facts));
    model.put("rows", rows(blocks()));
    model.put("lengthUnit", units.length().symbol());
    model.put("lineHead", request().state().isPresent() ? "pilots" : "delay, s");
    model.put("byWhat", request().state().isPresent() ? "by recovery" : "by delay and recovery");
    model.put("isPlanned", request().approach().height().isPresent());
    model.put("isSpread", request().state().isPresent());
    model.put("plotted", name(first.conditions()));
    model.put("shownDelay", Decimals.brief(request().shownDelay()));
    List<Term> terms = new ArrayList<>(LossMessages.SAY.sheetDefinitions(facts));
    terms.addAll(report.reached(units));
    model.put("terms", terms);
    model.put("recoveries", facts.recoveries());
    model.put("spreads", facts.spreads());
    model.put("isMistaken", request().recoveries().stream().anyMatch(Technique::isMistaken));
    model.put("pilots", pool.pilots());
    model.put("seed", pool.seed());
    model.put("tracks", tracks());
    model.put("obstacles", PilotTerms.obstacles());
    model.put("isByDelay", request().state().isEmpty());
    model.put("isSingle", report.result().blocks().size() == 1);
    model.put(
        "isLossEmpty",
        first.pilots().stream()
            .allMatch(
                row ->
                    row.losses()
                        .loss(MEDIAN)
                        .map(quantile -> Double.isInfinite(quantile.value()))
                        .orElse(true)));
    model.put(
        "isHeightEmpty",
        report.result().shown().stream()
            .allMatch(flight -> flight.outcome().onsetTime().isEmpty()));
    model.put("empty", LossMessages.SAY.emptyPlot());
    model.put("isLong", true);
    model.put("parameters", ModelNote.of(request().loaded().get(0)));
    return new Page(
        LossPage.class,
        "loss.mustache",
        "Vortex ring state: altitude loss against delay",
        false,
        model,
        Map.of(
            "lossPlot",
            new LossPlot(first, request(), units, PLOT_WIDTH, height).plot(),
            "heightPlot",
            new FlightsPlot(request(), units).plot(report.result().shown(), PLOT_WIDTH, height),
            "legend",
            FlightsPlot.legend(request(), LEGEND_WIDTH)));
  }

  private int lines() {
    return (report.result().blocks().size() + 1) / 2 * (4 + Math.max(1, request().delays().size()));
  }

  private int plotHeight() {
    int lines = lines();
    if (lines <= 11) {
      return HIGH;
    }
    return lines <= 16 || lines > MOST_ON_A_PAGE ? MIDDLE : LOW;
  }

  private List<Block> blocks() {
    List<LossBlock> blocks = report.result().blocks();
    return IntStream.range(0, blocks.size()).mapToObj(i -> block(blocks.get(i), i > 0)).toList();
  }

  private Block block(LossBlock block, boolean isSecond) {
    Conditions conditions = block.conditions();
    List<Line> lines =
        request().state().isPresent()
            ? List.of(line(block, request().state().get().label(), OptionalDouble.empty()))
            : block.delays().stream()
                .map(delay -> line(block, Decimals.given(delay), OptionalDouble.of(delay)))
                .toList();
    return new Block(
        request()
                .compared()
                .map(worse -> PilotTerms.compared(isSecond, worse.later()) + " ")
                .orElse("")
            + name(conditions),
        conditions.hoverInWords(),
        conditions.hover().isShort(),
        block.inShort(units),
        request().recoveries().stream()
            .map(kind -> new Head(kind.label(), kind.isMistaken()))
            .toList(),
        lines);
  }

  private Line line(LossBlock block, String name, OptionalDouble delay) {
    return new Line(
        name,
        request().recoveries().stream().map(recovery -> field(block, recovery, delay)).toList());
  }

  private Field field(LossBlock block, Technique recovery, OptionalDouble delay) {
    PilotLosses losses = block.pilots(recovery, delay).losses();
    return new Field(
        delay.isPresent() ? standard(block.row(recovery, delay.getAsDouble())) : "",
        number(losses, MEDIAN),
        number(losses, MOST));
  }

  /** The one flight that the text shows, in as few letters as the others. */
  private String standard(LossRow row) {
    return word(row) + row.mark();
  }

  private String word(LossRow row) {
    return switch (row.ending()) {
      case ARRESTED -> units.loss(row.loss());
      case GROUND -> "ground";
      case NOT_ARRESTED -> row.fellThrough() ? "through" : "open";
      case ARREST_NOT_LASTING, STOPPED -> "open";
      case NO_ONSET -> "–";
    };
  }

  /** Where each recovery goes over the ground, and what the pedals have to hold. */
  private List<Term> tracks() {
    HoverPower hover = report.result().blocks().get(0).conditions().hover();
    return report.result().shown().stream()
        .map(
            flight ->
                new Term(
                    flight.recovery().label(),
                    flight
                        .overGround()
                        .map(way -> way.withTorque(units, hover))
                        .orElse(PilotTerms.noWay())))
        .toList();
  }

  private String name(Conditions conditions) {
    return LossMessages.SAY.condition(
        units.given(Unit.KILOGRAM, conditions.massKg()),
        units.lengthInWords(conditions.air().densityAltitude()),
        units.lengthInWords(conditions.air().pressureAltitude()),
        Decimals.fixed(units.temperature().fromKelvin(conditions.air().temperature()), 0)
            + " °"
            + units.temperature().symbol());
  }

  private Figure number(PilotLosses losses, double share) {
    Optional<Quantile> loss = losses.loss(share);
    OptionalDouble planned = request().approach().height();
    if (loss.isEmpty()) {
      return new Figure("–", false);
    }
    if (!Double.isInfinite(loss.get().value())) {
      return new Figure(
          PilotCells.loss(loss.get(), units), request().isTooMuch(loss.get().value()));
    }
    return losses.failure().equals(PilotLosses.GROUND) && planned.isPresent()
        ? new Figure("> " + units.typedNumber(Unit.FOOT, planned.getAsDouble()), true)
        : new Figure("open", planned.isPresent());
  }
}
