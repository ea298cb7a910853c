package io.github.ringstate.study.run;

/**
 * Whether the power suffices to hover out of ground effect in calm air: what a slow run comes to
 * where the airspeed is lost.
 *
 * @param finding how it comes out: with a limit where it takes more than the continuous power, for
 *     the take-off power is there for minutes only
 * @param margin the part of the take-off power that the hover leaves; negative where the hover
 *     takes more; minus infinity where the rotor cannot carry the craft
 * @param continuousMargin the same of the continuous power
 */
public record HoverCheck(Finding finding, double margin, double continuousMargin) {

  /**
   * Checks the power.
   *
   * @param study the run
   * @return whether it suffices
   */
  public static HoverCheck of(RunStudy study) {
    double margin = study.hoverMargin();
    double continuous = study.continuousHoverMargin();
    Finding finding =
        margin < 0 ? Finding.FAILS : continuous < 0 ? Finding.HOLDS_WITH_A_LIMIT : Finding.HOLDS;
    return new HoverCheck(finding, margin, continuous);
  }
}
