package io.github.ringstate.instructor.floor;

import io.github.ringstate.files.plan.PlanFile.AgreedHeight;
import io.github.ringstate.files.provenance.ResolvedSettings;
import io.github.ringstate.files.report.Cell;
import io.github.ringstate.files.report.Column;
import io.github.ringstate.files.report.Sheet;
import io.github.ringstate.files.report.Table;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.conditions.ConditionCells;
import io.github.ringstate.instructor.conditions.ModelNote;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.sheets.page.Page;
import io.github.ringstate.sheets.page.PageSettings;
import io.github.ringstate.sheets.page.Printable;
import io.github.ringstate.sheets.page.PrintedGrid;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What is briefed of one technique, as a card for the pocket or a sheet for a lesson.
 *
 * @param kind card or lesson
 * @param briefed the technique and its pilots
 * @param agreed heights that were agreed on, ft
 */
record BriefedReport(Kind kind, BriefedTechnique briefed, Map<AgreedHeight, Double> agreed)
    implements Printable {

  /** What is made of it. */
  enum Kind {
    /** A6, both sides. */
    CARD("card.mustache", "Vortex ring state: pocket card"),
    /** Two pages for an instructor. */
    LESSON("lesson.mustache", "Vortex ring state: lesson");

    private final String template;
    private final String title;

    Kind(String template, String title) {
      this.template = template;
      this.title = title;
    }
  }

  BriefedReport {
    agreed = Map.copyOf(agreed);
  }

  @Override
  public String title() {
    return kind.title;
  }

  @Override
  public Sheet sheet(UnitSystem units) {
    BriefedFacts facts = BriefedFacts.of(briefed, agreed, units);
    List<Sheet.Block> blocks = new ArrayList<>();
    blocks.add(new Sheet.Title(kind.title));
    blocks.add(new Sheet.Terms(BriefedMessages.SAY.flown(facts)));
    blocks.add(new Sheet.Paragraph(BriefedMessages.SAY.least(facts)));
    if (!BriefedMessages.SAY.ways(facts).isEmpty()) {
      blocks.add(new Sheet.Terms(BriefedMessages.SAY.ways(facts)));
    }
    if (kind == Kind.LESSON) {
      blocks.add(new Sheet.Heading(BriefedMessages.SAY.setUpHead()));
      blocks.add(new Sheet.Terms(BriefedMessages.SAY.setUp(facts)));
    }
    blocks.add(new Sheet.Heading(BriefedMessages.SAY.cuesHead()));
    blocks.add(new Sheet.Terms(BriefedMessages.SAY.cues(facts)));
    blocks.add(new Sheet.Heading(BriefedMessages.SAY.wordsHead()));
    blocks.add(new Sheet.Terms(BriefedMessages.SAY.words(facts)));
    if (kind == Kind.LESSON) {
      blocks.add(floors(units));
      blocks.add(new Sheet.Heading(BriefedMessages.SAY.questionsHead()));
      blocks.add(new Sheet.Terms(BriefedMessages.SAY.questions(facts)));
    }
    blocks.add(new Sheet.Paragraph("CAUTION. " + Caution.TEXT));
    return new Sheet(blocks);
  }

  private Sheet.Grid floors(UnitSystem units) {
    return new FloorGrids(briefed.request(), units)
        .floors(new FloorBlock(briefed.block().conditions(), briefed.rows(), List.of()));
  }

  @Override
  public Page page(PageSettings settings) {
    UnitSystem units = settings.units();
    BriefedFacts facts = BriefedFacts.of(briefed, agreed, units);
    Map<String, Object> model = new HashMap<>();
    model.put("flown", BriefedMessages.SAY.flown(facts));
    model.put("facts", facts);
    model.put("leastSaid", BriefedMessages.SAY.least(facts));
    model.put("setUp", BriefedMessages.SAY.setUp(facts));
    model.put("ways", BriefedMessages.SAY.ways(facts));
    model.put("cues", BriefedMessages.SAY.cues(facts));
    model.put("words", BriefedMessages.SAY.words(facts));
    model.put("questions", BriefedMessages.SAY.questions(facts));
    model.put("blank", List.of(1, 2, 3, 4, 5, 6, 7, 8));
    model.put("floors", PrintedGrid.of(floors(units)));
    model.put("pilots", briefed.request().pool().pilots());
    model.put("seed", briefed.request().pool().seed());
    model.put("parameters", ModelNote.of(briefed.block().conditions().craft()));
    if (kind == Kind.CARD) {
      // ISO 216 A6, which a shirt pocket takes
      model.put("paper", "105mm 148mm");
      model.put("margin", "6mm");
    } else {
      model.put("isLong", true);
    }
    return new Page(BriefedReport.class, kind.template, kind.title, false, model, Map.of());
  }

  @Override
  public Table<FloorRow> table() {
    return new Table<>(FloorColumns.CELLS, briefed.rows());
  }

  @Override
  public Map<String, Cell> facts() {
    Map<String, Cell> facts =
        new LinkedHashMap<>(ConditionCells.facts(briefed.block().conditions(), true));
    facts.put("technique", Cell.text(briefed.technique().name()));
    facts.put("share", Cell.given(briefed.request().share()));
    facts.put("margin_ft", Cell.given(Unit.FOOT, briefed.request().margin()));
    for (AgreedHeight height : AgreedHeight.values()) {
      Double feet = agreed.get(height);
      facts.put(height.key(), feet == null ? Cell.NOTHING : Cell.given(feet));
    }
    return facts;
  }

  @Override
  public List<Term> definitions() {
    return BriefedMessages.SAY.words(BriefedFacts.of(briefed, agreed, UnitSystem.AVIATION));
  }

  @Override
  public Map<String, Table<?>> tables() {
    Map<String, Table<?>> tables = new LinkedHashMap<>();
    List<Column<FloorRow>> more = new ArrayList<>(FloorColumns.MORE);
    tables.put("cells", table().with(more));
    return tables;
  }

  @Override
  public Map<String, Cell> settings() {
    return ResolvedSettings.of(briefed.request().flown());
  }
}
