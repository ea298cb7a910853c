package io.github.ringstate.study;

import io.github.ringstate.encounter.Approach;
import io.github.ringstate.encounter.BulkFlight;
import io.github.ringstate.encounter.Disturbances;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.flight.PreciseFlyer;
import io.github.ringstate.flight.SwiftFlyer;
import io.github.ringstate.pilot.Draws;
import io.github.ringstate.pilot.Pilots;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.IntConsumer;
import org.hipparchus.distribution.RealDistribution;

/**
 * One encounter flown by many pilots, each with a technique and, if asked for, a delay of their
 * own.
 *
 * <p>What a pilot is like depends on the seed and the pilot's number alone. The spread is therefore
 * the same to the last bit for any number of threads, any one pilot can be flown again, and pilots
 * of the same number are the same people in studies that differ in craft, height or fixed delay.
 *
 * @param base what all pilots share; its recovery plays no part
 * @param pilots who flies
 * @param delays the distribution of delays, s, on the clock of the base's recognition; empty if all
 *     wait as long as the base says
 * @param seed the seed
 */
public record PilotStudy(
    Encounter base, Pilots pilots, Optional<RealDistribution> delays, long seed) {

  /** Longest delay that is drawn, s; the encounter accepts no longer one. */
  private static final double LONGEST_DELAY = 60;

  /**
   * The encounter of one pilot.
   *
   * @param number the pilot's number, from 0
   * @return the encounter
   */
  public Encounter encounter(long number) {
    Draws draws = new Draws(seed, number);
    double chance = draws.uniform();
    Disturbances disturbances = base.disturbances();
    long disturbed = draws.seed();
    Encounter flown = base.withRecovery(pilots.draw(draws));
    if (delays.isPresent()) {
      flown =
          flown.withDelay(
              Math.min(delays.get().inverseCumulativeProbability(chance), LONGEST_DELAY));
    }
    return disturbances.random() ? flown.withDisturbances(disturbances.withSeed(disturbed)) : flown;
  }

  /**
   * Flies one pilot alone; the whole story of the flight is that of {@link #encounter}, flown
   * precisely.
   *
   * @param number the pilot's number, from 0
   * @return the altitude loss, m, to the last bit that of the study; infinite if the descent was
   *     not arrested above the ground, NaN if the ring state was not met
   * @throws IllegalStateException if the craft cannot start the entry in this air
   */
  public double loss(int number) {
    double[] losses = new double[1];
    Ending[] endings = new Ending[1];
    new Flights(shared(), number, endings, losses, Progress.SILENT)
        .oneAfterAnother()
        .accept(number);
    return switch (endings[0]) {
      case ARRESTED -> losses[0];
      case GROUND, NOT_ARRESTED -> Double.POSITIVE_INFINITY;
      case NO_ONSET -> Double.NaN;
    };
  }

  /**
   * Flies the pilots.
   *
   * <p>An interruption of the calling thread ends it like the listener does, once the flights under
   * way have ended; the thread stays interrupted.
   *
   * @param sampling how many
   * @param progress hears how far it has come
   * @return the spread of their losses
   * @throws CancellationException if the listener ended it, or the thread was interrupted
   * @throws IllegalStateException if the craft cannot start the entry in this air
   */
  public LossSpread fly(Sampling sampling, Progress progress) {
    Ending[] endings = new Ending[sampling.limit()];
    double[] losses = new double[sampling.limit()];
    Flights flights = new Flights(shared(), 0, endings, losses, progress);
    int flown = 0;
    while (true) {
      int from = flown;
      flown = from + Math.min(Sampling.BATCH, sampling.limit() - from);
      SampleFlights.each(from, flown, flights::oneAfterAnother);
      if (flown == sampling.limit()) {
        return LossSpread.of(endings, losses);
      }
      if (sampling.enough() > 0) {
        LossSpread spread =
            LossSpread.of(Arrays.copyOf(endings, flown), Arrays.copyOf(losses, flown));
        if (sampling.suffices(spread)) {
          return spread;
        }
      }
    }
  }

  /** The approach that all pilots have, unless chance makes each its own. */
  private Optional<Approach> shared() {
    return base.disturbances().random()
        ? Optional.empty()
        : Optional.of(Approach.fly(base, PreciseFlyer.standard()));
  }

  /** Flies pilots into their places; several threads may, each its own pilots. */
  private final class Flights {

    private final Optional<Approach> shared;
    private final int first;
    private final Ending[] endings;
    private final double[] losses;
    private final Progress progress;
    private final Thread caller = Thread.currentThread();
    private long flown;

    Flights(
        Optional<Approach> shared,
        int first,
        Ending[] endings,
        double[] losses,
        Progress progress) {
      this.shared = shared;
      this.first = first;
      this.endings = endings;
      this.losses = losses;
      this.progress = progress;
    }

    /** What one thread does with each number that it takes. */
    IntConsumer oneAfterAnother() {
      Optional<BulkFlight> bulk = shared.map(BulkFlight::new);
      return number -> {
        if (progress.cancelled() || caller.isInterrupted()) {
          throw new CancellationException("the study was ended");
        }
        Encounter encounter = encounter(number);
        BulkFlight flight =
            bulk.orElseGet(() -> new BulkFlight(Approach.fly(encounter, new SwiftFlyer())));
        endings[number - first] = flight.fly(encounter.recovery(), encounter.recognition());
        losses[number - first] = flight.altitudeLoss();
        tell();
      };
    }

    private synchronized void tell() {
      progress.flown(++flown, losses.length);
    }
  }
}
