package io.github.ringstate.study.sweep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.chance.Drawing;
import io.github.ringstate.dynamics.NoSteadyFlightException;
import io.github.ringstate.dynamics.Trim;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.quantity.Unit;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class SweepRowsTest {

  @ParameterizedTest
  @MethodSource("io.github.ringstate.study.sweep.Sweeps#specs")
  void anyPortionHasTheRowsOfTheWhole(SweepSpec spec) {
    Sweep sweep = new Sweep(spec);
    List<String> whole = Sweeps.rows(spec, 1);
    assertEquals(sweep.count(), whole.size());
    SplittableRandom random = new SplittableRandom(9);
    for (int i = 0; i < 30; i++) {
      int from = random.nextInt(whole.size());
      int size = random.nextInt(1, Math.min(20, whole.size() - from) + 1);
      assertEquals(whole.subList(from, from + size), Sweeps.lines(sweep.rows(from, size)));
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 8})
  void theRowsAreTheSameForAnyNumberOfThreads(int threads) {
    SweepSpec spec = Sweeps.pilots(700); // six blocks, flown with a table of the inflow
    assertEquals(Sweeps.rows(spec, 1), Sweeps.rows(spec, threads));
  }

  @Test
  void pilotsInGustsAreTheSamePeopleInTheSameGustsInAnyPortion() {
    SweepSpec spec =
        new SweepSpec(
            3,
            8,
            List.of(
                Sweeps.number("disturbance.gust_wind_kt", 15),
                Sweeps.number("disturbance.shaking_strength_pct", 10)),
            List.of(Sweeps.number("pilot.delay_s", 0.5, 1.5)),
            Sample.NONE);
    Sweep sweep = new Sweep(spec);
    List<String> whole = Sweeps.rows(spec, 3);
    for (int i = whole.size() - 1; i >= 0; i--) {
      assertEquals(whole.subList(i, i + 1), Sweeps.lines(sweep.rows(i, 1)));
    }
    assertEquals(whole.size(), whole.stream().map(row -> row.split(";", -1)[7]).distinct().count());
  }

  @Test
  void theRowsDoNotDependOnTheLocale() {
    Locale before = Locale.getDefault();
    List<String> english = Sweeps.rows(Sweeps.mixed(), 1);
    try {
      Locale.setDefault(Locale.GERMANY);
      assertEquals(english, Sweeps.rows(Sweeps.mixed(), 1));
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void aSpecSentElsewhereFliesTheSame() throws IOException, ClassNotFoundException {
    SweepSpec spec = Sweeps.sampled(Sample.Method.LATIN_HYPERCUBE, 20);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(spec);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      SweepSpec elsewhere = (SweepSpec) in.readObject();
      assertEquals(spec, elsewhere);
      assertEquals(Sweeps.rows(spec, 1), Sweeps.rows(elsewhere, 1));
    }
  }

  @ParameterizedTest
  @MethodSource("io.github.ringstate.study.sweep.Sweeps#specs")
  void aRowHasWhatThePreciseFlightOfItsPointGives(SweepSpec spec) {
    assertRowsAreThoseOfPreciseFlights(spec);
  }

  @Test
  void rowsFlownWithATableAreThoseOfPreciseFlightsToo() {
    assertRowsAreThoseOfPreciseFlights(Sweeps.pilots(1000));
  }

  private static void assertRowsAreThoseOfPreciseFlights(SweepSpec spec) {
    Sweep sweep = new Sweep(spec);
    for (long i = 0; i < sweep.count(); i += Math.max(13, sweep.count() / 40)) {
      Rows rows = sweep.rows(i, 1);
      if (rows.failed() > 0) {
        continue;
      }
      Outcome precise = sweep.encounter(i).fly();
      assertEquals(precise.ending().label(), Sweeps.value(rows, "outcome", 0), "point " + i);
      double loss = Unit.FOOT.fromSi(precise.altitudeLoss().orElse(Double.NaN));
      // the accuracy asked of the fast flight
      assertEquals(loss, (Double) Sweeps.value(rows, "altitude_loss_ft", 0), 0.1, "point " + i);
    }
  }

  /**
   * Every column, of 60 points of a mixed sweep and of pilots, against the flight of the point by
   * itself. Numbers are rounded to a thousandth.
   */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void aRowSaysWhatItsPointIsAndWhatCameOfIt(boolean pilots) {
    SweepSpec spec = pilots ? Sweeps.pilots(10) : Sweeps.mixed();
    Sweep sweep = new Sweep(spec);
    Rows rows = sweep.rows(5, 60);
    for (int row = 0; row < rows.size(); row++) {
      Encounter point = sweep.encounter(5 + row);
      assertEquals(5L + row, Sweeps.value(rows, "index", row));
      assertEquals(point.craft().name(), Sweeps.value(rows, "craft", row));
      assertEquals(point.entry().name(), Sweeps.value(rows, "entry", row));
      assertEquals(point.recovery().name(), Sweeps.value(rows, "recovery", row));
      assertEquals(point.recognition().delay(), Sweeps.value(rows, "delay_s", row));
      if (pilots) {
        assertEquals((5L + row) % 10, Sweeps.value(rows, "pilot_number", row));
        double mass = (double) Sweeps.value(rows, "craft_mass_kg", row);
        assertEquals(point.craft().mass(), mass, 1e-9);
      }
      if (Sweeps.value(rows, "error", row) != null) {
        NoSteadyFlightException reason =
            assertThrows(NoSteadyFlightException.class, () -> point.record(Simulator.fast()));
        assertEquals(reason.getMessage(), Sweeps.value(rows, "error", row));
        assertEquals(Double.NaN, Sweeps.value(rows, "altitude_loss_ft", row));
        assertNull(Sweeps.value(rows, "outcome", row));
        continue;
      }
      Outcome flown = point.record(Simulator.fast()).outcome();
      assertEquals(flown.ending().label(), Sweeps.value(rows, "outcome", row));
      // bulk flights are as exact as others, to a tenth of a foot
      near(Unit.FOOT.fromSi(or(flown.altitudeLoss())), rows, "altitude_loss_ft", row, 0.1);
      near(
          Unit.FOOT.fromSi(or(flown.lossAfterRecognition())),
          rows,
          "loss_after_recognition_ft",
          row,
          0.1);
      double peak = Unit.FOOT_PER_MINUTE.fromSi(or(flown.peakDescent()));
      near(peak, rows, "peak_descent_fpm", row, 1);
      near(or(flown.timeToArrest()), rows, "time_to_arrest_s", row, 0.01);
      double impact = Unit.FOOT_PER_MINUTE.fromSi(or(flown.impactSpeed()));
      near(impact, rows, "impact_fpm", row, 1);
    }
  }

  private static double or(OptionalDouble number) {
    return number.orElse(Double.NaN);
  }

  private static void near(double flown, Rows rows, String column, int row, double within) {
    double written = (double) Sweeps.value(rows, column, row);
    assertEquals(flown, written, within, column + " in row " + row);
    assertEquals(Math.rint(1000 * written) / 1000, written, column + " in row " + row);
  }

  /** A delay at which power alone works, one close to where it no more does, and one far behind. */
  @Test
  void theLastColumnButOneSaysWhichOutcomesAreSensitive() {
    List<Axis> axes =
        List.of(
            Sweeps.word("pilot.technique", "collective"),
            Sweeps.number("pilot.delay_s", 0.5, 1.5, 4));
    SweepSpec plain = new SweepSpec(1, 0, List.of(), axes, Sample.NONE);
    SweepSpec asked =
        new SweepSpec(
            1,
            0,
            Drawing.SOBOL,
            List.of(),
            axes,
            Sample.NONE,
            new Output(Output.Units.AVIATION, false, true));
    Rows without = new Sweep(plain).rows(0, 3);
    Rows with = new Sweep(asked).rows(0, 3);
    List<String> names = with.columns().stream().map(Column::name).toList();
    assertEquals(List.of("sensitive", "error"), names.subList(names.size() - 2, names.size()));
    for (int row = 0; row < 3; row++) {
      assertEquals(Boolean.toString(row == 1), Sweeps.value(with, "sensitive", row));
      for (Column column : without.columns()) {
        assertEquals(
            Sweeps.value(without, column.name(), row), Sweeps.value(with, column.name(), row));
      }
    }
  }

  @Test
  void aPointThatCannotBeFlownIsARowWithTheReason() {
    // the trainer takes 420 to 620 kg; each mass alone is one that some craft has
    SweepSpec spec =
        Sweeps.spec(
            List.of(),
            Sweeps.number("craft.mass_kg", 600, 700),
            Sweeps.number("pilot.delay_s", 1, 2));
    Rows rows = new Sweep(spec).rows(0, 4);
    assertEquals(2, rows.failed());
    for (int row = 0; row < 4; row++) {
      boolean bad = row >= 2;
      assertEquals(bad ? null : "arrested", Sweeps.value(rows, "outcome", row));
      assertEquals(bad, Double.isNaN((Double) Sweeps.value(rows, "altitude_loss_ft", row)));
      Object error = Sweeps.value(rows, "error", row);
      if (bad) {
        assertNotNull(error);
        assertTrue(error.toString().contains("700.0 kg"), error.toString());
        assertFalse(error.toString().contains("Exception"), error.toString());
      } else {
        assertNull(error);
      }
    }
    assertEquals(700.0, Sweeps.value(rows, "craft_mass_kg", 3));
  }

  @Test
  void eachNumberPossibleButNotTogetherIsARowToo() {
    // the axial speeds of onset and exit are to be 0.05 apart; no craft hovers at 36,000 ft
    SweepSpec spec =
        Sweeps.spec(
            List.of(Sweeps.number("model.ring_exit_axial_speed", -1.0)),
            Sweeps.number("model.ring_onset_axial_speed", -0.5, -0.97),
            Sweeps.number("air.pressure_altitude_ft", 0, 36_000));
    Rows rows = new Sweep(spec).rows(0, 4);
    assertEquals(3, rows.failed());
    assertNull(Sweeps.value(rows, "error", 0));
    String noHover = String.valueOf(Sweeps.value(rows, "error", 1));
    assertTrue(noHover.contains(Trim.NO_STEADY_FLIGHT), noHover);
    for (int row = 2; row < 4; row++) {
      String apart = String.valueOf(Sweeps.value(rows, "error", row));
      assertTrue(apart.contains("-0.97") && apart.contains("must exceed"), apart);
    }
  }

  @Test
  void aFaultOfTheProgramIsNoRowButEndsTheSweepWithItsCause() {
    SweepSpec spec = Sweeps.spec(List.of());
    Cursor cursor = new Cursor(spec, List.of(), Map.of());
    RowLayout layout = RowLayout.of(spec, Settings.BUILT_IN, List.of(), List.of());
    Composition broken = new Composition(null, null);
    RowFlight flight = new RowFlight(cursor, broken, new Models(1), new PilotCache(cursor), layout);
    IllegalStateException thrown =
        assertThrows(IllegalStateException.class, () -> flight.fly(0, 1, () -> false));
    assertTrue(thrown.getCause() instanceof NullPointerException, "caused by " + thrown.getCause());
    assertTrue(String.valueOf(thrown.getMessage()).contains("point 0 "), thrown.getMessage());
  }
}
