package io.github.ringstate.encounter;

import io.github.ringstate.dynamics.Motion;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/** All quantities of a flight at one instant. Immutable. */
public final class Instant {

  private final String phase;
  private final Map<FlightQuantity, Double> values = new EnumMap<>(FlightQuantity.class);

  Instant(String phase, Motion motion) {
    this.phase = phase;
    for (FlightQuantity quantity : FlightQuantity.values()) {
      values.put(quantity, quantity.of(motion));
    }
  }

  /**
   * What was flown.
   *
   * @return the name of the phase: {@code entry} until onset, {@code unrecognised} until the pilot
   *     acts, then those of the recovery
   */
  public String phase() {
    return phase;
  }

  /**
   * One quantity.
   *
   * @param quantity which one
   * @return its value, in its unit
   */
  public double get(FlightQuantity quantity) {
    return Objects.requireNonNull(values.get(quantity), "quantity");
  }

  /**
   * The time.
   *
   * @return since the flight began, s
   */
  public double time() {
    return get(FlightQuantity.TIME);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Instant instant
        && phase.equals(instant.phase)
        && values.equals(instant.values);
  }

  @Override
  public int hashCode() {
    return 31 * phase.hashCode() + values.hashCode();
  }

  /** The phase and each quantity with its unit. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(phase);
    for (FlightQuantity quantity : FlightQuantity.values()) {
      text.append(", ").append(quantity.key()).append(" = ").append(get(quantity));
    }
    return text.toString();
  }
}
