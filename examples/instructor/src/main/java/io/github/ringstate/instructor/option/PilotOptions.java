package io.github.ringstate.instructor.option;

import io.github.ringstate.chance.Drawing;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Disturbances;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.study.model.Accepted;
import io.github.ringstate.study.model.OpenNumbers;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Chance: its seed, what disturbs the flights, what the model does not know, and the clock. */
public final class PilotOptions {

  private static final String SEED = "--seed";
  private static final String SHAKING = "--shaking-pct";
  private static final String GUSTS = Turbulence.OPTION;
  private static final String SHEAR = "--shear";
  private static final long STANDARD_SEED = 1;
  private static final int MOST_MODELS = 1000;

  @Option(
      names = SEED,
      paramLabel = "N",
      description =
          "Seed of all chance: the same seed gives the same pilots. Unless given: "
              + STANDARD_SEED
              + ".")
  private @Nullable String seed;

  @Mixin private final PrecisionOption precision = new PrecisionOption();

  @Option(
      names = "--draws",
      paramLabel = "DRAWS",
      defaultValue = "sobol",
      description =
          "How pilots are drawn: sobol (spread evenly over all in which they differ, in eight sets,"
              + " to which their number is rounded up) or independent (for comparison; takes several"
              + " times as many for the same precision). Unless given: ${DEFAULT-VALUE}.")
  private String draws = "";

  @Option(
      names = "--clock",
      paramLabel = "CLOCK",
      defaultValue = "boundary",
      description =
          "What a delay counts from: boundary (onset) or cue (the vertical speed indicator shows"
              + " clearly more sink than intended) or limits (those that pilots are taught, exceeded"
              + " before onset; losses and heights count from there too). Unless given:"
              + " ${DEFAULT-VALUE}.")
  private String clock = "";

  @Mixin private final LimitOptions limits = new LimitOptions();

  @Option(
      names = "--models",
      paramLabel = "M",
      description =
          "Fly the same pilots with M models whose numbers of the ring state vary as far as published"
              + " ranges let them, and show how far that moves the result. Takes M times as long.")
  private @Nullable String models;

  @Option(
      names = SHAKING,
      paramLabel = "PCT",
      description =
          "Thrust fluctuates in the ring state, by this standard deviation where it does most."
              + " Unless given: off.")
  private @Nullable String shaking;

  @Mixin private final TurbulenceOption turbulence = new TurbulenceOption();

  @Option(
      names = SHEAR,
      paramLabel = "EXPONENT",
      description =
          "The entry's wind changes with height above the ground by a power law; 0.14 over open"
              + " land. Where there is no ground, onset counts as at 300 ft. Unless given: off.")
  private @Nullable String shear;

  /** Made by picocli. */
  public PilotOptions() {}

  /**
   * How many pilots fly, or at the most where a precision is asked for.
   *
   * @param pilots the number that was given, if one was
   * @param standard how many fly unless a number or a precision is given
   * @return the number
   * @throws UserError if it is no whole number or out of range, or both are given
   */
  public int pilots(@Nullable String pilots, int standard) {
    return precision.pilots(pilots, standard);
  }

  /**
   * Half of the interval at which the pilots are enough.
   *
   * @return the precision, m; zero if none is asked for
   * @throws UserError if it is no number or out of range
   */
  public double precision() {
    return precision.metres();
  }

  /**
   * How pilots are drawn.
   *
   * @return the way
   * @throws UserError if it is unknown
   */
  public Drawing drawing() {
    return new Choice<>("--draws", List.of(Drawing.values()), Drawing::label).one(draws);
  }

  /**
   * Whether a precision is asked for.
   *
   * @return true if so
   */
  public boolean isPrecise() {
    return precision.isGiven();
  }

  /**
   * The states that pilots may be in.
   *
   * @return the choice
   */
  public static Choice<PilotState> states() {
    return new Choice<>("--state", List.of(PilotState.values()), PilotState::label);
  }

  /**
   * The seed.
   *
   * @return the seed
   * @throws UserError if it is no whole number
   */
  public long seed() {
    return seed == null
        ? STANDARD_SEED
        : NumberText.whole(SEED, seed, Long.MIN_VALUE, Long.MAX_VALUE);
  }

  /**
   * The clock.
   *
   * @return the clock
   * @throws UserError if the name is unknown
   */
  public Clock clock() {
    Clock.Kind kind =
        new Choice<>("--clock", List.of(Clock.Kind.values()), Clock.Kind::label).one(clock);
    if (limits.given() && kind != Clock.Kind.LIMITS) {
      throw UserError.usage("--limit-fpm and --limit-kt need --clock limits");
    }
    return new Clock(kind, limits.limits());
  }

  /**
   * Whether other models are asked for.
   *
   * @return true if so
   */
  public boolean hasModels() {
    return models != null;
  }

  /**
   * The models that are flown beside the standard one.
   *
   * @param craft the craft that flies
   * @return the models, drawn with the seed; empty for the standard model alone
   * @throws UserError if a number is wrong, or the craft is fitted
   */
  public Optional<Accepted<RingStateInflow>> models(Helicopter craft) {
    if (models != null && craft.fitted().isPresent()) {
      throw UserError.usage(
          "--models has no place with a fitted craft: its pilots already fly with what the fit"
              + " leaves open of the model, and that would count twice");
    }
    return models == null
        ? Optional.empty()
        : Optional.of(
            OpenNumbers.accepted(
                (int) NumberText.whole("--models", models, 2, MOST_MODELS), seed(), drawing()));
  }

  /**
   * What disturbs the flights.
   *
   * @return the disturbances, with the seed
   * @throws UserError if a number is wrong
   */
  public Disturbances disturbances() {
    ParameterSet numbers = ParameterSet.standard(Disturbances.PARAMETERS);
    numbers = with(numbers, SHAKING, shaking, Disturbances.SHAKING);
    numbers = numbers.with(Disturbances.GUST_WIND, turbulence.knots());
    numbers = with(numbers, SHEAR, shear, Disturbances.SHEAR);
    return new Disturbances(numbers, seed());
  }

  private static ParameterSet with(
      ParameterSet numbers, String option, @Nullable String text, Parameter parameter) {
    return text == null
        ? numbers
        : numbers.with(parameter, NumberText.one(option, text, parameter.quantity()));
  }

  /**
   * Refuses what has no meaning without many pilots.
   *
   * @throws UserError if chance is asked for without pilots or a seed, or a seed without use
   */
  public void refuseWithoutPilots() {
    if (models != null) {
      throw UserError.usage(
          "--models" + NEEDS_PILOTS + ": it says how far models move what they do");
    }
    if (seed == null && (shaking != null || turbulence.isGiven())) {
      throw UserError.usage(
          (shaking != null ? SHAKING : GUSTS)
              + NEEDS_PILOTS
              + ", or --seed for one flight of the standard technique");
    }
    if (seed != null && shaking == null && !turbulence.isGiven()) {
      throw UserError.usage("--seed" + NEEDS_PILOTS + ", --shaking-pct or " + GUSTS);
    }
  }

  /** The middle of a message on an option that needs many pilots. */
  public static final String NEEDS_PILOTS = " needs --pilots";
}
