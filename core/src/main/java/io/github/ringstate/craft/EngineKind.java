package io.github.ringstate.craft;

import org.hipparchus.util.FastMath;

/** How the power that an engine can give falls with the density of the air. */
public enum EngineKind {
  /**
   * A piston engine without supercharger: P/P0 = 1.132 sigma - 0.132 (Gagg and Ferrar, SAE Journal
   * 34(6), 1934; from memory).
   */
  PISTON("piston") {
    @Override
    public double lapse(double densityRatio) {
      return Math.max(0, 1.132 * densityRatio - 0.132);
    }
  },
  /** A turbine: power in proportion to density to the power 0.8 (assumed; no source). */
  TURBINE("turbine") {
    @Override
    public double lapse(double densityRatio) {
      return FastMath.pow(densityRatio, 0.8);
    }
  };

  private final String label;

  EngineKind(String label) {
    this.label = label;
  }

  /**
   * The kind in words.
   *
   * @return lower case
   */
  public String label() {
    return label;
  }

  /**
   * Power over that at sea level on a standard day.
   *
   * @param densityRatio the air's density over 1.225 kg/m3; positive
   * @return the ratio, not negative
   */
  public abstract double lapse(double densityRatio);
}
