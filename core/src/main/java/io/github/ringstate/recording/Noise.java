package io.github.ringstate.recording;

import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.Unit;

/**
 * How far instruments are off, and how much a flight may jerk between two readings.
 *
 * <p>A height by satellite errs in two ways: from reading to reading, and by an error that stays
 * for some time. The second hardly touches a height lost within seconds; a filter that knows only
 * the first would trust the data too much.
 *
 * @param jerk intensity of the white noise that stands for the pilot's jerks, m2/s5
 * @param height standard deviation of a height from reading to reading, m
 * @param pressureAltitude the same of a pressure altitude, m
 * @param verticalSpeed the same of a vertical speed, m/s
 * @param drift standard deviation of the error of a height that stays for a time, m
 * @param driftTime how long it stays: its correlation time, s
 */
public record Noise(
    double jerk,
    double height,
    double pressureAltitude,
    double verticalSpeed,
    double drift,
    double driftTime) {

  /** Slow error of a height. Default 1.5 m, range 0 to 20 m. */
  public static final Parameter DRIFT =
      Parameter.of(
          "height drift",
          Unit.METRE,
          0,
          20,
          1.5,
          "assumed: a receiver without corrections, of whose vertical error some metres stay for"
              + " minutes (common practice, no source)");

  /** How long the slow error of a height stays. Default 60 s, range 1 to 3600 s. */
  public static final Parameter DRIFT_TIME =
      Parameter.of(
          "height drift time",
          Unit.SECOND,
          1,
          3600,
          60,
          "assumed: minutes, as satellites and the air above them move slowly (common practice, no"
              + " source)");

  /** Checks every component. */
  public Noise {
    positive("jerk intensity", jerk);
    positive("noise of height, m,", height);
    positive("noise of pressure altitude, m,", pressureAltitude);
    positive("noise of vertical speed, m/s,", verticalSpeed);
    DRIFT.quantity().check(drift);
    DRIFT_TIME.quantity().check(driftTime);
  }

  /**
   * Noise with the slow errors at their defaults.
   *
   * @param jerk m2/s5
   * @param height m
   * @param pressureAltitude m
   * @param verticalSpeed m/s
   * @return the noise
   */
  public static Noise of(
      double jerk, double height, double pressureAltitude, double verticalSpeed) {
    return new Noise(
        jerk, height, pressureAltitude, verticalSpeed, DRIFT.standard(), DRIFT_TIME.standard());
  }

  /** The standard deviation of one reading of a channel of vertical motion. */
  double of(Channel channel) {
    return switch (channel) {
      case HEIGHT -> height;
      case PRESSURE_ALTITUDE -> pressureAltitude;
      case VERTICAL_SPEED -> verticalSpeed;
      default -> throw new IllegalArgumentException(channel + " says nothing of vertical motion");
    };
  }

  private static void positive(String name, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " must be above 0, but is " + value);
    }
  }
}
