package io.github.ringstate.instructor.floor;

import io.github.ringstate.files.report.Sheet;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.files.text.NotAWayOut;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.pilots.PilotTerms;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/** Floors laid out for people. */
record FloorSheet(FloorRequest request, UnitSystem units) {

  Sheet sheet(FloorReport report) {
    FloorGrids grids = new FloorGrids(request, units);
    List<Sheet.Block> blocks = new ArrayList<>();
    blocks.add(new Sheet.Title("Vortex ring state: height from which simulated pilots recovered"));
    List<Term> heading = heading();
    boolean single = report.blocks().size() == 1;
    if (!single) {
      blocks.add(new Sheet.Terms(heading));
    }
    boolean second = false;
    for (FloorBlock block : report.blocks()) {
      boolean worse = second;
      request
          .compared()
          .ifPresent(by -> blocks.add(new Sheet.Heading(PilotTerms.compared(worse, by.later()))));
      second = true;
      List<Term> terms = new ArrayList<>(single ? heading : List.of());
      terms.addAll(block.conditions().terms(units));
      blocks.add(new Sheet.Terms(terms));
      blocks.add(grids.floors(block));
      blocks.add(new Sheet.Paragraph(FloorTakeAway.of(block, request, units)));
      if (request.briefed().isPresent() && block.met()) {
        double height = request.briefed().getAsDouble();
        blocks.add(
            new Sheet.Heading(FloorMessages.SAY.briefingFor(units.typed(Unit.FOOT, height))));
        blocks.add(new Sheet.Terms(grids.briefings(block, height)));
        blocks.add(grids.latest(block));
      }
    }
    report.compared(units).ifPresent(blocks::add);
    if (request.recoveries().stream().anyMatch(Technique::isMistaken)) {
      blocks.add(new Sheet.Paragraph(NotAWayOut.TEXT));
    }
    blocks.add(new Sheet.Terms(List.of(report.reached(units))));
    blocks.add(
        new Sheet.Terms(
            FloorMessages.SAY.definitions(
                FloorFacts.of(request, units),
                request.states().stream().map(PilotTerms::state).toList())));
    blocks.add(new Sheet.Paragraph("CAUTION. " + Caution.TEXT));
    return new Sheet(blocks);
  }

  private List<Term> heading() {
    List<Term> terms = new ArrayList<>(request.situation(units).terms());
    terms.add(new Term("pilots", PilotTerms.pilots(request.pool(), request.disturbances(), true)));
    return terms;
  }
}
