package io.github.ringstate.study.sweep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Points count as digits do: what concerns pilots alone varies within a scene. */
class CursorTest {

  private static Cursor cursor(SweepSpec spec) {
    TreeSet<String> keys = new TreeSet<>();
    spec.fixed().forEach(axis -> keys.add(axis.key()));
    spec.axes().forEach(axis -> keys.add(axis.key()));
    spec.sample().dimensions().forEach(dimension -> keys.add(dimension.key()));
    return new Cursor(
        spec,
        List.copyOf(keys),
        Map.of(
            "craft.mass_kg", part -> part,
            "pilot.delay_s", part -> part,
            "air.temperature_offset_k", part -> part));
  }

  /** Two masses, each with two techniques, two states and 25 pilots. */
  @Test
  void aSceneHoldsAllThatPilotsDoWithIt() {
    Cursor cursor = cursor(Sweeps.pilots(25));
    assertEquals(200, cursor.count());
    assertEquals(100, cursor.perScene());
    assertTrue(cursor.pilotsApart());
    cursor.move(137);
    assertEquals(1, cursor.scene());
    assertEquals(37, cursor.placeInScene());
    assertEquals(100, cursor.perValue("craft"));
    // one fixed height, and no model that is set
    assertEquals(200, cursor.perValue("entry"));
    assertEquals(200, cursor.perValue("model"));
  }

  /** The sample sets masses and delays alike: its points are scenes, with two techniques each. */
  @Test
  void aSampleOfMoreThanPilotsIsOneOfScenes() {
    Cursor cursor = cursor(Sweeps.sampled(Sample.Method.SOBOL, 150));
    assertEquals(2, cursor.perScene());
    assertFalse(cursor.pilotsApart());
    assertEquals(2, cursor.perValue("craft"));
  }

  @Test
  void aSampleOfPilotsAloneLiesWithinTheScenes() {
    Sample delays =
        new Sample(
            Sample.Method.SOBOL,
            10,
            List.of(new Sample.Dimension("pilot.delay_s", 1, 2, Scale.LINEAR)));
    Axis masses = Sweeps.number("craft.mass_kg", 500, 540, 600);
    Axis techniques = Sweeps.word("pilot.technique", "forward", "lateral");
    Cursor cursor = cursor(new SweepSpec(1, 0, List.of(), List.of(techniques, masses), delays));
    assertEquals(60, cursor.count());
    assertEquals(20, cursor.perScene());
    assertTrue(cursor.pilotsApart());
    cursor.move(59);
    assertEquals(2, cursor.scene());
    assertEquals(19, cursor.placeInScene());
  }

  @Test
  void withoutPilotsEachPointIsAScene() {
    Axis masses = Sweeps.number("craft.mass_kg", 500, 540, 600);
    Cursor cursor = cursor(Sweeps.spec(List.of(), masses));
    assertEquals(1, cursor.perScene());
    cursor.move(2);
    assertEquals(2, cursor.scene());
    assertEquals(0, cursor.placeInScene());
  }
}
