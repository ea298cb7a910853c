package io.github.ringstate.study.sweep;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.EngineKind;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.craft.RotationSense;
import io.github.ringstate.encounter.Disturbances;
import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Recognition;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * All that a sweep may set. The groups, from the slowest to vary to the fastest: {@code model},
 * {@code craft}, {@code air}, {@code disturbance}, {@code entry}, {@code pilot}.
 */
public final class Settings {

  /** The groups, slowest first. */
  public static final List<String> GROUPS =
      List.of("model", "craft", "air", "disturbance", "entry", "pilot");

  static final String CRAFT_NAME = "craft.name";
  static final String ROTATION = "craft.rotation";
  static final String ENGINE_KIND = "craft.engine_kind";
  static final String PRESSURE_ALTITUDE = "air.pressure_altitude_ft";
  static final String TEMPERATURE_OFFSET = "air.temperature_offset_k";
  static final String TEMPERATURE = "air.temperature_k";
  static final String ENTRY_KIND = "entry.kind";
  static final String HEIGHT = "entry.height_ft";
  static final String TECHNIQUE = "pilot.technique";

  /** The key of the state of mind that sets or draws the delay. */
  public static final String STATE = "pilot.state";

  /** The key of the delay, s. */
  public static final String DELAY = "pilot.delay_s";

  private static final Map<String, Setting> ALL = new LinkedHashMap<>();

  static {
    RingStateInflow.PARAMETERS.forEach(parameter -> number("model", parameter));
    word(CRAFT_NAME, DemoCraft.ALL.stream().map(Helicopter::name));
    word(ROTATION, Stream.of(RotationSense.values()).map(RotationSense::label));
    word(ENGINE_KIND, Stream.of(EngineKind.values()).map(EngineKind::label));
    Helicopter.parameters().forEach(parameter -> number("craft", parameter));
    // -1000 to 11000 m, narrowed to whole feet
    number(PRESSURE_ALTITUDE, new Quantity("pressure altitude", Unit.FOOT, -3280, 36_089));
    number(TEMPERATURE_OFFSET, new Quantity("temperature offset", Unit.KELVIN, -60, 60));
    number(TEMPERATURE, new Quantity("air temperature", Unit.KELVIN, 157, 354));
    Disturbances.PARAMETERS.forEach(parameter -> number("disturbance", parameter));
    word(ENTRY_KIND, EntryKind.ALL.stream().map(EntryKind::name));
    // 1 to 3000 m, narrowed to tenths of a foot
    number(HEIGHT, new Quantity("height at onset", Unit.FOOT, 3.3, 9842.5));
    for (EntryKind kind : EntryKind.ALL) {
      kind.parameters().forEach(parameter -> number("entry", parameter, kind.name()));
    }
    word(TECHNIQUE, Technique.ALL.stream().map(Technique::name));
    word(STATE, Stream.of(PilotState.values()).map(PilotState::label));
    number(DELAY, Recognition.DELAY);
    for (Technique technique : Technique.ALL) {
      technique.parameters().forEach(parameter -> number("pilot", parameter, technique.name()));
    }
  }

  private Settings() {}

  private static void word(String key, Stream<String> words) {
    ALL.put(key, Setting.word(key, words.toList()));
  }

  private static void number(String key, Quantity range) {
    ALL.put(key, Setting.number(key, range));
  }

  private static void number(String group, Parameter parameter) {
    number(group + "." + parameter.key(), parameter.quantity());
  }

  private static void number(String group, Parameter parameter, String kind) {
    String key = group + "." + parameter.key();
    Map<String, Quantity> ranges = new LinkedHashMap<>();
    Setting known = ALL.get(key);
    if (known != null) {
      ranges.putAll(known.ranges());
    }
    ranges.put(kind, parameter.quantity());
    ALL.put(key, new Setting(key, List.of(), ranges));
  }

  /**
   * Everything that may be set.
   *
   * @return the settings, in the order of {@link #GROUPS}
   */
  public static List<Setting> all() {
    return List.copyOf(ALL.values());
  }

  /**
   * Finds a setting.
   *
   * @param key its key
   * @return the setting, or empty if there is none of that key
   */
  public static Optional<Setting> named(String key) {
    return Optional.ofNullable(ALL.get(key));
  }

  /** The setting of a key that must exist. */
  static Setting required(String key) {
    return named(key)
        .orElseThrow(
            () -> {
              String group = key.contains(".") ? key.substring(0, key.indexOf('.')) : key;
              List<String> names = new ArrayList<>();
              ALL.values().stream()
                  .filter(setting -> setting.group().equals(group))
                  .forEach(setting -> names.add(setting.name()));
              return new SettingException(
                  key, "is not known", String.join(", ", names.isEmpty() ? GROUPS : names));
            });
  }
}
