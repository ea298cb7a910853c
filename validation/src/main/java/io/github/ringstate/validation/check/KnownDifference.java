package io.github.ringstate.validation.check;

/**
 * Why the library does not agree with a source, and between what bounds the library's value lies.
 * Outside them the difference is no longer the known one, and the check fails.
 *
 * @param explanation for people, whole sentences
 * @param low least value of the library that the explanation covers
 * @param high greatest value of the library that it covers
 */
public record KnownDifference(String explanation, double low, double high) {

  /** Checks the order of the bounds. */
  public KnownDifference {
    if (!(low <= high)) {
      throw new IllegalArgumentException(
          "the bounds of a known difference are in the wrong order: " + low + ", " + high);
    }
  }

  /**
   * Whether the explanation covers a value.
   *
   * @param actual what the library gives
   * @return true between the bounds, both included
   */
  public boolean covers(double actual) {
    return actual >= low && actual <= high;
  }
}
