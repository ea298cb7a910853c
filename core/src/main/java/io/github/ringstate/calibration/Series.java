package io.github.ringstate.calibration;

import io.github.ringstate.craft.CraftLimits;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.FlightQuantity;
import io.github.ringstate.recording.Channel;
import io.github.ringstate.recording.Recording;
import java.util.List;
import java.util.stream.Stream;
import org.hipparchus.util.FastMath;

/** What of a recording is held against the model's flight. */
enum Series {
  HEIGHT(Channel.HEIGHT, FlightQuantity.HEIGHT),
  PRESSURE_ALTITUDE(Channel.PRESSURE_ALTITUDE, FlightQuantity.HEIGHT),
  VERTICAL_SPEED(Channel.VERTICAL_SPEED, FlightQuantity.VERTICAL_SPEED),
  /** Velocity over the ground along the direction of the entry, which the model calls north. */
  ALONG(Channel.GROUND_SPEED, FlightQuantity.SPEED_NORTH),
  /** The same to the right of it. */
  ACROSS(Channel.GROUND_SPEED, FlightQuantity.SPEED_EAST),
  PITCH(Channel.PITCH, FlightQuantity.PITCH),
  BANK(Channel.BANK, FlightQuantity.BANK),
  LEVER(Channel.COLLECTIVE, FlightQuantity.COLLECTIVE);

  /** All that is asked of the model's flight. */
  static final List<FlightQuantity> QUANTITIES =
      Stream.of(values()).map(series -> series.quantity).distinct().toList();

  /**
   * Less is not expected of a height, m, and of a vertical speed, m/s: few readings of a flight
   * that jerks may look as if they were exact. Assumed, as the errors of a receiver.
   */
  private static final double LEAST_HEIGHT = 1;

  private static final double LEAST_VERTICAL_SPEED = 0.2;

  /** Standard deviation of a ground speed at first, m/s. Assumed (common practice, no source). */
  private static final double GROUND_SPEED = 0.1;

  /** The same of an attitude, rad, and of the lever, as a share of its travel. Assumed. */
  private static final double ATTITUDE = FastMath.toRadians(0.3);

  private static final double LEVER_SHARE = 0.005;

  private final Channel channel;
  private final FlightQuantity quantity;

  Series(Channel channel, FlightQuantity quantity) {
    this.channel = channel;
    this.quantity = quantity;
  }

  boolean isVertical() {
    return isHeight() || this == VERTICAL_SPEED;
  }

  boolean isHeight() {
    return this == HEIGHT || this == PRESSURE_ALTITUDE;
  }

  Channel channel() {
    return channel;
  }

  /** The deviation of one reading, before any residual is known. */
  double deviation(Demonstration demonstration) {
    return switch (this) {
      case HEIGHT -> Math.max(demonstration.motion().noise().height(), LEAST_HEIGHT);
      case PRESSURE_ALTITUDE ->
          Math.max(demonstration.motion().noise().pressureAltitude(), LEAST_HEIGHT);
      case VERTICAL_SPEED ->
          Math.max(demonstration.motion().noise().verticalSpeed(), LEAST_VERTICAL_SPEED);
      case ALONG, ACROSS -> GROUND_SPEED;
      case PITCH, BANK -> ATTITUDE;
      case LEVER -> LEVER_SHARE;
    };
  }

  /** What is recorded, with the direction of the entry over the ground; NaN for nothing. */
  double recorded(Recording recording, int k, double direction) {
    double value = recording.value(channel, k);
    double off = recording.value(Channel.TRACK, k) - direction;
    return switch (this) {
      case ALONG -> value * FastMath.cos(off);
      case ACROSS -> value * FastMath.sin(off);
      default -> value;
    };
  }

  /** What a flight has some time before or after an instant at which it is steady. */
  double flown(double[][] values, int k, double later, Helicopter craft) {
    double value = values[QUANTITIES.indexOf(quantity)][k];
    if (isHeight()) {
      return value + later * values[QUANTITIES.indexOf(FlightQuantity.VERTICAL_SPEED)][k];
    }
    if (this == LEVER) {
      double low = craft.si(CraftLimits.MINIMUM_COLLECTIVE);
      return (value - low) / (craft.si(CraftLimits.MAXIMUM_COLLECTIVE) - low);
    }
    return value;
  }
}
