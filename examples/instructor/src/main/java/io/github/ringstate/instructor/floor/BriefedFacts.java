package io.github.ringstate.instructor.floor;

import io.github.ringstate.files.plan.PlanFile.AgreedHeight;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.conditions.CraftWords;
import io.github.ringstate.instructor.pilots.PilotTerms;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;

/**
 * One technique as card and lesson speak of it; what is not there is empty.
 *
 * @param craft the craft
 * @param fit to what it was fitted; empty if it was not
 * @param condition its mass and air
 * @param power what the hover takes
 * @param entry what leads to the ring state
 * @param technique the technique's name
 * @param what what is done
 * @param side the side to which the craft is banked; empty if it is not
 * @param way where one standard pilot of the slowest state goes over the ground
 * @param delay the median delay of that state
 * @param pedals what is not said of the pedals
 * @param obstacles why the way matters
 * @param share the share that recovered
 * @param margin what was to spare
 * @param least the height that the share needed
 * @param never whether so many never recovered
 * @param tooFew how many pilots were flown, where they are too few to bound that height; else empty
 * @param state the state of the pilots who need most
 * @param quickest the state of those who need least, and their height
 * @param quickestLeast their height
 * @param agreed the height agreed not to fly below
 * @param isLow whether that is less than the pilots needed
 * @param start the height at which a demonstration begins
 * @param isStartLow whether that is less than the pilots needed
 * @param abort the height at which it is broken off
 * @param isAbortLow whether that is less than the pilots needed
 * @param limit the share on the ground above which nothing is briefed
 * @param slow the upper end of effective translational lift
 * @param sink the rate of descent to be kept below it
 */
record BriefedFacts(
    String craft,
    String fit,
    String condition,
    String power,
    String entry,
    String technique,
    String what,
    String side,
    String way,
    String delay,
    String pedals,
    String obstacles,
    String share,
    String margin,
    String least,
    boolean never,
    String tooFew,
    String state,
    String quickest,
    String quickestLeast,
    String agreed,
    boolean isLow,
    String start,
    boolean isStartLow,
    String abort,
    boolean isAbortLow,
    String limit,
    String slow,
    String sink) {

  /**
   * The upper end of effective translational lift, 16 to 24 kt in pilots' handbooks (from memory).
   */
  private static final double TRANSLATIONAL_LIFT_KT = 24;

  /** The descent that pilots' handbooks keep to below it (from memory). */
  private static final double DESCENT_FPM = 300;

  static BriefedFacts of(
      BriefedTechnique briefed, Map<AgreedHeight, Double> agreed, UnitSystem units) {
    FloorRequest request = briefed.request();
    Technique technique = briefed.technique();
    Optional<FloorRow> slowest =
        briefed.rows().isEmpty() ? Optional.empty() : Optional.of(briefed.slowest());
    Optional<FloorRow> quickest =
        briefed.rows().stream()
            .min(Comparator.comparingDouble(row -> row.floor().orElseThrow().value()));
    double least = slowest.map(BriefedFacts::floor).orElse(Double.NaN);
    return new BriefedFacts(
        briefed.block().conditions().craft().name(),
        CraftWords.fit(briefed.block().conditions().craft()),
        briefed.block().conditions().loadAndAir(units),
        briefed.block().conditions().hoverInWords(),
        request.approach().description(units) + "; wind " + request.approach().wind(units),
        technique.label(),
        technique.description(briefed.block().conditions().craft().sense()),
        technique.equals(Technique.LATERAL)
            ? briefed.block().conditions().craft().sense().tailPush() > 0 ? "right" : "left"
            : "",
        slowest.flatMap(FloorRow::way).map(way -> way.inWords(units)).orElse(""),
        slowest.map(row -> Decimals.brief(row.state().median())).orElse(""),
        technique.equals(Technique.LATERAL) ? PilotTerms.pedals() : "",
        PilotTerms.obstacles(),
        FloorFacts.percent(request.share()),
        units.typed(Unit.FOOT, request.margin()),
        height(slowest, units),
        Double.isInfinite(least),
        slowest.filter(FloorRow::tooFew).isPresent()
            ? Integer.toString(request.pool().pilots())
            : "",
        slowest.map(row -> row.state().label()).orElse(""),
        quickest.map(row -> row.state().label()).orElse(""),
        height(quickest, units),
        given(agreed, AgreedHeight.LEAST, units),
        isLess(agreed, AgreedHeight.LEAST, least),
        given(agreed, AgreedHeight.START, units),
        isLess(agreed, AgreedHeight.START, least),
        given(agreed, AgreedHeight.ABORT, units),
        isLess(agreed, AgreedHeight.ABORT, least),
        FloorFacts.percent(request.groundShare()),
        units.given(Unit.KNOT, TRANSLATIONAL_LIFT_KT),
        units.given(Unit.FOOT_PER_MINUTE, DESCENT_FPM));
  }

  private static double floor(FloorRow row) {
    return row.floor().orElseThrow().value();
  }

  /** The floor as the table has it, no finer than it is known. */
  private static String height(Optional<FloorRow> row, UnitSystem units) {
    return row.flatMap(slow -> slow.needed(slow.share(), units))
        .map(needed -> needed + " " + units.length().symbol())
        .orElse("");
  }

  private static String given(
      Map<AgreedHeight, Double> agreed, AgreedHeight height, UnitSystem units) {
    Double feet = agreed.get(height);
    return feet == null ? "" : units.given(Unit.FOOT, feet);
  }

  private static boolean isLess(
      Map<AgreedHeight, Double> agreed, AgreedHeight height, double least) {
    Double feet = agreed.get(height);
    return feet != null && Unit.FOOT.toSi(feet) < least;
  }
}
