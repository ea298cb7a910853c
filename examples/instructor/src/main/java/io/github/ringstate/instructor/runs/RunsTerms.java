package io.github.ringstate.instructor.runs;

import io.github.ringstate.encounter.Downwind;
import io.github.ringstate.files.report.Term;
import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The words of a run, explained. */
final class RunsTerms {

  private static final String WIND =
      "tailwind positive from behind, crosswind positive from the left, both of the mean wind at the"
          + " height flown";
  private static final String AIRSPEED = "in the mean wind, in whatever direction";
  private static final String GUSTS =
      "the least airspeed in gusts and in lulls as far below the mean wind (assumed)";
  private static final String POWER =
      "what is left of the continuous power, per cent of it; out of ground effect, at the worst of"
          + " the least, mean and greatest airspeed in gusts; negative where the run takes more";
  private static final String POWER_OF_BOTH =
      "what is left of the continuous and of the short-time power, per cent of it; out of ground"
          + " effect, at the worst of the least, mean and greatest airspeed in gusts; negative where"
          + " the run takes more";
  private static final String BOUNDARY =
      "extra rate of descent that reaches the ring state at the least airspeed in gusts; negative"
          + " where the planned descent is beyond it; none where no rate of descent reaches it";
  private static final String MODEL =
      "by the ring-state inflow model and its heave-damping boundary, disc level";

  private RunsTerms() {}

  static String loss(RunsRequest request) {
    return "altitude lost by the 95 per cent of "
        + request.pilots()
        + " simulated distracted pilots (delay "
        + Decimals.brief(PilotState.DISTRACTED.median())
        + " s in the middle, "
        + Decimals.brief(PilotState.DISTRACTED.ninetyPercent())
        + " s for nine in ten, assumed), if from this track the ground speed is held with the nose"
        + " while the wind comes round behind in "
        + Decimals.brief(Downwind.TURN_TIME.standard())
        + " s and the collective is left, or, where the least airspeed is low enough for the ring"
        + " state, if at that airspeed the collective is lowered a little and left, whichever loses"
        + " more; none where neither leads into the ring state";
  }

  static List<Term> forPeople(RunsRequest request, UnitSystem units) {
    List<Term> terms = new ArrayList<>();
    terms.add(new Term("tail, cross", WIND));
    terms.add(new Term("air", AIRSPEED));
    terms.add(new Term("gusts", GUSTS));
    terms.add(new Term("cont., short", POWER_OF_BOTH));
    terms.add(new Term("to ring", BOUNDARY + "; " + MODEL));
    terms.add(
        new Term(
            "loss",
            loss(request)
                + ". OPEN: more than 5 in 100 did not arrest it. > before it: not covered by the"
                + " height with "
                + units.lengthInWords(request.plan().margin())
                + " left below"));
    terms.add(
        new Term(
            "escape",
            "of ahead and the side the tail rotor pushes to, the way out of the ring state with the"
                + " shorter time in it, begun "
                + Decimals.brief(PilotState.DISTRACTED.median())
                + " s after onset, the nose on the track"));
    terms.add(new Term("verdict", verdict(request, units)));
    terms.add(new Term("tail rotor", "not computed, only " + tailRotor(request, units)));
    terms.add(new Term("height-velocity", "not computed: " + heightVelocity(request, units)));
    return terms;
  }

  /** What stands behind a verdict. */
  private static String verdict(RunsRequest request, UnitSystem units) {
    return "fly: in gusts the airspeed keeps the margins, the height covers the loss with "
        + units.lengthInWords(request.plan().margin())
        + " left below, and there is power to hover; fly with a limit: one of these is short, and"
        + " what remains holds within the limit, or a turn downwind takes the airspeed below the"
        + " margins without a loss to set against the height; do not fly: two of these are short, or"
        + " no limit mends it, or half of the pilots lose more than the height covers. A track on"
        + " which the airspeed, or that of the turn, falls below the margins or comes from behind is"
        + " judged by the loss of the worst track";
  }

  /** The same in as few words as a sheet has room for. */
  static List<Term> ofSheet(RunsRequest request, String technique, UnitSystem units) {
    String delay = Decimals.brief(PilotState.DISTRACTED.median()) + " s";
    return List.of(
        new Term("tail, cross", "mean wind at the height flown, from behind and from the left"),
        new Term(
            "air, gusts",
            "airspeed in the mean wind, and the least in gusts and in lulls (as far below, assumed)"),
        new Term(
            "power, short",
            "continuous and short-time power left at the worst airspeed, out of ground effect"),
        new Term(
            "to ring",
            "extra rate of descent to the ring state at the least airspeed (heave-damping boundary,"
                + " disc level)"),
        new Term(
            "loss",
            "what 95 in 100 of "
                + request.pilots()
                + " distracted pilots (half wait up to "
                + delay
                + ", nine in ten up to "
                + Decimals.brief(PilotState.DISTRACTED.ninetyPercent())
                + " s, assumed) lose at most with "
                + technique
                + ", if the ground speed is held while the wind comes round behind in "
                + Decimals.brief(Downwind.TURN_TIME.standard())
                + " s with the collective left, or, where slow enough for it, if the collective is"
                + " lowered a little, whichever is more; open: more than 5 in 100 did not arrest it"),
        new Term(
            "escape",
            "ahead or to the side the tail rotor pushes to, whichever leaves the ring state sooner, "
                + delay
                + " after onset"),
        new Term(
            "verdict",
            "limit: least airspeed to keep, turns included, or greatest ground speed; by the worst"
                + " track's loss where the airspeed, or that of the turn, is low; > before a loss that"
                + " leaves less than "
                + units.lengthInWords(request.plan().margin())));
  }

  /** What becomes of the airspeed if the ground speed is held through a turn downwind. */
  static String turn(RunAnalysis analysis, UnitSystem units) {
    return "with the ground speed held through it, "
        + units.speedInWords(analysis.airspeedDownwind())
        + " airspeed is left in gusts";
  }

  static String tailRotor(RunsRequest request, UnitSystem units) {
    List<String> sectors = new ArrayList<>();
    for (TailRotorSector sector : TailRotorSector.values()) {
      sectors.add(sector.label() + " " + sector.range(request.plan().craft().sense()));
    }
    return "flagged (*) where below "
        + units.given(Unit.KNOT, TailRotorSector.AIRSPEED_KT)
        + " airspeed, the nose on the track, the relative wind of mean wind, gusts or lulls comes"
        + " from a sector in which a tail"
        + " rotor is known to lose effect ("
        + String.join(", ", sectors)
        + " from the nose for a rotor turning "
        + request.plan().craft().sense().label()
        + "; FAA AC 90-95, from memory)";
  }

  static String heightVelocity(RunsRequest request, UnitSystem units) {
    String compare =
        "compare airspeed and height with the height-velocity curve of the flight manual";
    if (request.curve().isEmpty()) {
      return compare;
    }
    return compare
        + "; its points in the craft file: "
        + request.curve().stream()
            .map(
                point ->
                    units.given(Unit.KNOT, point.airspeedKt())
                        + " at "
                        + units.given(Unit.FOOT, point.heightFt()))
            .collect(Collectors.joining(", "));
  }

  static List<Term> forData(RunsRequest request) {
    List<Term> terms = new ArrayList<>();
    terms.add(new Term("track_deg", "direction flown over the ground, clockwise from north"));
    terms.add(new Term("tailwind_kt, crosswind_kt", WIND));
    terms.add(new Term("airspeed_kt", AIRSPEED));
    terms.add(new Term("least_airspeed_kt", GUSTS));
    terms.add(new Term("power_margin_pct", POWER));
    terms.add(new Term("short_time_margin_pct", "the same of the short-time power"));
    terms.add(
        new Term(
            "hover_margin_pct",
            "what is left of the short-time power over a hover out of ground effect in calm air, per"
                + " cent of it"));
    terms.add(new Term("boundary_margin_fpm", BOUNDARY + "; " + MODEL));
    terms.add(
        new Term(
            "loss_p95_ft",
            loss(request) + "; empty as well where more than 5 in 100 did not arrest the descent"));
    terms.add(new Term("verdict", verdict(request, UnitSystem.AVIATION)));
    terms.add(
        new Term(
            "airspeed_downwind_kt",
            "least airspeed in gusts once the wind is behind and the ground speed the same; 0"
                + " where gusts are faster than the run"));
    terms.add(
        new Term(
            "escape_deg",
            "where the way out with the shortest exposure leads, clockwise from north, the nose on"
                + " the track"));
    terms.add(new Term("escape_exposure_s", "time in the ring state on that way, from onset"));
    terms.add(
        new Term(
            "tail_rotor_sectors", "not computed, only " + tailRotor(request, UnitSystem.AVIATION)));
    return terms;
  }
}
