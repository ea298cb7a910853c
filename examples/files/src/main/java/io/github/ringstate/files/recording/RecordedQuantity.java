package io.github.ringstate.files.recording;

import io.github.ringstate.recording.Channel;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a column of a recording may hold. Values beyond the bounds are no readings of a helicopter:
 * they are wide of what any flies (common practice, no source).
 */
public enum RecordedQuantity {
  /** Time of the reading. */
  TIME(
      "time",
      null,
      -1e15,
      1e15,
      RecordedUnit.SECOND,
      RecordedUnit.MILLISECOND,
      RecordedUnit.ISO_TIME,
      RecordedUnit.TIME_OF_DAY),
  /** Height by satellite or survey. */
  HEIGHT("height", Channel.HEIGHT, -500, 12_000, RecordedUnit.FOOT, RecordedUnit.METRE),
  /** Pressure altitude. */
  PRESSURE_ALTITUDE(
      "pressure_altitude",
      Channel.PRESSURE_ALTITUDE,
      -1000,
      12_000,
      RecordedUnit.FOOT,
      RecordedUnit.METRE),
  /** Vertical speed, positive up. */
  VERTICAL_SPEED(
      "vertical_speed",
      Channel.VERTICAL_SPEED,
      -60,
      60,
      RecordedUnit.FOOT_PER_MINUTE,
      RecordedUnit.METRE_PER_SECOND,
      RecordedUnit.KNOT),
  /** Speed over the ground. */
  GROUND_SPEED(
      "ground_speed",
      Channel.GROUND_SPEED,
      0,
      150,
      RecordedUnit.KNOT,
      RecordedUnit.METRE_PER_SECOND,
      RecordedUnit.KILOMETRE_PER_HOUR),
  /** Direction of flight over the ground, clockwise from true north. */
  TRACK("track", Channel.TRACK, -7, 7, RecordedUnit.DEGREE, RecordedUnit.RADIAN),
  /** True airspeed. */
  AIRSPEED(
      "airspeed",
      Channel.AIRSPEED,
      0,
      150,
      RecordedUnit.KNOT,
      RecordedUnit.METRE_PER_SECOND,
      RecordedUnit.KILOMETRE_PER_HOUR),
  /** Where the nose points, clockwise from true north. */
  HEADING("heading", Channel.HEADING, -7, 7, RecordedUnit.DEGREE, RecordedUnit.RADIAN),
  /** Attitude of the nose, positive up. */
  PITCH("pitch", Channel.PITCH, -1.6, 1.6, RecordedUnit.DEGREE, RecordedUnit.RADIAN),
  /** Bank, positive to the right. */
  BANK("bank", Channel.BANK, -3.2, 3.2, RecordedUnit.DEGREE, RecordedUnit.RADIAN),
  /** Place of the collective lever between its stops. */
  COLLECTIVE(
      "collective", Channel.COLLECTIVE, -0.05, 1.05, RecordedUnit.PERCENT, RecordedUnit.SHARE),
  /** Torque or power as a share of the take-off limit. */
  TORQUE("torque", Channel.TORQUE, -0.05, 2, RecordedUnit.PERCENT, RecordedUnit.SHARE),
  /** Rotor speed as a share of the governed one. */
  ROTOR_SPEED("rotor_speed", Channel.ROTOR_SPEED, 0, 1.5, RecordedUnit.PERCENT, RecordedUnit.SHARE),
  /** Latitude, positive north. */
  LATITUDE("latitude", null, -1.58, 1.58, RecordedUnit.DEGREE, RecordedUnit.RADIAN),
  /** Longitude, positive east. */
  LONGITUDE("longitude", null, -6.3, 6.3, RecordedUnit.DEGREE, RecordedUnit.RADIAN);

  private final String key;
  private final Optional<Channel> channel;
  private final double low;
  private final double high;

  @SuppressWarnings("ImmutableEnumChecker") // a list that does not change
  private final List<RecordedUnit> units;

  RecordedQuantity(
      String key, @Nullable Channel channel, double low, double high, RecordedUnit... units) {
    this.key = key;
    this.channel = Optional.ofNullable(channel);
    this.low = low;
    this.high = high;
    this.units = List.of(units);
  }

  /**
   * The quantity as a map of columns names it.
   *
   * @return the key, for instance {@code ground_speed}
   */
  public String key() {
    return key;
  }

  /**
   * The channel of a recording that it fills.
   *
   * @return the channel; empty for time and place
   */
  public Optional<Channel> channel() {
    return channel;
  }

  /**
   * The units in which it may be given.
   *
   * @return the units, the usual one first
   */
  public List<RecordedUnit> units() {
    return units;
  }

  /** The unit of a key, if a column may have it. */
  Optional<RecordedUnit> unit(String unitKey) {
    return units.stream().filter(unit -> unit.key().equals(unitKey)).findFirst();
  }

  /** Whether a number, in SI units, can be a reading. */
  boolean holds(double value) {
    return value >= low && value <= high;
  }

  /** Whether it is a direction, which goes round. */
  boolean goesRound() {
    return this == TRACK || this == HEADING || this == LONGITUDE;
  }

  /** The quantity of a key. */
  static Optional<RecordedQuantity> of(String key) {
    return Stream.of(values()).filter(quantity -> quantity.key.equals(key)).findFirst();
  }
}
