package io.github.ringstate.pilot;

import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.quantity.MadeOf;
import java.util.List;

/**
 * One recovery after another: the first is broken off, in whatever phase it is, at a time or on a
 * cue, and the second begins.
 */
public final class Switched extends MadeOf implements Recovery {

  /** How far below zero the level of a cue may be found at the instant at which it fired. */
  private static final double ROUNDING = 1e-7;

  private final Recovery first;
  private final Cue until;
  private final Recovery second;
  private final List<Phase> phases;

  private Switched(Recovery first, Cue until, Recovery second) {
    super(first, until, second);
    this.first = first;
    this.until = until;
    this.second = second;
    phases = brokenOff(first.phases(), until, second.phases());
  }

  /**
   * Changes over on a cue.
   *
   * @param first what is done first
   * @param until what makes the pilot change over
   * @param second what is done then
   * @return the composed recovery
   */
  public static Recovery onCue(Recovery first, Cue until, Recovery second) {
    return new Switched(first, until, second);
  }

  /**
   * Changes over after a time, as after a wrong first instinct.
   *
   * @param first what is done first
   * @param seconds how long after recognition, s; not negative
   * @param second what is done then
   * @return the composed recovery
   */
  public static Recovery after(Recovery first, double seconds, Recovery second) {
    return new Switched(first, Cues.sinceRecognition(seconds), second);
  }

  /**
   * What is done first.
   *
   * @return the recovery
   */
  public Recovery first() {
    return first;
  }

  /**
   * What makes the pilot change over.
   *
   * @return the cue
   */
  public Cue until() {
    return until;
  }

  /**
   * What is done then.
   *
   * @return the recovery
   */
  public Recovery second() {
    return second;
  }

  @Override
  public String name() {
    return first.name() + "-then-" + second.name();
  }

  /** The phases of the first; each leads to those of the second once the cue fires. */
  @Override
  public List<Phase> phases() {
    return phases;
  }

  private static List<Phase> brokenOff(List<Phase> phases, Cue until, List<Phase> then) {
    return phases.stream().<Phase>map(phase -> new BrokenOff(phase, until, then)).toList();
  }

  private record BrokenOff(Phase phase, Cue until, List<Phase> then) implements Phase {

    @Override
    public String name() {
      return phase.name();
    }

    @Override
    public void command(Cockpit seen, Controls controls) {
      phase.command(seen, controls);
    }

    @Override
    public double end(Cockpit seen) {
      double broken = until.level(seen);
      return phase.ends() ? Math.max(broken, phase.end(seen)) : broken;
    }

    @Override
    public List<Phase> instead(Cockpit seen) {
      if (until.level(seen) >= -ROUNDING || !phase.ends()) {
        return then;
      }
      List<Phase> other = phase.instead(seen);
      return other.isEmpty() ? other : brokenOff(other, until, then);
    }

    @Override
    public double limitMargin(Cockpit seen) {
      return phase.limitMargin(seen);
    }
  }
}
