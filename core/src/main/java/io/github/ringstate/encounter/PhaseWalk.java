package io.github.ringstate.encounter;

import io.github.ringstate.dynamics.BadCommandException;
import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.pilot.Cockpit;
import io.github.ringstate.pilot.NoRecovery;
import io.github.ringstate.pilot.Phase;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.quantity.NotFiniteException;
import java.util.List;

/** A pilot's way through the phases of a recovery. */
final class PhaseWalk {

  /** Phases after which a recovery is taken to go round in a circle at one instant. */
  private static final int MOST_PHASES = 10_000;

  private Recovery recovery = new NoRecovery();
  private List<Phase> phases = recovery.phases();
  private Phase phase = phases.get(0);
  private double techniqueBegan;
  private double phaseBegan;
  private int next;
  private int flown;

  /** Begins a recovery at an instant, s. */
  void begin(Recovery other, double time) {
    List<Phase> list = phasesOf(other);
    recovery = other;
    flown = 0;
    begin(list, time);
  }

  /** The phases of a recovery, which has some, and none of them null. */
  static List<Phase> phasesOf(Recovery recovery) {
    List<Phase> list = recovery.phases();
    if (list == null || list.isEmpty()) {
      throw new IllegalArgumentException("the recovery " + recovery.name() + Encounter.NO_PHASES);
    }
    for (int i = 0; i < list.size(); i++) {
      if (list.get(i) == null) {
        throw new IllegalArgumentException(
            "the recovery " + recovery.name() + " has null in place of phase " + (i + 1));
      }
    }
    return list;
  }

  private void begin(List<Phase> list, double time) {
    phases = list;
    phase = list.get(0);
    next = 1;
    techniqueBegan = time;
    phaseBegan = time;
  }

  /** The phase that is flown. */
  Phase phase() {
    return phase;
  }

  /** When the technique that is flown began, s. */
  double techniqueBegan() {
    return techniqueBegan;
  }

  /** When the phase that is flown began, s. */
  double phaseBegan() {
    return phaseBegan;
  }

  /** Commands the controls as the phase has it, and names it where that is wrong. */
  void command(Cockpit seen, Controls controls) {
    try {
      phase.command(seen, controls);
    } catch (BadCommandException bad) {
      throw new BadCommandException(
          "in the phase '"
              + phase.name()
              + "' of the recovery "
              + recovery.name()
              + ", "
              + seen.sincePhaseBegan()
              + " s after it began",
          bad);
    }
  }

  /** The quantity at whose rise through zero the phase ends. */
  double end(Cockpit seen) {
    double end = phase.end(seen);
    if (!(Math.abs(end) < Double.POSITIVE_INFINITY)) {
      throw new NotFiniteException(
          recovery.name(), "the end of the phase '" + phase.name() + "' of the recovery", end);
    }
    return end;
  }

  /** Goes on from a phase that ends at an instant, s. */
  void goOn(Cockpit now, double time) {
    if (++flown > MOST_PHASES) {
      throw bad("has more than " + MOST_PHASES + " phases in one descent");
    }
    List<Phase> instead = phase.instead(now);
    if (instead == null) {
      throw bad("has null in place of what follows '" + phase.name() + "'");
    }
    if (!instead.isEmpty()) {
      begin(instead, time);
    } else if (next < phases.size()) {
      phase = phases.get(next++);
      phaseBegan = time;
    } else {
      throw bad("has no phase after '" + phase.name() + "'");
    }
  }

  private IllegalStateException bad(String what) {
    return new IllegalStateException("the recovery " + recovery.name() + " " + what);
  }
}
