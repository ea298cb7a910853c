package io.github.ringstate.study.sweep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.inflow.TabulatedInflow;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.Progress;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers of points, pilots, values and threads that cannot be, and what is kept within bounds. */
class SweepGuardsTest {

  private static void refused(String key, Executable made) {
    assertEquals(key, assertThrows(SettingException.class, made).key());
  }

  private static Sample sample(int points, Sample.Dimension... dimensions) {
    return new Sample(Sample.Method.INDEPENDENT, points, List.of(dimensions));
  }

  @Test
  void countsOutsideTheirRangeAreRefused() {
    refused("sample.points", () -> sample(0));
    refused("sample.points", () -> sample(Sample.MOST_POINTS + 1));
    for (int pilots : new int[] {-1, SweepSpec.MOST_PILOTS + 1}) {
      refused("pilot.count", () -> new SweepSpec(1, pilots, List.of(), List.of(), Sample.NONE));
    }
    List<Double> many = new ArrayList<>(Collections.nCopies(Axis.MOST_VALUES, 0.0));
    many.add(0.0);
    refused("pilot.delay_s", () -> new Axis.Numbers("pilot.delay_s", many));
    Sweep sweep = new Sweep(Sweeps.mixed());
    for (int threads : new int[] {0, SweepFlight.MOST_THREADS + 1}) {
      assertThrows(IllegalArgumentException.class, () -> new SweepFlight(sweep, threads));
    }
  }

  @Test
  void whatIsFixedHasOneValueAndWhatIsSampledComesOnce() {
    Axis two = Sweeps.number("pilot.delay_s", 1, 2);
    refused("pilot.delay_s", () -> Sweeps.spec(List.of(two)));
    Sample.Dimension delay = new Sample.Dimension("pilot.delay_s", 1, 2, Scale.LINEAR);
    refused("pilot.delay_s", () -> sample(9, delay, delay));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY})
  void bothEndsOfASpanAreFinite(double end) {
    refused("pilot.delay_s", () -> new Sample.Dimension("pilot.delay_s", end, 2, Scale.LINEAR));
    refused("pilot.delay_s", () -> new Sample.Dimension("pilot.delay_s", 2, end, Scale.LINEAR));
    refused("pilot.delay_s", () -> new Sample.Dimension("pilot.delay_s", 2, -1, Scale.LOG));
  }

  /** A sample of nothing is one point, whatever its method. */
  @Test
  void aSampleWithoutSettingsSetsNothing() {
    for (Sample.Method method : Sample.Method.values()) {
      Sample none = new Sample(method, 3, List.of());
      assertEquals(1, new Sweep(new SweepSpec(1, 0, List.of(), List.of(), none)).count());
      double[] at = new double[0];
      Spread.of(none, 5).at(2, at);
      assertEquals(0, at.length);
    }
  }

  /** Independent points are drawn each by itself: the same seed gives the same, others differ. */
  @Test
  void independentPointsFollowTheSeed() {
    List<String> rows = Sweeps.rows(Sweeps.sampled(Sample.Method.INDEPENDENT, 4), 1);
    assertEquals(rows, Sweeps.rows(Sweeps.sampled(Sample.Method.INDEPENDENT, 4), 2));
    assertTrue(!rows.equals(Sweeps.rows(Sweeps.sampled(Sample.Method.SOBOL, 4), 1)));
  }

  @Test
  void aRangeIsSpokenAsItIsWritten() {
    assertEquals(
        "200 to 20000 kg", SettingException.range(new Quantity("m", Unit.KILOGRAM, 200, 20_000)));
    assertEquals("0.25 to 1.5", SettingException.range(new Quantity("s", Unit.ONE, 0.25, 1.5)));
    // beyond 2^53 a whole number has no decimals to lose
    assertEquals("0 to 1.0E18", SettingException.range(new Quantity("s", Unit.ONE, 0, 1e18)));
  }

  @Test
  void modelsAreMadeOnceAndTablesOnlyWhereManyPointsShareThem() {
    Models few = new Models(999);
    Models many = new Models(1000);
    ParameterSet numbers = RingStateInflow.standard().numbers();
    InflowModel plain = few.of(InflowKind.STANDARD, numbers).inflow();
    assertTrue(plain instanceof RingStateInflow);
    assertTrue(plain == few.of(InflowKind.STANDARD, numbers).inflow());
    assertTrue(many.of(InflowKind.STANDARD, numbers).inflow() instanceof TabulatedInflow);
    // nine others take the places of the eight that are kept
    for (int i = 0; i < 9; i++) {
      few.of(InflowKind.STANDARD, numbers.with(RingStateInflow.EXIT_TOTAL, 1.3 + 0.01 * i));
    }
    assertTrue(plain != few.of(InflowKind.STANDARD, numbers).inflow());
  }

  /** An inflow that is no ring state is flown as it is; its points are those of any other. */
  @Test
  void anotherInflowIsFlownAsItIs() {
    for (String kind : List.of("three-state-ring-state", "stability-bound")) {
      SweepSpec spec =
          Sweeps.spec(
              List.of(Sweeps.word("model.kind", kind)), Sweeps.number("pilot.delay_s", 1, 2));
      Sweep sweep = new Sweep(spec);
      new SweepFlight(sweep, 1)
          .fly(0, 2, rows -> assertEquals(0, rows.failed(), kind), Progress.SILENT);
      assertEquals(kind, sweep.encounter(0).inflow().name());
    }
  }

  @Test
  void rowsHoldWhatTheyWereGiven() {
    List<Column> columns =
        List.of(
            new Column("i", Column.Type.INTEGER, List.of()),
            new Column("n", Column.Type.NUMBER, List.of()),
            new Column("w", Column.Type.WORD, List.of()));
    Rows rows = Rows.of(columns, List.of(List.of(3L, 0.5, "a"), List.of(4L, 1.5, "b")));
    assertEquals(List.of("3;0.5;a;", "4;1.5;b;"), Sweeps.lines(rows));
    assertEquals(2, rows.size());
    assertEquals(0, rows.failed());
  }
}
