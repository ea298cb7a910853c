package io.github.ringstate.files.sweep;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.ringstate.chance.Drawing;
import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.extension.Extensions;
import io.github.ringstate.files.toml.RenamedKeys;
import io.github.ringstate.files.toml.Texts;
import io.github.ringstate.files.toml.TomlDocument;
import io.github.ringstate.study.sweep.Axis;
import io.github.ringstate.study.sweep.Law;
import io.github.ringstate.study.sweep.Output;
import io.github.ringstate.study.sweep.Sample;
import io.github.ringstate.study.sweep.Scale;
import io.github.ringstate.study.sweep.SettingException;
import io.github.ringstate.study.sweep.Settings;
import io.github.ringstate.study.sweep.Sweep;
import io.github.ringstate.study.sweep.SweepSpec;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads a sweep from TOML. */
final class SweepReader {

  private static final String SEED = "seed";
  private static final String SAMPLE = "sample";
  private static final List<String> METHOD = List.of(SAMPLE, "method");
  private static final List<String> POINTS = List.of(SAMPLE, "points");
  private static final List<String> PILOTS = List.of("pilot", "count");
  private static final List<String> DRAWS = List.of("pilot", "draws");
  private static final String FORMS =
      "a value, a list [a, b, c], { from = a, to = b, values = n } or { from = a, to = b, sampled ="
          + " true }, both also with scale = \"log\", or { distribution = \"normal\", mean = a, sd"
          + " = b }";
  private static final String YES_OR_NO = "true or false, without quotation marks";
  private static final String OUTPUT = "output";
  private static final List<String> UNITS = List.of(OUTPUT, "units");
  private static final List<String> DRAWN = List.of(OUTPUT, "drawn_numbers");
  private static final List<String> SENSITIVE = List.of(OUTPUT, "sensitive");

  private final TomlDocument document;
  private final Settings settings;
  private final List<Axis> fixed = new ArrayList<>();
  private final List<Axis> axes = new ArrayList<>();
  private final List<Sample.Dimension> dimensions = new ArrayList<>();

  private SweepReader(TomlDocument document, Settings settings) {
    this.document = document;
    this.settings = settings;
  }

  static SweepFile read(String file, String text, Extensions extensions, Texts texts) {
    TomlDocument document = TomlDocument.parse(file, text, RenamedKeys.SINCE_0_1_0);
    SweepCrafts crafts = SweepCrafts.read(file, document, texts);
    Sweep sweep = new SweepReader(document, extensions.settings(crafts.crafts())).sweep();
    List<String> notices = new ArrayList<>(document.notices());
    notices.addAll(crafts.notices());
    return new SweepFile(file, text, crafts.texts(), extensions, sweep, notices);
  }

  private Sweep sweep() {
    if (document.keys().isEmpty()) {
      throw document.refusedAsWhole("the sweep is empty", "at least one setting, or the seed");
    }
    refuseUnknown();
    long seed =
        document.has(List.of(SEED)) ? whole(List.of(SEED), Long.MIN_VALUE, Long.MAX_VALUE) : 1;
    int pilots = document.has(PILOTS) ? (int) whole(PILOTS, 1, SweepSpec.MOST_PILOTS) : 0;
    try {
      for (String group : Settings.GROUPS) {
        for (String name : document.keys(group)) {
          List<String> path = List.of(group, name);
          if (!path.equals(PILOTS) && !path.equals(DRAWS)) {
            setting(path);
          }
        }
      }
      return new Sweep(
          new SweepSpec(seed, pilots, drawing(), fixed, axes, sample(), output()), settings);
    } catch (SettingException bad) {
      throw refused(bad);
    }
  }

  private Drawing drawing() {
    if (!document.has(DRAWS)) {
      return Drawing.SOBOL;
    }
    return document.choice(DRAWS, Drawing.values(), Drawing::label);
  }

  private UserError refused(SettingException bad) {
    List<String> path = Arrays.asList(bad.key().split("\\.", 2));
    String what = bad.key() + " " + bad.problem();
    return document.has(path)
        ? document.refused(path, what, bad.allowed())
        : document.refusedAsWhole(what, bad.allowed());
  }

  private void refuseUnknown() {
    List<String> tables =
        Stream.of(List.of(SAMPLE), Settings.GROUPS, List.of(OUTPUT)).flatMap(List::stream).toList();
    document.onlyAtTheTop(List.of(SEED), tables);
    document.onlyKeys(List.of(SAMPLE), List.of("method", "points"));
    document.onlyKeys(List.of(OUTPUT), List.of(DRAWN.get(1), SENSITIVE.get(1), UNITS.get(1)));
  }

  private void setting(List<String> path) {
    String key = String.join(".", path);
    if (settings.named(key).isEmpty()) {
      List<String> names =
          settings.all().stream()
              .filter(setting -> setting.group().equals(path.get(0)))
              .map(setting -> setting.name())
              .collect(Collectors.toCollection(ArrayList::new));
      if (path.get(0).equals(PILOTS.get(0))) {
        names.add(PILOTS.get(1));
        names.add(DRAWS.get(1));
      }
      throw document.unknown(path, String.join(", ", names));
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
    if (node.has("distribution")) {
      dimensions.add(new Sample.Dimension(key, drawn(path, node)));
      return;
    }
    document.onlyKeys(path, List.of("from", "sampled", "scale", "to", "values"));
    double from = number(path, node.path("from"));
    double to = number(path, node.path("to"));
    Scale scale = scale(path, node);
    JsonNode asked = node.path("sampled");
    if (node.has("sampled") && !asked.isBoolean()) {
      throw document.bad(TomlDocument.below(path, "sampled"), YES_OR_NO);
    }
    if (asked.booleanValue() == node.has("values")) {
      throw document.bad(path, FORMS);
    }
    if (asked.booleanValue()) {
      dimensions.add(new Sample.Dimension(key, from, to, scale));
    } else {
      int values = (int) whole(TomlDocument.below(path, "values"), 2, Axis.MOST_VALUES);
      axes.add(new Axis.Range(key, from, to, values, scale));
    }
  }

  /** A distribution: its numbers by their names, and bounds if it has others than its own. */
  private Law drawn(List<String> path, JsonNode node) {
    String families =
        Stream.of(Law.Family.values()).map(Law.Family::label).collect(Collectors.joining(", "));
    Law.Family family =
        TomlDocument.labelled(node.path("distribution"), Law.Family.values(), Law.Family::label)
            .orElseThrow(() -> document.bad(TomlDocument.below(path, "distribution"), families));
    document.onlyKeys(
        path,
        Stream.concat(Stream.of("distribution", "from", "to"), family.numbers().stream())
            .sorted()
            .toList());
    List<Double> numbers = new ArrayList<>();
    for (String name : family.numbers()) {
      if (!node.path(name).isNumber()) {
        throw document.bad(
            path, "distribution = \"" + family.label() + "\" with " + family.numbers());
      }
      numbers.add(node.path(name).doubleValue());
    }
    return new Law.Drawn(
        family,
        numbers,
        node.has("from") ? number(path, node.path("from")) : Double.NEGATIVE_INFINITY,
        node.has("to") ? number(path, node.path("to")) : Double.POSITIVE_INFINITY);
  }

  private double number(List<String> path, JsonNode node) {
    if (!node.isNumber()) {
      throw document.bad(path, FORMS);
    }
    return node.doubleValue() + 0.0; // a minus sign on zero has no meaning here
  }

  private Scale scale(List<String> path, JsonNode node) {
    if (!node.has("scale")) {
      return Scale.LINEAR;
    }
    return TomlDocument.labelled(node.path("scale"), Scale.values(), Scale::label)
        .orElseThrow(() -> document.bad(path, FORMS));
  }

  private Output output() {
    Output.Units units =
        document.has(UNITS)
            ? document.choice(UNITS, Output.Units.values(), Output.Units::label)
            : Output.STANDARD.units();
    return new Output(units, isTrue(DRAWN), isTrue(SENSITIVE));
  }

  private boolean isTrue(List<String> path) {
    if (document.has(path) && !document.get(path, "").isBoolean()) {
      throw document.bad(path, YES_OR_NO);
    }
    return document.has(path) && document.get(path, "").booleanValue();
  }

  private Sample sample() {
    boolean asked = document.has(List.of(SAMPLE));
    if (!asked && dimensions.isEmpty()) {
      return Sample.NONE;
    }
    Sample.Method method = document.choice(METHOD, Sample.Method.values(), Sample.Method::label);
    int points = (int) whole(POINTS, 1, Sample.MOST_POINTS);
    if (dimensions.isEmpty()) {
      throw document.refused(
          List.of(SAMPLE), SAMPLE + " has nothing to sample", "a setting with sampled = true");
    }
    return new Sample(method, points, dimensions);
  }

  /** A whole number; 3.0 is one too. */
  private long whole(List<String> path, long low, long high) {
    String allowed = "a whole number, " + low + " to " + high;
    JsonNode node = document.get(path, allowed);
    if (node.isNumber()
        && node.canConvertToExactIntegral()
        && node.canConvertToLong()
        && node.longValue() >= low
        && node.longValue() <= high) {
      return node.longValue();
    }
    throw document.bad(path, allowed);
  }
}
