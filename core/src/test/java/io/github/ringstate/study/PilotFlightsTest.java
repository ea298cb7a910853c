package io.github.ringstate.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.pilot.Lateral;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Technique;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A spread keeps what each pilot was like and lost, so that nobody needs to be flown again. */
class PilotFlightsTest {

  private static final PilotStudy STUDY =
      new PilotStudy(
          Encounter.of(DemoCraft.TRAINER).withHeight(60),
          Technique.LATERAL,
          Optional.of(PilotState.DISTRACTED.delays()),
          5);

  @Test
  void eachFlightIsThatOfThePilotFlownAlone() {
    LossSpread spread = STUDY.fly(Sampling.of(64), Progress.SILENT);
    assertEquals(64, spread.flights().size());
    for (int i : new int[] {0, 7, 63}) {
      PilotFlight flight = spread.flights().get(i);
      Outcome alone = STUDY.fly(i);
      assertEquals(i, flight.number());
      assertEquals(STUDY.encounter(i), flight.encounter());
      assertEquals(STUDY.encounter(i).delay(), flight.delay());
      assertEquals(flight.encounter().recovery(), new Lateral(flight.drawn()));
      assertEquals(alone.ending(), flight.outcome().ending());
      assertEquals(alone.altitudeLoss(), flight.outcome().altitudeLoss());
      assertEquals(alone.lossAfterRecognition(), flight.outcome().lossAfterRecognition());
      assertEquals(alone.peakDescent(), flight.outcome().peakDescent());
      assertEquals(alone.timeToArrest(), flight.outcome().timeToArrest());
      assertEquals(alone.impactSpeed(), flight.outcome().impactSpeed());
      assertEquals(alone.onsetTime(), flight.outcome().onsetTime());
    }
    assertThrows(IndexOutOfBoundsException.class, () -> spread.flights().get(64));
    assertThrows(UnsupportedOperationException.class, () -> spread.flights().remove(0));
  }

  @Test
  void theLossesOfTheFlightsAreThoseOfTheSpread() {
    LossSpread spread = STUDY.fly(new Sampling(1000, 0.5, 0.95, 20), Progress.SILENT);
    double[] losses =
        spread.flights().stream()
            .map(PilotFlight::outcome)
            .mapToDouble(
                outcome ->
                    outcome.ending() == Ending.ARRESTED
                        ? outcome.altitudeLoss().orElseThrow()
                        : Double.POSITIVE_INFINITY)
            .sorted()
            .toArray();
    assertEquals(Arrays.toString(spread.losses()), Arrays.toString(losses));
    assertTrue(losses.length < 1000, "the sampling stopped early");
  }

  /** Second method: the slope between the same pilots flown with no delay and with one second. */
  @Test
  void aRegressionOfLossOnDelayNeedsNoSecondFlight() {
    PilotStudy free =
        new PilotStudy(Encounter.of(DemoCraft.TRAINER), STUDY.pilots(), STUDY.delays(), 5);
    List<PilotFlight> flights =
        free.fly(Sampling.of(256), Progress.SILENT).flights().stream()
            .filter(flight -> flight.outcome().ending() == Ending.ARRESTED)
            .filter(flight -> flight.delay() >= 1 && flight.delay() <= 3)
            .toList();
    assertTrue(flights.size() > 100, flights.size() + " of 256 arrested the descent");
    double meanDelay = flights.stream().mapToDouble(PilotFlight::delay).average().orElseThrow();
    double product = 0;
    double square = 0;
    for (PilotFlight flight : flights) {
      double later = flight.delay() - meanDelay;
      product += later * flight.outcome().altitudeLoss().orElseThrow();
      square += later * later;
    }
    double slope = product / square;
    double early = median(free, 1);
    double late = median(free, 3);
    assertEquals((late - early) / 2, slope, 0.15 * slope);
  }

  private static double median(PilotStudy study, double delay) {
    return new PilotStudy(study.base().withDelay(delay), study.pilots(), Optional.empty(), 5)
        .fly(Sampling.of(64), Progress.SILENT)
        .loss(0.5);
  }

  @Test
  void aSpreadOfLossesAloneKnowsNoFlights() {
    assertEquals(
        List.of(), LossSpread.of(new Ending[] {Ending.ARRESTED}, new double[] {1}).flights());
  }
}
