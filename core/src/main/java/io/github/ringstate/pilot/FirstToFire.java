package io.github.ringstate.pilot;

import io.github.ringstate.dynamics.Controls;
import java.util.ArrayList;
import java.util.List;

/** Waits, the controls held, for the first of several cues, and does what belongs to that cue. */
public final class FirstToFire implements Recovery {

  /**
   * A cue and what is done on it.
   *
   * @param cue what is waited for
   * @param recovery what is done then
   */
  public record Branch(Cue cue, Recovery recovery) {}

  private final List<Branch> branches;
  private final List<String> phases;

  /**
   * Creates it.
   *
   * @param branches the cues with what belongs to them; at least one; where two fire at once the
   *     earlier in the list counts
   */
  public FirstToFire(List<Branch> branches) {
    if (branches.isEmpty()) {
      throw new IllegalArgumentException("waiting for the first cue takes at least one cue");
    }
    this.branches = List.copyOf(branches);
    List<String> all = new ArrayList<>();
    all.add("waiting");
    for (Branch branch : this.branches) {
      all.addAll(branch.recovery().phases());
    }
    phases = List.copyOf(all);
  }

  @Override
  public String name() {
    return "first-to-fire";
  }

  @Override
  public List<String> phases() {
    return phases;
  }

  @Override
  public void command(int phase, Cockpit seen, Controls controls) {
    if (phase == 0) {
      controls.hold(seen.pitch(), seen.bank(), seen.collective());
      return;
    }
    int begin = beginOfBranch(phase);
    branchAt(begin).recovery().command(phase - begin, seen, controls);
  }

  @Override
  public double phaseEnd(int phase, Cockpit seen) {
    if (phase == 0) {
      double strongest = Double.NEGATIVE_INFINITY;
      for (Branch branch : branches) {
        strongest = Math.max(strongest, branch.cue().level(seen));
      }
      return strongest;
    }
    int begin = beginOfBranch(phase);
    Recovery recovery = branchAt(begin).recovery();
    boolean last = phase - begin == recovery.phases().size() - 1;
    return last ? -1 : recovery.phaseEnd(phase - begin, seen);
  }

  @Override
  public int next(int phase, Cockpit seen) {
    if (phase > 0) {
      int begin = beginOfBranch(phase);
      return begin + branchAt(begin).recovery().next(phase - begin, seen);
    }
    int begin = 1;
    for (Branch branch : branches.subList(0, fired(seen))) {
      begin += branch.recovery().phases().size();
    }
    return begin;
  }

  @Override
  public double limitMargin(int phase, Cockpit seen) {
    if (phase == 0) {
      return 1;
    }
    int begin = beginOfBranch(phase);
    return branchAt(begin).recovery().limitMargin(phase - begin, seen);
  }

  /**
   * The first in the list that has fired, or the nearest to it if none has. Levels of different
   * cues are in different units, so that of two that have fired the greater means nothing.
   */
  private int fired(Cockpit seen) {
    int nearest = 0;
    double level = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < branches.size(); i++) {
      double other = branches.get(i).cue().level(seen);
      if (other >= 0) {
        return i;
      }
      if (other > level) {
        nearest = i;
        level = other;
      }
    }
    return nearest;
  }

  private int beginOfBranch(int phase) {
    int begin = 1;
    for (Branch branch : branches) {
      int size = branch.recovery().phases().size();
      if (phase < begin + size) {
        return begin;
      }
      begin += size;
    }
    throw new IllegalArgumentException("there is no phase " + phase);
  }

  private Branch branchAt(int begin) {
    int at = 1;
    for (Branch branch : branches) {
      if (at == begin) {
        return branch;
      }
      at += branch.recovery().phases().size();
    }
    throw new IllegalArgumentException("no branch begins at phase " + begin);
  }
}
