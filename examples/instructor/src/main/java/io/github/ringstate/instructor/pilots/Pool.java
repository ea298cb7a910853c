package io.github.ringstate.instructor.pilots;

import io.github.ringstate.chance.Drawing;
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
 * @param asked how many pilots are asked for, or at the most
 * @param precision half of the interval at which the pilots are enough, m; zero to fly them all
 * @param drawing how the pilots are drawn
 * @param seed the seed from which they are drawn
 * @param models the models that they fly beside the standard one; empty for none
 */
public record Pool(
    int asked,
    double precision,
    Drawing drawing,
    long seed,
    Optional<Accepted<RingStateInflow>> models) {

  /**
   * Whether as many pilots fly as a precision takes.
   *
   * @return true if so
   */
  public boolean isPrecise() {
    return precision > 0;
  }

  /**
   * How many pilots fly, or at the most.
   *
   * @return the number asked for, rounded up to full sets
   */
  public int pilots() {
    return drawing.samples(asked);
  }

  /**
   * How many pilots are flown, and when that is enough.
   *
   * @param share the quantile that is to be known, between 0 and 1
   * @return the sampling
   */
  public Sampling sampling(double share) {
    return new Sampling(asked, share, PilotLosses.CONFIDENCE, precision);
  }

  /**
   * How many flights one cell of a table takes.
   *
   * @return pilots times models, the standard one among them
   */
  public long flights() {
    return pilots() * (1L + models.map(drawn -> drawn.kept().size()).orElse(0));
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
    return new PilotStudy(base, recovery, state.map(PilotState::delays), seed, drawing);
  }

  /**
   * The pilots in one situation, all of whom act later than their state has it.
   *
   * @param base what all of them share
   * @param recovery the technique that they are briefed for
   * @param state the state that their delays go with
   * @param later by how much, s
   * @return the study
   */
  public PilotStudy study(Encounter base, Technique recovery, PilotState state, double later) {
    return new PilotStudy(
        base, recovery, Optional.of(new LaterDelays(state.delays(), later)), seed, drawing);
  }

  /**
   * Flies the pilots of a study; with the other models as many as were enough with the standard
   * one.
   *
   * @param study the study
   * @param share the quantile that is to be known, between 0 and 1
   * @param work hears how far it has come
   * @return what they lost
   */
  public PilotLosses fly(PilotStudy study, double share, Work work) {
    LossSpread people = study.fly(sampling(share), work.part(pilots()));
    Sampling same = Sampling.of(people.samples() + people.withoutOnset());
    List<LossSpread> others =
        models
            .map(Accepted::kept)
            .map(
                kept ->
                    new ModelSpread(study, kept)
                        .fly(same, work.part((long) pilots() * kept.size())))
            .orElse(List.of());
    return new PilotLosses(people, others);
  }
}
