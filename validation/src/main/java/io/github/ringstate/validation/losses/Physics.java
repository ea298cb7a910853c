package io.github.ringstate.validation.losses;

import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.RingMemory;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.rotor.BladeDrag;

/** Whose ring, engine and blades are flown. */
enum Physics {
  /**
   * Those of the first release, by its numbers: the ring goes at once and takes no losses of its
   * own, the engine answers at once, the drag of the blades does not rise with their load.
   */
  RELEASE {
    @Override
    Encounter applied(Encounter encounter) {
      return encounter
          .withCraft(
              encounter
                  .craft()
                  .with(Helicopter.ENGINE_TIME, 0)
                  .with(BladeDrag.PROFILE_DRAG_SLOPE, 0)
                  .with(BladeDrag.PROFILE_DRAG_CURVATURE, 0))
          .withInflow(RELEASE_RING, new HeaveDamping(RELEASE_RING));
    }
  },
  /** Those of today. */
  TODAY {
    @Override
    Encounter applied(Encounter encounter) {
      return encounter;
    }
  };

  private static final RingStateInflow RELEASE_RING =
      RingStateInflow.standard()
          .with(RingStateInflow.EXIT_TOTAL, 1.40)
          .with(RingStateInflow.FADE_EDGEWISE, 1.1)
          .with(RingStateInflow.LOSSES, 0)
          .with(RingMemory.DISSOLVING_TIME, 0);

  /**
   * An encounter with this physics.
   *
   * @param encounter the encounter as it is flown today
   * @return the changed encounter
   */
  abstract Encounter applied(Encounter encounter);
}
