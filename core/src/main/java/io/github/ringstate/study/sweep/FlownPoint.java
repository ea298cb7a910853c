package io.github.ringstate.study.sweep;

import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;

/**
 * The flight of a point, as a column of one's own sees it. Valid only while the column is asked for
 * its value. What the flight does not have is NaN.
 */
public interface FlownPoint {

  /**
   * The place of the point in the sweep.
   *
   * @return the index, from 0
   */
  long index();

  /**
   * What was flown, with its recovery and recognition.
   *
   * @return the encounter
   */
  Encounter encounter();

  /**
   * How it ended.
   *
   * @return the ending
   */
  Ending ending();

  /**
   * Height at onset less the lowest height.
   *
   * @return the loss, m
   */
  double altitudeLoss();

  /**
   * Height at recognition less the lowest height.
   *
   * @return the loss, m
   */
  double lossAfterRecognition();

  /**
   * Greatest rate of descent after onset.
   *
   * @return the rate, m/s, positive
   */
  double peakDescent();

  /**
   * From onset to the arrest.
   *
   * @return the time, s
   */
  double timeToArrest();

  /**
   * Rate of descent at ground contact.
   *
   * @return the speed, m/s, positive
   */
  double impactSpeed();
}
