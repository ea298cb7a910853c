package io.github.ringstate.instructor.option;

import io.github.ringstate.encounter.Disturbances;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.study.Sampling;
import io.github.ringstate.study.model.Accepted;
import io.github.ringstate.study.model.OpenNumbers;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Chance: its seed, what disturbs the flights, what the model does not know, and the clock. */
public final class PilotOptions {

  private static final String SEED = "--seed";
  private static final String SHAKING = "--shaking-pct";
  private static final String GUSTS = "--gust-kt";
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

  @Option(
      names = "--clock",
      paramLabel = "CLOCK",
      defaultValue = "boundary",
      description =
          "What a delay counts from: boundary (onset) or cue (the vertical speed indicator shows"
              + " clearly more sink than intended). Unless given: ${DEFAULT-VALUE}.")
  private String clock = "";

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

  @Option(
      names = GUSTS,
      paramLabel = "KT",
      description =
          "Gusts as in a mean wind of so much at 20 ft, on top of the entry's wind; 15 is light"
              + " turbulence. Unless given: off.")
  private @Nullable String gusts;

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
   * Reads a number of pilots.
   *
   * @param text what was given
   * @return the number
   * @throws UserError if it is no whole number or out of range
   */
  public static int pilots(String text) {
    return (int)
        NumberText.whole(
            "--pilots", text, (long) Sampling.PILOTS.low(), (long) Sampling.PILOTS.high());
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
    return new Choice<>("--clock", List.of(Clock.values()), Clock::label).one(clock);
  }

  /**
   * The models that are flown beside the standard one.
   *
   * @return the models, drawn with the seed; empty for the standard model alone
   * @throws UserError if a number is wrong
   */
  public Optional<Accepted<RingStateInflow>> models() {
    return models == null
        ? Optional.empty()
        : Optional.of(
            OpenNumbers.accepted(
                (int) NumberText.whole("--models", models, 2, MOST_MODELS), seed()));
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
    numbers = with(numbers, GUSTS, gusts, Disturbances.GUST_WIND);
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
    if (seed == null && (shaking != null || gusts != null)) {
      throw UserError.usage(
          (shaking != null ? SHAKING : GUSTS)
              + NEEDS_PILOTS
              + ", or --seed for one flight of the standard technique");
    }
    if (seed != null && shaking == null && gusts == null) {
      throw UserError.usage("--seed" + NEEDS_PILOTS + ", --shaking-pct or --gust-kt");
    }
  }

  /** The middle of a message on an option that needs many pilots. */
  public static final String NEEDS_PILOTS = " needs --pilots";
}
