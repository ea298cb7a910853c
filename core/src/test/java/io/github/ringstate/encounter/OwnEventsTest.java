package io.github.ringstate.encounter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.integrate.Event.Crossing;
import io.github.ringstate.pilot.Technique;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Events and limits of time of one's own. */
class OwnEventsTest {

  private static final Encounter ENCOUNTER = Encounter.of(DemoCraft.TRAINER).withDelay(1.5);

  private static BulkFlight bulk(Encounter encounter) {
    BulkFlight flight = new BulkFlight(Approach.fly(encounter, Simulator.fast()));
    flight.fly(encounter.recovery(), encounter.recognition());
    return flight;
  }

  private static List<Occurrence> own(Outcome outcome) {
    return outcome.occurrences().stream()
        .filter(occurrence -> occurrence.kind() == EventKind.OWN)
        .toList();
  }

  /** Definition: it happens where its quantity is zero, here at 6 m/s of airspeed. */
  @Test
  void anEventOfOnesOwnIsNotedWhereItHappensAndChangesNothing() {
    Encounter encounter =
        ENCOUNTER.withEvents(
            FlightEvent.note(
                "six metres a second", Crossing.RISING, seen -> seen.forwardAirspeed() - 6));
    RecordedFlight flight = encounter.record();
    Occurrence noted = own(flight.outcome()).get(0);
    assertEquals("six metres a second", noted.label());
    assertEquals(6, flight.history().at(noted.time()).get(FlightQuantity.FORWARD_AIRSPEED), 1e-5);
    assertEquals(
        ENCOUNTER.fly().altitudeLoss().orElseThrow(),
        flight.outcome().altitudeLoss().orElseThrow(),
        1e-9);
    assertEquals(bulk(ENCOUNTER).altitudeLoss(), bulk(encounter).altitudeLoss());
  }

  @Test
  void anEventMayEndTheFlight() {
    Outcome whole = ENCOUNTER.fly();
    double atOnset = -whole.occurrences().get(0).verticalSpeed();
    double sink = 0.5 * (atOnset + whole.peakDescent().orElseThrow());
    Encounter encounter =
        ENCOUNTER.withEvents(
            FlightEvent.stop("fast enough", Crossing.FALLING, seen -> seen.verticalSpeed() + sink));
    Outcome outcome = encounter.fly();
    assertEquals(Ending.STOPPED, outcome.ending());
    Occurrence last = outcome.occurrences().get(outcome.occurrences().size() - 1);
    assertEquals("fast enough", last.label());
    assertEquals(-sink, last.verticalSpeed(), 1e-6);
    assertEquals(sink, outcome.peakDescent().orElseThrow(), 1e-6);
    assertFalse(outcome.altitudeLoss().isPresent());
    assertEquals(last.time(), encounter.record().history().end(), 1e-9);
    BulkFlight fast = bulk(encounter);
    assertEquals(Ending.STOPPED, fast.outcome().ending());
    assertEquals(sink, fast.peakDescent(), 1e-4);
  }

  /** Second method: without limits of its own the same flight ends at its arrest. */
  @Test
  void aFlightGoesOnPastItsArrestAndEndsTheSame() {
    Encounter longer =
        ENCOUNTER.withLimits(FlightLimits.STANDARD.with(FlightLimits.TIME_PAST_ARREST, 25));
    RecordedFlight flight = longer.record();
    Outcome plain = ENCOUNTER.fly();
    Outcome outcome = flight.outcome();
    assertEquals(plain.ending(), outcome.ending());
    assertEquals(plain.altitudeLoss(), outcome.altitudeLoss());
    assertEquals(plain.peakDescent(), outcome.peakDescent());
    assertEquals(plain.lossAfterRecognition(), outcome.lossAfterRecognition());
    double arrest = plain.onsetTime().orElseThrow() + plain.timeToArrest().orElseThrow();
    assertEquals(arrest + 25, flight.history().end(), 1e-6);
    assertTrue(
        flight.history().at(flight.history().end()).get(FlightQuantity.VERTICAL_SPEED) > 1,
        "it climbs away");
    int common = plain.occurrences().size();
    assertEquals(plain.occurrences(), outcome.occurrences().subList(0, common));
    Encounter shorter =
        ENCOUNTER.withLimits(FlightLimits.STANDARD.with(FlightLimits.TIME_PAST_ARREST, 1));
    assertEquals(arrest + 1, shorter.record().history().end(), 1e-6);
    assertEquals(bulk(ENCOUNTER).altitudeLoss(), bulk(longer).altitudeLoss());
    double[] last = new double[1];
    longer.fly(Simulator.fast(), new Trajectory(0.5, (phase, motion) -> last[0] = motion.time()));
    assertEquals(arrest + 25, last[0], 0.6);
  }

  @Test
  void thePhasesGoOnPastAnArrestToo() {
    Encounter longer =
        ENCOUNTER.withLimits(FlightLimits.STANDARD.with(FlightLimits.TIME_PAST_ARREST, 25));
    List<Instant> instants = longer.record().history().sampled(1);
    assertEquals("climb away", instants.get(instants.size() - 1).phase());
  }

  @Test
  void theLimitsOfTimeAreThoseThatAreSet() {
    Encounter nothing = ENCOUNTER.withRecovery(Technique.NONE.standard());
    assertEquals(Ending.NOT_ARRESTED, nothing.fly().ending());
    RecordedFlight shorter =
        nothing
            .withLimits(FlightLimits.STANDARD.with(FlightLimits.RECOVERY_TIME, 5))
            .record(Simulator.fast());
    assertEquals(
        shorter.outcome().onsetTime().orElseThrow() + 1.5 + 5, shorter.history().end(), 1e-9);
    Encounter hasty = ENCOUNTER.withLimits(FlightLimits.STANDARD.with(FlightLimits.ENTRY_TIME, 2));
    assertEquals(Ending.NO_ONSET, hasty.fly().ending());
  }
}
