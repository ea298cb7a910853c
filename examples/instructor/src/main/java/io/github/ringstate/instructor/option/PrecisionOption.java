package io.github.ringstate.instructor.option;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.Sampling;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** A precision in place of a number of pilots. */
public final class PrecisionOption {

  private static final String PRECISION = "--precision-ft";
  private static final int MOST = 1 << 17;
  private static final Quantity PRECISIONS = new Quantity("precision", Unit.FOOT, 0.5, 1000);

  @Option(
      names = PRECISION,
      paramLabel = "FT",
      description =
          "In place of --pilots: as many as it takes to know the 95 %% loss, or the floor, of each"
              + " line to so many feet, half of its 95 %% confidence interval; at most "
              + MOST
              + ".")
  private @Nullable String precision;

  /** Made by picocli. */
  public PrecisionOption() {}

  /**
   * How many pilots fly, or at the most where a precision is asked for.
   *
   * @param pilots the number that was given, if one was
   * @param standard how many fly unless a number or a precision is given
   * @return the number
   * @throws UserError if it is no whole number or out of range, or both are given
   */
  public int pilots(@Nullable String pilots, int standard) {
    if (pilots != null && precision != null) {
      throw UserError.usage(
          "--pilots and "
              + PRECISION
              + " exclude each other: a precision takes as many as it needs");
    }
    if (precision != null) {
      return MOST;
    }
    return pilots == null
        ? standard
        : (int)
            NumberText.whole(
                "--pilots", pilots, (long) Sampling.PILOTS.low(), (long) Sampling.PILOTS.high());
  }

  /**
   * Half of the interval at which the pilots are enough.
   *
   * @return the precision, m; zero if none is asked for
   * @throws UserError if it is no number or out of range
   */
  public double metres() {
    return precision == null ? 0 : NumberText.si(PRECISION, precision, PRECISIONS);
  }

  /**
   * Whether a precision is asked for.
   *
   * @return true if so
   */
  public boolean isGiven() {
    return precision != null;
  }
}
