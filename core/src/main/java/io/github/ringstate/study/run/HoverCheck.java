package io.github.ringstate.study.run;

/**
 * Whether the take-off power suffices to hover out of ground effect in calm air.
 *
 * @param finding how it comes out
 * @param margin the part of that power that the hover leaves; negative where the hover takes more;
 *     minus infinity where the rotor cannot carry the craft
 */
public record HoverCheck(Finding finding, double margin) {

  /**
   * Checks the power.
   *
   * @param study the run
   * @return whether it suffices
   */
  public static HoverCheck of(RunStudy study) {
    double margin = study.hoverMargin();
    return new HoverCheck(margin >= 0 ? Finding.HOLDS : Finding.SHORT, margin);
  }
}
