package io.github.ringstate.study.sweep;

import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.quantity.IncompatibleValuesException;
import io.github.ringstate.quantity.OutOfRangeException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleUnaryOperator;

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

  /** Axes whose value every row has anyway. */
  private static final Set<String> IN_EVERY_ROW =
      Set.of(Settings.CRAFT_NAME, Settings.ENTRY_KIND, Settings.TECHNIQUE, Settings.DELAY);

  private final SweepSpec spec;
  private final Settings settings;
  private final List<String> keys;
  private final Map<String, DoubleUnaryOperator> laws;
  private final RowLayout layout;
  private final Composition composition;
  private final Models models;
  private final PilotCache pilots;
  private final long count;

  /**
   * Prepares a sweep of what is built in.
   *
   * @param spec what to fly
   * @throws SettingException if a setting is unknown, set twice, out of its range, or contradicts
   *     another
   */
  public Sweep(SweepSpec spec) {
    this(spec, Settings.BUILT_IN);
  }

  /**
   * Prepares a sweep.
   *
   * @param spec what to fly
   * @param settings what may be set
   * @throws SettingException if a setting is unknown, set twice, out of its range, or contradicts
   *     another
   */
  public Sweep(SweepSpec spec, Settings settings) {
    this.spec = spec;
    this.settings = settings;
    SpecCheck check = new SpecCheck(spec, settings);
    keys = check.keys();
    laws = check.check();
    Cursor cursor = new Cursor(spec, keys, laws);
    count = cursor.count();
    models = new Models(cursor.perValue("model"));
    pilots = new PilotCache(cursor);
    composition = new Composition(spec, settings);
    List<String> varied = new ArrayList<>();
    spec.axes().forEach(axis -> varied.add(axis.key()));
    spec.sample().dimensions().forEach(dimension -> varied.add(dimension.key()));
    List<Setting> shown =
        settings.all().stream()
            .filter(
                setting -> varied.contains(setting.key()) && !IN_EVERY_ROW.contains(setting.key()))
            .toList();
    layout = RowLayout.of(spec, settings, shown, check.techniques());
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
   * What may be set.
   *
   * @return the settings that the specification was held against
   */
  public Settings settings() {
    return settings;
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
   * the pilot if pilots are drawn; craft, entry, recovery and delay; the numbers of the pilot if
   * they are asked for; how it ended and what it cost; the columns of extensions; whether the
   * outcome is sensitive, if that is asked for; and why it could not be flown.
   *
   * @return the columns, in order
   */
  public List<Column> rowColumns() {
    return layout.columns();
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
    InflowKind kind = composition.inflow(values);
    Models.Model model = new Models(1).of(kind, Composition.model(kind, values));
    return composition.flown(composition.scene(values, model), values);
  }

  private Values values(long index) {
    Objects.checkIndex(index, count);
    Cursor cursor = new Cursor(spec, keys, laws);
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
    Cursor cursor = new Cursor(spec, keys, laws);
    return new RowFlight(cursor, composition, models, pilots, layout).fly(from, size, cancelled);
  }
}
