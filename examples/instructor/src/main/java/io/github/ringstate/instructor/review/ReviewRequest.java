package io.github.ringstate.instructor.review;

import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.files.plan.PlanFile;
import io.github.ringstate.files.recording.RecordingFile;
import io.github.ringstate.instructor.conditions.Conditions;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A recorded flight that is to be reviewed.
 *
 * @param name the file, as the user named it, or the demo recording
 * @param invented whether it is a demo recording
 * @param file what was recorded
 * @param conditions craft, mass and air
 * @param entry how the model comes to the ring state beside it
 * @param wind the wind
 * @param ground height of the ground in the recording's own heights, m; empty if not given
 * @param plan what was briefed
 */
record ReviewRequest(
    String name,
    boolean invented,
    RecordingFile file,
    Conditions conditions,
    EntryKind entry,
    DebriefedWind wind,
    OptionalDouble ground,
    Optional<PlanFile> plan) {

  /** A height of the recording as it is shown: above the ground if that is known. */
  double shown(double height) {
    return height - ground.orElse(0);
  }
}
