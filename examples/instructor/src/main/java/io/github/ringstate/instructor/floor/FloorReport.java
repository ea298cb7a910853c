package io.github.ringstate.instructor.floor;

import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.files.provenance.ResolvedSettings;
import io.github.ringstate.files.report.Cell;
import io.github.ringstate.files.report.Sheet;
import io.github.ringstate.files.report.Table;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.conditions.CraftWords;
import io.github.ringstate.instructor.option.Approach;
import io.github.ringstate.instructor.pilots.PilotFacts;
import io.github.ringstate.instructor.pilots.PilotTerms;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.sheets.page.Page;
import io.github.ringstate.sheets.page.PageSettings;
import io.github.ringstate.sheets.page.Printable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The heights from which a share of the simulated pilots recovered.
 *
 * @param request what was asked for
 * @param blocks a table for each mass in each air
 */
record FloorReport(FloorRequest request, List<FloorBlock> blocks) implements Printable {

  FloorReport {
    blocks = List.copyOf(blocks);
  }

  @Override
  public String title() {
    return "height from which simulated pilots recovered";
  }

  /** How finely the floors are known. */
  Term reached(UnitSystem units) {
    return new Term(
        "floor known to",
        PilotTerms.reached(
            request.pool(),
            blocks.stream()
                .flatMap(block -> block.rows().stream())
                .flatMap(row -> row.floor().stream())
                .toList(),
            units));
  }

  /** Both conditions side by side; empty unless two are compared. */
  Optional<Sheet.Grid> compared(UnitSystem units) {
    return request
        .compared()
        .map(
            worse ->
                new FloorGrids(request, units)
                    .compared(blocks.get(0), blocks.get(blocks.size() - 1)));
  }

  @Override
  public Sheet sheet(UnitSystem units) {
    return new FloorSheet(request, units).sheet(this);
  }

  @Override
  public Page page(PageSettings settings) {
    return new FloorPage(this, settings.units()).page();
  }

  @Override
  public Table<FloorRow> table() {
    Table<FloorRow> floors =
        new Table<>(
            FloorColumns.CELLS, blocks.stream().flatMap(block -> block.rows().stream()).toList());
    return request.briefed().isPresent()
        ? floors.with(FloorColumns.ground(request.briefed().getAsDouble(), orders()))
        : floors;
  }

  /** What to brief to each state; empty unless a height is to be briefed for. */
  private List<StateBriefing> orders() {
    List<StateBriefing> orders = new ArrayList<>();
    for (FloorBlock block : blocks) {
      for (PilotState state : request.states()) {
        request
            .briefed()
            .ifPresent(
                height ->
                    orders.add(
                        new StateBriefing(
                            block.conditions(),
                            state,
                            HeightBriefing.of(height, request.groundShare(), block.rows(state)))));
      }
    }
    return orders;
  }

  @Override
  public Map<String, Cell> facts() {
    Helicopter craft = request.loaded().get(0);
    Approach approach = request.approach();
    Map<String, Cell> facts = new LinkedHashMap<>();
    facts.putAll(CraftWords.facts(craft));
    facts.putAll(PilotFacts.of(approach));
    facts.put("share", Cell.given(request.share()));
    facts.put("margin_ft", Cell.given(Unit.FOOT, request.margin()));
    facts.put("ground_share_limit", Cell.given(request.groundShare()));
    facts.put("briefed_height_ft", Cell.in(Unit.FOOT, request.briefed()));
    facts.put("clock", Cell.text(request.clock().label()));
    facts.putAll(PilotFacts.of(request.disturbances(), Optional.of(request.pool())));
    return facts;
  }

  @Override
  public List<Term> definitions() {
    return FloorMessages.SAY.dataDefinitions(
        FloorFacts.of(request, UnitSystem.AVIATION),
        request
            .clock()
            .description(request.approach().entry(), request.loaded().get(0), UnitSystem.AVIATION),
        request.states().stream().map(PilotTerms::state).toList());
  }

  @Override
  public Map<String, Table<?>> tables() {
    Map<String, Table<?>> tables = new LinkedHashMap<>();
    tables.put("loadings", new Table<>(FloorColumns.blocks(request), blocks));
    if (request.briefed().isPresent()) {
      tables.put("briefings", new Table<>(FloorColumns.ORDERS, orders()));
      tables.put(
          "latest_moments",
          new Table<>(
              FloorColumns.LATEST,
              blocks.stream().flatMap(block -> block.latest().stream()).toList()));
    }
    tables.put("cells", table().with(FloorColumns.MORE));
    return tables;
  }

  @Override
  public Map<String, Cell> settings() {
    return ResolvedSettings.of(request.flown());
  }
}
