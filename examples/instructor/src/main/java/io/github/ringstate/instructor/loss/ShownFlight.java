package io.github.ringstate.instructor.loss;

import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.encounter.Trajectory;
import io.github.ringstate.pilot.Technique;
import java.util.ArrayList;
import java.util.List;

/**
 * One flight with its way through the air, to be drawn.
 *
 * @param recovery what the pilot did
 * @param outcome what came of it
 * @param path where it was at equal steps of time
 */
record ShownFlight(Technique recovery, Outcome outcome, List<Point> path) {

  private static final double STEP = 0.1;

  /**
   * One instant.
   *
   * @param time since the flight began, s
   * @param height above the ground, or above the height at onset, m
   */
  record Point(double time, double height) {}

  ShownFlight {
    path = List.copyOf(path);
  }

  static ShownFlight fly(Encounter base, Technique recovery) {
    List<Point> path = new ArrayList<>();
    Outcome outcome =
        base.withRecovery(recovery.standard())
            .fly(
                Simulator.precise(),
                new Trajectory(
                    STEP, (phase, motion) -> path.add(new Point(motion.time(), motion.height()))));
    return new ShownFlight(recovery, outcome, path);
  }
}
