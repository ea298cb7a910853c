package io.github.ringstate.instructor.sweep;

/** Hears how a sweep comes on; called from one thread. */
public interface SweepWatch {

  /** Hears nothing. */
  SweepWatch SILENT = new SweepWatch() {};

  /**
   * Rows are on the disk and outlast the run.
   *
   * @param rows how many in all
   */
  default void kept(long rows) {}

  /**
   * Points have been flown.
   *
   * @param rows how many in all, those of runs before included
   */
  default void flown(long rows) {}
}
