package io.github.ringstate.files.sweep;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.toml.RenamedKeys;
import io.github.ringstate.files.toml.TomlDocument;
import io.github.ringstate.study.sweep.Axis;
import io.github.ringstate.study.sweep.Sample;
import io.github.ringstate.study.sweep.Scale;
import io.github.ringstate.study.sweep.SettingException;
import io.github.ringstate.study.sweep.Settings;
import io.github.ringstate.study.sweep.Sweep;
import io.github.ringstate.study.sweep.SweepSpec;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads a sweep from TOML. */
final class SweepReader {

  private static final String SEED = "seed";
  private static final String SAMPLE = "sample";
  private static final List<String> METHOD = List.of(SAMPLE, "method");
  private static final List<String> POINTS = List.of(SAMPLE, "points");
  private static final List<String> PILOTS = List.of("pilot", "count");
  private static final String FORMS =
      "a value, a list [a, b, c], { from = a, to = b, values = n } or { from = a, to = b, sampled ="
          + " true }, both also with scale = \"log\"";

  private final TomlDocument document;
  private final List<Axis> fixed = new ArrayList<>();
  private final List<Axis> axes = new ArrayList<>();
  private final List<Sample.Dimension> dimensions = new ArrayList<>();

  private SweepReader(TomlDocument document) {
    this.document = document;
  }

  static SweepFile read(String file, String text) {
    TomlDocument document = TomlDocument.parse(file, text, RenamedKeys.SINCE_0_1_0);
    return new SweepFile(file, text, new SweepReader(document).sweep(), document.notices());
  }

  private Sweep sweep() {
    refuseUnknown();
    long seed =
        document.has(List.of(SEED)) ? whole(List.of(SEED), Long.MIN_VALUE, Long.MAX_VALUE) : 1;
    int pilots = document.has(PILOTS) ? (int) whole(PILOTS, 1, SweepSpec.MOST_PILOTS) : 0;
    try {
      for (String group : Settings.GROUPS) {
        for (String name : document.keys(group)) {
          List<String> path = List.of(group, name);
          if (!path.equals(PILOTS)) {
            setting(path);
          }
        }
      }
      return new Sweep(new SweepSpec(seed, pilots, fixed, axes, sample()));
    } catch (SettingException bad) {
      throw refused(bad);
    }
  }

  private UserError refused(SettingException bad) {
    List<String> path = Arrays.asList(bad.key().split("\\.", 2));
    String what = bad.key() + " " + bad.problem();
    return document.has(path)
        ? document.refused(path, what, bad.allowed())
        : document.refusedAsWhole(what, bad.allowed());
  }

  private void refuseUnknown() {
    List<String> tables = Stream.concat(Stream.of(SAMPLE), Settings.GROUPS.stream()).toList();
    for (String key : document.keys()) {
      if (key.equals(SEED)) {
        continue;
      }
      if (!tables.contains(key)) {
        throw unknown(
            List.of(key),
            SEED
                + ", and the tables "
                + tables.stream().map(table -> "[" + table + "]").collect(Collectors.joining(" ")));
      }
      if (!document.isTable(key)) {
        throw document.bad(List.of(key), "a table, [" + key + "]");
      }
    }
    onlyKeys(List.of(SAMPLE), Set.of("method", "points"));
  }

  private void onlyKeys(List<String> table, Set<String> known) {
    for (String key : document.keys(table)) {
      if (!known.contains(key)) {
        List<String> path = Stream.concat(table.stream(), Stream.of(key)).toList();
        throw unknown(path, known.stream().sorted().collect(Collectors.joining(", ")));
      }
    }
  }

  private UserError unknown(List<String> path, String allowed) {
    return document.refused(
        path, "unknown key " + UserError.quoted(String.join(".", path)), allowed);
  }

  private void setting(List<String> path) {
    String key = String.join(".", path);
    if (Settings.named(key).isEmpty()) {
      List<String> names =
          Settings.all().stream()
              .filter(setting -> setting.group().equals(path.get(0)))
              .map(setting -> setting.name())
              .collect(Collectors.toCollection(ArrayList::new));
      if (path.get(0).equals(PILOTS.get(0))) {
        names.add(PILOTS.get(1));
      }
      throw unknown(path, String.join(", ", names));
    }
    JsonNode node = document.get(path, FORMS);
    if (node.isArray()) {
      axes.add(list(path, key, node));
    } else if (node.isObject()) {
      span(path, key, node);
    } else {
      fixed.add(list(path, key, node));
    }
  }

  /** A list, or a single value, which is a list of one. */
  private Axis list(List<String> path, String key, JsonNode node) {
    List<JsonNode> values = new ArrayList<>();
    if (node.isArray()) {
      node.forEach(values::add);
    } else {
      values.add(node);
    }
    boolean words = !values.isEmpty() && values.stream().allMatch(JsonNode::isTextual);
    if (!words && !values.stream().allMatch(JsonNode::isNumber)) {
      throw document.bad(path, FORMS);
    }
    return words
        ? new Axis.Words(key, values.stream().map(JsonNode::textValue).toList())
        : new Axis.Numbers(key, values.stream().map(JsonNode::doubleValue).toList());
  }

  private void span(List<String> path, String key, JsonNode node) {
    onlyKeys(path, Set.of("from", "to", "values", "sampled", "scale"));
    double from = number(path, node.path("from"));
    double to = number(path, node.path("to"));
    Scale scale = scale(path, node);
    boolean sampled = node.path("sampled").isBoolean() && node.path("sampled").booleanValue();
    if (sampled == node.has("values")) {
      throw document.bad(path, FORMS);
    }
    if (sampled) {
      dimensions.add(new Sample.Dimension(key, from, to, scale));
    } else {
      List<String> values = List.of(path.get(0), path.get(1), "values");
      axes.add(new Axis.Range(key, from, to, (int) whole(values, 2, Axis.MOST_VALUES), scale));
    }
  }

  private double number(List<String> path, JsonNode node) {
    if (!node.isNumber()) {
      throw document.bad(path, FORMS);
    }
    return node.doubleValue() + 0.0; // a minus sign on zero has no meaning here
  }

  private Scale scale(List<String> path, JsonNode node) {
    String label = node.has("scale") ? node.path("scale").asText() : Scale.LINEAR.label();
    return Stream.of(Scale.values())
        .filter(scale -> scale.label().equals(label))
        .findFirst()
        .orElseThrow(() -> document.bad(path, FORMS));
  }

  private Sample sample() {
    boolean asked = document.has(List.of(SAMPLE));
    if (!asked && dimensions.isEmpty()) {
      return Sample.NONE;
    }
    String methods =
        Stream.of(Sample.Method.values())
            .map(method -> '"' + method.label() + '"')
            .collect(Collectors.joining(" or "));
    JsonNode label = document.get(METHOD, methods);
    Sample.Method method =
        Stream.of(Sample.Method.values())
            .filter(m -> label.isTextual() && m.label().equals(label.textValue()))
            .findFirst()
            .orElseThrow(() -> document.bad(METHOD, methods));
    int points = (int) whole(POINTS, 1, Sample.MOST_POINTS);
    if (dimensions.isEmpty()) {
      throw document.refused(
          List.of(SAMPLE), SAMPLE + " has nothing to sample", "a setting with sampled = true");
    }
    return new Sample(method, points, dimensions);
  }

  private long whole(List<String> path, long low, long high) {
    String allowed = "a whole number, " + low + " to " + high;
    JsonNode node = document.get(path, allowed);
    if (!node.isIntegralNumber()
        || !node.canConvertToLong()
        || node.longValue() < low
        || node.longValue() > high) {
      throw document.bad(path, allowed);
    }
    return node.longValue();
  }
}
