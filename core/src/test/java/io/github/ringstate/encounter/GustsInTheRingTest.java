package io.github.ringstate.encounter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.air.Wind;
import io.github.ringstate.air.WindField;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.inflow.TabulatedInflow;
import io.github.ringstate.pilot.Lateral;
import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Why gusts shorten late recoveries in this model: the horizontal ones carry the disc out of its
 * own wake before the pilot acts. Gusts from above and below only scatter the losses.
 */
class GustsInTheRingTest {

  private static final int SEEDS = 100;
  private static final RingStateInflow MODEL = RingStateInflow.standard();
  private static final TabulatedInflow TABLE = new TabulatedInflow(MODEL);

  /** Settling from a hover in gusts of a 25 kt wind, some of their components left out. */
  private record Gusty(long seed, boolean across, boolean vertical) implements Entry {

    @Override
    public String name() {
      return "gusty";
    }

    @Override
    public WindField wind() {
      WindField all =
          Disturbances.NONE
              .with(Disturbances.GUST_WIND, 25)
              .withSeed(seed)
              .wind(Wind.CALM, OptionalDouble.empty(), DemoCraft.TRAINER.rotor());
      return (time, north, east, up, result) -> {
        all.velocity(time, north, east, up, result);
        result[0] = across ? result[0] : 0;
        result[1] = across ? result[1] : 0;
        result[2] = vertical ? result[2] : 0;
      };
    }

    @Override
    public Start start(EquationsOfMotion motion) {
      return new Settling()
          .start(
              new EquationsOfMotion(
                  motion.craft(), motion.air(), Wind.CALM, motion.inflow(), false));
    }
  }

  private static Encounter late(Entry entry) {
    return Encounter.of(DemoCraft.TRAINER)
        .withInflow(TABLE, new HeaveDamping(MODEL))
        .withEntry(entry)
        .withRecovery(new Lateral())
        .withDelay(4);
  }

  private static double loss(Encounter encounter) {
    return encounter.fly(Simulator.fast(), null).altitudeLoss().orElseThrow();
  }

  private static double median(boolean across, boolean vertical) {
    double[] losses =
        IntStream.range(0, SEEDS)
            .parallel()
            .mapToDouble(seed -> loss(late(new Gusty(seed, across, vertical))))
            .sorted()
            .toArray();
    return losses[SEEDS / 2];
  }

  @Test
  void gustsAcrossShortenALateRecoveryAndVerticalOnesDoNot() {
    double calm = loss(late(new Settling()));
    assertEquals(calm, median(false, true), 0.06 * calm, "vertical gusts alone");
    assertTrue(median(true, false) < 0.92 * calm, "gusts across alone");
  }

  /** Root mean square of the edgewise speed from onset to recognition, beside the loss. */
  @Test
  void theMoreTheDiscIsCarriedAcrossTheLessIsLost() {
    int count = 40;
    double[] edgewise = new double[count];
    double[] losses = new double[count];
    IntStream.range(0, count)
        .parallel()
        .forEach(
            seed -> {
              double[] squares = new double[2];
              Trajectory trajectory =
                  new Trajectory(
                      0.1,
                      (phase, m) -> {
                        if (phase.equals("unrecognised")) {
                          squares[0] += m.edgewiseOverHover() * m.edgewiseOverHover();
                          squares[1]++;
                        }
                      });
              losses[seed] =
                  late(new Gusty(seed, true, false))
                      .fly(Simulator.dormandPrince(1e-6), trajectory)
                      .altitudeLoss()
                      .orElseThrow();
              edgewise[seed] = Math.sqrt(squares[0] / squares[1]);
            });
    double correlation = correlation(edgewise, losses);
    assertTrue(correlation < -0.6, "correlation " + correlation);
    double stayed =
        IntStream.range(0, count)
            .filter(i -> edgewise[i] < 0.2)
            .mapToDouble(i -> losses[i])
            .average()
            .orElseThrow();
    double calm = loss(late(new Settling()));
    assertEquals(calm, stayed, 0.07 * calm, "a disc that stays in its wake");
  }

  private static double correlation(double[] a, double[] b) {
    double meanA = Arrays.stream(a).average().orElseThrow();
    double meanB = Arrays.stream(b).average().orElseThrow();
    double both = 0;
    double squaresA = 0;
    double squaresB = 0;
    for (int i = 0; i < a.length; i++) {
      both += (a[i] - meanA) * (b[i] - meanB);
      squaresA += (a[i] - meanA) * (a[i] - meanA);
      squaresB += (b[i] - meanB) * (b[i] - meanB);
    }
    return both / Math.sqrt(squaresA * squaresB);
  }

  /**
   * In thinner air the hover induced velocity is larger and blades damp less, so that all goes
   * slower: at an equal delay the sink is less developed. Compared in height, a recovery at a
   * density altitude may therefore look better with less power to spare.
   */
  @Test
  void atAnEqualDelayTheRingIsLessDevelopedInThinnerAir() {
    double before = 0;
    for (double altitude : new double[] {0, 800, 1600, 2400}) {
      double[] deepest = new double[1];
      Trajectory trajectory =
          new Trajectory(
              0.05,
              (phase, m) -> {
                if (phase.equals("unrecognised")) {
                  deepest[0] = m.axialOverHover();
                }
              });
      late(new Settling())
          .withAir(StandardAtmosphere.at(altitude))
          .fly(Simulator.dormandPrince(1e-6), trajectory);
      assertTrue(
          altitude == 0 || deepest[0] > before + 0.03,
          altitude + " m: " + Arrays.toString(deepest));
      before = deepest[0];
    }
  }
}
