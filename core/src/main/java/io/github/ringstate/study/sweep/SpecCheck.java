package io.github.ringstate.study.sweep;

import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Quantity;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.hipparchus.distribution.RealDistribution;

/** Holds a specification against what may be set, and refuses what cannot be. */
final class SpecCheck {

  /** What the range of a setting may cut off from a distribution that has no bounds of its own. */
  private static final double LITTLE = 0.01;

  private final SweepSpec spec;
  private final Settings settings;
  private final List<String> keys;
  private final Map<String, List<String>> named = new HashMap<>();

  SpecCheck(SweepSpec spec, Settings settings) {
    this.spec = spec;
    this.settings = settings;
    keys = keys(spec);
    named.put("model", words(Settings.MODEL_KIND, InflowKind.STANDARD.name()));
    named.put("entry", words(Settings.ENTRY_KIND, EntryKind.STANDARD.name()));
    named.put("pilot", words(Settings.TECHNIQUE, Technique.STANDARD.name()));
  }

  private static List<String> keys(SweepSpec spec) {
    List<String> keys = new ArrayList<>();
    spec.fixed().forEach(axis -> keys.add(axis.key()));
    spec.axes().forEach(axis -> keys.add(axis.key()));
    spec.sample().dimensions().forEach(dimension -> keys.add(dimension.key()));
    Set<String> seen = new HashSet<>();
    for (String key : keys) {
      if (!seen.add(key)) {
        throw new SettingException(key, "is set twice", "each setting once");
      }
    }
    return List.copyOf(keys);
  }

  /** The keys of all that is set. */
  List<String> keys() {
    return keys;
  }

  /** The techniques that are flown. */
  List<String> techniques() {
    return named.getOrDefault("pilot", List.of());
  }

  private List<String> words(String key, String standard) {
    return Stream.concat(spec.fixed().stream(), spec.axes().stream())
        .filter(axis -> axis.key().equals(key) && axis instanceof Axis.Words)
        .map(axis -> ((Axis.Words) axis).words())
        .findFirst()
        .orElse(List.of(standard));
  }

  /**
   * Checks everything.
   *
   * @return for each sampled setting what makes its value of a number from 0 to 1
   */
  Map<String, DoubleUnaryOperator> check() {
    for (Axis axis : Stream.concat(spec.fixed().stream(), spec.axes().stream()).toList()) {
      Setting setting = settings.required(axis.key());
      if (axis instanceof Axis.Words words) {
        words.words().forEach(setting::check);
      } else if (axis instanceof Axis.Numbers numbers) {
        numbers.values().forEach(value -> setting.check(value, kinds(setting)));
      } else if (axis instanceof Axis.Range range) {
        setting.check(range.from(), kinds(setting));
        setting.check(range.to(), kinds(setting));
      }
      checkConcerned(setting, axis.size());
    }
    Map<String, DoubleUnaryOperator> laws = new HashMap<>();
    for (Sample.Dimension dimension : spec.sample().dimensions()) {
      Setting setting = settings.required(dimension.key());
      checkConcerned(setting, 2);
      laws.put(dimension.key(), law(setting, dimension.law()));
    }
    contradict(Settings.TEMPERATURE, Settings.TEMPERATURE_OFFSET);
    contradict(Settings.STATE, Settings.DELAY);
    if (spec.pilots() > 0) {
      for (String key : keys) {
        if (!settings.required(key).ranges().isEmpty()
            && key.startsWith("pilot.")
            && !key.equals(Settings.DELAY)) {
          throw new SettingException(
              key, "is set, but pilots are drawn with numbers of their own", "no pilot.count");
        }
      }
    }
    return laws;
  }

  private List<String> kinds(Setting setting) {
    return named.getOrDefault(setting.group(), List.of());
  }

  /** A number that only some of the kinds have may be fixed, but not varied. */
  private void checkConcerned(Setting setting, int values) {
    Map<String, Quantity> ranges = setting.ranges();
    if (ranges.isEmpty() || ranges.containsKey("")) {
      return;
    }
    List<String> kinds = kinds(setting);
    List<String> without = kinds.stream().filter(kind -> !ranges.containsKey(kind)).toList();
    if (without.size() == kinds.size() || (values > 1 && !without.isEmpty())) {
      throw new SettingException(
          setting.key(),
          "is no number of " + String.join(", ", without),
          "with " + String.join(", ", ranges.keySet().stream().sorted().toList()));
    }
  }

  private DoubleUnaryOperator law(Setting setting, Law law) {
    if (law instanceof Law.Span span) {
      setting.check(span.from(), kinds(setting));
      setting.check(span.to(), kinds(setting));
      return part -> span.scale().at(span.from(), span.to(), part);
    }
    Law.Drawn drawn = (Law.Drawn) law;
    if (setting.takesWords()) {
      throw SettingException.cannotBe(
          setting.key(), drawn.family().label(), String.join(", ", setting.words()));
    }
    RealDistribution distribution = drawn.distribution(setting.key());
    double low = Math.max(drawn.low(), lowest(setting));
    double high = Math.min(drawn.high(), highest(setting));
    boolean bounded = Double.isFinite(drawn.low()) || Double.isFinite(drawn.high());
    if (Double.isFinite(drawn.low())) {
      setting.check(drawn.low(), kinds(setting));
    }
    if (Double.isFinite(drawn.high())) {
      setting.check(drawn.high(), kinds(setting));
    }
    double below = distribution.cumulativeProbability(low);
    double within = distribution.cumulativeProbability(high) - below;
    if (!(within >= (bounded ? LITTLE : 1 - LITTLE))) {
      throw new SettingException(
          setting.key(),
          "has a distribution with "
              + Math.rint(1000 * (1 - within)) / 10
              + " % of it outside "
              + low
              + " to "
              + high,
          bounded
              ? "bounds between which there is at least 1 % of it"
              : "at most 1 % of it outside the setting's range, or bounds of your own (from, to)");
    }
    return part ->
        Math.min(
            Math.max(
                distribution.inverseCumulativeProbability(Math.min(below + within * part, 1)), low),
            high);
  }

  private double lowest(Setting setting) {
    return ranges(setting).mapToDouble(Quantity::low).max().orElseThrow();
  }

  private double highest(Setting setting) {
    return ranges(setting).mapToDouble(Quantity::high).min().orElseThrow();
  }

  private Stream<Quantity> ranges(Setting setting) {
    return setting.ranges().entrySet().stream()
        .filter(range -> range.getKey().isEmpty() || kinds(setting).contains(range.getKey()))
        .map(Map.Entry::getValue);
  }

  private void contradict(String one, String other) {
    if (keys.contains(one) && keys.contains(other)) {
      throw new SettingException(one, "is set beside " + other, "one of them");
    }
  }
}
