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
import java.util.stream.IntStream;
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

  /** Pilots that one thread flies in one go. */
  private static final int CHUNK = 25;

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
    return disturbances.any() ? flown.withDisturbances(disturbances.withSeed(disturbed)) : flown;
  }

  /**
   * Flies the pilots.
   *
   * @param sampling how many
   * @param progress hears how far it has come
   * @return the spread of their losses
   * @throws CancellationException if the listener ended it, or the thread was interrupted
   * @throws IllegalStateException if the craft cannot start the entry in this air
   */
  public LossSpread fly(Sampling sampling, Progress progress) {
    Optional<Approach> shared =
        base.disturbances().any()
            ? Optional.empty()
            : Optional.of(Approach.fly(base, PreciseFlyer.standard()));
    Ending[] endings = new Ending[sampling.limit()];
    double[] losses = new double[sampling.limit()];
    Flights flights = new Flights(shared, endings, losses, sampling.limit(), progress);
    int flown = 0;
    while (true) {
      int from = flown;
      flown = Math.min(from + Sampling.BATCH, sampling.limit());
      int chunks = (flown - from + CHUNK - 1) / CHUNK;
      int to = flown;
      IntStream.range(0, chunks)
          .parallel()
          .forEach(i -> flights.fly(from + i * CHUNK, Math.min(from + (i + 1) * CHUNK, to)));
      if (flown == sampling.limit()) {
        return LossSpread.of(endings, losses);
      }
      if (sampling.enough() > 0) {
        LossSpread spread =
            LossSpread.of(Arrays.copyOf(endings, flown), Arrays.copyOf(losses, flown));
        boolean narrow =
            spread.samples() > 0
                && spread.quantile(sampling.share(), sampling.confidence()).width()
                    <= sampling.enough();
        if (narrow) {
          return spread;
        }
      }
    }
  }

  /**
   * Flies pilots one after the other into their places; several threads may, each its own pilots.
   */
  private final class Flights {

    private final Optional<Approach> shared;
    private final Ending[] endings;
    private final double[] losses;
    private final long limit;
    private final Progress progress;
    private final Thread caller = Thread.currentThread();
    private long flown;

    Flights(
        Optional<Approach> shared,
        Ending[] endings,
        double[] losses,
        long limit,
        Progress progress) {
      this.shared = shared;
      this.endings = endings;
      this.losses = losses;
      this.limit = limit;
      this.progress = progress;
    }

    void fly(int from, int to) {
      Optional<BulkFlight> bulk = shared.map(BulkFlight::new);
      for (int number = from; number < to; number++) {
        if (progress.cancelled() || caller.isInterrupted()) {
          throw new CancellationException("the study was ended");
        }
        Encounter encounter = encounter(number);
        BulkFlight flight =
            bulk.orElseGet(() -> new BulkFlight(Approach.fly(encounter, new SwiftFlyer())));
        endings[number] = flight.fly(encounter.recovery(), encounter.recognition());
        losses[number] = flight.altitudeLoss();
        tell();
      }
    }

    private synchronized void tell() {
      progress.flown(++flown, limit);
    }
  }
}
