package io.github.ringstate.encounter;

import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.Propagators;
import io.github.ringstate.integrate.FastPropagator;
import io.github.ringstate.pilot.Recognition;
import io.github.ringstate.pilot.Recovery;
import org.jspecify.annotations.Nullable;

/**
 * Flies many descents from one approach, fast and without allocation: the equations of motion and
 * controls are those of {@link Encounter#fly()}, with a {@link FastPropagator}. What all descents
 * have in common, the flight before recognition, is flown once.
 *
 * <p>A descent may linger: sink without getting faster or slower, where a faster sink would grow by
 * itself. Whatever is not quite right grows there too: after some seconds a thousandth of a foot
 * has become feet, and a millisecond of delay decides whether the descent is arrested at all. A
 * descent that lingers for longer than a second, one in a thousand of random ones, is flown again
 * from its approach on, in steps a sixth as long.
 *
 * <p>An instance is used over and over by one thread and is not safe to share. What a descent does
 * not have is NaN.
 */
public final class BulkFlight {

  /** How long a descent may linger before it is flown again, s. */
  private static final double LONGEST_LINGERING = 1;

  /** Tolerance of its steps then. */
  private static final double CAREFUL = 1e-6;

  private final Approach approach;
  private final boolean story;
  private final boolean onset;
  private final FastPropagator<EventKind, Motion> propagator = Propagators.fast();
  private final Descent fast;
  private @Nullable Descent careful;
  private Descent descent;

  private BulkFlight(Approach approach, boolean story) {
    this.approach = approach;
    this.story = story;
    onset = approach.onset();
    fast = new Descent(approach, propagator, null, story);
    descent = fast;
  }

  /**
   * Prepares for descents from an approach, to ask how they end and what they cost.
   *
   * @param approach the approach, best flown with a {@link
   *     io.github.ringstate.inflow.TabulatedInflow}
   */
  public BulkFlight(Approach approach) {
    this(approach, false);
  }

  /**
   * Prepares for descents of which all is told that {@link Encounter#fly()} tells; {@link #outcome}
   * then holds it. Takes a little longer, and allocates what it tells.
   *
   * @param approach the approach
   * @return the flight
   */
  public static BulkFlight withEvents(Approach approach) {
    return new BulkFlight(approach, true);
  }

  /**
   * Flies one descent.
   *
   * @param recovery what the pilot does
   * @param recognition when the pilot acts
   * @return how it ended
   */
  public Ending fly(Recovery recovery, Recognition recognition) {
    if (!onset) {
      return Ending.NO_ONSET;
    }
    fast.fly(recovery, recognition);
    descent = fast;
    if (propagator.timed() > LONGEST_LINGERING) {
      descent = careful();
      descent.fly(recovery, recognition);
    }
    return descent.ending();
  }

  private Descent careful() {
    if (careful == null) {
      Approach again = Approach.fly(approach.encounter(), Simulator.fast(CAREFUL));
      careful = new Descent(again, Propagators.fast(CAREFUL), null, story);
    }
    return careful;
  }

  /**
   * Height at onset less the lowest height, in the last descent.
   *
   * @return the loss, m; NaN unless the descent was arrested or the ground reached
   */
  public double altitudeLoss() {
    return onset ? descent.altitudeLoss() : Double.NaN;
  }

  /**
   * Height at recognition less the lowest height, in the last descent.
   *
   * @return the loss, m; NaN as above, and where the descent ended before recognition
   */
  public double lossAfterRecognition() {
    return onset ? descent.lossAfterRecognition() : Double.NaN;
  }

  /**
   * Greatest rate of descent after onset, in the last descent.
   *
   * @return the rate, m/s, positive; NaN without onset
   */
  public double peakDescent() {
    return onset ? descent.peakDescent() : Double.NaN;
  }

  /**
   * From onset to the arrest of the last descent.
   *
   * @return the time, s; NaN unless arrested
   */
  public double timeToArrest() {
    return onset ? descent.timeToArrest() : Double.NaN;
  }

  /**
   * From the start of the flight to onset.
   *
   * @return the time, s; NaN without onset
   */
  public double onsetTime() {
    return onset ? approach.time() : Double.NaN;
  }

  /**
   * Rate of descent at ground contact, in the last descent.
   *
   * @return the speed, m/s, positive; NaN unless the ground was reached
   */
  public double impactSpeed() {
    return onset ? descent.impactSpeed() : Double.NaN;
  }

  /**
   * All that came of the last descent.
   *
   * @return the outcome; what happened on the way is in it only if the flight is one {@link
   *     #withEvents}
   */
  public Outcome outcome() {
    return onset ? descent.outcome() : Outcome.NO_ONSET;
  }
}
