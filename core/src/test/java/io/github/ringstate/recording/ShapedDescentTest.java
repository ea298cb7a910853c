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

  private static final EncounterFinder FINDER =
      EncounterFinder.like(CRAFT, new Wind(0, 0), 0.1, 0.1);

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
    return FINDER.find(VerticalMotion.of(recording(end, speed, isRead, hasGround), NOISE));
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
    // it ends two seconds after the onset
    FoundEncounter atOnce = found(10, course).get(0);
    for (FoundEncounter one : List.of(ended, atOnce, all.get(0))) {
      assertEquals(Verdict.NO_END, one.verdict());
      assertEquals(Optional.empty(), one.arrestTime());
      assertEquals(5 + ONSET / 1.2, one.onsetTime().value(), 0.2);
    }
    // down to the last reading, as exactly as the onset is known: 0.05 s of its rate
    double grown = (fastest * fastest - ONSET * ONSET) / 2.4;
    double held = fastest * (18 - 5 - fastest / 1.2);
    assertEquals(grown + held, ended.altitudeLoss().value(), 0.05 * ONSET);
    // that before the gap is a tenth of a second sooner
    assertEquals(grown + held - 0.1 * fastest, all.get(0).altitudeLoss().value(), 0.05 * ONSET);
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
    // it is left where the descent comes back to that of the onset, and followed for a minute
    double fastest = 1.5 * ONSET;
    double there = 20 - 5 - fastest / 1.2;
    double left = (fastest - ONSET) / 1.2;
    double back = (fastest - slow) / 1.2;
    double lost =
        (fastest * fastest - ONSET * ONSET) / 2.4
            + fastest * there
            + (fastest * fastest - slow * slow) / 2.4
            + slow * (left + 60 - back);
    assertEquals(lost, one.altitudeLoss().value(), 0.05 * ONSET + 0.1 * slow);
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
    // and may have been at any time of the five readings around
    assertEquals(0.4, late.onsetTime().deviation(), 1e-9);
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

  /** When the fastest descent of {@link #notch} is reached, s. */
  private static final double TURN = 5 + 2 * ONSET / 0.6;

  /** Level to 5 s, down ever faster at 0.6 m/s2, and up again as steeply into a climb. */
  private static double notch(double t) {
    return t < 5 ? 0 : Math.min(3, 0.6 * (Math.abs(t - TURN) - TURN + 5));
  }

  /** On straight lines a time is as unsure as the vertical speed there over its rate of change. */
  @Test
  void timesAreAsUnsureAsTheSpeedsOverTheirRates() {
    Recording flown = recording(40, t -> notch(t), t -> true, t -> true);
    VerticalMotion motion = VerticalMotion.of(flown, NOISE);
    FoundEncounter one = FINDER.find(motion).get(0);
    double deviation = motion.verticalSpeedDeviation(flown.indexAt(TURN));
    // half of the time between readings
    assertEquals(5 + ONSET / 0.6, one.onsetTime().value(), 0.05);
    // the margin is less steep on one side of the boundary than on the other
    double unsure = one.onsetTime().deviation() * 0.6 / deviation;
    assertTrue(unsure > 0.6 && unsure < 1.6, "onset " + one.onsetTime());
    Estimate arrest = one.arrestTime().orElseThrow();
    assertEquals(2 * TURN - 5, arrest.value(), 1e-4);
    assertEquals(deviation / 0.6, arrest.deviation(), 0.1 * deviation);
    Estimate sink = one.sinkTime().orElseThrow();
    assertEquals(5, sink.value(), 0.4);
    // where it begins to fall its rate is between none and the whole
    assertTrue(sink.deviation() > 0.9 * deviation / 0.6 && sink.deviation() < 10 * deviation);
    // readings are further off than thought where the descent turns
    double peak = one.peakDescent().deviation();
    assertTrue(peak > 0.9 * deviation && peak < 3 * deviation, "peak " + one.peakDescent());
    // the loss is that of the heights, and of the height at an onset so unsure
    double early = ONSET * one.onsetTime().deviation();
    double loss = one.altitudeLoss().deviation();
    assertTrue(loss > early && loss < early + 3 * 0.02, "loss " + one.altitudeLoss());
  }

  /**
   * By hand: of two channels over 3 s either way, the heights before the onset are three deviations
   * off by turns and the rest are as flown, so the mean square is 9 / 4.
   */
  @Test
  void anOnsetIsAsUnsureAsTheReadingsAroundAreOff() {
    Recording clean = recording(40, t -> notch(t), t -> true, t -> true);
    FoundEncounter one = FINDER.find(VerticalMotion.of(clean, NOISE)).get(0);
    int onset = clean.indexAt(one.onsetTime().value());
    double[] height = Rewritten.values(clean, Channel.HEIGHT);
    for (int k = onset - 30; k < onset; k++) {
      height[k] += k % 2 == 0 ? 0.06 : -0.06;
    }
    Recording wavers = Rewritten.with(clean, Channel.HEIGHT, height);
    FoundEncounter other = FINDER.find(VerticalMotion.of(wavers, NOISE)).get(0);
    assertEquals(1.5, other.onsetTime().deviation() / one.onsetTime().deviation(), 0.15);
  }

  /** The notch flown at a ground speed, m/s. */
  private static FoundEncounter across(
      double ground, double windDeviation, double groundDeviation) {
    Recording still = recording(40, t -> notch(t), t -> true, t -> true);
    double[] speed = new double[still.size()];
    Arrays.fill(speed, ground);
    Recording flown = Rewritten.with(still, Channel.GROUND_SPEED, speed);
    return EncounterFinder.like(CRAFT, new Wind(0, 0), windDeviation, groundDeviation)
        .find(VerticalMotion.of(flown, NOISE))
        .get(0);
  }

  /**
   * By trying: an onset comes so much later at a greater airspeed, and of that airspeed 0.3 m/s of
   * wind and 0.4 m/s over the ground are not known, 0.5 m/s together.
   */
  @Test
  void anOnsetIsAsUnsureAsTheAirspeedMakesIt() {
    double ground = 0.5 * HOVER_INDUCED;
    double later =
        (across(ground + 0.1, 0, 0).onsetTime().value()
                - across(ground - 0.1, 0, 0).onsetTime().value())
            / 0.2;
    double alone = across(ground, 0, 0).onsetTime().deviation();
    double found = across(ground, 0.3, 0.4).onsetTime().deviation();
    assertEquals(FastMath.hypot(alone, 0.5 * later), found, 0.15 * found);
    // not more than ten times the five readings by which the rate is told
    assertEquals(10 * 0.4, across(ground, 1000, 0).onsetTime().deviation(), 1e-9);
  }

  /** The same readings on a clock that is ahead, with all the power at each of them. */
  private static Recording changed(Recording flown, double ahead) {
    double[] time = new double[flown.size()];
    double[] torque = new double[flown.size()];
    Map<Channel, double[]> values = new EnumMap<>(Channel.class);
    for (Channel channel : flown.channels()) {
      double[] copy = new double[flown.size()];
      for (int k = 0; k < copy.length; k++) {
        copy[k] = flown.value(channel, k);
      }
      values.put(channel, copy);
    }
    for (int k = 0; k < time.length; k++) {
      time[k] = flown.time(k) + ahead;
      torque[k] = 1;
    }
    values.put(Channel.TORQUE, torque);
    return new Recording(time, values);
  }

  /** Of a sink that all the power does not hold and that becomes the ring state, this is told. */
  @Test
  void theOnsetIsThatOfTheRingStateIfItIsEnteredOnWhateverClock() {
    for (double end : new double[] {40, TURN + 1}) {
      Recording flown = recording(end, t -> notch(t), t -> true, t -> true);
      FoundEncounter one = FINDER.find(VerticalMotion.of(flown, NOISE)).get(0);
      List<FoundEncounter> all = FINDER.find(VerticalMotion.of(changed(flown, 5000), NOISE));
      assertEquals(1, all.size());
      FoundEncounter other = all.get(0);
      assertEquals(end == 40 ? Verdict.RING_STATE : Verdict.NO_END, other.verdict());
      assertEquals(one.arrestTime().isPresent(), other.arrestTime().isPresent());
      assertEquals(one.onsetTime().value(), other.onsetTime().value() - 5000, 1e-6);
      assertEquals(one.onsetTime().deviation(), other.onsetTime().deviation(), 1e-6);
      assertEquals(one.peakDescent().value(), other.peakDescent().value(), 1e-6);
      assertEquals(one.altitudeLoss().value(), other.altitudeLoss().value(), 1e-6);
    }
  }

  /** Straight lines between speeds at times, one after the other. */
  private static double line(double t, double... points) {
    int i = 0;
    while (i + 4 < points.length && t > points[i + 2]) {
      i += 2;
    }
    double share = (t - points[i]) / (points[i + 2] - points[i]);
    return points[i + 1] + Math.min(Math.max(share, 0), 1) * (points[i + 3] - points[i + 1]);
  }

  /** Left for eight seconds, down to half the boundary's descent, and entered again. */
  @Test
  void visitsBeforeTheArrestAreOneEncounter() {
    double fast = -1.5 * ONSET;
    double slow = -0.5 * ONSET;
    DoubleUnaryOperator twice =
        t ->
            line(t, 5, 0, 10, fast, 15, fast, 17, slow, 23, slow, 25, fast, 30, fast, 35, 0, 40, 1);
    List<FoundEncounter> all = found(45, twice);
    assertEquals(1, all.size());
    assertEquals(5 + 5 / 1.5, all.get(0).onsetTime().value(), 0.1);
    assertEquals(35, all.get(0).arrestTime().orElseThrow().value(), 0.1);
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
