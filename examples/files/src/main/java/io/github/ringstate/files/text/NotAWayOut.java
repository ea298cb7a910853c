package io.github.ringstate.files.text;

import io.github.ringstate.pilot.Technique;

/**
 * What stands beside every figure for collective alone. That the pull makes the sink worse is what
 * handbooks and trade articles say of it; that it may stop a sink that has only begun is the army
 * handbook's (FM 3-04.203), which the validation report quotes. The official report is that on the
 * accident of August 2013; of how long a ring lasts no measurement was found.
 */
public final class NotAWayOut {

  /** The head of a column, and what follows the name in a sentence. */
  public static final String HEAD = Technique.NOT_A_WAY_OUT;

  /** The words in full. */
  public static final String TEXT =
      "Collective alone is not a way out and no technique to brief. Handbooks and trade articles"
          + " hold that pulling collective in a developed ring makes the sink worse. The model does"
          + " not contain what makes it worse and cannot show it: its figures for collective alone are"
          + " no advice. A large, early pull with much power to spare may stop a sink that has only"
          + " begun; a late one makes it worse (army handbook). In an official report (UK AAIB"
          + " 1/2016) power pulled late did not arrest a heavy twin. How long a ring lasts once power"
          + " is pulled is not known.";

  private NotAWayOut() {}
}
