package io.github.ringstate.study.sweep;

import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.pilot.Technique;
import java.util.List;

/**
 * What a sweep can fly and tell beyond what is built in: recoveries, entries, inflow models,
 * distributions of delays and columns of one's own. This is the interface to write.
 *
 * <p>An implementation is found by {@link java.util.ServiceLoader}: a public class with a public
 * constructor without arguments, whose name stands in the jar's file {@code
 * META-INF/services/io.github.ringstate.study.sweep.SweepExtension}. {@link Settings#of} checks it
 * and adds what it has to what a sweep may set.
 *
 * <pre>
 * public final class Mine implements SweepExtension {
 *   public String name() {
 *     return "mine";
 *   }
 *
 *   public List&lt;OutputColumn&gt; columns() {
 *     return List.of(
 *         new OutputColumn("time_to_arrest_min", point -&gt; OptionalDouble.of(point.timeToArrest() / 60)));
 *   }
 * }
 * </pre>
 *
 * <p>All that it has is asked for once and flown by several threads at a time, so it must not
 * change, and must give the same for the same question: rows depend on the specification alone.
 * Names are lower case, words joined by hyphens, and no name that is built in.
 */
public interface SweepExtension {

  /**
   * The extension's name, for messages.
   *
   * @return lower case, words joined by hyphens
   */
  String name();

  /**
   * Recoveries, words of {@code pilot.technique}; their parameters are settings of {@code pilot}.
   *
   * @return the recoveries; none unless the extension says otherwise
   */
  default List<Technique> recoveries() {
    return List.of();
  }

  /**
   * Entries, words of {@code entry.kind}; their parameters are settings of {@code entry}.
   *
   * @return the entries; none unless the extension says otherwise
   */
  default List<EntryKind> entries() {
    return List.of();
  }

  /**
   * Inflow models, words of {@code model.kind}; their parameters are settings of {@code model}.
   *
   * @return the models; none unless the extension says otherwise
   */
  default List<InflowKind> inflows() {
    return List.of();
  }

  /**
   * Distributions of delays, words of {@code pilot.state}.
   *
   * @return the distributions; none unless the extension says otherwise
   */
  default List<DelayKind> delays() {
    return List.of();
  }

  /**
   * Columns, behind the built-in results of every row.
   *
   * @return the columns; none unless the extension says otherwise
   */
  default List<OutputColumn> columns() {
    return List.of();
  }
}
