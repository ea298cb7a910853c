package io.github.ringstate.study;

import io.github.ringstate.encounter.Approach;
import io.github.ringstate.encounter.Disturbances;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.flight.Flyer;
import io.github.ringstate.flight.History;
import io.github.ringstate.flight.PreciseFlyer;
import io.github.ringstate.pilot.Draws;
import io.github.ringstate.pilot.Pilots;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicLong;
import org.hipparchus.distribution.RealDistribution;
import org.jspecify.annotations.Nullable;

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
  private static final Flyer FLYER = PreciseFlyer.dormandPrince(1e-6);

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
   * Flies one pilot alone.
   *
   * @param number the pilot's number, from 0
   * @param history where to put samples of the flight, or null
   * @return what came of it, to the last bit as in {@link #fly(Sampling, Progress)}
   * @throws IllegalStateException if the craft cannot start the entry in this air
   */
  public Outcome fly(long number, @Nullable History history) {
    return encounter(number).fly(FLYER, history);
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
    Optional<Approach> shared =
        base.disturbances().random() ? Optional.empty() : Optional.of(Approach.fly(base, FLYER));
    double[] losses = new double[0];
    AtomicLong flown = new AtomicLong();
    Thread caller = Thread.currentThread();
    int to = 0;
    while (true) {
      int from = to;
      to = from + Math.min(Sampling.BATCH, sampling.limit() - from);
      if (to > losses.length) {
        losses = Arrays.copyOf(losses, (int) Math.min(2L * to, sampling.limit()));
      }
      double[] result = losses;
      SampleFlights.each(
          from,
          to,
          number -> {
            if (progress.cancelled() || caller.isInterrupted()) {
              throw new CancellationException("the study was ended");
            }
            Encounter encounter = encounter(number);
            Outcome outcome =
                shared
                    .map(approach -> encounter.fly(approach, FLYER, null))
                    .orElseGet(() -> encounter.fly(FLYER, null));
            result[number] = LossSpread.loss(outcome);
            synchronized (flown) {
              progress.flown(flown.incrementAndGet(), sampling.limit());
            }
          });
      boolean last = to == sampling.limit();
      if (last || sampling.enough() > 0) {
        LossSpread spread = LossSpread.ofLosses(Arrays.copyOf(losses, to));
        if (last || sampling.suffices(spread)) {
          return spread;
        }
      }
    }
  }
}
