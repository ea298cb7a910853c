package io.github.ringstate.study.sweep;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.EngineKind;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.craft.RotationSense;
import io.github.ringstate.encounter.Disturbances;
import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.pilot.Recognition;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * All that a sweep may set. The groups, from the slowest to vary to the fastest: {@code model},
 * {@code craft}, {@code air}, {@code disturbance}, {@code entry}, {@code pilot}.
 *
 * <p>Instances are immutable and safe to share between threads.
 */
public final class Settings {

  /** The groups, slowest first. */
  public static final List<String> GROUPS =
      List.of("model", "craft", "air", "disturbance", "entry", "pilot");

  /** The key of the inflow model. */
  public static final String MODEL_KIND = "model.kind";

  /** The key of the craft. */
  public static final String CRAFT_NAME = "craft.name";

  static final String ROTATION = "craft.rotation";
  static final String ENGINE_KIND = "craft.engine_kind";
  static final String PRESSURE_ALTITUDE = "air.pressure_altitude_ft";
  static final String TEMPERATURE_OFFSET = "air.temperature_offset_k";
  static final String TEMPERATURE = "air.temperature_k";

  /** The key of the entry. */
  public static final String ENTRY_KIND = "entry.kind";

  static final String HEIGHT = "entry.height_ft";

  /** The key of the technique. */
  public static final String TECHNIQUE = "pilot.technique";

  /** The key of the state of mind that sets or draws the delay. */
  public static final String STATE = "pilot.state";

  /** The key of the delay, s. */
  public static final String DELAY = "pilot.delay_s";

  /** What is built in. */
  public static final Settings BUILT_IN = new Settings(Plugins.BUILT_IN, Map.of());

  private final Plugins plugins;
  private final Map<String, Helicopter> crafts = new LinkedHashMap<>();
  private final Map<String, Setting> all = new LinkedHashMap<>();

  private Settings(Plugins plugins, Map<String, Helicopter> more) {
    this.plugins = plugins;
    DemoCraft.ALL.forEach(craft -> crafts.put(craft.name(), craft));
    crafts.putAll(more);
    models();
    craftAndAir();
    entries();
    pilots();
  }

  /**
   * What is built in, with more.
   *
   * @param extensions what is added to recoveries, entries, models, delays and columns
   * @param crafts more craft by the words of {@code craft.name} that name them; a demo craft of
   *     that word is hidden
   * @return the settings
   * @throws BadExtensionException if an extension cannot be used
   */
  public static Settings of(
      List<? extends SweepExtension> extensions, Map<String, Helicopter> crafts) {
    Plugins plugins = Plugins.BUILT_IN;
    for (SweepExtension extension : extensions) {
      plugins = plugins.with(ExtensionCheck.of(extension, plugins));
    }
    return new Settings(plugins, crafts);
  }

  private void models() {
    boolean several = plugins.inflows().size() > 1;
    if (several) {
      word(MODEL_KIND, plugins.inflows().keySet());
    }
    for (InflowKind kind : plugins.inflows().values()) {
      kind.parameters().forEach(p -> number("model", p, several ? kind.name() : ""));
    }
  }

  private void craftAndAir() {
    word(CRAFT_NAME, crafts.keySet());
    word(ROTATION, Stream.of(RotationSense.values()).map(RotationSense::label).toList());
    word(ENGINE_KIND, Stream.of(EngineKind.values()).map(EngineKind::label).toList());
    Helicopter.STANDARD_NUMBERS.parameters().stream()
        .forEach(parameter -> number("craft", parameter, ""));
    // -1000 to 11000 m, narrowed to whole feet
    number(PRESSURE_ALTITUDE, new Quantity("pressure altitude", Unit.FOOT, -3280, 36_089));
    number(TEMPERATURE_OFFSET, new Quantity("temperature offset", Unit.KELVIN, -60, 60));
    number(TEMPERATURE, new Quantity("air temperature", Unit.KELVIN, 157, 354));
    Disturbances.PARAMETERS.forEach(parameter -> number("disturbance", parameter, ""));
  }

  private void entries() {
    word(ENTRY_KIND, plugins.entries().keySet());
    // 1 to 3000 m, narrowed to tenths of a foot
    number(HEIGHT, new Quantity("height at onset", Unit.FOOT, 3.3, 9842.5));
    for (EntryKind kind : plugins.entries().values()) {
      kind.parameters().forEach(parameter -> number("entry", parameter, kind.name()));
    }
  }

  private void pilots() {
    word(TECHNIQUE, plugins.techniques().keySet());
    word(STATE, plugins.delays().keySet());
    number(DELAY, Recognition.DELAY);
    for (Technique technique : plugins.techniques().values()) {
      technique.parameters().forEach(parameter -> number("pilot", parameter, technique.name()));
    }
  }

  private void word(String key, Collection<String> words) {
    all.put(key, Setting.word(key, List.copyOf(words)));
  }

  private void number(String key, Quantity range) {
    all.put(key, Setting.number(key, range));
  }

  /** A number of one kind alone, or of all if the kind is the empty text. */
  private void number(String group, Parameter parameter, String kind) {
    String key = group + "." + parameter.key();
    Map<String, Quantity> ranges = new LinkedHashMap<>();
    Setting known = all.get(key);
    if (known != null) {
      ranges.putAll(known.ranges());
    }
    ranges.put(kind, parameter.quantity());
    all.put(key, new Setting(key, List.of(), ranges));
  }

  /**
   * Everything that may be set.
   *
   * @return the settings, in the order of {@link #GROUPS}
   */
  public List<Setting> all() {
    return List.copyOf(all.values());
  }

  /**
   * Finds a setting.
   *
   * @param key its key
   * @return the setting, or empty if there is none of that key
   */
  public Optional<Setting> named(String key) {
    return Optional.ofNullable(all.get(key));
  }

  /** The setting of a key that must exist. */
  Setting required(String key) {
    return named(key)
        .orElseThrow(
            () -> {
              String group = key.contains(".") ? key.substring(0, key.indexOf('.')) : key;
              List<String> names = new ArrayList<>();
              all.values().stream()
                  .filter(setting -> setting.group().equals(group))
                  .forEach(setting -> names.add(setting.name()));
              return new SettingException(
                  key, "is not known", String.join(", ", names.isEmpty() ? GROUPS : names));
            });
  }

  /**
   * The craft by the words of {@code craft.name}.
   *
   * @return the demo craft and those that were added, in order
   */
  public Map<String, Helicopter> crafts() {
    return Collections.unmodifiableMap(crafts);
  }

  /** What is built in and what extensions add to it. */
  Plugins plugins() {
    return plugins;
  }

  /**
   * The entries that may be named.
   *
   * @return the entries by name
   */
  public Map<String, EntryKind> entryKinds() {
    return plugins.entries();
  }

  /**
   * The recoveries that may be named.
   *
   * @return the techniques by name
   */
  public Map<String, Technique> techniques() {
    return plugins.techniques();
  }

  /**
   * The inflow models that may be named.
   *
   * @return the models by name
   */
  public Map<String, InflowKind> inflowKinds() {
    return plugins.inflows();
  }
}
