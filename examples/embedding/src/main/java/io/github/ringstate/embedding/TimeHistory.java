package io.github.ringstate.embedding;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.FlightEvent;
import io.github.ringstate.encounter.FlightLimits;
import io.github.ringstate.encounter.FlightQuantity;
import io.github.ringstate.encounter.Instant;
import io.github.ringstate.encounter.RecordedFlight;
import io.github.ringstate.integrate.Event.Crossing;
import java.io.PrintStream;
import java.util.Locale;

/** Keeps a flight, notes an event of one's own in it, and flies on for 5 s past the arrest. */
public final class TimeHistory {

  private TimeHistory() {}

  /**
   * Runs the program.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    run(System.out);
  }

  static void run(PrintStream out) {
    RecordedFlight flight =
        Encounter.of(DemoCraft.TRAINER)
            .withLimits(FlightLimits.STANDARD.with(FlightLimits.TIME_PAST_ARREST, 5))
            .withEvents(
                FlightEvent.note(
                    "ten metres a second", Crossing.RISING, seen -> seen.forwardAirspeed() - 10))
            .record();
    for (Instant instant : flight.history().sampled(1)) {
      out.printf(
          Locale.ROOT,
          "%.0f s  %-14s %6.1f m %6.2f m/s%n",
          instant.time(),
          instant.phase(),
          instant.get(FlightQuantity.HEIGHT),
          instant.get(FlightQuantity.VERTICAL_SPEED));
    }
    flight
        .outcome()
        .occurrences()
        .forEach(event -> out.printf(Locale.ROOT, "%.2f s  %s%n", event.time(), event.label()));
  }
}
