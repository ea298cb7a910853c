package io.github.ringstate.encounter;

import io.github.ringstate.inflow.BoundaryCriterion;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.inflow.RingBand;
import io.github.ringstate.pilot.Recognition;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Whether the outcome of a flight is sensitive: on an edge, where next to nothing decides how it
 * ends. There no figure is known well, whoever flies it, for an error of rounding may decide too.
 *
 * <p>It flies the encounter twice more, in bulk: once with all a little sooner, the boundary wider
 * by 0.001 of the criterion's own scale and the pilot 0.01 s earlier, and once with all as much
 * later. The outcome is sensitive if one of the two ends in another way, if it loses 5 ft more or
 * less, or if it is not arrested and leaves the ring state where the other does not. Steps and
 * bound are assumed: no pilot acts to a hundredth of a second, the boundary is known far worse, and
 * an ordinary descent loses below 1 ft in that time.
 *
 * <p>An instance checks any number of recoveries and delays from one approach, for one thread at a
 * time.
 */
public final class EdgeCheck {

  /** By how much the pilot acts sooner or later, s (assumed). */
  public static final double DELAY_STEP = 0.01;

  /** By how much the boundary is wider or narrower, on its own scale (assumed). */
  public static final double MARGIN_STEP = 1e-3;

  /** Difference of losses that is none, m (assumed). */
  public static final double SAME_LOSS = Unit.FOOT.toSi(5);

  private final Encounter encounter;
  private final BulkFlight sooner;
  private final BulkFlight later;

  /**
   * Prepares for outcomes of flights from one approach.
   *
   * @param encounter the encounter; its recognition and recovery play no part
   * @throws io.github.ringstate.dynamics.NoSteadyFlightException if the craft cannot start the
   *     entry
   */
  public EdgeCheck(Encounter encounter) {
    this.encounter = encounter;
    sooner = shifted(encounter, -MARGIN_STEP);
    later = shifted(encounter, MARGIN_STEP);
  }

  private static BulkFlight shifted(Encounter encounter, double by) {
    return BulkFlight.withEvents(
        Approach.fly(
            encounter.withInflow(encounter.inflow(), new ShiftedBoundary(encounter.boundary(), by)),
            Simulator.fast()));
  }

  /**
   * Whether this checks an encounter too.
   *
   * @param other the encounter
   * @return true if it differs in recognition and recovery at most
   */
  public boolean serves(Encounter other) {
    return Approach.differInPilotAtMost(encounter, other);
  }

  /**
   * Whether an outcome is sensitive.
   *
   * @param recovery what the pilot did
   * @param recognition when the pilot acted
   * @param outcome what came of it, flown in whichever way that tells what happened on the way
   * @return true if a flight a little sooner or later is another; also if one of them used up its
   *     budget of evaluations
   */
  public boolean isSensitive(Recovery recovery, Recognition recognition, Outcome outcome) {
    try {
      return differs(outcome, sooner, recovery, recognition, -DELAY_STEP)
          || differs(outcome, later, recovery, recognition, DELAY_STEP);
    } catch (UnfinishedFlightException unfinished) {
      return true;
    }
  }

  private static boolean differs(
      Outcome outcome, BulkFlight flight, Recovery recovery, Recognition recognition, double by) {
    double delay =
        Math.min(
            Math.max(recognition.delay() + by, Recognition.DELAY.low()), Recognition.DELAY.high());
    flight.fly(recovery, recognition.withDelay(delay));
    return !isLike(outcome, flight.outcome());
  }

  private static boolean isLike(Outcome one, Outcome other) {
    return one.ending() == other.ending()
        && Math.abs(one.altitudeLoss().orElse(0) - other.altitudeLoss().orElse(0)) <= SAME_LOSS
        && (one.ending() != Ending.NOT_ARRESTED
            || one.happened(EventKind.RING_STATE_LEFT)
                == other.happened(EventKind.RING_STATE_LEFT));
  }

  /**
   * A boundary that lies farther in by so much of its scale, or farther out if that is negative.
   */
  record ShiftedBoundary(BoundaryCriterion of, double by) implements BoundaryCriterion {

    @Override
    public String name() {
      return of.name();
    }

    @Override
    public boolean isOfPath() {
      return of.isOfPath();
    }

    @Override
    public BoundaryCriterion over(InflowModel inflow) {
      return new ShiftedBoundary(of.over(inflow), by);
    }

    @Override
    public double margin(double edgewise, double axial) {
      return of.margin(edgewise, axial) + by;
    }

    @Override
    public List<RingBand> bands(double edgewise) {
      return of.bands(edgewise);
    }

    @Override
    public OptionalDouble reach() {
      return of.reach();
    }
  }
}
