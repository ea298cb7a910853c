package io.github.ringstate.sheets.page;

import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.text.NotAWayOut;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.study.ModelRevision;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What a user settles for all sheets.
 *
 * @param paper the paper
 * @param units the units
 * @param date the date printed
 * @param plan what is printed of the plan that the sheet belongs to; empty without one
 */
public record PageSettings(Paper paper, UnitSystem units, PrintDate date, List<Term> plan) {

  /** Copies the list. */
  public PageSettings {
    plan = List.copyOf(plan);
  }

  /** A page with all that the sheets' own parts of a template ask for. */
  Page dress(Page page) {
    Map<String, Object> model = new HashMap<>();
    model.put("pilots", false);
    model.put("isLong", false);
    model.put("isMistaken", false);
    model.put("notAWayOut", NotAWayOut.TEXT);
    model.put(Template.LACKING, false);
    // a page that fits one size of paper alone brings its own
    model.put("paper", paper.size(page.landscape()));
    model.put("margin", page.landscape() ? "6mm 7mm" : "11mm 14mm 10mm 14mm");
    model.put("planned", plan);
    model.put("isPlannedFor", !plan.isEmpty());
    model.putAll(page.model());
    model.put("date", date.toString());
    model.put("revision", ModelRevision.current());
    return new Page(
        page.owner(), page.template(), page.title(), page.landscape(), model, page.pictures());
  }
}
