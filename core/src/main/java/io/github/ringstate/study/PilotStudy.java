package io.github.ringstate.study;

import io.github.ringstate.chance.Drawing;
import io.github.ringstate.chance.RandomStream;
import io.github.ringstate.craft.FittedModel;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Approach;
import io.github.ringstate.encounter.BulkFlight;
import io.github.ringstate.encounter.Disturbances;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.pilot.DistributionValue;
import io.github.ringstate.pilot.Pilots;
import io.github.ringstate.pilot.Recognition;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.quantity.Quantity;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicLong;
import org.hipparchus.distribution.RealDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.jspecify.annotations.Nullable;

/**
 * One encounter flown by many pilots, each with a technique and, if asked for, a delay of their
 * own.
 *
 * <p>What a pilot is like depends on the seed and the pilot's number alone. The spread is therefore
 * the same to the last bit for any number of threads, any one pilot can be flown again, and pilots
 * of the same number are the same people in studies that differ in craft, height or fixed delay.
 * Fewer pilots are the first of more.
 *
 * <p>The first number of each is the chance of the delay, which decides most of a loss; then come
 * those that the technique draws. Gusts and shaking have a seed of their own for each pilot, which
 * is independent of all others however the pilots are drawn.
 *
 * <p>If the base flies a craft with a {@linkplain Helicopter#fitted fitted model}, and with the
 * inflow of that, each pilot also flies with fitted numbers drawn from what the fit leaves open.
 * With them comes a factor on the loss for the form of the model, {@link FittedModel#formFactor}.
 * Both are drawn last, so that the pilots are the same people with and without them; the spread is
 * then that of people and of what is not known of the craft.
 *
 * <p>Delays follow one rule. Those that are accepted are 0 to 60 s ({@link Recognition#DELAY}). One
 * that is given as a number and lies outside is refused where it is given. One that is drawn and
 * lies outside counts as the nearer end, for the tail of a distribution is a long wait and no
 * error; a distribution that lies outside as a whole is refused here, and one that draws what is no
 * number where it does.
 *
 * @param base what all pilots share; its recovery plays no part
 * @param pilots who flies
 * @param delays the distribution of delays, s, on the clock of the base's recognition; empty if all
 *     wait as long as the base says
 * @param seed the seed
 * @param drawing how the pilots are drawn
 */
public record PilotStudy(
    Encounter base, Pilots pilots, Optional<RealDistribution> delays, long seed, Drawing drawing) {

  /**
   * Pilots who are evenly spread.
   *
   * @param base what all pilots share; its recovery plays no part
   * @param pilots who flies
   * @param delays the distribution of delays, s; empty if all wait as long as the base says
   * @param seed the seed
   */
  public PilotStudy(Encounter base, Pilots pilots, Optional<RealDistribution> delays, long seed) {
    this(base, pilots, delays, seed, Drawing.SOBOL);
  }

  private static final NormalDistribution NORMAL = new NormalDistribution();

  /** Part of the message when no delay can be drawn; the range stands behind it. */
  public static final String NO_DELAY = "the distribution of delays has no part within ";

  /** Refuses null, and delays that lie outside of what is accepted as a whole. */
  public PilotStudy {
    Objects.requireNonNull(base, "base");
    Objects.requireNonNull(pilots, "pilots");
    Objects.requireNonNull(delays, "delays");
    Objects.requireNonNull(drawing, "drawing");
    delays.ifPresent(PilotStudy::requireSome);
  }

  private static void requireSome(RealDistribution delays) {
    Quantity accepted = Recognition.DELAY;
    if (!(delays.getSupportUpperBound() >= accepted.low()
        && delays.getSupportLowerBound() <= accepted.high())) {
      throw new IllegalArgumentException(
          NO_DELAY + accepted.low() + " to " + accepted.high() + " s");
    }
  }

  /**
   * The encounter of one pilot.
   *
   * @param number the pilot's number, from 0
   * @return the encounter
   */
  public Encounter encounter(long number) {
    return encounter(drawn(number));
  }

  /**
   * What one pilot is like, and what is not known of the craft: a normal number for each that was
   * fitted and one for the form; none where the craft counts as known.
   */
  @SuppressWarnings("ArrayRecordComponent") // never leaves the study
  private record Drawn(
      Recovery recovery, Recognition recognition, long seed, double[] open, FittedLoss fitted) {}

  private Drawn drawn(long number) {
    RandomStream draws = drawing.stream(seed, number);
    double chance = draws.uniform();
    long disturbed = draws.seed();
    Recovery recovery = pilots.draw(draws);
    Recognition recognition = base.recognition();
    double[] open = isUncertain() ? open(draws) : new double[0];
    return new Drawn(
        recovery,
        delays.isPresent()
            ? recognition.withDelay(cut(delays.get().inverseCumulativeProbability(chance)))
            : recognition,
        disturbed,
        open,
        isUncertain()
            ? new FittedLoss(
                base.craft().fitted().orElseThrow().formFactor(normal(draws)), base.height())
            : FittedLoss.AS_FLOWN);
  }

  private double[] open(RandomStream draws) {
    double[] normals =
        new double[base.craft().fitted().orElseThrow().numbers().parameters().size()];
    for (int i = 0; i < normals.length; i++) {
      normals[i] = normal(draws);
    }
    return normals;
  }

  private static double normal(RandomStream draws) {
    return NORMAL.inverseCumulativeProbability(draws.uniform());
  }

  private Encounter encounter(Drawn pilot) {
    Encounter flown = base.withRecovery(pilot.recovery()).withRecognition(pilot.recognition());
    Disturbances disturbances = base.disturbances();
    if (disturbances.random()) {
      flown = flown.withDisturbances(disturbances.withSeed(pilot.seed()));
    }
    return isUncertain() ? uncertain(flown, pilot.open()) : flown;
  }

  /** Whether each pilot flies with numbers of the model drawn from what a fit leaves open. */
  private boolean isUncertain() {
    return base.craft().fitted().isPresent() && base.inflow().equals(base.craft().inflow());
  }

  private static Encounter uncertain(Encounter flown, double[] normals) {
    FittedModel fitted = flown.craft().fitted().orElseThrow();
    Helicopter drawn = fitted.drawn(flown.craft(), normals);
    RingStateInflow inflow = drawn.inflow();
    return flown.withCraft(drawn).withInflow(inflow, flown.boundary().over(inflow));
  }

  /** A delay at the nearer end of the range if it is outside; what is no number stays. */
  private static double cut(double delay) {
    return Math.min(Math.max(delay, Recognition.DELAY.low()), Recognition.DELAY.high());
  }

  /**
   * Flies one pilot alone.
   *
   * @param number the pilot's number, from 0
   * @return what came of it, to the last bit as in {@link #fly(Sampling, Progress)}
   * @throws io.github.ringstate.dynamics.NoSteadyFlightException if the craft cannot start the
   *     entry in this air
   */
  public Outcome fly(long number) {
    Drawn pilot = drawn(number);
    Encounter encounter = encounter(pilot);
    BulkFlight flight = BulkFlight.withEvents(approach(encounter));
    flight.fly(encounter.recovery(), encounter.recognition());
    return pilot.fitted().of(flight.outcome());
  }

  private static Approach approach(Encounter encounter) {
    return Approach.fly(encounter, Simulator.fast());
  }

  /**
   * Flies the pilots: as many as make full sets, as {@link Drawing#samples} says.
   *
   * <p>An interruption of the calling thread ends it like the listener does, once the flights under
   * way have ended; the thread stays interrupted.
   *
   * @param sampling how many
   * @param progress hears how far it has come
   * @return the spread of their losses
   * @throws CancellationException if the listener ended it, or the thread was interrupted
   * @throws io.github.ringstate.dynamics.NoSteadyFlightException if the craft cannot start the
   *     entry in this air
   */
  public LossSpread fly(Sampling sampling, Progress progress) {
    Optional<Approach> shared =
        base.disturbances().random() || isUncertain()
            ? Optional.empty()
            : Optional.of(approach(base));
    int limit = drawing.samples(sampling.limit());
    FlownPilots all = new FlownPilots(this);
    AtomicLong flown = new AtomicLong();
    OrderedWork work = OrderedWork.of(progress);
    int to = 0;
    while (true) {
      int from = to;
      to = sampling.precision() > 0 ? Math.min(Math.max(2 * from, Sampling.FIRST), limit) : limit;
      Samples samples = new Samples(from, to);
      all.ensure(to);
      work.run(
          samples.pieces(),
          () -> {
            Optional<BulkFlight> bulk = shared.map(BulkFlight::new);
            return (piece, ended) -> {
              for (int number = samples.first(piece); number < samples.first(piece + 1); number++) {
                if (ended.getAsBoolean()) {
                  throw new CancellationException("the study was ended");
                }
                Drawn pilot = drawn(number);
                BulkFlight flight =
                    bulk.orElseGet(() -> new BulkFlight(approach(encounter(pilot))));
                Ending ending = flight.fly(pilot.recovery(), pilot.recognition());
                all.put(number, ending, flight, pilot.fitted());
                synchronized (flown) {
                  progress.flown(flown.incrementAndGet(), limit);
                }
              }
              return piece;
            };
          },
          piece -> {});
      LossSpread spread = sampling.precision() > 0 ? all.spread(to).stopped() : all.spread(to);
      if (to == limit || sampling.suffices(spread)) {
        return spread;
      }
    }
  }

  private Optional<DistributionValue> distributed() {
    return delays.map(DistributionValue::of);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof PilotStudy study
        && base.equals(study.base)
        && pilots.equals(study.pilots)
        && distributed().equals(study.distributed())
        && seed == study.seed
        && drawing == study.drawing;
  }

  @Override
  public int hashCode() {
    return Objects.hash(base, pilots, distributed(), seed, drawing);
  }

  /** What all share, who flies, their delays in seconds, the seed, and how they are drawn. */
  @Override
  public String toString() {
    return "pilots "
        + pilots
        + ", delays "
        + distributed().map(Object::toString).orElse("as given")
        + ", seed "
        + seed
        + ", drawn "
        + drawing.label()
        + ", of "
        + base;
  }

  /** Samples in pieces, large enough that handing them round costs nothing beside their flights. */
  private record Samples(int from, int to) {

    private static final int PIECE = 10;

    int pieces() {
      return (to - from + PIECE - 1) / PIECE;
    }

    int first(long piece) {
      return (int) Math.min(from + piece * PIECE, to);
    }
  }
}
