package io.github.ringstate.instructor.runs;

import io.github.ringstate.craft.RotationSense;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import java.util.stream.Stream;

/**
 * The directions of relative wind in which a tail rotor is known to lose effect at low airspeed, by
 * FAA Advisory Circular 90-95 (from memory): given there for rotors that turn counter-clockwise
 * seen from above, mirrored here for the others. Flagged, not computed.
 */
enum TailRotorSector {
  /** The vortices of the main rotor's disc meet the tail rotor. */
  DISC_VORTEX("main rotor disc vortices", 285, 315),
  /** The tail wants to swing into the wind. */
  WEATHERCOCK("weathercock", 120, 240),
  /** The tail rotor works in a vortex ring of its own. */
  TAIL_ROTOR_VORTEX_RING("tail rotor vortex ring", 210, 330);

  /** Airspeed below which the sectors count, m/s (FAA Advisory Circular 90-95, from memory). */
  static final double AIRSPEED = Unit.KNOT.toSi(30);

  private final String label;
  private final double from;
  private final double to;

  TailRotorSector(String label, double from, double to) {
    this.label = label;
    this.from = from;
    this.to = to;
  }

  /**
   * The sector's name.
   *
   * @return a few lower-case words
   */
  String label() {
    return label;
  }

  /**
   * Where the sector begins and ends for a rotor.
   *
   * @param sense which way the main rotor turns
   * @return for instance {@code 210 to 330 deg}
   */
  String range(RotationSense sense) {
    boolean mirrored = sense == RotationSense.CLOCKWISE;
    double low = mirrored ? 360 - to : from;
    double high = mirrored ? 360 - from : to;
    return (int) low + " to " + (int) high + " deg";
  }

  /**
   * The sectors that a relative wind lies in.
   *
   * @param sense which way the main rotor turns
   * @param relativeWind where it comes from, rad clockwise from the nose
   * @param airspeed speed through the air, m/s
   * @return the sectors; none at or above 30 kt
   */
  static List<TailRotorSector> of(RotationSense sense, double relativeWind, double airspeed) {
    if (!(airspeed < AIRSPEED && airspeed > 0)) {
      return List.of();
    }
    double degrees = Unit.DEGREE.fromSi(relativeWind);
    double seen = sense == RotationSense.CLOCKWISE ? 360 - degrees : degrees;
    return Stream.of(values()).filter(one -> seen >= one.from && seen <= one.to).toList();
  }
}
