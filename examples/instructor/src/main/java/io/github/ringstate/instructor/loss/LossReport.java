package io.github.ringstate.instructor.loss;

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
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.sheets.page.Page;
import io.github.ringstate.sheets.page.PageSettings;
import io.github.ringstate.sheets.page.Printable;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Altitude loss against delay.
 *
 * @param request what was asked for
 * @param result what came of it
 */
record LossReport(LossRequest request, LossResult result) implements Printable {

  @Override
  public String title() {
    return "altitude loss against delay";
  }

  @Override
  public Sheet sheet(UnitSystem units) {
    return new LossSheet(request, units).sheet(this);
  }

  @Override
  public Page page(PageSettings settings) {
    return new LossPage(this, settings.units()).page();
  }

  /** How finely the 95 % losses are known; nothing without pilots. */
  List<Term> reached(UnitSystem units) {
    return request
        .pool()
        .map(
            pool ->
                new Term(
                    "95 % known to",
                    PilotTerms.reached(
                        pool,
                        result.blocks().stream()
                            .flatMap(block -> block.pilots().stream())
                            .flatMap(row -> row.losses().loss(LossPage.MOST).stream())
                            .toList(),
                        units)))
        .stream()
        .toList();
  }

  @Override
  public Table<?> table() {
    return LossColumns.cells(result.blocks(), request.approach().kind().label());
  }

  @Override
  public Map<String, Cell> facts() {
    Helicopter craft = request.loaded().get(0);
    Approach approach = request.approach();
    Map<String, Cell> facts = new LinkedHashMap<>();
    facts.putAll(CraftWords.facts(craft));
    facts.putAll(PilotFacts.of(approach));
    facts.put("height_at_onset_ft", Cell.in(Unit.FOOT, approach.height()));
    facts.put("clock", Cell.text(request.clock().label()));
    facts.putAll(PilotFacts.of(request.disturbances(), request.pool()));
    facts.put("state", request.state().map(state -> Cell.text(state.label())).orElse(Cell.NOTHING));
    return facts;
  }

  @Override
  public List<Term> definitions() {
    return LossMessages.SAY.dataDefinitions(
        request.situation(UnitSystem.AVIATION), LossFacts.of(request, UnitSystem.AVIATION, false));
  }

  @Override
  public Map<String, Table<?>> tables() {
    Map<String, Table<?>> tables = new LinkedHashMap<>();
    tables.put("loadings", new Table<>(LossColumns.BLOCKS, result.blocks()));
    tables.put(
        "cells",
        LossColumns.cells(result.blocks(), request.approach().kind().label())
            .with(LossColumns.more(!request.clock().isLimits()))
            .with(isFitted() ? LossColumns.fitted() : List.of()));
    return tables;
  }

  private boolean isFitted() {
    return request.loaded().get(0).fitted().isPresent();
  }

  @Override
  public Map<String, Cell> settings() {
    return ResolvedSettings.of(request.flown());
  }
}
