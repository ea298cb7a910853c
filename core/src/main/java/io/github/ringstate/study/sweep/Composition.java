package io.github.ringstate.study.sweep;

import io.github.ringstate.air.Air;
import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.EngineKind;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.craft.RotationSense;
import io.github.ringstate.encounter.Disturbances;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Entry;
import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.PilotStudy;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.hipparchus.distribution.RealDistribution;

/** Puts an encounter together from the values of a point. */
final class Composition {

  private final SweepSpec spec;
  private final Settings settings;

  Composition(SweepSpec spec, Settings settings) {
    this.spec = spec;
    this.settings = settings;
  }

  /** All but the pilot; what the pilot does is standard. */
  Encounter scene(Values values, Models.Model model) {
    Encounter encounter =
        Encounter.of(craft(values))
            .withInflow(model.inflow(), model.boundary())
            .withAir(air(values))
            .withEntry(entry(values))
            .withDisturbances(
                new Disturbances(
                    numbers("disturbance", Disturbances.PARAMETERS, values), spec.seed()));
    OptionalDouble height = values.number(Settings.HEIGHT);
    return height.isPresent()
        ? encounter.withHeight(Unit.FOOT.toSi(height.getAsDouble()))
        : encounter;
  }

  InflowKind inflow(Values values) {
    return named(
        settings.inflowKinds(), values.word(Settings.MODEL_KIND, InflowKind.STANDARD.name()));
  }

  static ParameterSet model(InflowKind kind, Values values) {
    return numbers("model", kind.parameters(), values);
  }

  private static <T> T named(Map<String, T> kinds, String name) {
    return Objects.requireNonNull(kinds.get(name), name);
  }

  static String craftName(Values values) {
    return values.word(Settings.CRAFT_NAME, DemoCraft.TRAINER.name());
  }

  static String entryName(Values values) {
    return values.word(Settings.ENTRY_KIND, EntryKind.STANDARD.name());
  }

  static String techniqueName(Values values) {
    return values.word(Settings.TECHNIQUE, Technique.STANDARD.name());
  }

  private Helicopter craft(Values values) {
    Helicopter demo = named(settings.crafts(), craftName(values));
    String rotation = values.word(Settings.ROTATION, demo.sense().label());
    String engine = values.word(Settings.ENGINE_KIND, demo.engine().label());
    return new Helicopter(
        demo.name(),
        demo.description(),
        Stream.of(RotationSense.values())
            .filter(sense -> sense.label().equals(rotation))
            .findFirst()
            .orElseThrow(),
        Stream.of(EngineKind.values())
            .filter(kind -> kind.label().equals(engine))
            .findFirst()
            .orElseThrow(),
        changed(demo.numbers(), "craft", values));
  }

  private static Air air(Values values) {
    double altitude = Unit.FOOT.toSi(values.number(Settings.PRESSURE_ALTITUDE).orElse(0));
    OptionalDouble temperature = values.number(Settings.TEMPERATURE);
    return temperature.isPresent()
        ? StandardAtmosphere.withTemperature(altitude, temperature.getAsDouble())
        : StandardAtmosphere.at(altitude, values.number(Settings.TEMPERATURE_OFFSET).orElse(0));
  }

  private Entry entry(Values values) {
    EntryKind kind = named(settings.entryKinds(), entryName(values));
    return kind.maker().apply(numbers("entry", kind.parameters(), values));
  }

  private static ParameterSet numbers(String group, List<Parameter> parameters, Values values) {
    return changed(ParameterSet.standard(parameters), group, values);
  }

  private static ParameterSet changed(ParameterSet standard, String group, Values values) {
    ParameterSet numbers = standard;
    for (Parameter parameter : standard.parameters()) {
      OptionalDouble value = values.number(group + "." + parameter.key());
      if (value.isPresent()) {
        numbers = numbers.with(parameter, value.getAsDouble());
      }
    }
    return numbers;
  }

  /** The encounter of the pilot in a scene. */
  Encounter flown(Encounter scene, Values values) {
    Technique technique = named(settings.techniques(), techniqueName(values));
    Optional<DelayKind> state = state(values);
    Encounter fixed = scene.withDelay(values.number(Settings.DELAY).orElse(scene.delay()));
    if (values.pilot() < 0) {
      Recovery recovery = technique.maker().apply(numbers("pilot", technique.parameters(), values));
      return (state.isPresent() ? fixed.withDelay(state.get().median()) : fixed)
          .withRecovery(recovery);
    }
    Optional<RealDistribution> delays = state.map(DelayKind::delays);
    return new PilotStudy(fixed, technique, delays, spec.seed(), spec.drawing())
        .encounter(values.pilot());
  }

  private Optional<DelayKind> state(Values values) {
    return Optional.ofNullable(settings.plugins().delays().get(values.word(Settings.STATE, "")));
  }
}
