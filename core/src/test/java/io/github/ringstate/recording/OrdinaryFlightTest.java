package io.github.ringstate.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.ringstate.air.Wind;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.quantity.Unit;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Flights in which nothing is to be found; speeds and rates are common practice, no source. */
class OrdinaryFlightTest {

  private static final double RATE = 5;
  private static final double LENGTH = 90;

  private enum Kind {
    /** From 60 kt to 10 kt over the ground, into 12 kt of wind, at 400 ft/min. */
    APPROACH(t -> knots(60 - 50 * share(t, 20, 70)), t -> fpm(-400) * share(t, 5, 10), 12),
    /** From 60 kt to a hover within 15 s, in which it climbs a little and sinks back. */
    QUICK_STOP(t -> knots(60 * (1 - share(t, 30, 45))), t -> 1.2 * wave(t, 30, 46, 16), 5),
    /** At 60 kt and 1700 ft/min, with a flare and a run of some metres at its end. */
    AUTOROTATION(
        t -> knots(60 - 50 * share(t, 60, 70)),
        t -> fpm(-1700) * share(t, 20, 24) * (1 - share(t, 60, 68)),
        0),
    /** A slow run at 30 kt through vertical gusts of 2 m/s either way. */
    TURBULENCE(t -> knots(30 + 4 * FastMath.sin(t)), t -> 2 * FastMath.sin(0.9 * t), 8),
    /** A hover that wanders up and down by a metre. */
    HOVER(t -> 0.5 + 0.5 * FastMath.sin(0.3 * t), t -> 0.6 * FastMath.sin(0.6 * t), 6);

    @SuppressWarnings("ImmutableEnumChecker") // a function that keeps nothing
    private final DoubleUnaryOperator groundSpeed;

    @SuppressWarnings("ImmutableEnumChecker") // a function that keeps nothing
    private final DoubleUnaryOperator verticalSpeed;

    private final double wind;

    Kind(DoubleUnaryOperator groundSpeed, DoubleUnaryOperator verticalSpeed, double windKnots) {
      this.groundSpeed = groundSpeed;
      this.verticalSpeed = verticalSpeed;
      wind = windKnots;
    }
  }

  private static double knots(double value) {
    return Unit.KNOT.toSi(value);
  }

  private static double fpm(double value) {
    return Unit.FOOT_PER_MINUTE.toSi(value);
  }

  /** From 0 to 1 between two times, smoothly. */
  private static double share(double t, double from, double to) {
    double part = Math.min(1, Math.max(0, (t - from) / (to - from)));
    return (1 - FastMath.cos(FastMath.PI * part)) / 2;
  }

  private static double wave(double t, double from, double to, double period) {
    return t < from || t > to ? 0 : FastMath.sin(2 * FastMath.PI * (t - from) / period);
  }

  private static Recording recording(Kind kind, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int size = (int) (LENGTH * RATE);
    double[] time = new double[size];
    Map<Channel, double[]> values = new EnumMap<>(Channel.class);
    for (Channel channel :
        List.of(Channel.HEIGHT, Channel.VERTICAL_SPEED, Channel.GROUND_SPEED, Channel.TRACK)) {
      values.put(channel, new double[size]);
    }
    double height = 300;
    for (int k = 0; k < size; k++) {
      time[k] = k / RATE;
      double vertical = kind.verticalSpeed.applyAsDouble(time[k]);
      height += vertical / RATE;
      values.get(Channel.HEIGHT)[k] = height + random.nextGaussian();
      values.get(Channel.VERTICAL_SPEED)[k] = vertical + 0.2 * random.nextGaussian();
      values.get(Channel.GROUND_SPEED)[k] =
          Math.max(0, kind.groundSpeed.applyAsDouble(time[k]) + 0.1 * random.nextGaussian());
    }
    return new Recording(time, values);
  }

  @ParameterizedTest
  @EnumSource
  void nothingIsFoundInIt(Kind kind) {
    Encounter encounter = Encounter.of(DemoCraft.TRAINER);
    for (int seed = 0; seed < 10; seed++) {
      VerticalMotion motion = VerticalMotion.of(recording(kind, seed));
      EncounterFinder finder =
          EncounterFinder.like(encounter, Wind.from(0, Unit.KNOT.toSi(kind.wind)), 0.5, 0.1);
      assertEquals(List.of(), finder.find(motion), kind + " " + seed);
    }
  }
}
