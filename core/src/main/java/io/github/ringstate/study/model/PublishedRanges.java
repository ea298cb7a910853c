package io.github.ringstate.study.model;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.air.Wind;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.Propagators;
import io.github.ringstate.dynamics.Trim;
import io.github.ringstate.encounter.Entry;
import io.github.ringstate.encounter.Settling;
import io.github.ringstate.inflow.Autorotation;
import io.github.ringstate.inflow.QuarticFit;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.inflow.SmoothMomentum;
import io.github.ringstate.inflow.TwoSegmentFit;
import io.github.ringstate.integrate.Event;
import io.github.ringstate.integrate.FastPropagator;
import io.github.ringstate.pilot.PilotView;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import java.util.Locale;

/**
 * The ranges that a model of the ring state has to meet.
 *
 * <p>All of them are calibration: the standard numbers of the model were chosen with these very
 * statements in view, so that meeting them proves nothing. What validates the model is none of
 * them. All are from memory of their source, and the runaway is an order of magnitude.
 */
public final class PublishedRanges {

  private static final String TEXTBOOKS =
      "typical limits of the ring state in textbooks, about -0.4 or -0.5 to -1.4 or -1.5 and up to"
          + " an edgewise speed of 0.6 to 1.0 (Leishman, Principles of Helicopter Aerodynamics,"
          + " 2006, ch. 2, and others; from memory)";

  /** The onset in vertical descent. */
  public static final PublishedRange ONSET =
      new PublishedRange(
          "onset in vertical descent",
          "1",
          -0.6,
          -0.4,
          TEXTBOOKS,
          model -> model.numbers().get(RingStateInflow.ONSET_AXIAL));

  /** The exit in vertical descent. */
  public static final PublishedRange EXIT =
      new PublishedRange(
          "exit in vertical descent",
          "1",
          -1.6,
          -1.4,
          TEXTBOOKS,
          model -> model.numbers().get(RingStateInflow.EXIT_AXIAL));

  /** The greatest edgewise speed of the boundary. */
  public static final PublishedRange REACH =
      new PublishedRange(
          "edgewise speed up to which the boundary reaches",
          "1",
          0.6,
          1.0,
          TEXTBOOKS,
          PublishedRanges::reach);

  /** The ideal autorotation. */
  public static final PublishedRange AUTOROTATION =
      new PublishedRange(
          "ideal vertical autorotation",
          "1",
          -1.9,
          -1.7,
          "real rotors autorotate at -1.7 to -1.9 (Johnson, Helicopter Theory, 1980, section 3;"
              + " from memory)",
          model -> Autorotation.axialSpeed(model, 0).orElse(Double.NEGATIVE_INFINITY));

  /**
   * The sink's growth at constant collective: four to ten seconds from 400 to 2,000 ft/min in the
   * light demo craft.
   */
  public static final PublishedRange RUNAWAY =
      new PublishedRange(
          "time from 400 to 2,000 ft/min at constant collective, light helicopter",
          "s",
          4,
          10,
          "required of the model, after flight tests of a helicopter of four tonnes: from 5 or 6 to"
              + " 12 or 15 m/s within 5 to 10 s (Taghizad, Jimenez, Binet and Heuze, American"
              + " Helicopter Society 58th Forum, 2002; order of magnitude, from memory)",
          PublishedRanges::runaway);

  /** Induced power factor at which the published fits are compared; it is in both of them. */
  private static final double POWER_FACTOR = 1.15;

  /** Power of thrust in vertical descent, at the onset, in the middle and at the exit. */
  public static final List<PublishedRange> POWER = List.of(power(-0.5), power(-1), power(-1.45));

  /** All of them, the cheapest first. */
  public static final List<PublishedRange> ALL =
      List.of(ONSET, EXIT, POWER.get(0), POWER.get(1), POWER.get(2), AUTOROTATION, REACH, RUNAWAY);

  /** The fold lies between hover and the lower join; this many steps see it. */
  private static final int AXIAL_STEPS = 100;

  private static final double REACH_ACCURACY = 1e-3;

  private static final Settling ENTRY = new Settling();

  private static final double LONGEST = 60;

  private PublishedRanges() {}

  /**
   * Whether a model agrees with all of them.
   *
   * @param model the model
   * @return true if it does
   */
  public static boolean hold(RingStateInflow model) {
    return ALL.stream().allMatch(range -> range.holds(model));
  }

  private static PublishedRange power(double axial) {
    double quartic = new QuarticFit(POWER_FACTOR).total(0, axial);
    double segments = new TwoSegmentFit(POWER_FACTOR).total(0, axial);
    return new PublishedRange(
        String.format(Locale.ROOT, "power of thrust over T vh in vertical descent at %.2f", axial),
        "1",
        Math.min(quartic, segments),
        Math.max(quartic, segments),
        "between the quartic and the two-segment fit, each with an induced power factor of 1.15"
            + " (Leishman, Principles of Helicopter Aerodynamics, 2006, ch. 2; from memory)",
        model -> power(model, axial));
  }

  /** Total inflow with its losses, as {@link io.github.ringstate.rotor.Rotor} counts them. */
  private static double power(RingStateInflow model, double axial) {
    double induced = model.induced(0, axial);
    double share = model.lossShare(0, axial);
    double losses = (1 - share) * induced + share * model.ring().losses();
    return axial + induced + (POWER_FACTOR - 1) * losses;
  }

  /**
   * The edgewise speed at which the ring state ends, to a thousandth: what {@link
   * io.github.ringstate.inflow.HeaveDamping#reach} gives, but that a pocket narrower than a
   * fiftieth of a hover induced velocity is not seen, at a thirtieth of the cost.
   */
  private static double reach(RingStateInflow model) {
    double low = 0;
    double high = model.numbers().get(RingStateInflow.FADE_EDGEWISE);
    while (high - low > REACH_ACCURACY) {
      double middle = 0.5 * (low + high);
      if (isRing(model, middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 0.5 * (low + high);
  }

  private static boolean isRing(RingStateInflow model, double edgewise) {
    double step = model.numbers().get(SmoothMomentum.LOWER_JOIN) / AXIAL_STEPS;
    for (int i = 1; i < AXIAL_STEPS; i++) {
      if (model.slope(edgewise, i * step) < 0) {
        return true;
      }
    }
    return false;
  }

  /** Time in which the sink grows, s; infinite where it does not. */
  private static double runaway(RingStateInflow model) {
    EquationsOfMotion motion =
        new EquationsOfMotion(DemoCraft.TRAINER, StandardAtmosphere.at(0), Wind.CALM, model, false);
    Entry.Start start = ENTRY.start(motion);
    PilotView.of(motion, Trim.find(motion, 0, 0)).follow(start.law());
    FastPropagator<String, Motion> propagator = Propagators.fast();
    propagator.start(0, start.state());
    double slow = sinksBy(propagator, motion, 400);
    return Double.isFinite(slow)
        ? sinksBy(propagator, motion, 2000) - slow
        : Double.POSITIVE_INFINITY;
  }

  private static double sinksBy(
      FastPropagator<String, Motion> propagator, EquationsOfMotion motion, double feetPerMinute) {
    double rate = Unit.FOOT_PER_MINUTE.toSi(feetPerMinute);
    String reached =
        propagator.propagate(
            motion,
            LONGEST,
            List.of(
                Event.stop("sinks", Event.Crossing.FALLING, seen -> seen.verticalSpeed() + rate)));
    return reached == null ? Double.POSITIVE_INFINITY : propagator.time();
  }
}
