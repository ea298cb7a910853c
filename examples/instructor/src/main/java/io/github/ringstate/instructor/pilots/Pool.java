package io.github.ringstate.instructor.pilots;

import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.instructor.progress.Work;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.study.LossSpread;
import io.github.ringstate.study.PilotStudy;
import io.github.ringstate.study.Sampling;
import io.github.ringstate.study.model.Accepted;
import io.github.ringstate.study.model.ModelSpread;
import java.util.List;
import java.util.Optional;

/**
 * The pilots that are drawn, and the models with which they fly.
 *
 * @param pilots how many pilots
 * @param seed the seed from which they are drawn
 * @param models the models that they fly beside the standard one; empty for none
 */
public record Pool(int pilots, long seed, Optional<Accepted<RingStateInflow>> models) {

  /**
   * How many flights one cell of a table takes.
   *
   * @return pilots times models, the standard one among them
   */
  public long flights() {
    return pilots * (1L + models.map(drawn -> drawn.kept().size()).orElse(0));
  }

  /**
   * The pilots in one situation.
   *
   * @param base what all of them share
   * @param recovery the technique that they are briefed for
   * @param state the state that their delays go with; empty if all wait as long as the base says
   * @return the study
   */
  public PilotStudy study(Encounter base, Technique recovery, Optional<PilotState> state) {
    return new PilotStudy(base, recovery, state.map(PilotState::delays), seed);
  }

  /**
   * Flies the pilots of a study.
   *
   * @param study the study
   * @param work hears how far it has come
   * @return what they lost
   */
  public PilotLosses fly(PilotStudy study, Work work) {
    Sampling sampling = Sampling.of(pilots);
    LossSpread people = study.fly(sampling, work.part(pilots));
    List<LossSpread> others =
        models
            .map(Accepted::kept)
            .map(
                kept ->
                    new ModelSpread(study, kept)
                        .fly(sampling, work.part((long) pilots * kept.size())))
            .orElse(List.of());
    return new PilotLosses(people, others);
  }
}
