package io.github.ringstate.study.sweep;

import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.inflow.SlopeCheck;
import io.github.ringstate.pilot.Recognition;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Asks an extension for what it has, and refuses what a sweep could not fly or tell apart. */
final class ExtensionCheck {

  private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");
  private static final Pattern COLUMN = Pattern.compile("[a-z][a-z0-9]*(_[a-z0-9]+)*");

  /** Speeds at which an inflow model must be a number, in hover induced velocities. */
  private static final double[] EDGEWISE = {0, 0.3, 1};

  private static final double[] AXIAL = {-1.5, -1, -0.5, 0, 0.5};

  /** Chances of which a delay must be a time. */
  private static final double[] CHANCES = {0.001, 0.5, 0.999};

  private final String name;
  private final Plugins known;

  private ExtensionCheck(String name, Plugins known) {
    this.name = name;
    this.known = known;
  }

  /**
   * What an extension has.
   *
   * @throws BadExtensionException if it cannot be used
   */
  static Plugins of(SweepExtension extension, Plugins known) {
    String type = extension.getClass().getName();
    String name = new ExtensionCheck(type, known).asked("name", extension::name);
    ExtensionCheck check = new ExtensionCheck(name, known);
    if (!NAME.matcher(name).matches()) {
      throw new BadExtensionException(
          type, "is called '" + name + "'; allowed: lower case, words joined by hyphens");
    }
    return new Plugins(
        Plugins.byName(check.inflows(extension), InflowKind::name),
        Plugins.byName(check.entries(extension), EntryKind::name),
        Plugins.byName(check.techniques(extension), Technique::name),
        Plugins.byName(check.delays(extension), DelayKind::name),
        check.columns(extension));
  }

  private <T> T asked(String what, Supplier<? extends @Nullable T> question) {
    @Nullable T answer;
    try {
      answer = question.get();
    } catch (RuntimeException | LinkageError | StackOverflowError thrown) {
      throw new BadExtensionException(name, "gives no " + what + ", but throws " + thrown, thrown);
    }
    if (answer == null) {
      throw new BadExtensionException(name, "gives null in place of its " + what);
    }
    return answer;
  }

  private <T> List<T> named(
      String what, Supplier<List<T>> kinds, Function<T, String> nameOf, Set<String> taken) {
    List<T> all = asked("list of " + what + "s", () -> List.copyOf(kinds.get()));
    Set<String> seen = new HashSet<>(taken);
    for (T kind : all) {
      String kindName = asked("name of a " + what, () -> nameOf.apply(kind));
      if (!NAME.matcher(kindName).matches()) {
        throw new BadExtensionException(
            name,
            "has the "
                + what
                + " '"
                + kindName
                + "'; allowed: lower case, words joined by hyphens");
      }
      if (!seen.add(kindName)) {
        throw new BadExtensionException(
            name, "has the " + what + " '" + kindName + "', a name that is taken");
      }
    }
    return all;
  }

  private List<InflowKind> inflows(SweepExtension extension) {
    List<InflowKind> all =
        named("inflow model", extension::inflows, InflowKind::name, known.inflows().keySet());
    for (InflowKind kind : all) {
      InflowModel model =
          asked(
              "inflow model " + kind.name(),
              () -> kind.inflow().apply(standard(kind.name(), kind.parameters(), Set.of("kind"))));
      asked("boundary of the inflow model " + kind.name(), () -> kind.boundary().apply(model));
      for (double edgewise : EDGEWISE) {
        for (double axial : AXIAL) {
          check(kind, "induced velocity", model.induced(edgewise, axial), edgewise, axial);
          check(kind, "slope", model.slope(edgewise, axial), edgewise, axial);
          check(kind, "share of losses", model.lossShare(edgewise, axial), edgewise, axial);
        }
      }
      SlopeCheck.fault(model)
          .ifPresent(
              fault -> {
                throw new BadExtensionException(
                    name, "has the inflow model " + kind.name() + ", which " + fault);
              });
    }
    return all;
  }

  private void check(InflowKind kind, String what, double value, double edgewise, double axial) {
    if (!Double.isFinite(value)) {
      throw new BadExtensionException(
          name,
          "has the inflow model "
              + kind.name()
              + ", whose "
              + what
              + " is "
              + value
              + " at edgewise speed "
              + edgewise
              + " and axial speed "
              + axial);
    }
  }

  private List<EntryKind> entries(SweepExtension extension) {
    List<EntryKind> all =
        named("entry", extension::entries, EntryKind::name, known.entries().keySet());
    for (EntryKind kind : all) {
      ParameterSet numbers = standard(kind.name(), kind.parameters(), Set.of("kind", "height_ft"));
      asked("entry " + kind.name(), () -> kind.maker().apply(numbers));
    }
    return all;
  }

  private List<Technique> techniques(SweepExtension extension) {
    List<Technique> all =
        named("recovery", extension::recoveries, Technique::name, known.techniques().keySet());
    for (Technique technique : all) {
      ParameterSet numbers =
          standard(
              technique.name(),
              technique.parameters(),
              Set.of("technique", "state", "delay_s", "count"));
      if (asked("recovery " + technique.name(), () -> technique.maker().apply(numbers).phases())
          .isEmpty()) {
        throw new BadExtensionException(
            name, "has the recovery " + technique.name() + ", which has no phases");
      }
    }
    return all;
  }

  /** The standard numbers of a kind whose keys are to be settings of their own. */
  private ParameterSet standard(String kind, List<Parameter> parameters, Set<String> taken) {
    for (Parameter parameter : parameters) {
      if (taken.contains(parameter.key())) {
        throw new BadExtensionException(
            name, "has in " + kind + " the number '" + parameter.key() + "', a name that is taken");
      }
    }
    return asked("numbers of " + kind, () -> ParameterSet.standard(parameters));
  }

  private List<DelayKind> delays(SweepExtension extension) {
    List<DelayKind> all =
        named(
            "distribution of delays", extension::delays, DelayKind::name, known.delays().keySet());
    for (DelayKind kind : all) {
      if (!(kind.median() >= Recognition.DELAY.low()
          && kind.median() <= Recognition.DELAY.high())) {
        throw delay(kind, "median", kind.median());
      }
      for (double chance : CHANCES) {
        double delay =
            asked(
                "distribution of delays " + kind.name(),
                () -> kind.delays().inverseCumulativeProbability(chance));
        if (!(delay >= 0 && delay <= Double.MAX_VALUE)) {
          throw delay(kind, "quantile " + chance, delay);
        }
      }
    }
    return all;
  }

  private BadExtensionException delay(DelayKind kind, String what, double value) {
    return new BadExtensionException(
        name,
        "has the distribution of delays "
            + kind.name()
            + ", whose "
            + what
            + " is "
            + value
            + " s; allowed: 0 to 60 s");
  }

  private List<OutputColumn> columns(SweepExtension extension) {
    List<OutputColumn> all = asked("list of columns", () -> List.copyOf(extension.columns()));
    Set<String> seen =
        Stream.of(
                RowLayout.BUILT_IN_NAMES, known.columns().stream().map(OutputColumn::name).toList())
            .flatMap(List::stream)
            .collect(Collectors.toCollection(HashSet::new));
    for (OutputColumn column : all) {
      String columnName = asked("name of a column", column::name);
      boolean setting =
          Settings.GROUPS.stream().anyMatch(group -> columnName.startsWith(group + "_"));
      if (!COLUMN.matcher(columnName).matches() || setting) {
        throw new BadExtensionException(
            name,
            "has the column '"
                + columnName
                + "'; allowed: lower case with underscores, not beginning as a setting does");
      }
      if (!seen.add(columnName)) {
        throw new BadExtensionException(
            name, "has the column '" + columnName + "', a name that is taken");
      }
    }
    return all;
  }
}
