package io.github.ringstate.study.sweep;

import io.github.ringstate.chance.Drawing;
import io.github.ringstate.study.Sampling;
import java.io.Serializable;
import java.util.List;

/**
 * What a sweep flies: plain values, the same wherever they are read.
 *
 * @param seed the seed of all that is drawn
 * @param pilots how many pilots of each technique fly every point, drawn by number; 0 if all fly by
 *     the technique's own numbers
 * @param drawing how the pilots are drawn
 * @param fixed what is set to one value throughout
 * @param axes the axes of the grid, every value with every other
 * @param sample the settings that are sampled together; {@link Sample#NONE} if none are
 * @param output what rows hold, and in which units
 */
public record SweepSpec(
    long seed,
    int pilots,
    Drawing drawing,
    List<Axis> fixed,
    List<Axis> axes,
    Sample sample,
    Output output)
    implements Serializable {

  /** The most pilots that fly a point. */
  public static final int MOST_PILOTS = (int) Sampling.PILOTS.high();

  /** Copies the lists and checks the number of pilots. */
  public SweepSpec {
    fixed = List.copyOf(fixed);
    axes = List.copyOf(axes);
    if (pilots < 0 || pilots > MOST_PILOTS) {
      throw SettingException.cannotBe("pilot.count", pilots, "1 to " + MOST_PILOTS);
    }
    for (Axis axis : fixed) {
      if (axis.size() != 1) {
        throw new SettingException(axis.key(), "is fixed at several values", "one value");
      }
    }
  }

  /**
   * A sweep of evenly spread pilots with the standard output.
   *
   * @param seed the seed of all that is drawn
   * @param pilots how many pilots of each technique fly every point; 0 for none
   * @param fixed what is set to one value throughout
   * @param axes the axes of the grid, every value with every other
   * @param sample the settings that are sampled together
   */
  public SweepSpec(long seed, int pilots, List<Axis> fixed, List<Axis> axes, Sample sample) {
    this(seed, pilots, Drawing.SOBOL, fixed, axes, sample, Output.STANDARD);
  }
}
