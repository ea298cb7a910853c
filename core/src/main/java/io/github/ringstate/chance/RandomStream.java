package io.github.ringstate.chance;

/**
 * Random numbers of one sample. They depend on the seed of the study and the sample's number alone,
 * so that a sample can be flown again by itself, and a result does not depend on who computes which
 * sample.
 *
 * <p>For one thread.
 */
public interface RandomStream {

  /**
   * The next number. What matters most is drawn first, since the first numbers of the samples may
   * be spread more evenly than later ones.
   *
   * @return uniform, above 0 and below 1
   */
  double uniform();

  /**
   * A seed for something that draws numbers of its own.
   *
   * @return any number
   */
  long seed();
}
