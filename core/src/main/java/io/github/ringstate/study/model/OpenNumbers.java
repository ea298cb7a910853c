package io.github.ringstate.study.model;

import io.github.ringstate.chance.Drawing;
import io.github.ringstate.chance.RandomStream;
import io.github.ringstate.inflow.RingMemory;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.inflow.SmoothMomentum;
import io.github.ringstate.pilot.Spread;
import io.github.ringstate.quantity.ParameterSet;
import java.util.List;

/**
 * The numbers of the ring state that nobody has measured, and what is thought of them before the
 * published ranges are looked at: even over a range. The ranges are wide, so that it is the
 * published ones that narrow them.
 *
 * <p>What no range here covers is that the form of the model may be wrong.
 */
public final class OpenNumbers {

  /** How they vary at first. */
  public static final List<Spread> SPREADS =
      List.of(
          // on both sides of what is published; the tip-vortex criterion has -0.71
          Spread.even(RingStateInflow.ONSET_AXIAL, -0.8, -0.3),
          Spread.even(RingStateInflow.EXIT_AXIAL, -1.7, -1.1),
          // all that the model accepts
          Spread.even(RingStateInflow.ONSET_TOTAL, 0.75, 0.97),
          // all that is a fold with every onset
          Spread.even(RingStateInflow.EXIT_TOTAL, 1.02, 1.7),
          // all that the model accepts
          Spread.even(RingStateInflow.FADE_EDGEWISE, 0.8, 1.2),
          Spread.even(RingStateInflow.LOSSES, 0, 2.5),
          // never measured: from a ring that goes at once to the longest interval between the rings
          // of model rotors
          Spread.even(RingMemory.DISSOLVING_TIME, 0, 11),
          // assumed: half and twice the lag of the inflow
          Spread.even(RingMemory.DEEPENING_TIME, 0.1, 0.4),
          // numerical: so that the band shows it if it mattered
          Spread.even(RingMemory.SWITCH_WIDTH, 0.01, 0.04),
          // how the gap of momentum theory is bridged: all that the model accepts
          Spread.even(SmoothMomentum.UPPER_JOIN, -1, -0.6),
          Spread.even(SmoothMomentum.LOWER_JOIN, -2.5, -2.2),
          Spread.even(SmoothMomentum.BLEND_START, 0.63, 0.75),
          Spread.even(SmoothMomentum.BLEND_END, 0.9, 1.1));

  /** How many draws there are for each model that is wanted, at the most. */
  public static final int MOST_DRAWS = 20_000;

  /** Number of the draws of models, so that they are not those of pilots. */
  private static final long MODEL_DRAWS = 0x6D6F64656CL;

  private OpenNumbers() {}

  /**
   * A model as the numbers are thought to be at first.
   *
   * @param seed the seed
   * @param number the number of the draw, from 0
   * @param drawing how the draws lie to each other
   * @return the model; it may contradict what is published
   */
  public static RingStateInflow drawn(long seed, long number, Drawing drawing) {
    RandomStream draws = drawing.stream(seed ^ MODEL_DRAWS, number);
    ParameterSet numbers = ParameterSet.standard(RingStateInflow.PARAMETERS);
    for (Spread spread : SPREADS) {
      numbers = numbers.with(spread.parameter(), spread.value(draws.uniform()));
    }
    return new RingStateInflow(numbers);
  }

  /**
   * Models that meet all {@link PublishedRanges}.
   *
   * @param models how many, at least 1
   * @param seed the seed
   * @param drawing how the draws lie to each other
   * @return the models, and how many were drawn for them
   * @throws IllegalStateException if fewer meet them, of {@link #MOST_DRAWS} for each
   */
  public static Accepted<RingStateInflow> accepted(int models, long seed, Drawing drawing) {
    return Accepted.first(
        models,
        (long) models * MOST_DRAWS,
        number -> drawn(seed, number, drawing),
        PublishedRanges::hold);
  }

  /**
   * The same, evenly spread.
   *
   * @param models how many, at least 1
   * @param seed the seed
   * @return the models, and how many were drawn for them
   * @throws IllegalStateException if fewer meet them, of {@link #MOST_DRAWS} for each
   */
  public static Accepted<RingStateInflow> accepted(int models, long seed) {
    return accepted(models, seed, Drawing.SOBOL);
  }
}
