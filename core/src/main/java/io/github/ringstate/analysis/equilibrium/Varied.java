package io.github.ringstate.analysis.equilibrium;

/** What steady descents are followed in. */
public enum Varied {
  /** Collective pitch. */
  COLLECTIVE,
  /** Airspeed along the nose. */
  AIRSPEED,
  /** Mass in flight. */
  MASS
}
