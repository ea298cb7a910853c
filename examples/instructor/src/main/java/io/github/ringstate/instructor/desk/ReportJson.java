package io.github.ringstate.instructor.desk;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.github.ringstate.files.report.Cell;
import io.github.ringstate.files.report.Report;
import io.github.ringstate.files.report.Sheet;
import io.github.ringstate.files.report.Table;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.sheets.page.PageSettings;
import io.github.ringstate.sheets.page.Paper;
import io.github.ringstate.sheets.page.Pictured;
import io.github.ringstate.sheets.page.PrintDate;
import io.github.ringstate.sheets.page.Printable;
import io.github.ringstate.sheets.page.SvgDrawing;
import java.math.BigDecimal;
import java.time.Clock;
import java.util.List;
import java.util.Map;

/** A report as the page shows it: the blocks that are printed, its tables, its drawings. */
final class ReportJson {

  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  private ReportJson() {}

  /**
   * The report as the text of the command lays it out, in the same words and figures.
   *
   * @param report the report
   * @param units the units to speak in
   * @return its title and blocks
   */
  static ObjectNode sheet(Report report, UnitSystem units) {
    ObjectNode json = JSON.objectNode();
    json.put("title", report.title());
    ArrayNode blocks = json.putArray("blocks");
    for (Sheet.Block block : report.sheet(units).blocks()) {
      blocks.add(block(block));
    }
    return json;
  }

  /**
   * The facts and tables that the command writes for machines.
   *
   * @param report the report
   * @param json where they go
   */
  static void addTables(Report report, ObjectNode json) {
    ObjectNode facts = json.putObject("facts");
    report.facts().forEach((name, cell) -> facts.set(name, value(cell)));
    ObjectNode tables = json.putObject("tables");
    for (Map.Entry<String, Table<?>> entry : report.tables().entrySet()) {
      ObjectNode table = tables.putObject(entry.getKey());
      entry.getValue().header().forEach(table.putArray("columns")::add);
      ArrayNode rows = table.putArray("rows");
      entry
          .getValue()
          .records()
          .forEach(
              row -> {
                ArrayNode cells = rows.addArray();
                row.forEach(cell -> cells.add(value(cell)));
              });
    }
  }

  /**
   * What a number of a table is to be multiplied by to be in the units spoken.
   *
   * @param units the units to speak in
   * @return factors of feet and feet per minute, and of what a knot covers in a second
   */
  static ObjectNode scale(UnitSystem units) {
    return JSON.objectNode()
        .put("length", units.length().fromSi(Unit.FOOT.toSi(1)))
        .put("distance", units.length().fromSi(Unit.KNOT.toSi(1)))
        .put("sink", units.verticalSpeed().fromSi(Unit.FOOT_PER_MINUTE.toSi(1)))
        .put("sinkDecimals", units == UnitSystem.AVIATION ? 0 : 1)
        .put("lengthUnit", units.length().symbol())
        .put("sinkUnit", units.verticalSpeed().symbol());
  }

  /**
   * The drawings of the report's sheet, or the one that it is.
   *
   * @param report the report
   * @param units the units to speak in
   * @param json where they go, by name
   * @param id what tells their parts from those of other drawings on the page
   */
  static void addDrawings(Report report, UnitSystem units, ObjectNode json, String id) {
    PageSettings settings =
        new PageSettings(Paper.A4, units, PrintDate.of(null, Clock.systemUTC()), List.of());
    ObjectNode drawings = json.putObject("drawings");
    if (report instanceof Pictured pictured) {
      drawings.put("picture", SvgDrawing.of(pictured.picture(settings), id));
    } else if (report instanceof Printable printable) {
      printable
          .page(settings)
          .pictures()
          .forEach((name, picture) -> drawings.put(name, SvgDrawing.of(picture, id + "-" + name)));
    }
  }

  private static JsonNode value(Cell cell) {
    return switch (cell.kind()) {
      case NUMBER -> JSON.numberNode(new BigDecimal(cell.text()));
      case TEXT -> JSON.textNode(cell.text());
      case NOTHING -> JSON.nullNode();
    };
  }

  private static ObjectNode block(Sheet.Block block) {
    ObjectNode json = JSON.objectNode();
    if (block instanceof Sheet.Title title) {
      json.put("kind", "title").put("text", title.text());
    } else if (block instanceof Sheet.Heading heading) {
      json.put("kind", "heading").put("text", heading.text());
    } else if (block instanceof Sheet.Paragraph paragraph) {
      json.put("kind", "paragraph").put("text", paragraph.text());
    } else if (block instanceof Sheet.Terms terms) {
      ArrayNode list = json.put("kind", "terms").putArray("terms");
      for (Term term : terms.terms()) {
        list.addArray().add(term.word()).add(term.meaning());
      }
    } else if (block instanceof Sheet.Grid grid) {
      grid(json.put("kind", "grid"), grid);
    } else if (block instanceof Sheet.Verbatim verbatim) {
      ArrayNode lines = json.put("kind", "verbatim").putArray("lines");
      verbatim.lines().forEach(lines::add);
    }
    return json;
  }

  private static void grid(ObjectNode json, Sheet.Grid grid) {
    ArrayNode columns = json.putArray("columns");
    for (Sheet.GridColumn column : grid.columns()) {
      ObjectNode one = columns.addObject();
      one.put("left", column.left());
      column.head().forEach(one.putArray("head")::add);
    }
    ArrayNode rows = json.putArray("rows");
    for (List<String> row : grid.rows()) {
      ArrayNode cells = rows.addArray();
      row.forEach(cells::add);
    }
  }
}
