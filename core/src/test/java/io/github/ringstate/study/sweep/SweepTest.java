package io.github.ringstate.study.sweep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.PilotStudy;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SweepTest {

  @Test
  void theCountIsTheProductOfAllAxes() {
    assertEquals(2 * 2 * 3 * 2 * 2 * 2 * 3, new Sweep(Sweeps.mixed()).count());
    assertEquals(300, new Sweep(Sweeps.sampled(Sample.Method.SOBOL, 150)).count());
    assertEquals(2 * 2 * 2 * 25, new Sweep(Sweeps.pilots(25)).count());
    assertEquals(1, new Sweep(new SweepSpec(0, 0, List.of(), List.of(), Sample.NONE)).count());
  }

  @ParameterizedTest
  @MethodSource("io.github.ringstate.study.sweep.Sweeps#specs")
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

  /** As the package says: chance is in the pilots, not in the points. */
  @Test
  void pointsMeetTheSameGustsAndPilotsEachTheirOwn() {
    List<Axis> rough = List.of(Sweeps.number("disturbance.gust_wind_kt", 15));
    Sample sample =
        new Sample(
            Sample.Method.LATIN_HYPERCUBE,
            20,
            List.of(new Sample.Dimension("craft.mass_kg", 450, 600, Scale.LINEAR)));
    Sweep points = new Sweep(new SweepSpec(3, 0, rough, List.of(), sample));
    Sweep people =
        new Sweep(
            new SweepSpec(
                3, 20, rough, List.of(Sweeps.number("craft.mass_kg", 500, 600)), Sample.NONE));
    for (int i = 0; i < 20; i++) {
      assertEquals(3, points.encounter(i).disturbances().seed());
      long seed = people.encounter(i).disturbances().seed();
      assertEquals(seed, people.encounter(20 + i).disturbances().seed());
      assertTrue(i == 0 || seed != people.encounter(i - 1).disturbances().seed());
    }
  }

  @Test
  void anEncounterIsPutTogetherFromAllGroups() {
    SweepSpec spec =
        Sweeps.spec(
            List.of(
                Sweeps.word("craft.name", "twin"),
                Sweeps.number("craft.mass_kg", 3500),
                Sweeps.number("craft.radius_m", 6.5),
                Sweeps.word("craft.rotation", "clockwise"),
                Sweeps.number("air.pressure_altitude_ft", 4000),
                Sweeps.number("air.temperature_k", 300),
                Sweeps.word("entry.kind", "steep"),
                Sweeps.number("entry.height_ft", 300),
                Sweeps.word("pilot.technique", "lateral"),
                Sweeps.number("pilot.delay_s", 2.5),
                Sweeps.number("disturbance.gust_wind_kt", 15)));
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
}
