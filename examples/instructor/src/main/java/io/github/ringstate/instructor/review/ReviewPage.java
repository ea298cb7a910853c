package io.github.ringstate.instructor.review;

import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.conditions.ModelNote;
import io.github.ringstate.sheets.page.Page;
import io.github.ringstate.sheets.page.Pictured.Picture;
import io.github.ringstate.sheets.page.PrintedGrid;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A reviewed flight as a sheet for the debriefing. */
record ReviewPage(Debrief debrief, UnitSystem units) {

  private static final int LEGEND_WIDTH = 330;

  /** The template has places for the plots of so many descents. */
  private static final int PLOTTED = 6;

  Page page() {
    ReviewText text = new ReviewText(debrief, units);
    Map<String, Object> model = new HashMap<>();
    List<Term> situation = text.situation();
    model.put("heading", situation);
    model.put("invented", debrief.request().invented() ? ReviewMessages.SAY.invented() : "");
    model.put(
        "none",
        debrief.descents().isEmpty()
            ? ReviewMessages.SAY.none(debrief.request().wind().known())
            : "");
    model.put("isFlown", !debrief.descents().isEmpty());
    model.put("encounters", PrintedGrid.of(text.encounters()));
    model.put("descents", text.descents());
    model.put("isBriefed", !text.briefed().isEmpty());
    model.put("briefed", text.briefed());
    model.put("isMended", !debrief.repairs().isEmpty());
    model.put("repairs", PrintedGrid.of(text.repairs()));
    model.put(
        "plotted",
        debrief.descents().size() > PLOTTED
            ? ReviewMessages.SAY.plotted(String.valueOf(PLOTTED))
            : "");
    model.put("terms", ReviewMessages.SAY.definitions());
    model.put("isLong", true);
    model.put("pilots", "");
    model.put("parameters", ModelNote.of(debrief.request().conditions().craft()));
    return new Page(
        ReviewPage.class,
        "review.mustache",
        "Vortex ring state: review of a recorded flight",
        false,
        model,
        pictures());
  }

  private Map<String, Picture> pictures() {
    Map<String, Picture> pictures = new HashMap<>();
    for (FlownDescent descent : debrief.descents()) {
      if (descent.number() <= PLOTTED) {
        DescentPlots plots = new DescentPlots(debrief, descent, units);
        pictures.put("height" + descent.number(), plots.height());
        pictures.put("sink" + descent.number(), plots.sink());
        pictures.put("legend", DescentPlots.legend(LEGEND_WIDTH));
      }
    }
    return pictures;
  }
}
