package io.github.ringstate.study.sweep;

import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Technique;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * What a sweep may name: each kind by its name, in the order in which help lists them.
 *
 * @param inflows the inflow models
 * @param entries the entries
 * @param techniques the recoveries
 * @param delays the distributions of delays
 * @param columns the columns beside the built-in ones
 */
record Plugins(
    Map<String, InflowKind> inflows,
    Map<String, EntryKind> entries,
    Map<String, Technique> techniques,
    Map<String, DelayKind> delays,
    List<OutputColumn> columns) {

  static final Plugins BUILT_IN =
      new Plugins(
          byName(InflowKind.ALL, InflowKind::name),
          byName(EntryKind.ALL, EntryKind::name),
          byName(Technique.ALL, Technique::name),
          byName(Stream.of(PilotState.values()).map(DelayKind::of).toList(), DelayKind::name),
          List.of());

  Plugins {
    columns = List.copyOf(columns);
  }

  static <T> Map<String, T> byName(List<T> kinds, Function<T, String> name) {
    Map<String, T> map = new LinkedHashMap<>();
    kinds.forEach(kind -> map.put(name.apply(kind), kind));
    return Collections.unmodifiableMap(map);
  }

  /** These and others, whose names are new. */
  Plugins with(Plugins more) {
    List<OutputColumn> both = new ArrayList<>(columns);
    both.addAll(more.columns);
    return new Plugins(
        joined(inflows, more.inflows),
        joined(entries, more.entries),
        joined(techniques, more.techniques),
        joined(delays, more.delays),
        both);
  }

  private static <T> Map<String, T> joined(Map<String, T> one, Map<String, T> other) {
    Map<String, T> map = new LinkedHashMap<>(one);
    map.putAll(other);
    return Collections.unmodifiableMap(map);
  }
}
