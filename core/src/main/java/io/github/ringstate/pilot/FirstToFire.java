package io.github.ringstate.pilot;

import io.github.ringstate.dynamics.Controls;
import java.util.List;

/**
 * Waits, the controls held, for the first of several cues, and does what belongs to that cue.
 *
 * @param branches the cues with what belongs to them; at least one; where two fire at once the
 *     earlier in the list counts
 */
public record FirstToFire(List<Branch> branches) implements Recovery {

  /**
   * A cue and what is done on it.
   *
   * @param cue what is waited for
   * @param recovery what is done then
   */
  public record Branch(Cue cue, Recovery recovery) {}

  /** Copies the branches and checks that there are some. */
  public FirstToFire {
    if (branches.isEmpty()) {
      throw new IllegalArgumentException("waiting for the first cue takes at least one cue");
    }
    branches = List.copyOf(branches);
  }

  @Override
  public String name() {
    return "first-to-fire";
  }

  /** One phase, that leads to those of the branch whose cue fires. */
  @Override
  public List<Phase> phases() {
    return List.of(new Waiting(branches));
  }

  private record Waiting(List<Branch> branches) implements Phase {

    @Override
    public String name() {
      return "waiting";
    }

    @Override
    public void command(Cockpit seen, Controls controls) {
      controls.hold(seen.pitch(), seen.bank(), seen.collective());
    }

    @Override
    public double end(Cockpit seen) {
      double strongest = Double.NEGATIVE_INFINITY;
      for (Branch branch : branches) {
        strongest = Math.max(strongest, branch.cue().level(seen));
      }
      return strongest;
    }

    /**
     * The first in the list that has fired, or the nearest to it if none has. Levels of different
     * cues are in different units, so that of two that have fired the greater means nothing.
     */
    @Override
    public List<Phase> instead(Cockpit seen) {
      Branch nearest = branches.get(0);
      double level = Double.NEGATIVE_INFINITY;
      for (Branch branch : branches) {
        double other = branch.cue().level(seen);
        if (other >= 0) {
          return branch.recovery().phases();
        }
        if (other > level) {
          nearest = branch;
          level = other;
        }
      }
      return nearest.recovery().phases();
    }
  }
}
