package io.github.ringstate.instructor.loss;

import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.conditions.Conditions;
import io.github.ringstate.pilot.Technique;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The table at one mass in one air.
 *
 * @param conditions craft, mass and air
 * @param recoveries the columns
 * @param delays the lines, s
 * @param rows the flights of the standard technique, for each recovery each delay
 * @param pilots many pilots, in the same order; without delays one line for each recovery; empty
 *     without pilots
 * @param untilRing from the limits that the clock starts at to the ring state if nobody acts, s;
 *     empty for another clock, or if the ring state is not met
 */
record LossBlock(
    Conditions conditions,
    List<Technique> recoveries,
    List<Double> delays,
    List<LossRow> rows,
    List<PilotRow> pilots,
    OptionalDouble untilRing) {

  LossBlock {
    recoveries = List.copyOf(recoveries);
    delays = List.copyOf(delays);
    rows = List.copyOf(rows);
    pilots = List.copyOf(pilots);
  }

  /**
   * All that was flown, line by line.
   *
   * @return a line for each recovery and delay
   */
  List<LossLine> lines() {
    if (rows.isEmpty()) {
      return pilots.stream()
          .map(
              row ->
                  new LossLine(
                      conditions, row.recovery(), row.delay(), Optional.empty(), Optional.of(row)))
          .toList();
    }
    return IntStream.range(0, rows.size())
        .mapToObj(
            i ->
                new LossLine(
                    conditions,
                    rows.get(i).recovery(),
                    OptionalDouble.of(rows.get(i).delay()),
                    Optional.of(rows.get(i)),
                    pilots.isEmpty() ? Optional.empty() : Optional.of(pilots.get(i))))
        .toList();
  }

  /**
   * What to take away from the block.
   *
   * @param units the units to speak in
   * @return one sentence, or a few
   */
  String inShort(UnitSystem units) {
    String sentence =
        pilots.isEmpty()
            ? new TakeAway(this, units).sentence()
            : new PilotTakeAway(this, units).sentence();
    String until =
        untilRing.isPresent()
            ? LossMessages.SAY.untilRing(
                Decimals.fixed(untilRing.getAsDouble(), 1), untilRing.getAsDouble() > 0)
            : "";
    return Stream.of(sentence, until, new OpenByFit(this, units).sentence())
        .filter(part -> !part.isEmpty())
        .collect(Collectors.joining(" "));
  }

  /**
   * One flight.
   *
   * @param recovery one of the recoveries
   * @param delay one of the delays, s
   * @return the flight
   */
  LossRow row(Technique recovery, double delay) {
    return rows.get(recoveries.indexOf(recovery) * delays.size() + delays.indexOf(delay));
  }

  /**
   * The pilots of one line.
   *
   * @param recovery one of the recoveries
   * @param delay one of the delays, s; empty if each pilot has one of their own
   * @return the pilots
   */
  PilotRow pilots(Technique recovery, OptionalDouble delay) {
    return pilots.stream()
        .filter(row -> row.recovery().equals(recovery) && row.delay().equals(delay))
        .findFirst()
        .orElseThrow();
  }

  /**
   * The flights of a recovery.
   *
   * @param recovery one of the recoveries
   * @return the flights, the shortest delay first
   */
  List<LossRow> column(Technique recovery) {
    return delays.stream().sorted().map(delay -> row(recovery, delay)).toList();
  }
}
