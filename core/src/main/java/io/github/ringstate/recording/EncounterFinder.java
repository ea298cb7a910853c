package io.github.ringstate.recording;

import io.github.ringstate.air.Air;
import io.github.ringstate.air.WindField;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.inflow.BoundaryCriterion;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.util.FastMath;

/**
 * Finds encounters with the ring state in a recording. An onset is where the smoothed descent
 * crosses the boundary, and its time is as uncertain as the vertical speed, the ground speed and
 * the wind make it. An arrest is where the vertical speed comes back to zero.
 */
public final class EncounterFinder {

  /**
   * The least standard deviation of a difference of two heights that are written in steps, without
   * a vertical speed, in steps: one over the root of 12 for each height. More readings do not
   * lessen it while the height goes slowly.
   */
  public static final double ROUNDED_OFF = FastMath.sqrt(2.0 / 12);

  /** Two visits to the ring state within so long are one encounter, s. */
  private static final double APART = 3;

  /** A visit as short as this is noise, s. */
  private static final double SHORTEST = 0.4;

  /** The descent is followed for so long after the last moment in the ring state, s. */
  private static final double FOLLOWED = 60;

  /** Inside, if the deepest moment is this many standard deviations beyond the boundary. */
  private static final double SURE = 1.645;

  /** Beyond these speeds no boundary is near, in hover induced velocities. */
  private static final double WIDEST = 2.5;

  /** Descent beyond which slow flight with all the power is told as lack of power, m/s. */
  private static final double POWER_DESCENT = Unit.FOOT_PER_MINUTE.toSi(300);

  /** Share of the take-off limit that counts as all the power there is. */
  private static final double ALL_POWER = 0.95;

  private static final double NUDGE = 0.05;

  /** Readings within so long either way say how uncertain a vertical speed is, s. */
  private static final double AROUND = 3;

  /** Between readings further apart nothing is said of where the descent turned, s. */
  private static final double LONGEST_TURN = 2;

  private final BoundaryCriterion boundary;
  private final WindField wind;
  private final double windDeviation;
  private final double groundSpeedDeviation;
  private final double hoverInduced;

  /**
   * Creates a finder.
   *
   * @param craft the helicopter at its mass
   * @param air the air it flew in
   * @param wind the wind, given or estimated
   * @param windDeviation standard deviation of its speed along the flight, m/s
   * @param groundSpeedDeviation standard deviation of a recorded ground speed, m/s
   * @param boundary what bounds the ring state
   */
  public EncounterFinder(
      Helicopter craft,
      Air air,
      WindField wind,
      double windDeviation,
      double groundSpeedDeviation,
      BoundaryCriterion boundary) {
    if (!(windDeviation >= 0) || !(groundSpeedDeviation >= 0)) {
      throw new IllegalArgumentException("a standard deviation is not negative");
    }
    this.boundary = boundary;
    this.wind = wind;
    this.windDeviation = windDeviation;
    this.groundSpeedDeviation = groundSpeedDeviation;
    hoverInduced = craft.hoverInducedVelocity(air);
  }

  /**
   * Creates a finder for flights like an encounter: of its craft, in its air, with its boundary.
   *
   * @param like the encounter
   * @param wind the wind that blew
   * @param windDeviation standard deviation of what is known of it, m/s, along the flight
   * @param groundSpeedDeviation standard deviation of recorded ground speeds, m/s
   * @return the finder
   * @throws IllegalArgumentException if a deviation is negative or no number
   */
  public static EncounterFinder like(
      Encounter like, WindField wind, double windDeviation, double groundSpeedDeviation) {
    return new EncounterFinder(
        like.craft(), like.air(), wind, windDeviation, groundSpeedDeviation, like.boundary());
  }

  /**
   * Finds all encounters of a recording.
   *
   * @param motion the smoothed vertical motion of a recording with ground speed and track
   * @return the encounters in order of time
   * @throws IllegalArgumentException if ground speed or track is not recorded
   */
  public List<FoundEncounter> find(VerticalMotion motion) {
    Recording recording = motion.recording();
    for (Channel needed : List.of(Channel.GROUND_SPEED, Channel.TRACK)) {
      if (!recording.channels().contains(needed)) {
        throw new IllegalArgumentException(
            "without " + needed + " nothing can be said of the airspeed");
      }
    }
    return new Search(motion).all();
  }

  /** The search through one recording. */
  private final class Search {
    private final VerticalMotion motion;
    private final Recording recording;
    private final AirMotion air;
    private final double[] margin;
    private final double roundedOff;

    Search(VerticalMotion motion) {
      this.motion = motion;
      recording = motion.recording();
      air = new AirMotion(motion, wind, hoverInduced);
      margin = new double[recording.size()];
      for (int k = 0; k < margin.length; k++) {
        margin[k] = margin(k, 0, 0);
      }
      roundedOff = roundedOff(recording);
    }

    /** As {@link AirMotion#margin}; 1 where no boundary is near, NaN where the air is unknown. */
    private double margin(int k, double faster, double ahead) {
      if (!air.known(k)) {
        return Double.NaN;
      }
      double limit = WIDEST * hoverInduced;
      double speed = motion.verticalSpeed(k);
      if (speed > 0 || speed < -limit || air.horizontal(k) > limit) {
        return MarginCrossing.NOT_NEAR;
      }
      return air.margin(boundary, k, faster, ahead);
    }

    List<FoundEncounter> all() {
      List<FoundEncounter> found = new ArrayList<>();
      int k = 0;
      while (k < margin.length) {
        if (isPartOfOne(k)) {
          int last = lastInside(k);
          if (recording.time(last) - recording.time(k) >= SHORTEST) {
            FoundEncounter encounter = encounter(firstInside(k, last), last);
            found.add(encounter);
            k = Math.max(last, endOf(encounter));
          } else {
            k = last;
          }
        }
        k++;
      }
      return found;
    }

    private boolean isPartOfOne(int k) {
      return margin[k] < 0 || sinksWithAllPower(k);
    }

    /** A sink that all the power there is does not hold, at a low airspeed. */
    private boolean sinksWithAllPower(int k) {
      return recording.value(Channel.TORQUE, k) >= ALL_POWER
          && motion.verticalSpeed(k) < -POWER_DESCENT
          && air.horizontal(k) < hoverInduced;
    }

    /** The onset of the ring state if it was entered at all, else of the sink. */
    private int firstInside(int first, int last) {
      for (int k = first; k <= last; k++) {
        if (margin[k] < 0) {
          return k;
        }
      }
      return first;
    }

    private int endOf(FoundEncounter encounter) {
      return encounter.arrestTime().map(at -> recording.indexAt(at.value())).orElse(0);
    }

    private int lastInside(int first) {
      int last = first;
      for (int k = first;
          k < margin.length && recording.time(k) - recording.time(last) < APART;
          k++) {
        last = isPartOfOne(k) ? k : last;
      }
      return last;
    }

    private FoundEncounter encounter(int first, int last) {
      MarginCrossing crossing = new MarginCrossing(recording, margin, first);
      double onset = crossing.time();
      double onsetDeviation = crossing.deviation(marginDeviation(first));
      int start = first;
      while (start > 0 && motion.verticalSpeed(start) < 0 && !gapBefore(start)) {
        start--;
      }
      int arrest = arrest(last);
      int end = arrest < 0 ? lastFollowed(last) : arrest;
      int lowest = first;
      int fastest = first;
      for (int k = first; k <= end; k++) {
        lowest = motion.height(k) < motion.height(lowest) ? k : lowest;
        fastest = motion.verticalSpeed(k) < motion.verticalSpeed(fastest) ? k : fastest;
      }
      double back = onset - recording.time(first);
      double onsetHeight =
          motion.height(first)
              + (motion.verticalSpeed(first) + motion.acceleration(first) * back / 2) * back;
      double scale = motion.scale(Math.max(0, first - 1), end);
      double between =
          Math.max(scale * motion.heightDifferenceDeviation(first, lowest), roundedOff);
      double early = motion.verticalSpeed(first) * onsetDeviation;
      return new FoundEncounter(
          recording.time(start),
          new Estimate(onset, onsetDeviation),
          onsetHeight,
          sink(first, fastest),
          ControlWatch.firstMovement(recording, onset, recording.time(end)),
          arrest < 0 ? Optional.empty() : Optional.of(arrestTime(arrest)),
          new Estimate(
              Math.max(0, onsetHeight - lowestHeight(lowest)), FastMath.hypot(between, early)),
          new Estimate(
              Math.max(0, -motion.verticalSpeed(fastest)),
              scale * motion.verticalSpeedDeviation(fastest)),
          verdict(first, last, arrest));
    }

    /** A vertical speed that is recorded tells a difference of heights better than they do, m. */
    private static double roundedOff(Recording recording) {
      if (recording.channels().contains(Channel.VERTICAL_SPEED)) {
        return 0;
      }
      double step = recording.heightResolution();
      return Double.isNaN(step) ? 0 : ROUNDED_OFF * step;
    }

    /** Between readings too: as low as speed and acceleration at the lowest reading say. */
    private double lowestHeight(int k) {
      double speed = motion.verticalSpeed(k);
      double acceleration = motion.acceleration(k);
      int other = Math.min(Math.max(speed < 0 ? k + 1 : k - 1, 0), margin.length - 1);
      double away = Math.abs(recording.time(other) - recording.time(k));
      boolean turns = Math.abs(speed) <= acceleration * away && away <= LONGEST_TURN;
      return motion.height(k)
          - (turns && acceleration > 0 ? speed * speed / (2 * acceleration) : 0);
    }

    private boolean gapBefore(int k) {
      return MarginCrossing.gapBefore(recording, k);
    }

    /** The deviation of the margin, by the slopes to both speeds. */
    private double marginDeviation(int k) {
      double here = margin[k];
      double byVertical = (margin(k, NUDGE, 0) - here) / NUDGE * verticalSpeedDeviation(k);
      double byHorizontal =
          (margin(k, 0, NUDGE) - here)
              / NUDGE
              * FastMath.hypot(windDeviation, groundSpeedDeviation);
      return FastMath.hypot(byVertical, byHorizontal);
    }

    /** With what the readings around show of it. */
    private double verticalSpeedDeviation(int k) {
      int from = recording.indexAt(recording.time(k) - AROUND);
      int to = Math.min(margin.length, recording.indexAt(recording.time(k) + AROUND)) - 1;
      return motion.scale(from, Math.max(from, to)) * motion.verticalSpeedDeviation(k);
    }

    private int arrest(int last) {
      for (int k = last; k < margin.length && !(k > last && gapBefore(k)); k++) {
        if (recording.time(k) - recording.time(last) > FOLLOWED) {
          return -1;
        }
        if (motion.verticalSpeed(k) >= 0) {
          return k;
        }
      }
      return -1;
    }

    private int lastFollowed(int last) {
      int k = last;
      while (k + 1 < margin.length
          && !gapBefore(k + 1)
          && recording.time(k + 1) - recording.time(last) <= FOLLOWED) {
        k++;
      }
      return k;
    }

    private Estimate arrestTime(int k) {
      double speed = motion.verticalSpeed(k);
      double before = motion.verticalSpeed(k - 1);
      double dt = recording.time(k) - recording.time(k - 1);
      double rate = (speed - before) / dt;
      return new Estimate(
          recording.time(k) - speed / rate, motion.verticalSpeedDeviation(k) / Math.max(rate, 0.1));
    }

    /** From here to the fastest descent the vertical speed falls, beyond its own uncertainty. */
    private Optional<Estimate> sink(int first, int fastest) {
      double gained = motion.verticalSpeed(first) - motion.verticalSpeed(fastest);
      if (gained < 2 * motion.verticalSpeedDeviation(fastest)) {
        return Optional.empty();
      }
      int k = fastest;
      while (k > 0 && motion.acceleration(k - 1) < 0 && !gapBefore(k)) {
        k--;
      }
      double slope = Math.max(0.05, -motion.acceleration(Math.min(k + 1, fastest)));
      return Optional.of(new Estimate(recording.time(k), motion.verticalSpeedDeviation(k) / slope));
    }

    private Verdict verdict(int first, int last, int arrest) {
      boolean sure = false;
      boolean inside = false;
      for (int k = first; k <= last && !sure; k++) {
        inside |= margin[k] < 0;
        sure = margin[k] < 0 && -margin[k] > SURE * marginDeviation(k);
      }
      if (!inside) {
        return Verdict.POWER_ONLY;
      }
      if (!sure) {
        return Verdict.AT_THE_BOUNDARY;
      }
      return arrest < 0 ? Verdict.NO_END : Verdict.RING_STATE;
    }
  }
}
