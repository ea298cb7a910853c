package io.github.ringstate.pilot;

import io.github.ringstate.dynamics.Controls;
import java.util.ArrayList;
import java.util.List;

/**
 * One recovery after another: the first is broken off, in whatever phase it is, at a time or on a
 * cue, and the second begins.
 */
public final class Switched implements Recovery {

  private final Recovery first;
  private final Recovery second;
  private final Cue until;
  private final int split;
  private final List<String> phases;

  private Switched(Recovery first, Cue until, Recovery second) {
    this.first = first;
    this.second = second;
    this.until = until;
    split = first.phases().size();
    List<String> all = new ArrayList<>(first.phases());
    all.addAll(second.phases());
    phases = List.copyOf(all);
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
    Recognition.DELAY.check(seconds);
    return new Switched(
        first, Cue.of("time since recognition", seen -> seen.sinceRecognition() - seconds), second);
  }

  @Override
  public String name() {
    return first.name() + "-then-" + second.name();
  }

  @Override
  public List<String> phases() {
    return phases;
  }

  @Override
  public void command(int phase, Cockpit seen, Controls controls) {
    if (phase < split) {
      first.command(phase, seen, controls);
    } else {
      second.command(phase - split, seen, controls);
    }
  }

  @Override
  public double phaseEnd(int phase, Cockpit seen) {
    if (phase >= split) {
      return second.phaseEnd(phase - split, seen);
    }
    double broken = until.level(seen);
    return phase == split - 1 ? broken : Math.max(broken, first.phaseEnd(phase, seen));
  }

  @Override
  public int next(int phase, Cockpit seen) {
    if (phase >= split) {
      return split + second.next(phase - split, seen);
    }
    return until.level(seen) >= -ROUNDING || phase == split - 1 ? split : first.next(phase, seen);
  }

  /** How far below zero the level of a cue may be found at the instant at which it fired. */
  private static final double ROUNDING = 1e-7;

  @Override
  public double limitMargin(int phase, Cockpit seen) {
    return phase < split ? first.limitMargin(phase, seen) : second.limitMargin(phase - split, seen);
  }
}
