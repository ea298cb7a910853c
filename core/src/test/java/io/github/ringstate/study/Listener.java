package io.github.ringstate.study;

import java.util.function.BooleanSupplier;
import java.util.function.LongConsumer;

/**
 * Progress that may be ended.
 *
 * @param heard hears how many have been flown
 * @param ended whether the work is to end
 */
public record Listener(LongConsumer heard, BooleanSupplier ended) implements Progress {

  @Override
  public void flown(long flown, long limit) {
    heard.accept(flown);
  }

  @Override
  public boolean cancelled() {
    return ended.getAsBoolean();
  }
}
