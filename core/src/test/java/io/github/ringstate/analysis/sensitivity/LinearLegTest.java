package io.github.ringstate.analysis.sensitivity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.integrate.Equations;
import io.github.ringstate.integrate.Event;
import io.github.ringstate.integrate.Event.Crossing;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;

/** Derivatives along legs, held against closed forms. */
class LinearLegTest {

  private static final double PART = 1e-5;
  private static final double CLOSE = 1e-8;
  private static final double GRAVITY = 9.80665;
  private static final double HEIGHT = 20;

  /** An instant, seen by events. */
  @SuppressWarnings("ArrayRecordComponent") // a state is an array
  private record Seen(double time, double[] state) {}

  /** Rates by state. */
  private record Plain(int dimension, UnaryOperator<double[]> slopes) implements Equations<Seen> {

    @Override
    public Seen rates(double time, double[] state, double[] rates) {
      System.arraycopy(slopes.apply(state), 0, rates, 0, dimension);
      return at(time, state);
    }

    @Override
    public Seen at(double time, double[] state) {
      return new Seen(time, state);
    }
  }

  private static List<Leg.Flown> fly(DoubleFunction<Leg<String, Seen>> leg, double number) {
    return new LinearLeg<>(
            leg.apply(number), leg.apply(number + PART), leg.apply(number - PART), PART)
        .fly();
  }

  private static double slope(double more, double less) {
    return (more - less) / (2 * PART);
  }

  private static double slope(List<Leg.Flown> flown, int quantity) {
    return slope(flown.get(1).end().state()[quantity], flown.get(2).end().state()[quantity]);
  }

  /** y' = -p y from 1: y = exp(-p t), so that dy/dp = -t exp(-p t). */
  @Test
  void aDecayHasTheDerivativeOfItsExponential() {
    double end = 2;
    DoubleFunction<Leg<String, Seen>> leg =
        rate ->
            new Leg<>(
                new Plain(1, y -> new double[] {-rate * y[0]}),
                new Leg.Place(0, new double[] {1}),
                end,
                List.of());
    List<Leg.Flown> flown = fly(leg, 0.7);
    assertEquals(Leg.Flown.TIME_OVER, flown.get(0).stop());
    assertEquals(FastMath.exp(-0.7 * end), flown.get(0).end().state()[0], CLOSE);
    assertEquals(-end * FastMath.exp(-0.7 * end), slope(flown, 0), CLOSE);
  }

  /** A leg whose end is the number itself ends on the flow: dy/dT = y'. */
  @Test
  void anEndThatMovesTakesTheStateAlong() {
    DoubleFunction<Leg<String, Seen>> leg =
        end ->
            new Leg<>(
                new Plain(1, y -> new double[] {-y[0]}),
                new Leg.Place(0, new double[] {1}),
                end,
                List.of());
    assertEquals(-FastMath.exp(-1.5), slope(fly(leg, 1.5), 0), CLOSE);
  }

  private static Leg<String, Seen> falling(double gravity, Leg.Place from, double end) {
    return new Leg<>(
        new Plain(2, y -> new double[] {y[1], -gravity}),
        from,
        end,
        List.of(
            Event.note("half way", Crossing.FALLING, seen -> seen.state()[0] - HEIGHT / 2),
            Event.stop("floor", Crossing.FALLING, seen -> seen.state()[0])));
  }

  /**
   * From rest at a height h the floor is reached at t = sqrt(2 h / g) with a speed of sqrt(2 g h):
   * dt/dg = -t / (2 g), dv/dg = t / 2; half of the height is passed at t / sqrt 2.
   */
  @Test
  void anEventMovesWithTheNumber() {
    Leg.Place rest = new Leg.Place(0, new double[] {HEIGHT, 0});
    List<Leg.Flown> flown = fly(gravity -> falling(gravity, rest, 10), GRAVITY);
    double time = FastMath.sqrt(2 * HEIGHT / GRAVITY);
    assertEquals(1, flown.get(0).stop());
    assertEquals(time, flown.get(0).end().time(), CLOSE);
    assertEquals(
        -time / (2 * GRAVITY), slope(flown.get(1).end().time(), flown.get(2).end().time()), CLOSE);
    assertEquals(0, slope(flown, 0), CLOSE);
    assertEquals(-time / 2, slope(flown, 1), CLOSE);
    Leg.Met more = flown.get(1).met().get(0);
    Leg.Met less = flown.get(2).met().get(0);
    assertEquals(0, more.event());
    assertEquals(
        -time / FastMath.sqrt(2) / (2 * GRAVITY),
        slope(more.where().time(), less.where().time()),
        CLOSE);
  }

  /**
   * A ball that bounces with c of its speed: at a time T after the floor was met at t it is as high
   * as c g t (T - t) - g (T - t)^2 / 2, with t = sqrt(2 h / g); the derivative by g holds t_g = -t
   * / (2 g).
   */
  @Test
  void afterAnEventTheNeighboursBeginAtTimesOfTheirOwn() {
    double kept = 0.8;
    double later = 3;
    Leg.Place rest = new Leg.Place(0, new double[] {HEIGHT, 0});
    List<Leg.Flown> down = fly(gravity -> falling(gravity, rest, 10), GRAVITY);
    List<Leg<String, Seen>> up =
        List.of(0, 1, 2).stream()
            .map(
                who -> {
                  Leg.Place met = down.get(who).end();
                  Leg.Place bounced =
                      new Leg.Place(met.time(), new double[] {0, -kept * met.state()[1]});
                  double gravity = GRAVITY + PART * (who == 0 ? 0 : who == 1 ? 1 : -1);
                  return falling(gravity, bounced, later);
                })
            .toList();
    List<Leg.Flown> flown = new LinearLeg<>(up.get(0), up.get(1), up.get(2), PART).fly();
    double t = FastMath.sqrt(2 * HEIGHT / GRAVITY);
    double by = -t / (2 * GRAVITY);
    double left = later - t;
    double exact =
        kept * (t * left + GRAVITY * by * (left - t)) - left * left / 2 + GRAVITY * left * by;
    assertTrue(flown.get(0).end().state()[0] > 1, "still in the air");
    assertEquals(exact, slope(flown, 0), CLOSE);
  }
}
