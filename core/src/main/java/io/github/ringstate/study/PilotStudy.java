package io.github.ringstate.study;

import io.github.ringstate.encounter.Approach;
import io.github.ringstate.encounter.Disturbances;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.flight.Flyer;
import io.github.ringstate.flight.PreciseFlyer;
import io.github.ringstate.pilot.Draws;
import io.github.ringstate.pilot.Pilots;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.LongStream;
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

  /**
   * Tolerance of the integration: heights are then within a hundredth of a foot of those at far
   * tighter tolerance, small beside the spread between people.
   */
  private static final double TOLERANCE = 1e-6;

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
    Flyer flyer = PreciseFlyer.dormandPrince(TOLERANCE);
    Optional<Approach> shared =
        base.disturbances().any() ? Optional.empty() : Optional.of(Approach.fly(base, flyer));
    List<Outcome> outcomes = new ArrayList<>();
    AtomicLong flown = new AtomicLong();
    Thread caller = Thread.currentThread();
    while (true) {
      int from = outcomes.size();
      int to = Math.min(from + Sampling.BATCH, sampling.limit());
      outcomes.addAll(
          LongStream.range(from, to)
              .parallel()
              .mapToObj(
                  number -> {
                    if (progress.cancelled() || caller.isInterrupted()) {
                      throw new CancellationException("the study was ended");
                    }
                    Encounter encounter = encounter(number);
                    Outcome outcome =
                        shared
                            .map(approach -> encounter.fly(approach, flyer, null))
                            .orElseGet(() -> encounter.fly(flyer, null));
                    synchronized (flown) {
                      progress.flown(flown.incrementAndGet(), sampling.limit());
                    }
                    return outcome;
                  })
              .toList());
      LossSpread spread = LossSpread.of(outcomes);
      boolean narrow =
          sampling.enough() > 0
              && spread.samples() > 0
              && spread.quantile(sampling.share(), sampling.confidence()).width()
                  <= sampling.enough();
      if (narrow || to == sampling.limit()) {
        return spread;
      }
    }
  }
}
