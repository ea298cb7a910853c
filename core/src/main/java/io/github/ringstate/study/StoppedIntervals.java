package io.github.ringstate.study;

/**
 * Confidence intervals of a study that ended because of them. To stop where an interval is narrow
 * means to choose those that are narrow by chance, and they hold the truth less often than they
 * say. These are at half the chance of an error (Bonferroni's bound for two looks: nearly all
 * studies end at one of two), which makes them a fifth wider.
 *
 * @param plain the intervals without that
 */
record StoppedIntervals(Intervals plain) implements Intervals {

  @Override
  public Quantile quantile(double share, double confidence) {
    return plain.quantile(share, strict(confidence));
  }

  @Override
  public Share shareLosing(double height, double confidence) {
    return plain.shareLosing(height, strict(confidence));
  }

  private static double strict(double confidence) {
    return 0.5 * (1 + confidence);
  }
}
