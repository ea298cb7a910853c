package io.github.ringstate.study;

/** Hears how far a study has come, and may end it. */
public interface Progress {

  /** Hears nothing and ends nothing. */
  Progress SILENT = (flown, limit) -> {};

  /**
   * Some encounters have been flown; called from any thread, one call at a time.
   *
   * @param flown how many so far
   * @param limit how many there are at most
   */
  void flown(long flown, long limit);

  /**
   * Whether the study is to end now; asked before each encounter, from any thread.
   *
   * @return true to end it with a {@link java.util.concurrent.CancellationException}
   */
  default boolean cancelled() {
    return false;
  }
}
