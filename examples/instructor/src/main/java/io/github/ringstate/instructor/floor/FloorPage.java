package io.github.ringstate.instructor.floor;

import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.conditions.ModelNote;
import io.github.ringstate.instructor.pilots.PilotTerms;
import io.github.ringstate.instructor.pilots.Situation;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.sheets.message.Words;
import io.github.ringstate.sheets.page.Page;
import io.github.ringstate.sheets.page.PrintedGrid;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Floors as a sheet for the briefing room: what to brief on the front, what the words mean on the
 * back.
 */
record FloorPage(FloorReport report, UnitSystem units) {

  /** What to brief to pilots of one state. */
  record Order(String state, String order, String reason, boolean isRefused) {}

  /** The floors at one mass in one air. */
  record Block(
      boolean isSecond,
      String compared,
      List<Term> conditions,
      String inShort,
      boolean isBriefed,
      List<Order> orders,
      PrintedGrid latest,
      PrintedGrid floors) {}

  private FloorRequest request() {
    return report.request();
  }

  Page page() {
    FloorFacts facts = FloorFacts.of(request(), units);
    Situation situation = request().situation(units);
    Map<String, Object> model = new HashMap<>();
    model.put("heading", FloorMessages.SAY.sheetHeading(situation));
    model.put("origin", FloorMessages.SAY.sheetOrigin(situation, facts));
    model.put(
        "briefedFor",
        request().briefed().isPresent()
            ? FloorMessages.SAY.briefingFor(
                units.typed(Unit.FOOT, request().briefed().getAsDouble()))
            : "");
    model.put("blocks", blocks());
    model.put("compared", report.compared(units).map(PrintedGrid::of).stream().toList());
    List<Term> terms = new ArrayList<>(FloorMessages.SAY.sheetDefinitions(facts));
    terms.add(report.reached(units));
    model.put("terms", terms);
    model.put("states", request().states().stream().map(PilotTerms::state).toList());
    model.put("recoveries", facts.recoveries());
    model.put("spreads", facts.spreads());
    model.put("isMistaken", request().recoveries().stream().anyMatch(Technique::isMistaken));
    model.put("pilots", request().pool().pilots());
    model.put("seed", request().pool().seed());
    model.put("isLong", true);
    model.put("parameters", ModelNote.of(request().loaded().get(0)));
    return new Page(
        FloorPage.class,
        "floor.mustache",
        "Vortex ring state: height from which simulated pilots recovered",
        false,
        model,
        Map.of());
  }

  private List<Block> blocks() {
    List<FloorBlock> blocks = report.blocks();
    return IntStream.range(0, blocks.size()).mapToObj(i -> block(blocks.get(i), i > 0)).toList();
  }

  private Block block(FloorBlock block, boolean isSecond) {
    FloorGrids grids = new FloorGrids(request(), units);
    boolean briefed = request().briefed().isPresent() && block.met();
    List<Order> orders = new ArrayList<>();
    if (briefed) {
      for (PilotState state : request().states()) {
        HeightBriefing briefing = grids.briefing(request().briefed().getAsDouble(), block, state);
        orders.add(
            new Order(
                state.label(),
                Words.capital(briefing.order(units)),
                Words.capital(briefing.reason(units)),
                briefing.isRefused()));
      }
    }
    return new Block(
        isSecond && request().compared().isPresent(),
        request()
            .compared()
            .map(worse -> PilotTerms.compared(isSecond, worse.later()) + " ")
            .orElse(""),
        block.conditions().terms(units),
        FloorTakeAway.of(block, request(), units),
        briefed,
        orders,
        PrintedGrid.of(grids.latest(block)),
        PrintedGrid.of(grids.floors(block)));
  }
}
