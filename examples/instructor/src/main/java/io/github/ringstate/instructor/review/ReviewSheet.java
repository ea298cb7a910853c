package io.github.ringstate.instructor.review;

import io.github.ringstate.files.report.Sheet;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.files.unit.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/** A reviewed flight laid out for people. */
record ReviewSheet(Debrief debrief, UnitSystem units) {

  Sheet sheet() {
    ReviewText text = new ReviewText(debrief, units);
    List<Sheet.Block> blocks = new ArrayList<>();
    blocks.add(new Sheet.Title("Vortex ring state: review of a recorded flight"));
    if (debrief.request().invented()) {
      blocks.add(new Sheet.Paragraph(ReviewMessages.SAY.invented()));
    }
    blocks.add(new Sheet.Terms(text.situation()));
    if (debrief.descents().isEmpty()) {
      blocks.add(new Sheet.Paragraph(ReviewMessages.SAY.none(debrief.request().wind().known())));
    } else {
      blocks.add(text.encounters());
      blocks.add(new Sheet.Terms(text.descents()));
    }
    if (!text.briefed().isEmpty()) {
      blocks.add(new Sheet.Heading("Briefed and flown"));
      blocks.add(new Sheet.Terms(text.briefed()));
    }
    if (!debrief.repairs().isEmpty()) {
      blocks.add(new Sheet.Heading("What was left out or mended"));
      blocks.add(text.repairs());
    }
    blocks.add(new Sheet.Terms(ReviewMessages.SAY.definitions()));
    blocks.add(new Sheet.Paragraph("CAUTION. " + Caution.TEXT));
    return new Sheet(blocks);
  }
}
