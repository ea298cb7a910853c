package io.github.ringstate.encounter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.chance.IndependentStream;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.inflow.TabulatedInflow;
import io.github.ringstate.pilot.Cues;
import io.github.ringstate.pilot.Recognition;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BulkFlightTest {

  private static final RingStateInflow MODEL = RingStateInflow.standard();
  private static final TabulatedInflow TABLE = new TabulatedInflow(MODEL);
  private static final List<Entry> ENTRIES =
      List.of(new Settling(), new Steep(), new Downwind(), new TailwindApproach());

  private static Encounter drawn(int number) {
    SplittableRandom random = new SplittableRandom(number);
    Helicopter craft = DemoCraft.ALL.get(random.nextInt(4));
    double least = craft.numbers().get(Helicopter.MINIMUM_MASS);
    double greatest = craft.numbers().get(Helicopter.MAXIMUM_MASS);
    Technique technique = Technique.ALL.get(random.nextInt(Technique.ALL.size()));
    return Encounter.of(
            craft.with(Helicopter.MASS, least + (greatest - least) * random.nextDouble()))
        .withEntry(ENTRIES.get(random.nextInt(3)))
        .withAir(StandardAtmosphere.at(2500 * random.nextDouble()))
        .withDelay(6 * random.nextDouble())
        .withRecovery(technique.draw(new IndependentStream(3, number)));
  }

  private static BulkFlight bulk(Encounter encounter) {
    return new BulkFlight(
        Approach.fly(encounter.withInflow(TABLE, new HeaveDamping(MODEL)), Simulator.fast()));
  }

  /**
   * Second method: the same encounters by Dormand and Prince's 8(5,3) at 1e-10, the inflow by its
   * roots. Over ten thousand such encounters, at 1e-12, the greatest difference was 0.06 ft.
   */
  @Test
  void lossesAreWithinATenthOfAFootOfPreciseOnes() {
    IntStream.range(0, 300)
        .parallel()
        .forEach(
            number -> {
              Encounter encounter = drawn(number);
              Outcome precise = encounter.fly(Simulator.dormandPrince(1e-10), null);
              BulkFlight fast = bulk(encounter);
              Ending ending = fast.fly(encounter.recovery(), encounter.recognition());
              assertEquals(precise.ending(), ending, "encounter " + number);
              assertEquals(
                  Unit.FOOT.fromSi(precise.altitudeLoss().orElse(0)),
                  ending == Ending.ARRESTED ? Unit.FOOT.fromSi(fast.altitudeLoss()) : 0,
                  0.1,
                  "encounter " + number);
              assertEquals(
                  precise.peakDescent().orElseThrow(), fast.peakDescent(), 0.02, "" + number);
              assertEquals(precise.timeToArrest().orElse(Double.NaN), fast.timeToArrest(), 0.05);
            });
  }

  /**
   * Second method as above. Of the first ten thousand encounters these are the ones that are
   * arrested last, 53 to 60 s after the pilot acts.
   */
  @ParameterizedTest
  @ValueSource(ints = {7349, 5245, 8819, 3144, 8012})
  void aDescentThatLingersIsKnownAsWell(int number) {
    Encounter encounter = drawn(number);
    Outcome precise = encounter.fly(Simulator.dormandPrince(1e-11), null);
    assertTrue(precise.happened(EventKind.ARREST));
    BulkFlight fast = bulk(encounter);
    assertEquals(precise.ending(), fast.fly(encounter.recovery(), encounter.recognition()));
    assertEquals(
        Unit.FOOT.fromSi(precise.altitudeLoss().orElse(Double.NaN)),
        Unit.FOOT.fromSi(fast.altitudeLoss()),
        0.1);
  }

  @Test
  void aFlightLeavesNothingBehindForTheNext() {
    Encounter encounter = drawn(7).withRecovery(Technique.FORWARD.standard());
    BulkFlight used = bulk(encounter);
    for (int i = 0; i < 20; i++) {
      used.fly(
          Technique.LATERAL.draw(new IndependentStream(1, i)), Recognition.afterOnset(0.1 * i));
    }
    used.fly(encounter.recovery(), encounter.recognition());
    BulkFlight fresh = bulk(encounter);
    fresh.fly(encounter.recovery(), encounter.recognition());
    assertEquals(fresh.altitudeLoss(), used.altitudeLoss());
    assertEquals(fresh.peakDescent(), used.peakDescent());
  }

  /** The flight before recognition is kept: later flights join it where they leave it. */
  @Test
  void aFlightThatJoinsAKeptOneIsTheSameToTheLastBit() {
    SplittableRandom random = new SplittableRandom(11);
    for (int number = 0; number < 12; number++) {
      Encounter encounter = drawn(100 + number);
      BulkFlight used = bulk(encounter);
      for (int i = 0; i < 12; i++) {
        Recognition recognition =
            i % 5 == 4
                ? Recognition.afterCue(Cues.sinkShown(0, 2), random.nextDouble())
                : Recognition.afterOnset(i == 0 ? 0 : 9 * random.nextDouble());
        Recovery recovery =
            Technique.ALL.get(i % Technique.ALL.size()).draw(new IndependentStream(5, i));
        BulkFlight fresh = bulk(encounter);
        assertEquals(fresh.fly(recovery, recognition), used.fly(recovery, recognition));
        assertEquals(fresh.altitudeLoss(), used.altitudeLoss());
        assertEquals(fresh.lossAfterRecognition(), used.lossAfterRecognition());
        assertEquals(fresh.peakDescent(), used.peakDescent());
        assertEquals(fresh.timeToArrest(), used.timeToArrest());
      }
    }
  }

  @Test
  void theGroundIsFoundAsWell() {
    Encounter encounter =
        Encounter.of(DemoCraft.TRAINER).withDelay(3).withHeight(Unit.FOOT.toSi(120));
    BulkFlight fast = bulk(encounter);
    assertEquals(Ending.GROUND, fast.fly(encounter.recovery(), encounter.recognition()));
    assertEquals(encounter.fly().impactSpeed().orElseThrow(), fast.impactSpeed(), 0.02);
    assertTrue(fast.peakDescent() >= fast.impactSpeed(), fast.peakDescent() + "");
    assertEquals(Unit.FOOT.toSi(120), fast.altitudeLoss(), 1e-9);
  }

  @Test
  void withoutOnsetThereIsNothingToFly() {
    Encounter encounter =
        Encounter.of(DemoCraft.TRAINER).withEntry(EntryKind.SETTLING.with(Settling.WIND, 30));
    BulkFlight fast = bulk(encounter);
    assertEquals(Ending.NO_ONSET, fast.fly(encounter.recovery(), encounter.recognition()));
    assertTrue(Double.isNaN(fast.altitudeLoss()));
  }

  /** Counted by the virtual machine for this thread, after the compiler has settled. */
  @Test
  void aDescentAllocatesNothing() {
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    Encounter encounter = Encounter.of(DemoCraft.TRAINER);
    BulkFlight fast = bulk(encounter);
    Recovery recovery = encounter.recovery();
    Recognition recognition = encounter.recognition();
    for (int i = 0; i < 3000; i++) {
      fast.fly(recovery, recognition);
    }
    long before = threads.getCurrentThreadAllocatedBytes();
    for (int i = 0; i < 1000; i++) {
      fast.fly(recovery, recognition);
    }
    long bytes = threads.getCurrentThreadAllocatedBytes() - before;
    // asking for the count takes some bytes of its own, once
    assertTrue(bytes < 1000, bytes + " bytes in a thousand descents");
  }
}
