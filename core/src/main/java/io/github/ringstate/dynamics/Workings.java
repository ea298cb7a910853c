package io.github.ringstate.dynamics;

/** What a {@link Motion} asks when it is asked for more than its state. */
interface Workings {

  /** Works out loads, commands and rates of the motion that is looked at. */
  void complete();

  /** See {@link Motion#inflowDecay}; the loads are worked out. */
  double inflowDecay();

  /** See {@link Motion#sinkFeedsItself}; the loads are worked out. */
  boolean sinkFeedsItself();
}
