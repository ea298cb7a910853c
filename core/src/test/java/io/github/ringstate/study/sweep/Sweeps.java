package io.github.ringstate.study.sweep;

import io.github.ringstate.study.Progress;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Sweeps for tests, and their rows as text. */
final class Sweeps {

  private Sweeps() {}

  /** A grid of everything, with some masses beyond the craft's limits. */
  static SweepSpec mixed() {
    return new SweepSpec(
        7,
        0,
        List.of(number("entry.wind_kt", 3)),
        List.of(
            word("craft.name", "trainer", "heavy"),
            number("craft.download", 0.01, 0.03),
            new Axis.Range("air.pressure_altitude_ft", 0, 30_000, 3, Scale.LINEAR),
            number("model.ring_exit_total_inflow", 1.3, 1.4),
            word("entry.kind", "settling", "downwind"),
            word("pilot.technique", "forward", "lateral"),
            new Axis.Range("pilot.delay_s", 0.5, 2, 3, Scale.LOG)),
        Sample.NONE);
  }

  static SweepSpec sampled(Sample.Method method, int points) {
    return new SweepSpec(
        11,
        0,
        List.of(),
        List.of(word("pilot.technique", "lateral", "forward")),
        new Sample(
            method,
            points,
            List.of(
                new Sample.Dimension("craft.mass_kg", 400, 640, Scale.LINEAR),
                new Sample.Dimension("pilot.delay_s", 0.25, 4, Scale.LOG),
                new Sample.Dimension("air.temperature_offset_k", -20, 30, Scale.LINEAR))));
  }

  static SweepSpec pilots(int count) {
    return new SweepSpec(
        3,
        count,
        List.of(number("entry.height_ft", 200)),
        List.of(
            number("craft.mass_kg", 540, 600),
            word("pilot.technique", "forward", "autorotation"),
            word("pilot.state", "primed", "startled")),
        Sample.NONE);
  }

  /** One of each kind. */
  static Stream<SweepSpec> specs() {
    return Stream.of(
        mixed(),
        sampled(Sample.Method.LATIN_HYPERCUBE, 150),
        sampled(Sample.Method.SOBOL, 150),
        pilots(25));
  }

  static Axis number(String key, double... values) {
    return new Axis.Numbers(key, Arrays.stream(values).boxed().toList());
  }

  static Axis word(String key, String... values) {
    return new Axis.Words(key, List.of(values));
  }

  /** Without pilots or a sample, with the seed 1. */
  static SweepSpec spec(List<Axis> fixed, Axis... axes) {
    return new SweepSpec(1, 0, fixed, List.of(axes), Sample.NONE);
  }

  static List<String> rows(SweepSpec spec, int threads) {
    Sweep sweep = new Sweep(spec);
    List<String> lines = new ArrayList<>();
    new SweepFlight(sweep, threads)
        .fly(0, sweep.count(), rows -> lines.addAll(lines(rows)), Progress.SILENT);
    return lines;
  }

  static List<String> lines(Rows rows) {
    List<String> lines = new ArrayList<>();
    for (int row = 0; row < rows.size(); row++) {
      StringBuilder line = new StringBuilder();
      for (int column = 0; column < rows.columns().size(); column++) {
        line.append(value(rows, column, row)).append(';');
      }
      lines.add(line.toString());
    }
    return lines;
  }

  static @Nullable Object value(Rows rows, String column, int row) {
    List<String> names = rows.columns().stream().map(Column::name).toList();
    return value(rows, names.indexOf(column), row);
  }

  private static @Nullable Object value(Rows rows, int column, int row) {
    return switch (rows.columns().get(column).type()) {
      case INTEGER -> rows.integer(column, row);
      case NUMBER -> rows.number(column, row);
      case WORD -> rows.word(column, row);
    };
  }
}
