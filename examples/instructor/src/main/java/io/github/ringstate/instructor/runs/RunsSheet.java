package io.github.ringstate.instructor.runs;

import io.github.ringstate.files.report.Sheet;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.report.TextColumn;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.files.unit.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/** A run laid out for people. */
record RunsSheet(RunsReport report, UnitSystem units) {

  private static final String DASH = "-";

  Sheet sheet() {
    RunsFacts facts = RunsFacts.of(report.request(), report.analysis(), units);
    List<Sheet.Block> blocks = new ArrayList<>();
    blocks.add(new Sheet.Title("Slow runs: what each track takes"));
    blocks.add(
        new Sheet.Terms(
            report.request().conditions().heading(units, RunsMessages.SAY.situation(facts))));
    blocks.add(grid());
    RunsTakeAway.of(report, units).forEach(inShort -> blocks.add(new Sheet.Paragraph(inShort)));
    RunsCompared.of(report, units)
        .ifPresent(
            both -> {
              blocks.add(new Sheet.Heading("Two conditions side by side"));
              blocks.add(both);
            });
    List<Why> why = Why.of(report.request(), report.analysis(), units);
    if (why.size() > 1) { // one alone is in the take-away
      blocks.add(new Sheet.Heading("Why"));
      blocks.add(new Sheet.Terms(reasons(why)));
    }
    blocks.add(new Sheet.Heading("Definitions"));
    blocks.add(new Sheet.Terms(RunsMessages.SAY.definitions(facts)));
    blocks.add(new Sheet.Paragraph("CAUTION. " + Caution.TEXT));
    return new Sheet(blocks);
  }

  private Sheet.Grid grid() {
    String speed = units.speed().symbol();
    return TextColumn.grid(
        List.of(
            TextColumn.right(TrackNumbers::tracks, "track", "deg"),
            TextColumn.right(TrackNumbers::tail, "tail", "wind", speed),
            TextColumn.right(TrackNumbers::cross, "cross", "wind", speed),
            TextColumn.right(TrackNumbers::air, "air-", "speed", speed),
            TextColumn.right(TrackNumbers::minimum, "min.", "air", speed),
            TextColumn.right(TrackNumbers::power, "power", "margin", "% cont."),
            TextColumn.right(TrackNumbers::takeOff, "power", "margin", "% t/o"),
            TextColumn.right(TrackNumbers::ring, "ring", "margin", units.verticalSpeed().symbol()),
            TextColumn.right(TrackNumbers::escape, "escape", "deg"),
            TextColumn.left(TrackNumbers::sectors, "tail", "rotor"),
            TextColumn.left(TrackNumbers::verdict, "verdict")),
        TrackPair.of(report.analysis().rows()).stream()
            .map(pair -> TrackNumbers.of(report.request(), report.analysis(), pair, units, DASH))
            .toList());
  }

  private static List<Term> reasons(List<Why> all) {
    return all.stream()
        .map(why -> new Term(why.verdict(), "on " + why.tracks() + ". " + why.sentence()))
        .toList();
  }
}
