package io.github.ringstate.instructor.review;

import io.github.ringstate.encounter.Ending;
import io.github.ringstate.files.plan.PlanFile;
import io.github.ringstate.files.plan.PlanFile.AgreedHeight;
import io.github.ringstate.files.report.Sheet;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.report.TextColumn;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.text.Unprintable;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.conditions.CraftWords;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.recording.EncounterFinder;
import io.github.ringstate.recording.Estimate;
import io.github.ringstate.recording.FoundEncounter;
import io.github.ringstate.recording.Movement;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** A reviewed flight in words and numbers, the same in the text and on the sheet. */
record ReviewText(Debrief debrief, UnitSystem units) {

  /** So many steps of a level are told one by one. */
  private static final int MOST_STEPS = 3;

  private ReviewRequest request() {
    return debrief.request();
  }

  List<Term> situation() {
    int last = debrief.motion().recording().size() - 1;
    double length = debrief.motion().recording().time(last) - debrief.motion().recording().time(0);
    OptionalDouble step = debrief.coarse();
    List<Term> terms =
        new ArrayList<>(
            ReviewMessages.SAY.situation(
                request().name(),
                request().invented(),
                request().file().format().label(),
                Unprintable.replaced(request().file().columns().given().replace(",", ", ")),
                String.valueOf(last + 1),
                Decimals.fixed(length, 0),
                request().file().start().map(Object::toString).orElse(""),
                CraftWords.of(request().conditions().craft()),
                wind(),
                request().ground().isPresent()
                    ? units.typed(Unit.FOOT, request().ground().getAsDouble())
                    : "",
                below(),
                steps(),
                coarse(step, 1),
                coarse(step, EncounterFinder.ROUNDED_OFF),
                units.lengthInWords(request().shown(debrief.heights().getMin())),
                units.lengthInWords(request().shown(debrief.heights().getMax()))));
    terms.addAll(request().conditions().terms(units));
    return terms;
  }

  /**
   * How far the lowest descent goes below the ground; empty if none does, or no ground is given.
   */
  private String below() {
    double lowest =
        debrief.descents().stream().mapToDouble(descent -> lowest(descent.found())).min().orElse(0);
    return request().ground().isPresent() && lowest < 0 ? units.lengthInWords(-lowest) : "";
  }

  /** So many of the steps in which heights are written; empty unless they are coarse. */
  private String coarse(OptionalDouble step, double times) {
    return step.isPresent() ? units.lengthInWords(times * step.getAsDouble()) : "";
  }

  /** The first steps of the level from which heights count; empty if there are none. */
  private String steps() {
    List<Debrief.LevelStep> steps = debrief.levelSteps();
    String first =
        steps.stream()
            .limit(MOST_STEPS)
            .map(
                step ->
                    ReviewMessages.SAY.step(
                        units.lengthInWords(Math.abs(step.change())),
                        step.change() > 0,
                        Decimals.fixed(step.time(), 1)))
            .collect(Collectors.joining(", "));
    return steps.size() > MOST_STEPS ? first + ", and more" : first;
  }

  /** The lowest height of a descent, as it is shown, m. */
  private double lowest(FoundEncounter found) {
    return request().shown(found.onsetHeight()) - found.altitudeLoss().value();
  }

  private String wind() {
    DebriefedWind wind = request().wind();
    double speed = wind.wind().speed();
    return ReviewMessages.SAY.wind(
        units.speedInWords(speed),
        speed > 0 ? from(wind.wind().directionFrom()) : "",
        units.speedInWords(wind.deviation()),
        wind.source(),
        wind.known());
  }

  /** In whole degrees, north as 360. */
  private static String from(double direction) {
    String degrees = Decimals.fixed(Unit.DEGREE.fromSi(direction), 0);
    return degrees.equals("0") ? "360" : degrees;
  }

  Sheet.Grid encounters() {
    String length = units.length().symbol();
    return TextColumn.grid(
        List.of(
            TextColumn.right(descent -> String.valueOf(descent.number()), "", "no."),
            TextColumn.right(
                descent -> Decimals.fixed(descent.found().onsetTime().value(), 1), "onset", "s"),
            TextColumn.right(
                descent -> units.length(request().shown(descent.found().onsetHeight())),
                "height",
                length),
            TextColumn.right(descent -> number(descent.delay()), "delay", "s"),
            TextColumn.right(
                descent -> units.loss(descent.found().altitudeLoss().value()), "loss", length),
            TextColumn.right(
                descent ->
                    Decimals.fixed(
                        units.length().fromSi(descent.found().altitudeLoss().deviation()), 0),
                "sd",
                length),
            TextColumn.right(
                descent -> units.verticalSpeed(descent.found().peakDescent().value()),
                "peak",
                units.verticalSpeed().symbol()),
            TextColumn.right(descent -> number(descent.timeToArrest()), "arrest", "s"),
            TextColumn.left(
                descent -> descent.recovery().map(Technique::shown).orElse("-"), "", "recovery"),
            TextColumn.left(descent -> descent.found().verdict().label(), "", "verdict")),
        debrief.descents());
  }

  private static String number(OptionalDouble value) {
    return value.isPresent() ? Decimals.fixed(value.getAsDouble(), 1) : "-";
  }

  private static String orEmpty(OptionalDouble value) {
    return value.isPresent() ? Decimals.fixed(value.getAsDouble(), 1) : "";
  }

  /** For each descent what was flown, and what the model makes of it. */
  List<Term> descents() {
    List<Term> terms = new ArrayList<>();
    for (FlownDescent descent : debrief.descents()) {
      terms.add(new Term("flown " + descent.number(), flown(descent)));
      terms.add(new Term("model " + descent.number(), model(descent.model())));
    }
    return terms;
  }

  private String flown(FlownDescent descent) {
    Estimate loss = descent.found().altitudeLoss();
    return ReviewMessages.SAY.descent(
        Decimals.fixed(descent.found().onsetTime().value(), 1),
        units.lengthInWords(request().shown(descent.found().onsetHeight())),
        descent.found().sinkTime().map(time -> Decimals.fixed(time.value(), 1)).orElse(""),
        orEmpty(descent.delay()),
        descent.found().movement().map(ReviewText::channel).orElse(""),
        descent.recovery().map(Technique::shown).orElse(""),
        units.lossInWords(loss.value()),
        units.lossInWords(loss.deviation()),
        units.verticalSpeedInWords(descent.found().peakDescent().value()),
        orEmpty(descent.timeToArrest()),
        descent.found().verdict().label());
  }

  private static String channel(Movement movement) {
    return movement.channel().name().toLowerCase(Locale.ROOT);
  }

  private String model(ModelledDescent model) {
    if (model.flight().isEmpty()) {
      return ReviewMessages.SAY.noModel(request().entry().label());
    }
    double behind = model.fromBehind();
    return ReviewMessages.SAY.model(
        model.begun(),
        request().entry().label(),
        units.speedInWords(Math.abs(behind)) + (behind >= 0 ? " from behind" : " from ahead"),
        model.recovery().label(),
        model.recoverySeen(),
        Decimals.fixed(model.delay(), 1),
        model.delaySeen(),
        loss(model.losses().flown()),
        model.flight().get().outcome().ending() != Ending.NO_ONSET,
        later(model.losses(), model.losses().oneMore()),
        later(model.losses(), model.losses().twoMore()),
        model.doubt().map(this::doubt).orElse(""));
  }

  private String doubt(OnsetDoubt doubt) {
    return ReviewMessages.SAY.doubt(
        request().wind().known(),
        units.speedInWords(request().wind().deviation()),
        doubted(doubt.more()),
        doubted(doubt.less()),
        doubt.noseAhead().map(this::doubted).orElse(""));
  }

  private String doubted(Optional<OptionalDouble> loss) {
    return ReviewMessages.SAY.doubted(loss.isPresent(), loss.map(this::loss).orElse(""));
  }

  private String later(ModelledDescent.Losses losses, OptionalDouble later) {
    if (later.isEmpty()) {
      return "";
    }
    OptionalDouble deviation = losses.deviation(later);
    return ReviewMessages.SAY.later(
        units.lossInWords(later.getAsDouble()),
        deviation.isPresent() ? units.lossInWords(deviation.getAsDouble()) : "");
  }

  private String loss(OptionalDouble loss) {
    return loss.isPresent() ? units.lossInWords(loss.getAsDouble()) : "";
  }

  /** What was briefed beside what was flown, descent by descent. */
  List<Term> briefed() {
    if (request().plan().isEmpty()) {
      return List.of();
    }
    List<Term> terms = new ArrayList<>();
    for (FlownDescent descent : debrief.descents()) {
      briefed(request().plan().get(), descent)
          .forEach(
              term -> terms.add(new Term(term.word() + " " + descent.number(), term.meaning())));
    }
    return terms;
  }

  private List<Term> briefed(PlanFile plan, FlownDescent descent) {
    double onset = request().shown(descent.found().onsetHeight());
    double lowest = lowest(descent.found());
    Double least = plan.agreed().get(AgreedHeight.LEAST);
    boolean ground = request().ground().isPresent();
    return ReviewMessages.SAY.briefed(
        plan.technique(),
        descent.recovery().map(Technique::name).orElse(""),
        descent.recovery().map(Technique::name).orElse("").equals(plan.technique()),
        agreed(plan, AgreedHeight.START),
        units.lengthInWords(onset),
        agreed(plan, AgreedHeight.LEAST),
        units.lengthInWords(lowest),
        ground && least != null && lowest < Unit.FOOT.toSi(least),
        ground);
  }

  private String agreed(PlanFile plan, AgreedHeight height) {
    Double feet = plan.agreed().get(height);
    return feet == null ? "" : units.given(Unit.FOOT, feet);
  }

  Sheet.Grid repairs() {
    return TextColumn.grid(
        List.of(
            TextColumn.right(repair -> String.valueOf(repair.count()), "", "count"),
            TextColumn.left(
                repair -> repair.kind().label(repair.count()), "", "left out or mended"),
            TextColumn.left(
                repair ->
                    repair.quantity().map(quantity -> quantity.key().replace('_', ' ')).orElse("-"),
                "",
                "quantity"),
            TextColumn.right(repair -> Decimals.fixed(repair.first(), 1), "first", "s"),
            TextColumn.right(repair -> Decimals.fixed(repair.last(), 1), "last", "s")),
        debrief.repairs());
  }
}
