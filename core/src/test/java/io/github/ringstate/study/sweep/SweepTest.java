package io.github.ringstate.study.sweep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Outcome;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.PilotStudy;
import io.github.ringstate.study.Progress;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class SweepTest {

  static Stream<SweepSpec> specs() {
    return Stream.of(
        Sweeps.mixed(),
        Sweeps.sampled(Sample.Method.LATIN_HYPERCUBE, 150),
        Sweeps.sampled(Sample.Method.SOBOL, 150),
        Sweeps.pilots(25));
  }

  @Test
  void theCountIsTheProductOfAllAxes() {
    assertEquals(2 * 2 * 3 * 2 * 2 * 2 * 3, new Sweep(Sweeps.mixed()).count());
    assertEquals(300, new Sweep(Sweeps.sampled(Sample.Method.SOBOL, 150)).count());
    assertEquals(2 * 2 * 2 * 25, new Sweep(Sweeps.pilots(25)).count());
    assertEquals(1, new Sweep(new SweepSpec(0, 0, List.of(), List.of(), Sample.NONE)).count());
  }

  @ParameterizedTest
  @MethodSource("specs")
  void everyPointIsAnother(SweepSpec spec) {
    Sweep sweep = new Sweep(spec);
    HashSet<String> seen = new HashSet<>();
    for (long i = 0; i < sweep.count(); i++) {
      Point point = sweep.point(i);
      assertTrue(seen.add(point.numbers() + " " + point.words() + " " + point.pilot()));
    }
  }

  @Test
  void thePilotVariesFastestAndTheModelSlowest() {
    Sweep sweep = new Sweep(Sweeps.mixed());
    assertEquals(0.5, sweep.point(0).numbers().get("pilot.delay_s"));
    assertEquals(1, sweep.point(1).numbers().get("pilot.delay_s"), 1e-15);
    assertEquals(2, sweep.point(2).numbers().get("pilot.delay_s"));
    assertEquals("forward", sweep.point(2).words().get("pilot.technique"));
    assertEquals("lateral", sweep.point(3).words().get("pilot.technique"));
    assertEquals("settling", sweep.point(5).words().get("entry.kind"));
    assertEquals("downwind", sweep.point(6).words().get("entry.kind"));
    long half = sweep.count() / 2;
    assertEquals(1.3, sweep.point(half - 1).numbers().get("model.ring_exit_total_inflow"));
    assertEquals(1.4, sweep.point(half).numbers().get("model.ring_exit_total_inflow"));
  }

  @ParameterizedTest
  @MethodSource("specs")
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
                number("disturbance.gust_wind_kt", 15),
                number("disturbance.shaking_strength_pct", 10)),
            List.of(new Axis.Numbers("pilot.delay_s", List.of(0.5, 1.5))),
            Sample.NONE);
    Sweep sweep = new Sweep(spec);
    List<String> whole = Sweeps.rows(spec, 3);
    for (int i = whole.size() - 1; i >= 0; i--) {
      assertEquals(whole.subList(i, i + 1), Sweeps.lines(sweep.rows(i, 1)));
    }
    assertEquals(whole.size(), whole.stream().map(row -> row.split(";", -1)[7]).distinct().count());
  }

  /** As the package says: chance is in the pilots, not in the points. */
  @Test
  void pointsMeetTheSameGustsAndPilotsEachTheirOwn() {
    List<Axis> rough = List.of(number("disturbance.gust_wind_kt", 15));
    Sample sample =
        new Sample(
            Sample.Method.LATIN_HYPERCUBE,
            20,
            List.of(new Sample.Dimension("craft.mass_kg", 450, 600, Scale.LINEAR)));
    Sweep points = new Sweep(new SweepSpec(3, 0, rough, List.of(), sample));
    Sweep people =
        new Sweep(
            new SweepSpec(
                3,
                20,
                rough,
                List.of(new Axis.Numbers("craft.mass_kg", List.of(500.0, 600.0))),
                Sample.NONE));
    for (int i = 0; i < 20; i++) {
      assertEquals(3, points.encounter(i).disturbances().seed());
      long seed = people.encounter(i).disturbances().seed();
      assertEquals(seed, people.encounter(20 + i).disturbances().seed());
      assertTrue(i == 0 || seed != people.encounter(i - 1).disturbances().seed());
    }
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
  @MethodSource("specs")
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
      // the accuracy asked of the swift flight
      assertEquals(loss, (Double) Sweeps.value(rows, "altitude_loss_ft", 0), 0.1, "point " + i);
    }
  }

  @Test
  void anEncounterIsPutTogetherFromAllGroups() {
    SweepSpec spec =
        new SweepSpec(
            1,
            0,
            List.of(
                new Axis.Words("craft.name", List.of("twin")),
                new Axis.Numbers("craft.mass_kg", List.of(3500.0)),
                new Axis.Numbers("craft.radius_m", List.of(6.5)),
                new Axis.Words("craft.rotation", List.of("clockwise")),
                new Axis.Numbers("air.pressure_altitude_ft", List.of(4000.0)),
                new Axis.Numbers("air.temperature_k", List.of(300.0)),
                new Axis.Words("entry.kind", List.of("steep")),
                new Axis.Numbers("entry.height_ft", List.of(300.0)),
                new Axis.Words("pilot.technique", List.of("lateral")),
                new Axis.Numbers("pilot.delay_s", List.of(2.5)),
                new Axis.Numbers("disturbance.gust_wind_kt", List.of(15.0))),
            List.of(),
            Sample.NONE);
    Encounter encounter = new Sweep(spec).encounter(0);
    assertEquals(3500, encounter.craft().mass());
    assertEquals(6.5, encounter.craft().rotor().radius());
    assertEquals(-DemoCraft.TWIN.sense().tailPush(), encounter.craft().sense().tailPush());
    assertEquals(4000 * 0.3048, encounter.air().pressureAltitude(), 1e-9);
    assertEquals(300, encounter.air().temperature());
    assertEquals("steep", encounter.entry().name());
    assertEquals(300 * 0.3048, encounter.height().orElse(0), 1e-9);
    assertEquals("lateral", encounter.recovery().name());
    assertEquals(2.5, encounter.delay());
    assertTrue(encounter.disturbances().any());
  }

  @Test
  void thePilotsOfASweepAreThoseOfAPilotStudyWithItsSeed() {
    Sweep sweep = new Sweep(Sweeps.pilots(50));
    PilotStudy study =
        new PilotStudy(
            Encounter.of(DemoCraft.TRAINER.with(Helicopter.MASS, 600))
                .withHeight(Unit.FOOT.toSi(200)),
            Technique.AUTOROTATION,
            Optional.of(PilotState.STARTLED.delays()),
            3);
    long last = sweep.count() - 1;
    for (int number = 0; number < 50; number += 7) {
      Encounter here = sweep.encounter(last - 49 + number);
      Encounter there = study.encounter(number);
      assertEquals(there.delay(), here.delay());
      assertEquals(there.fly(), here.fly());
    }
  }

  @Test
  void aPointThatCannotBeFlownIsARowWithTheReason() {
    SweepSpec spec =
        new SweepSpec(
            1,
            0,
            List.of(),
            // the trainer takes 420 to 620 kg; each mass alone is one that some craft has
            List.of(
                new Axis.Numbers("craft.mass_kg", List.of(600.0, 700.0)),
                new Axis.Numbers("pilot.delay_s", List.of(1.0, 2.0))),
            Sample.NONE);
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

  static Stream<Arguments> refused() {
    return Stream.of(
        Arguments.of("craft.mass_kg", number("craft.mass_kg", 1e6)),
        Arguments.of("craft.mass_kg", number("craft.mass_kg", Double.NaN)),
        Arguments.of("craft.mass_lb", number("craft.mass_lb", 1200)),
        Arguments.of("mass", number("mass", 600)),
        Arguments.of("craft.name", word("craft.name", "gyro")),
        Arguments.of("craft.name", number("craft.name", 3)),
        Arguments.of("craft.mass_kg", word("craft.mass_kg", "heavy")),
        Arguments.of("entry.nose_up_deg", number("entry.nose_up_deg", 5)),
        Arguments.of("pilot.bank_deg", number("pilot.bank_deg", 15)),
        Arguments.of("pilot.delay_s", number("pilot.delay_s", -1)));
  }

  private static Axis number(String key, double value) {
    return new Axis.Numbers(key, List.of(value));
  }

  private static Axis word(String key, String value) {
    return new Axis.Words(key, List.of(value));
  }

  private static SettingException assertRefused(
      int pilots, List<Axis> fixed, List<Axis> axes, Sample sample) {
    return assertThrows(
        SettingException.class, () -> new Sweep(new SweepSpec(1, pilots, fixed, axes, sample)));
  }

  @ParameterizedTest
  @MethodSource("refused")
  void aSettingThatCannotBeIsRefusedByName(String key, Axis axis) {
    assertEquals(key, assertRefused(0, List.of(axis), List.of(), Sample.NONE).key());
    assertEquals(key, assertRefused(0, List.of(), List.of(axis), Sample.NONE).key());
  }

  @Test
  void settingsThatContradictEachOtherAreRefused() {
    Axis delay = number("pilot.delay_s", 1);
    assertRefused(0, List.of(delay), List.of(delay), Sample.NONE);
    assertRefused(0, List.of(delay, word("pilot.state", "primed")), List.of(), Sample.NONE);
    assertRefused(
        0,
        List.of(number("air.temperature_k", 280), number("air.temperature_offset_k", 1)),
        List.of(),
        Sample.NONE);
    assertRefused(9, List.of(number("pilot.nose_down_deg", 15)), List.of(), Sample.NONE);
  }

  @Test
  void aNumberOfOneTechniqueMayBeFixedBesideOthersButNotVaried() {
    Axis techniques = new Axis.Words("pilot.technique", List.of("forward", "lateral"));
    new Sweep(
        new SweepSpec(
            1, 0, List.of(number("pilot.bank_deg", 20)), List.of(techniques), Sample.NONE));
    Axis banks = new Axis.Numbers("pilot.bank_deg", List.of(10.0, 20.0));
    assertRefused(0, List.of(), List.of(techniques, banks), Sample.NONE);
  }

  @Test
  void aSweepOfTooManyPointsIsRefused() {
    Axis million = new Axis.Range("craft.mass_kg", 300, 600, 1_000_000, Scale.LINEAR);
    Axis more = new Axis.Range("pilot.delay_s", 0, 4, 1_000_000, Scale.LINEAR);
    Axis evenMore = new Axis.Range("entry.wind_kt", 0, 4, 2, Scale.LINEAR);
    new Sweep(new SweepSpec(1, 0, List.of(), List.of(million, more), Sample.NONE));
    assertRefused(0, List.of(), List.of(million, more, evenMore), Sample.NONE);
  }

  @Test
  void rowsComeInOrderAndProgressCountsThem() {
    Sweep sweep = new Sweep(Sweeps.pilots(400));
    List<Long> indices = new ArrayList<>();
    AtomicLong heard = new AtomicLong();
    new SweepFlight(sweep, 4)
        .fly(
            100,
            sweep.count(),
            rows -> {
              for (int row = 0; row < rows.size(); row++) {
                indices.add(rows.integer(0, row));
              }
            },
            (flown, limit) -> {
              assertEquals(sweep.count() - 100, limit);
              assertTrue(flown > heard.getAndSet(flown));
            });
    assertEquals(sweep.count() - 100, heard.get());
    for (int i = 0; i < indices.size(); i++) {
      assertEquals(100L + i, indices.get(i));
    }
    assertEquals(sweep.count() - 100, indices.size());
  }

  @Test
  void aSweepThatIsCancelledEndsWithoutFlyingOn() {
    Sweep sweep = new Sweep(Sweeps.pilots(100_000));
    AtomicLong heard = new AtomicLong();
    assertThrows(
        CancellationException.class,
        () ->
            new SweepFlight(sweep, 2)
                .fly(
                    0,
                    sweep.count(),
                    rows -> {},
                    new Progress() {
                      @Override
                      public void flown(long flown, long limit) {
                        heard.set(flown);
                      }

                      @Override
                      public boolean cancelled() {
                        return heard.get() > 0;
                      }
                    }));
    assertTrue(heard.get() > 0 && heard.get() < 20 * SweepFlight.BLOCK, "at " + heard);
  }

  @Test
  void anErrorInTheSinkEndsTheSweepAndComesThrough() {
    Sweep sweep = new Sweep(Sweeps.pilots(100_000));
    ArithmeticException thrown =
        assertThrows(
            ArithmeticException.class,
            () ->
                new SweepFlight(sweep, 2)
                    .fly(
                        0,
                        sweep.count(),
                        rows -> {
                          throw new ArithmeticException("full");
                        },
                        Progress.SILENT));
    assertEquals("full", thrown.getMessage());
  }

  @Test
  void everySettingIsTakenAtTheEndsOfItsRange() {
    for (Setting setting : Settings.all()) {
      setting
          .ranges()
          .forEach(
              (kind, range) -> {
                List<Axis> fixed = new ArrayList<>();
                if (!kind.isEmpty()) {
                  boolean entry = setting.group().equals("entry");
                  fixed.add(word(entry ? "entry.kind" : "pilot.technique", kind));
                }
                Axis ends = new Axis.Numbers(setting.key(), List.of(range.low(), range.high()));
                Sweep sweep = new Sweep(new SweepSpec(1, 0, fixed, List.of(ends), Sample.NONE));
                assertEquals(2, sweep.count(), setting.key());
              });
    }
  }
}
