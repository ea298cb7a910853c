package io.github.ringstate.validation.open;

import io.github.ringstate.chance.IndependentStream;
import io.github.ringstate.chance.RandomStream;
import io.github.ringstate.craft.EngineKind;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Approach;
import io.github.ringstate.encounter.BulkFlight;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.pilot.Delays;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.pilot.Spread;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.study.model.OpenNumbers;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * What each open number would be worth for the loss of one craft from the standard entry by one way
 * out: model, engine and pilot are drawn for each flight, and {@link KnownNumber} tells how much
 * narrower the band of the losses would be.
 *
 * @param craft the craft
 * @param technique the way out
 * @param band losses at the delay, m
 * @param alone the same over models alone, engine and technique standard
 * @param numbers what each number of model, engine and pilot would be worth then
 * @param delayed losses where the delay varies as well, m
 * @param delay what the delay would be worth then, as a part of that band
 * @param chance one standard deviation of what a number seems worth that tells nothing, the greater
 *     one of the two bands at the delay
 * @param flights how many flights there are
 * @param lost how many more were left out since a descent was not arrested for good
 */
public record Worth(
    Helicopter craft,
    Technique technique,
    Summary band,
    Summary alone,
    List<Known> numbers,
    Summary delayed,
    double delay,
    double chance,
    int flights,
    int lost) {

  /** The delay, s, and the median of those that vary. */
  public static final double DELAY = 2;

  /** Nine in ten of the delays that vary are up to so much, s: in the ratio of attentive pilots. */
  public static final double NINE_IN_TEN = DELAY * 2.5 / 1.5;

  /** Plausible times of a piston engine, s; assumed, see {@link EngineKind#responseTime}. */
  private static final Spread PISTON = Spread.even(Helicopter.ENGINE_TIME, 0.1, 1);

  /** Plausible times of a turbine, s; assumed, see {@link EngineKind#responseTime}. */
  private static final Spread TURBINE = Spread.even(Helicopter.ENGINE_TIME, 0.2, 1.5);

  private static final String RING_STATE = "ring state";

  private static final long SEED = 3;

  /** Fewer that are not arrested for good tell nothing of why. */
  private static final double LEAST_LOST = 0.02;

  /**
   * A number and what it is worth.
   *
   * @param parameter the number
   * @param of what it is a number of
   * @param narrowing the part by which the band would be narrower if it were known
   * @param alone the same of the band over models alone, engine and technique standard; empty for
   *     what is no number of the model
   * @param lasting the part of the variance of whether the arrest lasts that goes with the number;
   *     empty where nearly all do
   */
  public record Known(
      Parameter parameter,
      String of,
      double narrowing,
      OptionalDouble alone,
      OptionalDouble lasting) {}

  /**
   * What was drawn for one flight; its loss at the delay, at a delay that was drawn, and at the
   * delay with the standard engine and technique, m.
   */
  private record Flight(
      RingStateInflow model,
      double engineTime,
      Recovery recovery,
      double delay,
      double loss,
      double delayedLoss,
      double standardLoss) {

    boolean arrested() {
      return Double.isFinite(loss) && Double.isFinite(delayedLoss);
    }
  }

  private record Unknown(Parameter parameter, String of, ToDoubleFunction<Flight> value) {}

  /** Copies the list. */
  public Worth {
    numbers = List.copyOf(numbers);
  }

  /**
   * Flies a craft.
   *
   * @param craft the craft
   * @param models the models, each flown once by each way out
   * @return what came of it by each way out
   */
  public static List<Worth> fly(Helicopter craft, List<RingStateInflow> models) {
    List<List<Flight>> flown =
        IntStream.range(0, models.size())
            .parallel()
            .mapToObj(number -> flights(craft, models.get(number), number))
            .toList();
    return IntStream.range(0, LossBand.WAYS.size())
        .mapToObj(way -> of(craft, way, flown.stream().map(flights -> flights.get(way)).toList()))
        .toList();
  }

  /** A flight by each way out. */
  private static List<Flight> flights(Helicopter declared, RingStateInflow model, long number) {
    RandomStream draws = new IndependentStream(SEED, number);
    double delay =
        Delays.logNormal(DELAY, NINE_IN_TEN).inverseCumulativeProbability(draws.uniform());
    Spread engine = declared.engine() == EngineKind.PISTON ? PISTON : TURBINE;
    double time = engine.value(draws.uniform());
    Encounter encounter =
        Encounter.of(declared.with(Helicopter.ENGINE_TIME, time))
            .withInflow(model, new HeaveDamping(model));
    BulkFlight bulk = new BulkFlight(Approach.fly(encounter, Simulator.fast()));
    BulkFlight standard =
        new BulkFlight(Approach.fly(encounter.withCraft(declared), Simulator.fast()));
    List<Flight> flights = new ArrayList<>();
    for (Technique way : LossBand.WAYS) {
      Recovery recovery = way.draw(draws);
      flights.add(
          new Flight(
              model,
              time,
              recovery,
              delay,
              LossBand.loss(bulk, recovery, encounter.recognition().withDelay(DELAY)),
              LossBand.loss(bulk, recovery, encounter.recognition().withDelay(delay)),
              LossBand.loss(standard, way.standard(), encounter.recognition().withDelay(DELAY))));
    }
    return flights;
  }

  private static Worth of(Helicopter craft, int way, List<Flight> all) {
    Technique technique = LossBand.WAYS.get(way);
    List<Flight> flights = all.stream().filter(Flight::arrested).toList();
    KnownNumber atDelay = KnownNumber.of(each(flights, Flight::loss));
    List<Flight> standard =
        all.stream().filter(flight -> Double.isFinite(flight.standardLoss())).toList();
    KnownNumber alone = KnownNumber.of(each(standard, Flight::standardLoss));
    KnownNumber delayed = KnownNumber.of(each(flights, Flight::delayedLoss));
    return new Worth(
        craft,
        technique,
        Summary.of(atDelay.outcomes()),
        Summary.of(alone.outcomes()),
        unknowns(technique).stream()
            .map(
                unknown ->
                    new Known(
                        unknown.parameter(),
                        unknown.of(),
                        atDelay.narrowing(each(flights, unknown.value())),
                        unknown.of().equals(RING_STATE)
                            ? OptionalDouble.of(alone.narrowing(each(standard, unknown.value())))
                            : OptionalDouble.empty(),
                        lasting(all, unknown)))
            .toList(),
        Summary.of(delayed.outcomes()),
        delayed.narrowing(each(flights, Flight::delay)),
        Math.max(atDelay.chanceOfNarrowing(), alone.chanceOfNarrowing()),
        flights.size(),
        all.size() - flights.size());
  }

  private static OptionalDouble lasting(List<Flight> all, Unknown unknown) {
    double[] arrested = each(all, flight -> flight.arrested() ? 1 : 0);
    double lost = 1 - Arrays.stream(arrested).average().orElse(0);
    return lost < LEAST_LOST
        ? OptionalDouble.empty()
        : OptionalDouble.of(ExplainedShare.of(each(all, unknown.value()), arrested));
  }

  private static List<Unknown> unknowns(Technique technique) {
    List<Unknown> unknowns = new ArrayList<>();
    for (Spread spread : OpenNumbers.SPREADS) {
      Parameter number = spread.parameter();
      unknowns.add(new Unknown(number, RING_STATE, flight -> flight.model().numbers().get(number)));
    }
    unknowns.add(new Unknown(Helicopter.ENGINE_TIME, "engine", Flight::engineTime));
    for (Spread spread : technique.spreads()) {
      Parameter number = spread.parameter();
      unknowns.add(new Unknown(number, "pilot", flight -> flight.recovery().numbers().get(number)));
    }
    return unknowns;
  }

  private static double[] each(List<Flight> flights, ToDoubleFunction<Flight> value) {
    return flights.stream().mapToDouble(value).toArray();
  }
}
