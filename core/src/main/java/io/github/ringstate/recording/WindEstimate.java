package io.github.ringstate.recording;

import io.github.ringstate.air.Wind;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.FastMath;
import org.hipparchus.util.Pair;

/**
 * The wind of a recorded flight, from the flight itself. Each stretch of ten seconds gives a mean
 * velocity over the ground. With airspeed and heading the wind is what is left of it; with neither,
 * the velocities of a flight that turned lie on a circle around the wind, whose radius is the
 * airspeed, and a circle is fitted by least squares.
 *
 * @param north mean wind to the north, m/s
 * @param east mean wind to the east, m/s
 * @param deviation how far the wind along any direction may be off, a standard deviation, m/s; the
 *     wind of one stretch wavers about the mean, and that is in it
 * @param source from what it is estimated
 */
public record WindEstimate(double north, double east, double deviation, Source source) {

  /** How far an unknown wind may be off. Default 10 kt, range 0 to 40 kt. */
  public static final Parameter UNKNOWN_DEVIATION =
      Parameter.of(
          "unknown wind",
          Unit.KNOT,
          0,
          40,
          10,
          "assumed: standard deviation of a wind of which nothing is known (common practice, no"
              + " source)");

  /** How far a wind estimated elsewhere in a flight is off. Default 1 kt, range 0 to 20 kt. */
  public static final Parameter ELSEWHERE_DEVIATION =
      Parameter.of(
          "wind elsewhere",
          Unit.KNOT,
          0,
          20,
          1,
          "assumed: standard deviation of the change of a wind over some minutes and some hundred"
              + " feet (common practice, no source)");

  /** A stretch, s. */
  private static final double STRETCH = 10;

  /** Slower flight tells nothing of the wind: gauges fail and the nose is not ahead, m/s. */
  private static final double SLOWEST = 10;

  /** A turn at one airspeed is looked for among so many stretches that follow each other. */
  private static final int[] STRETCHES = {8, 12, 18};

  /** Tracks that leave no more than this of the circle open count as several, rad. */
  private static final double WIDEST_OPEN = FastMath.toRadians(150);

  /** The wind could be as strong as this and more, and then nothing is known, m/s. */
  private static final double TOO_UNSURE = Unit.KNOT.toSi(10);

  private static final int ITERATIONS = 100;

  /** From what a wind is estimated. */
  public enum Source {
    /** From airspeed, heading and velocity over the ground. */
    AIRSPEED("estimated from airspeed and heading"),
    /** From ground speeds on several tracks. */
    TRACKS("estimated from ground speeds on several tracks"),
    /** The recording does not say; calm is assumed, and it may be far off. */
    UNKNOWN("unknown");

    private final String label;

    Source(String label) {
      this.label = label;
    }

    /**
     * The source in words.
     *
     * @return some lower-case words
     */
    public String label() {
      return label;
    }
  }

  /** A wind of which nothing is known. */
  private static final WindEstimate NOTHING =
      new WindEstimate(
          0, 0, UNKNOWN_DEVIATION.unit().toSi(UNKNOWN_DEVIATION.standard()), Source.UNKNOWN);

  /** The mean over a stretch: velocity over the ground and through the air, m/s. */
  private record Leg(double north, double east, double airNorth, double airEast) {

    double speed() {
      return FastMath.hypot(north, east);
    }

    double track() {
      return FastMath.atan2(east, north);
    }
  }

  /**
   * Estimates the wind.
   *
   * @param recording a recording
   * @return the wind, unknown if the recording does not say
   */
  public static WindEstimate of(Recording recording) {
    List<Leg> legs = legs(recording);
    List<Leg> withAir = legs.stream().filter(leg -> !Double.isNaN(leg.airNorth())).toList();
    if (withAir.size() >= 2) {
      return left(withAir);
    }
    return circle(legs);
  }

  /**
   * The wind as a field, the same everywhere.
   *
   * @return the wind
   */
  public Wind wind() {
    return new Wind(north, east);
  }

  private static List<Leg> legs(Recording recording) {
    List<Leg> legs = new ArrayList<>();
    double[] sum = new double[4];
    int count = 0;
    boolean fast = true;
    double from = recording.time(0);
    for (int k = 0; k < recording.size(); k++) {
      if (recording.time(k) - from >= STRETCH) {
        if (count > 0 && fast && recording.time(k) - from < 2 * STRETCH) {
          legs.add(new Leg(sum[0] / count, sum[1] / count, sum[2] / count, sum[3] / count));
        }
        sum = new double[4];
        count = 0;
        fast = true;
        from = recording.time(k);
      }
      double ground = recording.value(Channel.GROUND_SPEED, k);
      double track = recording.value(Channel.TRACK, k);
      if (Double.isNaN(ground) || Double.isNaN(track)) {
        continue;
      }
      double air = recording.value(Channel.AIRSPEED, k);
      double heading = recording.value(Channel.HEADING, k);
      sum[0] += ground * FastMath.cos(track);
      sum[1] += ground * FastMath.sin(track);
      sum[2] += air * FastMath.cos(heading);
      sum[3] += air * FastMath.sin(heading);
      count++;
      fast &= Double.isNaN(air) ? ground >= SLOWEST : air >= SLOWEST;
    }
    return legs;
  }

  private static WindEstimate left(List<Leg> legs) {
    int n = legs.size();
    double north = legs.stream().mapToDouble(leg -> leg.north() - leg.airNorth()).sum() / n;
    double east = legs.stream().mapToDouble(leg -> leg.east() - leg.airEast()).sum() / n;
    double squares =
        legs.stream()
            .mapToDouble(
                leg -> {
                  double alongNorth = leg.north() - leg.airNorth() - north;
                  double alongEast = leg.east() - leg.airEast() - east;
                  return alongNorth * alongNorth + alongEast * alongEast;
                })
            .sum();
    double variance = squares / (2.0 * (n - 1));
    return new WindEstimate(
        north, east, elsewhere(FastMath.sqrt(variance * (1 + 1.0 / n))), Source.AIRSPEED);
  }

  /** The widest angle between neighbouring tracks. */
  private static double open(List<Leg> legs) {
    double[] tracks = legs.stream().mapToDouble(Leg::track).sorted().toArray();
    double widest = tracks[0] + 2 * FastMath.PI - tracks[tracks.length - 1];
    for (int i = 1; i < tracks.length; i++) {
      widest = Math.max(widest, tracks[i] - tracks[i - 1]);
    }
    return widest;
  }

  /** Together with what the wind may have changed since. */
  private static double elsewhere(double deviation) {
    return FastMath.hypot(
        deviation, ELSEWHERE_DEVIATION.unit().toSi(ELSEWHERE_DEVIATION.standard()));
  }

  /** The circle that is known best, of all that fit some stretches in a row. */
  private static WindEstimate circle(List<Leg> legs) {
    WindEstimate best = NOTHING;
    for (int count : STRETCHES) {
      for (int from = 0; from + count <= legs.size(); from++) {
        List<Leg> row = legs.subList(from, from + count);
        if (open(row) <= WIDEST_OPEN) {
          WindEstimate found = around(row);
          best = found.deviation() < best.deviation() ? found : best;
        }
      }
    }
    return best;
  }

  private static WindEstimate around(List<Leg> legs) {
    try {
      LeastSquaresOptimizer.Optimum best = fit(legs);
      // of Student's t with the free count, since the spread is known from few
      double variance = best.getCost() * best.getCost() / (legs.size() - 3 - 2);
      RealMatrix covariance = best.getCovariances(1e-10);
      double widest = Math.max(covariance.getEntry(0, 0), covariance.getEntry(1, 1));
      double off = elsewhere(FastMath.sqrt(variance * (1 + widest)));
      RealVector found = best.getPoint();
      return off < TOO_UNSURE
          ? new WindEstimate(found.getEntry(0), found.getEntry(1), off, Source.TRACKS)
          : NOTHING;
    } catch (MathRuntimeException none) {
      return NOTHING;
    }
  }

  private static LeastSquaresOptimizer.Optimum fit(List<Leg> legs) {
    double radius = legs.stream().mapToDouble(Leg::speed).average().orElse(0);
    return new LevenbergMarquardtOptimizer()
        .optimize(
            new LeastSquaresBuilder()
                .start(new double[] {0, 0, radius})
                .target(new double[legs.size()])
                .model(point -> misses(legs, point))
                .maxEvaluations(ITERATIONS)
                .maxIterations(ITERATIONS)
                .build());
  }

  /** By how much each velocity misses the circle, and how that changes with centre and radius. */
  private static Pair<RealVector, RealMatrix> misses(List<Leg> legs, RealVector point) {
    RealVector misses = new ArrayRealVector(legs.size());
    RealMatrix slopes = MatrixUtils.createRealMatrix(legs.size(), 3);
    for (int i = 0; i < legs.size(); i++) {
      double north = legs.get(i).north() - point.getEntry(0);
      double east = legs.get(i).east() - point.getEntry(1);
      double away = Math.max(1e-9, FastMath.hypot(north, east));
      misses.setEntry(i, away - point.getEntry(2));
      slopes.setRow(i, new double[] {-north / away, -east / away, -1});
    }
    return new Pair<>(misses, slopes);
  }
}
