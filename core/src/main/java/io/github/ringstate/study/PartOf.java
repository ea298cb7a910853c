package io.github.ringstate.study;

/**
 * The progress of one of several equal parts of a work.
 *
 * @param whole hears of the whole
 * @param part which part this is, from 0
 * @param parts how many there are
 */
public record PartOf(Progress whole, int part, int parts) implements Progress {

  @Override
  public void flown(long flown, long limit) {
    whole.flown(part * limit + flown, parts * limit);
  }

  @Override
  public boolean cancelled() {
    return whole.cancelled();
  }
}
