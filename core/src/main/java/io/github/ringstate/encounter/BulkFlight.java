package io.github.ringstate.encounter;

import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.Propagators;
import io.github.ringstate.integrate.FastPropagator;
import io.github.ringstate.pilot.Recognition;
import io.github.ringstate.pilot.Recovery;
import java.lang.invoke.VarHandle;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * Flies many descents from one approach, fast and without allocation: the equations of motion and
 * controls are those of {@link Encounter#fly()}, with a {@link FastPropagator}. What all descents
 * have in common, the flight before recognition, is flown once.
 *
 * <p>A descent may linger: sink without getting faster or slower, where a faster sink would grow by
 * itself. Whatever is not quite right grows there too: after some seconds a thousandth of a foot
 * has become feet, and a millisecond of delay decides whether the descent is arrested at all. A
 * descent that lingers for longer than a second, one in a thousand of random ones, is given up and
 * flown again from its approach on, in steps a sixth as long.
 *
 * <p>An instance is used over and over, by one thread at a time: the thread that flew the last
 * descent asks what came of it. Whoever meets another thread on it, or asks what came of another
 * thread's descent, gets an {@link IllegalStateException}. An {@link Approach} may be shared by any
 * number of threads, each with a flight of its own. What a descent does not have is NaN.
 */
public final class BulkFlight {

  /** Message when two threads use one flight. */
  public static final String TWO_THREADS =
      "a flight in bulk was used by two threads at once; each thread needs one of its own";

  /** How long a descent may linger before it is flown again, s. */
  private static final double LONGEST_LINGERING = 1;

  /** Tolerance of its steps then. */
  private static final double CAREFUL = 1e-6;

  private final Approach approach;
  private final boolean story;
  private final boolean onset;
  private final FastPropagator<Happening, Motion> propagator = Propagators.fast();
  private final Descent fast;
  private @Nullable Descent careful;
  private final AtomicBoolean flying = new AtomicBoolean();
  private volatile @Nullable Thread flownBy;
  private Descent descent;

  private BulkFlight(Approach approach, boolean story) {
    this.approach = approach;
    this.story = story;
    onset = approach.onset();
    propagator.patience(LONGEST_LINGERING);
    fast = new Descent(approach, propagator, story);
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
   * @throws UnfinishedFlightException if the flight used up its budget of evaluations
   * @throws java.util.concurrent.CancellationException if the thread is interrupted, which it stays
   * @throws IllegalStateException if another thread is flying with this
   */
  public Ending fly(Recovery recovery, Recognition recognition) {
    if (!flying.compareAndSet(false, true)) {
      throw new IllegalStateException(TWO_THREADS);
    }
    try {
      flownBy = Thread.currentThread();
      return flown(recovery, recognition);
    } finally {
      flying.set(false);
    }
  }

  private Ending flown(Recovery recovery, Recognition recognition) {
    if (!onset) {
      return Ending.NO_ONSET;
    }
    fast.flyQuickly(recovery, recognition);
    descent = fast;
    if (propagator.isGivenUp()) {
      descent = careful();
      descent.fly(recovery, recognition);
    }
    return descent.ending();
  }

  /** What the last descent has of a number, for the thread that flew it; NaN without onset. */
  private double asked(ToDoubleFunction<Descent> number) {
    requireMine();
    double answer = onset ? number.applyAsDouble(descent) : Double.NaN;
    requireStillMine();
    return answer;
  }

  private void requireMine() {
    if (flownBy != null && flownBy != Thread.currentThread()) {
      throw new IllegalStateException(TWO_THREADS);
    }
  }

  /** Another thread that began to fly while an answer was read has spoilt it. */
  private void requireStillMine() {
    VarHandle.loadLoadFence();
    if (flying.get()) {
      throw new IllegalStateException(TWO_THREADS);
    }
    requireMine();
  }

  private Descent careful() {
    if (careful == null) {
      Approach again = Approach.fly(approach.encounter(), Simulator.fast(CAREFUL));
      careful = new Descent(again, Propagators.fast(CAREFUL), story);
    }
    return careful;
  }

  /**
   * Height at onset less the lowest height, in the last descent.
   *
   * @return the loss, m; NaN unless the descent was arrested or the ground reached
   */
  public double altitudeLoss() {
    return asked(Descent::altitudeLoss);
  }

  /**
   * Height at recognition less the lowest height, in the last descent.
   *
   * @return the loss, m; NaN as above, and where the descent ended before recognition
   */
  public double lossAfterRecognition() {
    return asked(Descent::lossAfterRecognition);
  }

  /**
   * Greatest rate of descent after onset, in the last descent.
   *
   * @return the rate, m/s, positive; NaN without onset
   */
  public double peakDescent() {
    return asked(Descent::peakDescent);
  }

  /**
   * From onset to the arrest of the last descent.
   *
   * @return the time, s; NaN unless arrested
   */
  public double timeToArrest() {
    return asked(Descent::timeToArrest);
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
    return asked(Descent::impactSpeed);
  }

  /**
   * All that came of the last descent.
   *
   * @return the outcome; what happened on the way is in it only if the flight is one {@link
   *     #withEvents}
   */
  public Outcome outcome() {
    requireMine();
    Outcome answer = onset ? descent.outcome() : Outcome.NO_ONSET;
    requireStillMine();
    return answer;
  }
}
