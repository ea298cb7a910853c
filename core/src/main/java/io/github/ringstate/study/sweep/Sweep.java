package io.github.ringstate.study.sweep;

import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.IncompatibleValuesException;
import io.github.ringstate.quantity.OutOfRangeException;
import io.github.ringstate.quantity.Quantity;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

/**
 * Many encounters, each a point of a grid, of a sample, or of both multiplied, in a total order.
 *
 * <p>A point depends on the specification and its index alone: any one can be had without the
 * others, and rows come out the same to the last bit whoever flies them in whatever portions.
 *
 * <p>Rows are flown fast; against the precise flight of {@link #encounter} the altitude loss
 * differs by at most a tenth of a foot with the standard numbers of the models, and hardly more
 * with others in their ranges. Results are rounded to a thousandth of their unit. A point that
 * cannot be flown (a mass beyond the limits of its craft, no hover in its air) is a row without
 * results whose last column says why.
 *
 * <p>Instances are immutable and safe to share between threads.
 */
public final class Sweep {

  /** The most points that a sweep may have. */
  public static final long MOST_POINTS = 1_000_000_000_000L;

  private static final Column INDEX = new Column("index", Column.Type.INTEGER);
  private static final Column PILOT = new Column("pilot_number", Column.Type.INTEGER);

  /** Axes whose value every row has anyway. */
  private static final Set<String> IN_EVERY_ROW =
      Set.of(Settings.CRAFT_NAME, Settings.ENTRY_KIND, Settings.TECHNIQUE, Settings.DELAY);

  private final SweepSpec spec;
  private final List<String> keys;
  private final List<String> shown;
  private final List<Column> columns;
  private final Composition composition;
  private final Models models;
  private final PilotCache pilots;
  private final long count;

  /**
   * Prepares a sweep.
   *
   * @param spec what to fly
   * @throws SettingException if a setting is unknown, set twice, out of its range, or contradicts
   *     another
   */
  public Sweep(SweepSpec spec) {
    this.spec = spec;
    keys = keys(spec);
    check();
    Cursor cursor = new Cursor(spec, keys);
    count = cursor.count();
    models = new Models(cursor.perValue("model"));
    pilots = new PilotCache(cursor);
    composition = new Composition(spec);
    List<String> varied = new ArrayList<>();
    spec.axes().forEach(axis -> varied.add(axis.key()));
    spec.sample().dimensions().forEach(dimension -> varied.add(dimension.key()));
    shown =
        Settings.all().stream()
            .map(Setting::key)
            .filter(key -> varied.contains(key) && !IN_EVERY_ROW.contains(key))
            .toList();
    columns = columns();
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

  private void check() {
    List<String> kinds = new ArrayList<>();
    List<String> entries = words(Settings.ENTRY_KIND, EntryKind.STANDARD.name());
    List<String> techniques = words(Settings.TECHNIQUE, Technique.STANDARD.name());
    kinds.addAll(entries);
    kinds.addAll(techniques);
    for (Axis axis : Stream.concat(spec.fixed().stream(), spec.axes().stream()).toList()) {
      Setting setting = Settings.required(axis.key());
      if (axis instanceof Axis.Words words) {
        words.words().forEach(setting::check);
      } else if (axis instanceof Axis.Numbers numbers) {
        numbers.values().forEach(value -> setting.check(value, kinds));
      } else if (axis instanceof Axis.Range range) {
        setting.check(range.from(), kinds);
        setting.check(range.to(), kinds);
      }
      checkConcerned(setting, setting.group().equals("entry") ? entries : techniques, axis.size());
    }
    for (Sample.Dimension dimension : spec.sample().dimensions()) {
      Setting setting = Settings.required(dimension.key());
      setting.check(dimension.from(), kinds);
      setting.check(dimension.to(), kinds);
      checkConcerned(setting, setting.group().equals("entry") ? entries : techniques, 2);
    }
    contradict(Settings.TEMPERATURE, Settings.TEMPERATURE_OFFSET);
    contradict(Settings.STATE, Settings.DELAY);
    if (spec.pilots() > 0) {
      for (String key : keys) {
        if (!Settings.required(key).ranges().isEmpty()
            && key.startsWith("pilot.")
            && !key.equals(Settings.DELAY)) {
          throw new SettingException(
              key, "is set, but pilots are drawn with numbers of their own", "no pilot.count");
        }
      }
    }
  }

  private List<String> words(String key, String standard) {
    return Stream.concat(spec.fixed().stream(), spec.axes().stream())
        .filter(axis -> axis.key().equals(key) && axis instanceof Axis.Words)
        .map(axis -> ((Axis.Words) axis).words())
        .findFirst()
        .orElse(List.of(standard));
  }

  /** A number that only some of the kinds have may be fixed, but not varied. */
  private static void checkConcerned(Setting setting, List<String> kinds, int values) {
    Map<String, Quantity> ranges = setting.ranges();
    if (ranges.isEmpty() || ranges.containsKey("")) {
      return;
    }
    List<String> without = kinds.stream().filter(kind -> !ranges.containsKey(kind)).toList();
    if (without.size() == kinds.size() || (values > 1 && !without.isEmpty())) {
      throw new SettingException(
          setting.key(),
          "is no number of " + String.join(", ", without),
          "with " + String.join(", ", ranges.keySet().stream().sorted().toList()));
    }
  }

  private void contradict(String one, String other) {
    if (keys.contains(one) && keys.contains(other)) {
      throw new SettingException(one, "is set beside " + other, "one of them");
    }
  }

  private List<Column> columns() {
    List<Column> all = new ArrayList<>();
    all.add(INDEX);
    for (String key : shown) {
      all.add(
          new Column(
              key.replace('.', '_'),
              Settings.required(key).takesWords() ? Column.Type.WORD : Column.Type.NUMBER));
    }
    if (spec.pilots() > 0) {
      all.add(PILOT);
    }
    all.addAll(RowFlight.COLUMNS);
    return List.copyOf(all);
  }

  /**
   * What is flown.
   *
   * @return the specification
   */
  public SweepSpec spec() {
    return spec;
  }

  /**
   * How many points there are.
   *
   * @return the number, 1 to {@link #MOST_POINTS}
   */
  public long count() {
    return count;
  }

  /**
   * What a row holds: the index; what varies, in the order of {@link Settings#all}; the number of
   * the pilot if pilots are drawn; craft, entry, recovery and delay; how it ended and what it cost;
   * and why it could not be flown.
   *
   * @return the columns, in order
   */
  public List<Column> rowColumns() {
    return columns;
  }

  /**
   * One point.
   *
   * @param index its place, 0 to {@link #count} less 1
   * @return the point
   */
  public Point point(long index) {
    Values values = values(index);
    Map<String, Double> numbers = new LinkedHashMap<>();
    Map<String, String> words = new LinkedHashMap<>();
    for (String key : keys) {
      int slot = values.slot(key);
      String word = values.word(slot);
      if (word == null) {
        numbers.put(key, values.number(slot));
      } else {
        words.put(key, word);
      }
    }
    return new Point(
        index,
        numbers,
        words,
        values.pilot() < 0 ? OptionalInt.empty() : OptionalInt.of(values.pilot()));
  }

  /**
   * The encounter of one point, to be looked at or flown precisely.
   *
   * @param index its place, 0 to {@link #count} less 1
   * @return the encounter
   * @throws OutOfRangeException if a value is out of the range that the others leave
   * @throws IncompatibleValuesException if numbers of the model contradict each other
   */
  public Encounter encounter(long index) {
    Values values = values(index);
    Models.Model model = new Models(1).of(Composition.model(values));
    return composition.flown(composition.scene(values, model), values);
  }

  private Values values(long index) {
    Objects.checkIndex(index, count);
    Cursor cursor = new Cursor(spec, keys);
    cursor.move(index);
    return cursor.values();
  }

  /**
   * Flies some points that follow each other, on the calling thread.
   *
   * @param from the first point
   * @param size how many
   * @return their rows
   * @throws IllegalStateException if a point meets a fault of the program; its cause is that fault
   */
  public Rows rows(long from, int size) {
    return rows(from, size, () -> false);
  }

  /** The same, given up with a {@link CancellationException} as soon as it is cancelled. */
  Rows rows(long from, int size, BooleanSupplier cancelled) {
    Objects.checkFromIndexSize(from, size, count);
    Cursor cursor = new Cursor(spec, keys);
    return new RowFlight(cursor, composition, models, pilots, shown, columns)
        .fly(from, size, cancelled);
  }
}
