package io.github.ringstate.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.air.Wind;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.inflow.RingBand;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoublePredicate;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;

/** Vertical descents in calm air whose rate follows a known course, read without errors. */
class ShapedDescentTest {

  private static final Encounter CRAFT = Encounter.of(DemoCraft.TRAINER);
  private static final double HOVER_INDUCED = CRAFT.craft().hoverInducedVelocity(CRAFT.air());

  /** The descent at which the ring state begins without airspeed, m/s. */
  private static final double ONSET =
      -CRAFT.boundary().bands(0).stream().mapToDouble(RingBand::onset).max().orElseThrow()
          * HOVER_INDUCED;

  /** Small errors, so that the smoothed descent is the one that was flown. */
  private static final Noise NOISE = new Noise(4, 0.02, 0.02, 0.02, 0, 60);

  private static Recording recording(
      double end, DoubleUnaryOperator speed, DoublePredicate isRead, DoublePredicate hasGround) {
    List<double[]> rows = new ArrayList<>();
    double height = 1000;
    double step = 0.001;
    for (int i = 0; i <= end / step; i++) {
      double t = i * step;
      if (i % 100 == 0 && isRead.test(t)) {
        double ground = hasGround.test(t) ? 0 : Double.NaN;
        rows.add(new double[] {t, height, speed.applyAsDouble(t), ground});
      }
      height += step * speed.applyAsDouble(t + step / 2);
    }
    Map<Channel, double[]> values = new EnumMap<>(Channel.class);
    values.put(Channel.HEIGHT, column(rows, 1));
    values.put(Channel.VERTICAL_SPEED, column(rows, 2));
    values.put(Channel.GROUND_SPEED, column(rows, 3));
    values.put(Channel.TRACK, column(rows, 3));
    return new Recording(column(rows, 0), values);
  }

  private static double[] column(List<double[]> rows, int column) {
    return rows.stream().mapToDouble(row -> row[column]).toArray();
  }

  private static List<FoundEncounter> found(
      double end, DoubleUnaryOperator speed, DoublePredicate isRead, DoublePredicate hasGround) {
    return EncounterFinder.like(CRAFT, new Wind(0, 0), 0.1, 0.1)
        .find(VerticalMotion.of(recording(end, speed, isRead, hasGround), NOISE));
  }

  private static List<FoundEncounter> found(double end, DoubleUnaryOperator speed) {
    return found(end, speed, t -> true, t -> true);
  }

  /** Level, then ever faster from 5 s on up to a rate, held, and back to level from a time on. */
  private static double course(double t, double fastest, double until) {
    double down = Math.min(fastest, 1.2 * Math.max(0, t - 5));
    return -Math.max(0, t > until ? fastest - 1.2 * (t - until) : down);
  }

  @Test
  void anEncounterIsFoundWhereItsCoursePutsIt() {
    double fastest = 1.5 * ONSET;
    FoundEncounter one = found(40, t -> course(t, fastest, 20)).get(0);
    assertEquals(Verdict.RING_STATE, one.verdict());
    assertEquals(5 + ONSET / 1.2, one.onsetTime().value(), 0.2);
    assertEquals(20 + fastest / 1.2, one.arrestTime().orElseThrow().value(), 0.2);
    assertEquals(fastest, one.peakDescent().value(), 0.1);
    // the way from the onset to the fastest, that at the fastest, and that back to rest
    double grown = (fastest * fastest - ONSET * ONSET) / 2.4;
    double held = fastest * (20 - 5 - fastest / 1.2);
    assertEquals(grown + held + fastest * fastest / 2.4, one.altitudeLoss().value(), 1.5);
    // the vertical speed was last zero when the descent began
    assertEquals(5, one.descentTime(), 0.5);
  }

  @Test
  void aRecordingThatBeginsInTheRingStateHasItsOnsetAtItsStart() {
    double fastest = 1.5 * ONSET;
    FoundEncounter one = found(40, t -> t < 10 ? -fastest : course(t, fastest, 10)).get(0);
    assertEquals(0, one.onsetTime().value());
    assertEquals(0, one.descentTime());
    // it falls no faster than at its onset
    assertEquals(Optional.empty(), one.sinkTime());
    assertEquals(Verdict.RING_STATE, one.verdict());
  }

  @Test
  void anArrestThatIsNotRecordedIsNotTold() {
    double fastest = 1.5 * ONSET;
    DoubleUnaryOperator course = t -> course(t, fastest, 20);
    // the recording ends in the descent
    FoundEncounter ended = found(18, course).get(0);
    // it has no reading from 18 s to 30 s
    List<FoundEncounter> all = found(40, course, t -> t < 18 || t > 30, t -> true);
    assertEquals(1, all.size());
    for (FoundEncounter one : List.of(ended, all.get(0))) {
      assertEquals(Verdict.NO_END, one.verdict());
      assertEquals(Optional.empty(), one.arrestTime());
      assertEquals(5 + ONSET / 1.2, one.onsetTime().value(), 0.2);
    }
  }

  @Test
  void aDescentThatGoesOnSlowlyForAMinuteIsNoArrest() {
    double slow = 0.3 * ONSET;
    FoundEncounter one =
        found(
                120,
                t ->
                    t < 20
                        ? course(t, 1.5 * ONSET, 20)
                        : Math.min(course(t, 1.5 * ONSET, 20), t > 110 ? 1 : -slow))
            .get(0);
    assertEquals(Verdict.NO_END, one.verdict());
    assertEquals(Optional.empty(), one.arrestTime());
  }

  @Test
  void theEdgeIsToldFromTheInside() {
    // a wave of half a minute whose top is beyond the boundary by a five-hundredth
    DoubleUnaryOperator wave = t -> (FastMath.cos(FastMath.PI * (t - 5) / 15) - 1) / 2;
    FoundEncounter one =
        found(40, t -> t > 5 && t < 35 ? 1.002 * ONSET * wave.applyAsDouble(t) : 0).get(0);
    assertEquals(Verdict.AT_THE_BOUNDARY, one.verdict());
    // a visit of a quarter of a second, at 0.1 s a reading
    double shortly = 0.15 * 1.2;
    assertEquals(
        List.of(), found(40, t -> course(t, ONSET + shortly, 5 + (ONSET + shortly) / 1.2)));
  }

  @Test
  void withoutGroundSpeedNothingIsSaidOfThatTime() {
    double fastest = 1.5 * ONSET;
    DoubleUnaryOperator course = t -> course(t, fastest, 20);
    assertEquals(List.of(), found(40, course, t -> true, t -> t < 6 || t > 28));
    // read again from 15 s on: the onset is no earlier than that
    FoundEncounter late = found(40, course, t -> true, t -> t < 6 || t > 15).get(0);
    assertEquals(15.1, late.onsetTime().value(), 0.11);
  }

  @Test
  void whatIsUncertainIsNotNegative() {
    for (double no : new double[] {-1, Double.NaN}) {
      for (double[] both : new double[][] {{no, 0.1}, {0.1, no}}) {
        assertThrows(
            IllegalArgumentException.class,
            () -> EncounterFinder.like(CRAFT, new Wind(0, 0), both[0], both[1]));
      }
    }
  }

  /** After a minute without readings the motion is known from what follows alone. */
  @Test
  void aLongGapPartsARecordingInTwo() {
    Recording whole =
        recording(120, t -> 2 * FastMath.sin(0.3 * t), t -> t < 20 || t > 90, t -> true);
    int first = whole.indexAt(90);
    VerticalMotion motion = VerticalMotion.of(whole, NOISE);
    VerticalMotion alone = VerticalMotion.of(whole.part(first, whole.size()), NOISE);
    for (int k = first; k < whole.size(); k++) {
      // of a first guess of 1 km and 30 m/s the readings leave (0.02 / 30)^2
      assertEquals(alone.height(k - first), motion.height(k), 1e-4);
      assertEquals(alone.verticalSpeed(k - first), motion.verticalSpeed(k), 1e-4);
      assertEquals(alone.verticalSpeedDeviation(k - first), motion.verticalSpeedDeviation(k), 1e-6);
    }
    assertThrows(
        IllegalArgumentException.class, () -> motion.heightDifferenceDeviation(first, first - 1));
  }

  /** Where nothing was read there is nothing to be further off than its noise. */
  @Test
  void withoutReadingsTheScaleIsOne() {
    Recording whole = recording(10, t -> -1, t -> true, t -> true);
    double[] height = Rewritten.values(whole, Channel.HEIGHT);
    Arrays.fill(height, 0, 5, Double.NaN);
    Arrays.fill(height, 21, 30, Double.NaN);
    Recording recording = new Recording(Rewritten.times(whole), Map.of(Channel.HEIGHT, height));
    VerticalMotion motion = VerticalMotion.of(recording, NOISE);
    assertEquals(1, motion.scale(21, 29));
    // the line goes on through what was not read
    assertEquals(whole.value(Channel.HEIGHT, 25), motion.height(25), 0.05);
    assertEquals(whole.value(Channel.HEIGHT, 0), motion.height(0), 0.2);
    assertTrue(motion.verticalSpeedDeviation(25) > motion.verticalSpeedDeviation(60));
  }
}
