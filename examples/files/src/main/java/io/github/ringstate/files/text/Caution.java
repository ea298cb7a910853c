package io.github.ringstate.files.text;

/** The caution that stands on everything meant for people. */
public final class Caution {

  /** The caution. */
  public static final String TEXT =
      "A training aid computed from a simplified model, not flight guidance. The aircraft's flight"
          + " manual, the operator's procedures, local regulations and a licensed instructor come"
          + " first. Do not practise near the ground.";

  private Caution() {}
}
