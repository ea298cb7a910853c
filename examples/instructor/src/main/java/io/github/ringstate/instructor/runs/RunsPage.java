package io.github.ringstate.instructor.runs;

import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.instructor.conditions.ModelNote;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.sheets.page.Page;
import io.github.ringstate.sheets.page.PageSettings;
import io.github.ringstate.study.run.RunJudgement;
import io.github.ringstate.study.run.RunPlan;
import io.github.ringstate.study.run.RunVerdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** A run as a sheet of one page: the tracks, and what the crew agrees and signs. */
final class RunsPage {

  /** The rate of descent from which handbooks warn of the ring state (FAA-H-8083-21A, quoted). */
  private static final double SINK_TO_REFUSE = Unit.FOOT_PER_MINUTE.toSi(300);

  private static final String DASH = "–";

  private final RunsRequest request;
  private final RunAnalysis analysis;
  private final UnitSystem units;

  private RunsPage(RunsReport report, UnitSystem units) {
    request = report.request();
    analysis = report.analysis();
    this.units = units;
  }

  /** One line of the table. */
  record Line(
      TrackNumbers numbers,
      String loss,
      boolean lossIsOver,
      String escape,
      String sectors,
      String verdict,
      boolean isNo,
      boolean isLimit) {}

  static Page of(RunsReport report, PageSettings settings) {
    return new RunsPage(report, settings.units()).page();
  }

  private Page page() {
    RunPolar polar = new RunPolar(request, analysis, units);
    Directions directions = new Directions(analysis);
    RunPlan plan = request.plan();
    Map<String, Object> model = new HashMap<>();
    model.put("situation", situation());
    model.put("wind", wind(directions));
    model.put("lines", analysis.rows().stream().map(this::line).toList());
    model.put("why", Why.of(request, analysis, units));
    model.put("speedUnit", units.speed().symbol());
    model.put("sinkUnit", units.verticalSpeed().symbol());
    model.put("lengthUnit", units.length().symbol());
    model.put("height", units.lengthInWords(plan.height()));
    model.put("checks", checks());
    model.put("limits", limits());
    model.put("tailRotor", sentence(RunsTerms.tailRotor(request, units)));
    model.put("heightVelocity", sentence(RunsTerms.heightVelocity(request, units)));
    model.put("terms", RunsTerms.ofSheet(request, analysis.technique().name(), units));
    model.put("commandHours", Decimals.brief(request.crew().commandHours()));
    model.put("typeHours", Decimals.brief(request.crew().typeHours()));
    model.put("pilots", request.pilots());
    model.put("seed", request.seed());
    model.put("parameters", ModelNote.standard());
    return new Page(
        RunsPage.class,
        "runs.mustache",
        "Slow runs: what each track takes",
        true,
        model,
        Map.of("polar", polar.plot(), "legend", polar.legend()));
  }

  private List<Term> situation() {
    RunPlan plan = request.plan();
    Conditions conditions = request.conditions();
    OptionalDouble hover = new RunsColumns(request, analysis).hoverMarginPct();
    return List.of(
        new Term("Craft", conditions.craft().name() + ": " + conditions.craft().description()),
        new Term(
            "Conditions",
            Decimals.brief(conditions.massKg())
                + " kg, pressure altitude "
                + units.lengthInWords(conditions.air().pressureAltitude())
                + ", "
                + Decimals.fixed(conditions.oatC(), 0)
                + " °C, density altitude "
                + units.lengthInWords(conditions.air().densityAltitude())),
        new Term(
            "Hover",
            "out of ground effect leaves "
                + (hover.isPresent() ? Decimals.fixed(hover.getAsDouble(), 0) + " %" : "nothing")
                + " of short-time power"
                + (conditions.hover().isShort() ? ". WARNING: there is not enough to hover" : "")),
        new Term(
            "Run",
            units.speedInWords(plan.groundSpeed())
                + " over the ground, "
                + units.lengthInWords(plan.height())
                + " above it, descending at "
                + units.verticalSpeedInWords(plan.descent())));
  }

  private List<Term> wind(Directions directions) {
    RunPlan plan = request.plan();
    return List.of(
        new Term(
            "Wind",
            request.reported().gustKt() == 0
                ? "calm"
                : "from "
                    + EscapeWords.threeDigits(request.reported().fromDeg())
                    + "°, "
                    + units.speedInWords(Unit.KNOT.toSi(request.reported().meanKt()))
                    + ", gusts "
                    + units.speedInWords(Unit.KNOT.toSi(request.reported().gustKt()))
                    + " at "
                    + units.lengthInWords(10)
                    + "; at "
                    + units.lengthInWords(plan.height())
                    + " "
                    + units.speedInWords(plan.windSpeed())
                    + ", gusts "
                    + units.speedInWords(plan.gust())),
        new Term("Turn downwind", RunsTerms.turn(analysis, units)),
        new Term("Best direction", directions.best()),
        new Term("Worst direction", directions.worst()));
  }

  private Line line(RunRow row) {
    RunVerdict verdict = row.judgement().verdict();
    return new Line(
        TrackNumbers.of(row, units, DASH),
        loss(row),
        row.isOver(request.plan()),
        EscapeWords.brief(row),
        EscapeWords.mark(request, row),
        verdict(row.judgement()),
        verdict == RunVerdict.DO_NOT_FLY,
        verdict == RunVerdict.FLY_WITH_A_LIMIT);
  }

  private String loss(RunRow row) {
    if (row.loss().isEmpty()) {
      return DASH;
    }
    if (row.isNotArrested()) {
      return "open";
    }
    return (row.isOver(request.plan()) ? "> " : "") + units.lost(row.lossFt().getAsDouble());
  }

  /** The verdict with its limit, short enough for a table. */
  private String verdict(RunJudgement judgement) {
    if (judgement.minimumAirspeed().isPresent()) {
      double least = judgement.minimumAirspeed().getAsDouble();
      return "limit: air ≥ " + units.speed(least);
    }
    if (judgement.maximumGroundSpeed().isPresent()) {
      return "limit: ground ≤ " + units.speed(judgement.maximumGroundSpeed().getAsDouble());
    }
    return judgement.verdict().label();
  }

  private static String sentence(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  /** What the crew agrees on before the flight, with what the model proposes. */
  private List<Term> checks() {
    RunRow best =
        Stream.of(RunVerdict.values())
            .map(
                verdict ->
                    analysis.rows().stream()
                        .filter(row -> row.judgement().verdict() == verdict)
                        .max(Comparator.comparingDouble(RunRow::leastAirspeedKt)))
            .filter(Optional::isPresent)
            .map(Optional::get)
            .findFirst()
            .orElseThrow();
    List<Term> checks = new ArrayList<>();
    checks.add(
        new Term(
            "Technique briefed for " + units.lengthInWords(request.plan().height()),
            analysis.technique().name() + ": " + technique()));
    checks.add(
        new Term(
            "Least airspeed, turns included",
            analysis.limits().isPresent()
                ? units.speedInWords(analysis.limits().get().minimum())
                : "none keeps the margins"));
    checks.add(new Term("Greatest tailwind", tailwind()));
    checks.add(
        new Term(
            "Escape direction",
            best.escape().isPresent()
                ? EscapeWords.brief(best)
                    + " on track "
                    + EscapeWords.threeDigits(best.trackDeg())
                    + "; the others in the table"
                : "none needed on track "
                    + EscapeWords.threeDigits(best.trackDeg())
                    + "; the others in the table"));
    checks.add(
        new Term(
            "Pilot's experience",
            "at least "
                + Decimals.brief(request.crew().commandHours())
                + " h in command and "
                + Decimals.brief(request.crew().typeHours())
                + " h on type"));
    return checks;
  }

  private String technique() {
    return Technique.ALL.stream()
        .filter(kind -> kind.label().equals(analysis.technique().name()))
        .findFirst()
        .map(kind -> kind.description(request.plan().craft().sense()))
        .orElse("");
  }

  /** The greatest tailwind among the tracks that are to be flown as planned. */
  private String tailwind() {
    OptionalDouble most =
        analysis.rows().stream()
            .filter(row -> row.judgement().verdict() == RunVerdict.FLY)
            .mapToDouble(row -> row.track().triangle().tailwind())
            .max();
    if (most.isEmpty()) {
      return "no track keeps the margins as planned";
    }
    return most.getAsDouble() > 0
        ? units.speedInWords(most.getAsDouble())
            + " in the mean wind, the most on a track flown as planned"
        : "none: only tracks without tailwind keep the margins as planned";
  }

  /** The lines at which the pilot says no. */
  private List<String> limits() {
    List<String> lines = new ArrayList<>();
    if (analysis.rows().stream()
        .allMatch(row -> row.judgement().verdict() == RunVerdict.DO_NOT_FLY)) {
      lines.add("This run as planned, on whatever track.");
    }
    analysis
        .limits()
        .ifPresent(
            limits ->
                lines.add(
                    "Airspeed below "
                        + units.speedInWords(limits.minimum())
                        + ", whatever the picture needs."));
    lines.add("More than continuous power to hold height.");
    lines.add(
        "Rate of descent beyond "
            + units.verticalSpeedInWords(Math.max(request.plan().descent(), SINK_TO_REFUSE))
            + " at low airspeed.");
    lines.add("A turn downwind with the ground speed held.");
    lines.add("Less than " + units.lengthInWords(request.plan().height()) + " above the ground.");
    return lines;
  }
}
