package io.github.ringstate.cluster.portion;

import io.github.ringstate.study.sweep.SweepFlight;

/**
 * How the points of a sweep are cut into portions.
 *
 * @param points how many points there are, at least 1
 * @param size how many points a portion has, at least 1; the last may have fewer
 */
public record Cut(long points, int size) {

  /** The most portions: so many tasks and files one driver still keeps an eye on. */
  public static final int MOST_PORTIONS = 100_000;

  /** Portions for each core, so that all of them end at about the same time. */
  private static final int PER_CORE = 4;

  /** A portion smaller than this costs more to send out than to fly. */
  private static final int MINIMUM = SweepFlight.BLOCK;

  /** What is lost with a killed executor should take seconds to fly, not minutes. */
  private static final int MAXIMUM = 256 * SweepFlight.BLOCK;

  /** Checks the sizes. */
  public Cut {
    if (points < 1 || size < minimumSize(points)) {
      throw new IllegalArgumentException(
          points + " points cannot be cut into portions of " + size + " points");
    }
  }

  /**
   * The cut for a cluster.
   *
   * @param points how many points there are
   * @param cores how many cores fly
   * @return four portions for each core, of whole blocks of 1,024 points, but of 262,144 points at
   *     most, unless there were then more than {@link #MOST_PORTIONS}
   */
  public static Cut forCores(long points, int cores) {
    long even = divided(points, (long) PER_CORE * Math.max(cores, 1));
    long wanted = Math.max(Math.min(even, MAXIMUM), minimumSize(points));
    return new Cut(points, Math.toIntExact(MINIMUM * divided(wanted, MINIMUM)));
  }

  /**
   * The smallest portions that a sweep can be cut into.
   *
   * @param points how many points there are
   * @return the size at which there are {@link #MOST_PORTIONS} at most
   */
  public static int minimumSize(long points) {
    return Math.toIntExact(divided(points, MOST_PORTIONS));
  }

  /**
   * How many portions there are.
   *
   * @return the number, 1 to {@link #MOST_PORTIONS}
   */
  public int portions() {
    return Math.toIntExact(divided(points, size));
  }

  /**
   * One portion.
   *
   * @param number which one, 0 to {@link #portions} less 1
   * @return the portion
   */
  public Portion portion(int number) {
    long from = (long) number * size;
    return new Portion(number, from, (int) Math.min(size, points - from));
  }

  private static long divided(long whole, long by) {
    return (whole + by - 1) / by;
  }
}
