package io.github.ringstate.recording;

import io.github.ringstate.craft.CraftLimits;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.FlightQuantity;
import io.github.ringstate.encounter.Instant;
import io.github.ringstate.encounter.Simulator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.ObjDoubleConsumer;
import org.hipparchus.util.FastMath;

/**
 * What instruments would have written down of a computed flight: for trying out how much a
 * recording can tell. Such a recording is invented and must be labelled so.
 *
 * @param rate readings a second, 0.1 to 100
 * @param noise of the height and the vertical speed; the jerk is not used
 * @param groundSpeedDeviation standard deviation of a ground speed, m/s
 * @param attitudeDeviation standard deviation of pitch and bank, rad
 * @param verticalSpeedStep to which the vertical speed is rounded, m/s; 0 for not at all
 * @param attitude whether pitch, bank, collective and rotor speed are written down
 */
public record Instruments(
    double rate,
    Noise noise,
    double groundSpeedDeviation,
    double attitudeDeviation,
    double verticalSpeedStep,
    boolean attitude) {

  private static final double SHORTEST_SPEED = 1e-9;

  /** Checks the numbers. */
  public Instruments {
    if (!(rate >= 0.1 && rate <= 100)) {
      throw new IllegalArgumentException("a rate of " + rate + " a second is not 0.1 to 100");
    }
    if (!(groundSpeedDeviation >= 0 && attitudeDeviation >= 0 && verticalSpeedStep >= 0)) {
      throw new IllegalArgumentException("deviations and steps are not negative");
    }
  }

  /**
   * A satellite receiver five times a second with attitude: 1 m from reading to reading, 1.5 m that
   * stays, 0.1 m/s of the ground speed, a vertical speed of 0.2 m/s in steps of 0.1 m/s, 0.3
   * degrees of attitude. Assumed (common practice, no source).
   *
   * @return the instruments
   */
  public static Instruments receiver() {
    return new Instruments(5, Noise.of(1, 1, 0.3, 0.2), 0.1, FastMath.toRadians(0.3), 0.1, true);
  }

  /**
   * Flies an encounter and writes it down.
   *
   * @param encounter the encounter; heights are those of its flight
   * @param seed of the instruments' errors
   * @return the recording, from the start of the entry to the end of the flight
   */
  public Recording record(Encounter encounter, long seed) {
    List<Instant> flown = encounter.record(Simulator.precise()).history().sampled(1 / rate);
    return written(encounter.craft(), flown, new SplittableRandom(seed));
  }

  private Recording written(Helicopter craft, List<Instant> flown, SplittableRandom random) {
    double lowest = craft.si(CraftLimits.MINIMUM_COLLECTIVE);
    double travel = craft.si(CraftLimits.MAXIMUM_COLLECTIVE) - lowest;
    int size = flown.size();
    double[] time = new double[size];
    Map<Channel, double[]> values = new EnumMap<>(Channel.class);
    double kept = FastMath.exp(-1 / (rate * noise.driftTime()));
    double drift = noise.drift() * random.nextGaussian();
    for (int k = 0; k < size; k++) {
      Instant now = flown.get(k);
      int at = k;
      ObjDoubleConsumer<Channel> put =
          (channel, value) -> values.computeIfAbsent(channel, any -> new double[size])[at] = value;
      time[k] = now.time();
      put.accept(
          Channel.HEIGHT,
          now.get(FlightQuantity.HEIGHT) + drift + noise.height() * random.nextGaussian());
      double speed =
          now.get(FlightQuantity.VERTICAL_SPEED) + noise.verticalSpeed() * random.nextGaussian();
      double step = verticalSpeedStep;
      put.accept(Channel.VERTICAL_SPEED, step > 0 ? Math.rint(speed / step) * step : speed);
      double north =
          now.get(FlightQuantity.SPEED_NORTH) + groundSpeedDeviation * random.nextGaussian();
      double east =
          now.get(FlightQuantity.SPEED_EAST) + groundSpeedDeviation * random.nextGaussian();
      put.accept(Channel.GROUND_SPEED, FastMath.hypot(north, east));
      put.accept(Channel.TRACK, FastMath.atan2(east, north + SHORTEST_SPEED));
      if (attitude) {
        put.accept(
            Channel.PITCH,
            now.get(FlightQuantity.PITCH) + attitudeDeviation * random.nextGaussian());
        put.accept(
            Channel.BANK, now.get(FlightQuantity.BANK) + attitudeDeviation * random.nextGaussian());
        double lever = (now.get(FlightQuantity.COLLECTIVE) - lowest) / travel;
        put.accept(Channel.COLLECTIVE, lever);
        put.accept(Channel.ROTOR_SPEED, now.get(FlightQuantity.ROTOR_SPEED));
      }
      drift = kept * drift + FastMath.sqrt(1 - kept * kept) * noise.drift() * random.nextGaussian();
    }
    return new Recording(time, values);
  }
}
