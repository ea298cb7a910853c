package io.github.ringstate.study.sweep;

import io.github.ringstate.encounter.Downwind;
import io.github.ringstate.encounter.Entry;
import io.github.ringstate.encounter.Settling;
import io.github.ringstate.encounter.Steep;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import java.util.List;
import java.util.function.Function;

/** A built-in entry: its name, its numbers, and how it is made of them. */
record EntryForm(String name, List<Parameter> parameters, Function<ParameterSet, Entry> maker) {

  static final List<EntryForm> ALL =
      List.of(
          new EntryForm("settling", Settling.PARAMETERS, Settling::new),
          new EntryForm("steep", Steep.PARAMETERS, Steep::new),
          new EntryForm("downwind", Downwind.PARAMETERS, Downwind::new));

  static EntryForm named(String name) {
    return ALL.stream().filter(form -> form.name().equals(name)).findFirst().orElseThrow();
  }
}
