package io.github.ringstate.files.sweep;

import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.files.provenance.ResolvedSettings;
import io.github.ringstate.files.report.Cell;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.study.sweep.Axis;
import io.github.ringstate.study.sweep.InflowKind;
import io.github.ringstate.study.sweep.Sample;
import io.github.ringstate.study.sweep.Settings;
import io.github.ringstate.study.sweep.SweepSpec;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a sweep is flown with: what its file sets, and every number that it leaves as it is for each
 * craft, model, entry and technique that it names.
 */
final class SweepSettings {

  private SweepSettings() {}

  static Map<String, Cell> of(SweepFile file) {
    SweepSpec spec = file.sweep().spec();
    Settings all = file.sweep().settings();
    Map<String, Cell> cells = new LinkedHashMap<>();
    cells.put("seed", new Cell(Long.toString(spec.seed()), Cell.Kind.NUMBER));
    cells.put("pilot.count", new Cell(Integer.toString(spec.pilots()), Cell.Kind.NUMBER));
    cells.put("output.units", Cell.text(spec.output().units().label()));
    if (!spec.sample().dimensions().isEmpty()) {
      cells.put("sample.method", Cell.text(spec.sample().method().label()));
      cells.put(
          "sample.points", new Cell(Integer.toString(spec.sample().points()), Cell.Kind.NUMBER));
    }
    Stream.concat(spec.fixed().stream(), spec.axes().stream())
        .forEach(axis -> cells.put(axis.key(), cell(axis)));
    for (Sample.Dimension dimension : spec.sample().dimensions()) {
      cells.put(dimension.key(), Cell.text("sampled: " + dimension.law()));
    }
    ResolvedSettings standard = new ResolvedSettings();
    named(spec, Settings.CRAFT_NAME, "trainer", all.crafts())
        .forEach((name, craft) -> standard.numbers("craft." + name + ".", craft.numbers()));
    named(spec, Settings.MODEL_KIND, InflowKind.STANDARD.name(), all.inflowKinds())
        .forEach((name, kind) -> standard(standard, "model." + name, kind.parameters()));
    named(spec, Settings.ENTRY_KIND, EntryKind.STANDARD.name(), all.entryKinds())
        .forEach((name, kind) -> standard(standard, "entry." + name, kind.parameters()));
    named(spec, Settings.TECHNIQUE, Technique.STANDARD.name(), all.techniques())
        .forEach((name, technique) -> standard(standard, "pilot." + name, technique.parameters()));
    standard
        .cells()
        .forEach(
            (key, cell) -> {
              String set = key.substring(0, key.indexOf('.')) + key.substring(key.lastIndexOf('.'));
              if (!cells.containsKey(set)) {
                cells.put(key, cell);
              }
            });
    return cells;
  }

  private static void standard(ResolvedSettings settings, String start, List<Parameter> numbers) {
    settings.numbers(start + ".", ParameterSet.standard(numbers));
  }

  /** What a setting names, or would, of what there is. */
  private static <T> Map<String, T> named(
      SweepSpec spec, String key, String standard, Map<String, T> all) {
    List<String> names =
        Stream.concat(spec.fixed().stream(), spec.axes().stream())
            .filter(axis -> axis.key().equals(key) && axis instanceof Axis.Words)
            .map(axis -> ((Axis.Words) axis).words())
            .findFirst()
            .orElse(List.of(standard));
    Map<String, T> named = new LinkedHashMap<>();
    names.forEach(
        name -> Optional.ofNullable(all.get(name)).ifPresent(one -> named.put(name, one)));
    return named;
  }

  private static Cell cell(Axis axis) {
    if (axis instanceof Axis.Words words) {
      return Cell.text(String.join(", ", words.words()));
    }
    if (axis instanceof Axis.Numbers numbers) {
      return numbers.size() == 1
          ? Cell.exact(numbers.values().get(0))
          : Cell.text(String.join(", ", numbers.values().stream().map(String::valueOf).toList()));
    }
    Axis.Range range = (Axis.Range) axis;
    return Cell.text(
        range.from()
            + " to "
            + range.to()
            + ", "
            + range.values()
            + " values, "
            + range.scale().label());
  }
}
