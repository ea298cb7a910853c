package io.github.ringstate.calibration;

/** Recordings that cannot support a fit; the message says why. */
public final class UnsupportedFitException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  private final Reason reason;

  /** Why a fit is refused. */
  public enum Reason {
    /** Fewer encounters than needed. */
    TOO_FEW("two encounters with an arrest are needed, so that one can test the other; usable: "),
    /** An encounter whose arrest is not recorded. */
    NO_ARREST("the recording ends before the descent is arrested in "),
    /** The same readings are given twice. */
    REPEATED("the same readings count once, and are given twice: "),
    /** The model does not meet the ring state in a flight like the recorded one. */
    NO_ONSET("the model does not meet the ring state in the flight of "),
    /** The model's flights do not follow the readings. */
    MISFIT("the model's flights do not follow the recorded heights and vertical speeds: "),
    /** No set of numbers was found at which the residuals are least. */
    NO_MINIMUM("no best numbers were found: "),
    /** The data ask for what is known to be otherwise. */
    BEYOND("the recordings ask for a value far outside what is known of it: "),
    /** All numbers together lie far from what was known before. */
    APART(
        "the recordings ask for numbers that together lie far from what published ranges leave, so"
            + " the form of the model is in doubt: "),
    /** No number is known better than before. */
    NOTHING_TOLD("the recordings tell no number better than it was known before: ");

    private final String words;

    Reason(String words) {
      this.words = words;
    }
  }

  /**
   * Creates the exception.
   *
   * @param reason why the fit is refused
   * @param detail what about
   */
  public UnsupportedFitException(Reason reason, String detail) {
    super(reason.words + detail);
    this.reason = reason;
  }

  /**
   * Why the fit is refused.
   *
   * @return the reason
   */
  public Reason reason() {
    return reason;
  }
}
