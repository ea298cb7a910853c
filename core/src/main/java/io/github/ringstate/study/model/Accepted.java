package io.github.ringstate.study.model;

import io.github.ringstate.study.OrderedWork;
import io.github.ringstate.study.Progress;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.LongFunction;
import java.util.function.Predicate;

/**
 * What is left of random draws when those that contradict something known are rejected: a sample of
 * the posterior distribution, every likelihood being 0 or 1.
 *
 * <p>A draw depends on its number alone, so what is kept does not depend on the number of threads.
 *
 * @param kept the draws that were accepted, in the order of their numbers
 * @param draws how many were drawn for them, the last one kept included
 * @param <T> what is drawn
 */
public record Accepted<T>(List<T> kept, long draws) {

  /** Part of the message when too few draws are accepted. */
  public static final String TOO_FEW = " met all that is asked of them, and as many are wanted as ";

  /** Draws between two looks at how many are accepted; the same for any number of threads. */
  private static final int BATCH = 4096;

  private static final int PIECE = 64;

  /** Copies the list. */
  public Accepted {
    kept = List.copyOf(kept);
  }

  /**
   * Draws until enough are accepted.
   *
   * @param wanted how many, at least 1
   * @param most how many are drawn at the most
   * @param draw the draw of a number, from 0
   * @param meets whether a draw is accepted
   * @param <T> what is drawn
   * @return the first of them that are accepted
   * @throws IllegalStateException if fewer are accepted than wanted
   * @throws java.util.concurrent.CancellationException if the calling thread was interrupted
   */
  public static <T> Accepted<T> first(
      int wanted, long most, LongFunction<T> draw, Predicate<? super T> meets) {
    if (!(wanted >= 1)) {
      throw new IllegalArgumentException("at least 1 draw is wanted, not " + wanted);
    }
    OrderedWork work = OrderedWork.of(Progress.SILENT);
    List<T> kept = new ArrayList<>();
    for (long from = 0; from < most; from += BATCH) {
      long first = from;
      int batch = (int) Math.min(BATCH, most - from);
      BitSet met = new BitSet(batch);
      work.run(
          (batch + PIECE - 1) / PIECE,
          () ->
              (piece, ended) -> {
                int begin = (int) piece * PIECE;
                BitSet here = new BitSet(batch);
                for (int i = begin; i < Math.min(begin + PIECE, batch); i++) {
                  here.set(i, meets.test(draw.apply(first + i)));
                }
                return here;
              },
          met::or);
      for (int i = met.nextSetBit(0); i >= 0; i = met.nextSetBit(i + 1)) {
        kept.add(draw.apply(first + i));
        if (kept.size() == wanted) {
          return new Accepted<>(kept, first + i + 1);
        }
      }
    }
    throw new IllegalStateException("of " + most + " draws only " + kept.size() + TOO_FEW + wanted);
  }

  /**
   * The part of the draws that was accepted.
   *
   * @return above 0, at most 1
   */
  public double share() {
    return (double) kept.size() / draws;
  }
}
