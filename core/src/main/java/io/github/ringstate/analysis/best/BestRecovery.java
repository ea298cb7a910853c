package io.github.ringstate.analysis.best;

import io.github.ringstate.analysis.best.ControlHistory.Knot;
import io.github.ringstate.analysis.best.ControlHistory.Rates;
import io.github.ringstate.encounter.Approach;
import io.github.ringstate.encounter.BulkFlight;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.inflow.TabulatedInflow;
import io.github.ringstate.pilot.Limited;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The recovery of least altitude loss that a search found for an encounter.
 *
 * @param encounter the encounter; its recovery plays no part
 * @param history the commands found
 * @param outcome what comes of them, flown precisely
 * @param ends the losses at which the searches ended, by fast flights, m, the least first
 */
public record BestRecovery(
    Encounter encounter, ControlHistory history, Outcome outcome, List<Double> ends) {

  /** Message where no history that was tried arrests the descent. */
  public static final String NONE = "no history of controls was found that arrests the descent";

  /** When the commands have their knots, s since recognition. */
  public static final List<Double> TIMES = List.of(0.0, 0.7, 1.5, 2.5, 4.0, 6.0);

  /** A cap of power beyond every take-off power. */
  public static final double ALL_POWER = 10;

  private static final int CONTROLS = 3;

  /** How far the commands may go from the hover's to either side, rad. */
  private static final double PITCH = Limited.PITCH.standard() * Unit.DEGREE.toSi(1);

  private static final double BANK = Limited.BANK.standard() * Unit.DEGREE.toSi(1);
  private static final double COLLECTIVE = Unit.DEGREE.toSi(6);

  /** How often the loss is asked from each start by CMA-ES. */
  private static final int EVALUATIONS = 6000;

  /** A descent that is not arrested counts for so much, m, and more for a faster sink. */
  private static final double NOT_ARRESTED = 2000;

  /** Copies the list. */
  public BestRecovery {
    ends = List.copyOf(ends);
  }

  /**
   * Looks for the best recovery, from four starts: all power with no lean, a lean ahead, and to
   * either side.
   *
   * @param encounter the encounter: entry, craft, air, recognition, model
   * @param power the greatest power that is set, over the power that may be used without limit of
   *     time: 1 as in the climb of the techniques, {@link #ALL_POWER} for the take-off power
   * @param seed the seed
   * @return the best that was found
   * @throws IllegalArgumentException if the ring state is not met
   * @throws ArithmeticException if nothing that was tried arrests the descent
   */
  public static BestRecovery find(Encounter encounter, double power, long seed) {
    List<double[]> starts = new ArrayList<>();
    starts.add(start(0, 0));
    starts.add(start(-0.6, 0));
    starts.add(start(0, 0.6));
    starts.add(start(0, -0.6));
    return find(encounter, power, seed, starts);
  }

  private static double[] start(double pitch, double bank) {
    double[] start = new double[CONTROLS * TIMES.size()];
    for (int i = 0; i < TIMES.size(); i++) {
      boolean first = i < TIMES.size() / 2;
      start[CONTROLS * i] = first ? pitch : 0;
      start[CONTROLS * i + 1] = first ? bank : 0;
      start[CONTROLS * i + 2] = 0.6;
    }
    return start;
  }

  /**
   * Looks for the best recovery from starts of one's own.
   *
   * @param encounter the encounter
   * @param power the greatest power that is set, as above
   * @param seed the seed
   * @param starts at least one, each with pitch, bank and collective of every knot in turn, between
   *     -1 and 1: parts of 25 and 30 deg of lean and 6 deg of collective, from the hover's
   * @return the best that was found
   * @throws IllegalArgumentException if there is no start, one has another number of commands or
   *     one beyond those bounds, the power is not positive, or the ring state is not met
   * @throws ArithmeticException if nothing that was tried arrests the descent
   */
  public static BestRecovery find(
      Encounter encounter, double power, long seed, List<double[]> starts) {
    return find(encounter, power, new DirectSearch(EVALUATIONS, seed), starts);
  }

  static BestRecovery find(
      Encounter encounter, double power, DirectSearch search, List<double[]> starts) {
    checkStarts(starts);
    Encounter bulk =
        encounter.withInflow(new TabulatedInflow(encounter.inflow()), encounter.boundary());
    Approach approach = Approach.fly(bulk, Simulator.fast());
    BulkFlight flight = new BulkFlight(approach);
    Rates rates = Rates.of(encounter.craft());
    List<DirectSearch.End> ends =
        search.minimise(
            point -> loss(flight, new Limited(history(point, power, rates)), encounter),
            point -> arrested(encounter, new Limited(history(point, power, rates))),
            List.of(BestRecovery::toTheOtherSide),
            starts);
    if (ends.isEmpty()) {
      throw new ArithmeticException(NONE);
    }
    DirectSearch.End least = ends.get(0);
    ControlHistory history = history(least.point(), power, rates);
    return new BestRecovery(
        encounter,
        history,
        encounter.withRecovery(new Limited(history)).fly(),
        ends.stream().map(DirectSearch.End::value).toList());
  }

  /**
   * The same commands banked to the other side: the tail rotor makes one side a little better than
   * the other, and a search of small steps does not come across.
   */
  private static double[] toTheOtherSide(double[] point) {
    for (int i = 1; i < point.length; i += CONTROLS) {
      point[i] = -point[i];
    }
    return point;
  }

  private static void checkStarts(List<double[]> starts) {
    if (starts.isEmpty()) {
      throw new IllegalArgumentException("a search needs at least one start");
    }
    int wanted = CONTROLS * TIMES.size();
    for (double[] start : starts) {
      if (start.length != wanted) {
        throw new IllegalArgumentException(
            "a start must have " + wanted + " commands, not " + start.length);
      }
      for (double command : start) {
        if (!(Math.abs(command) <= 1)) {
          throw new IllegalArgumentException(
              "a command of a start must be -1 to 1, not " + command);
        }
      }
    }
  }

  private static ControlHistory history(double[] point, double power, Rates rates) {
    List<Knot> knots = new ArrayList<>();
    for (int i = 0; i < TIMES.size(); i++) {
      knots.add(
          new Knot(
              TIMES.get(i),
              PITCH * point[CONTROLS * i],
              BANK * point[CONTROLS * i + 1],
              COLLECTIVE * point[CONTROLS * i + 2]));
    }
    return new ControlHistory(knots, power, rates);
  }

  /** At the edge of what arrests a descent, a fast flight may be mistaken. */
  private static boolean arrested(Encounter encounter, Recovery recovery) {
    return encounter.withRecovery(recovery).fly().ending() == Ending.ARRESTED;
  }

  private static double loss(BulkFlight flight, Recovery recovery, Encounter encounter) {
    Ending ending = flight.fly(recovery, encounter.recognition());
    if (ending == Ending.NO_ONSET) {
      throw new IllegalArgumentException("the encounter does not meet the ring state");
    }
    return ending == Ending.ARRESTED ? flight.altitudeLoss() : NOT_ARRESTED + flight.peakDescent();
  }

  /**
   * The altitude loss of the best recovery.
   *
   * @return the loss, m
   */
  public double loss() {
    return outcome.altitudeLoss().orElseThrow();
  }

  /**
   * The altitude loss of a technique with its standard numbers, within the same limits.
   *
   * @param technique the technique
   * @return the loss, m; empty if it does not arrest the descent
   */
  public OptionalDouble loss(Technique technique) {
    Outcome flown = encounter.withRecovery(new Limited(technique.standard())).fly();
    return flown.ending() == Ending.ARRESTED ? flown.altitudeLoss() : OptionalDouble.empty();
  }

  /**
   * What a technique loses more than the best recovery.
   *
   * @param technique the technique
   * @return the excess, m; empty if the technique does not arrest the descent
   */
  public OptionalDouble excess(Technique technique) {
    OptionalDouble its = loss(technique);
    return its.isPresent() ? OptionalDouble.of(its.getAsDouble() - loss()) : OptionalDouble.empty();
  }
}
