package io.github.ringstate.encounter;

import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.Propagators;
import io.github.ringstate.integrate.PrecisePropagator;
import io.github.ringstate.integrate.Propagator;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * A way of flying encounters: each flight gets a propagator of its own, so that any number of
 * threads may share a simulator.
 */
public final class Simulator {

  private final Supplier<Propagator<Happening, Motion>> propagators;

  /**
   * Creates a simulator.
   *
   * @param propagators makes what it flies with; see {@link Propagators}
   */
  public Simulator(Supplier<Propagator<Happening, Motion>> propagators) {
    this.propagators = propagators;
  }

  /**
   * The usual precise simulator.
   *
   * @return a new one
   */
  public static Simulator precise() {
    return new Simulator(Propagators::precise);
  }

  /**
   * A precise simulator with Dormand and Prince's pair of order 8.
   *
   * @param tolerance the relative tolerance, and the absolute one in SI units, positive
   * @return a new one
   */
  public static Simulator dormandPrince(double tolerance) {
    return new Simulator(() -> Propagators.dormandPrince(tolerance));
  }

  /**
   * A precise simulator with Gragg, Bulirsch and Stoer's extrapolation, as a second opinion.
   *
   * @param tolerance the relative tolerance, and the absolute one in SI units, positive
   * @return a new one
   */
  public static Simulator extrapolation(double tolerance) {
    return new Simulator(() -> Propagators.extrapolation(tolerance));
  }

  /**
   * A simulator with any adaptive integrator of Hipparchus.
   *
   * @param maker makes the integrator
   * @param tolerance the relative tolerance, and the absolute one in SI units, positive
   * @return a new one
   */
  public static Simulator with(PrecisePropagator.Maker maker, double tolerance) {
    return new Simulator(() -> Propagators.with(maker, tolerance));
  }

  /**
   * The fast simulator at its standard tolerance.
   *
   * @return a new one
   */
  public static Simulator fast() {
    return new Simulator(Propagators::fast);
  }

  /**
   * A fast simulator.
   *
   * @param tolerance error of a step that is let pass, in units of about 1 m, 1 m/s, 0.2 rad,
   *     positive
   * @return a new one
   */
  public static Simulator fast(double tolerance) {
    return new Simulator(() -> Propagators.fast(tolerance));
  }

  /** Flies an encounter on from an approach that it shares with others. */
  Outcome fly(Encounter encounter, Approach approach, @Nullable Trajectory trajectory) {
    Propagator<Happening, Motion> propagator = ready(encounter, approach);
    if (trajectory == null) {
      return approach.onset() ? flown(encounter, approach, propagator).outcome() : Outcome.NO_ONSET;
    }
    // a first flight says where the samples end
    double end = approach.onset() ? flown(encounter, approach, propagator).end() : approach.time();
    propagator.sample(trajectory.begin(end));
    trajectory.phase(Approach.ENTRY);
    approach.again(propagator);
    if (!approach.onset()) {
      return Outcome.NO_ONSET;
    }
    Descent descent = new Descent(approach, propagator, true, trajectory::phase);
    descent.fly(encounter.recovery(), encounter.recognition());
    return descent.outcome();
  }

  private static Descent flown(
      Encounter encounter, Approach approach, Propagator<Happening, Motion> propagator) {
    Descent descent = new Descent(approach, propagator, true);
    descent.fly(encounter.recovery(), encounter.recognition());
    return descent;
  }

  /** Flies an encounter on from an approach and keeps all of it. */
  RecordedFlight record(Encounter encounter, Approach approach) {
    Propagator<Happening, Motion> propagator = ready(encounter, approach);
    Recorder recorder = new Recorder();
    propagator.listen(recorder);
    recorder.phase(Approach.ENTRY);
    approach.again(propagator);
    if (!approach.onset()) {
      return new RecordedFlight(
          encounter, Outcome.NO_ONSET, recorder.history(approach, approach.time()));
    }
    Descent descent = new Descent(approach, propagator, true, recorder::phase);
    descent.fly(encounter.recovery(), encounter.recognition());
    Outcome outcome = descent.outcome();
    return new RecordedFlight(encounter, outcome, recorder.history(approach, descent.end()));
  }

  private Propagator<Happening, Motion> ready(Encounter encounter, Approach approach) {
    if (!approach.serves(encounter)) {
      throw new IllegalArgumentException(
          "the approach is that of an encounter which differs in more than recognition and"
              + " recovery");
    }
    return propagator();
  }

  Propagator<Happening, Motion> propagator() {
    return propagators.get();
  }
}
