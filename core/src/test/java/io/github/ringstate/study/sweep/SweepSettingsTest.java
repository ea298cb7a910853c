package io.github.ringstate.study.sweep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.craft.RotationSense;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class SweepSettingsTest {

  static Stream<Arguments> refused() {
    return Stream.of(
        Arguments.of("craft.mass_kg", Sweeps.number("craft.mass_kg", 1e6)),
        Arguments.of("craft.mass_kg", Sweeps.number("craft.mass_kg", Double.NaN)),
        Arguments.of("craft.mass_lb", Sweeps.number("craft.mass_lb", 1200)),
        Arguments.of("mass", Sweeps.number("mass", 600)),
        Arguments.of("craft.name", Sweeps.word("craft.name", "gyro")),
        Arguments.of("craft.name", Sweeps.number("craft.name", 3)),
        Arguments.of("craft.mass_kg", Sweeps.word("craft.mass_kg", "heavy")),
        Arguments.of("entry.final_airspeed_kt", Sweeps.number("entry.final_airspeed_kt", 5)),
        Arguments.of("pilot.bank_deg", Sweeps.number("pilot.bank_deg", 15)),
        Arguments.of("pilot.delay_s", Sweeps.number("pilot.delay_s", -1)));
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
    Axis delay = Sweeps.number("pilot.delay_s", 1);
    assertRefused(0, List.of(delay), List.of(delay), Sample.NONE);
    assertRefused(0, List.of(delay, Sweeps.word("pilot.state", "primed")), List.of(), Sample.NONE);
    assertRefused(
        0,
        List.of(
            Sweeps.number("air.temperature_k", 280), Sweeps.number("air.temperature_offset_k", 1)),
        List.of(),
        Sample.NONE);
    assertRefused(9, List.of(Sweeps.number("pilot.nose_down_deg", 15)), List.of(), Sample.NONE);
  }

  @Test
  void aNumberOfOneTechniqueMayBeFixedBesideOthersButNotVaried() {
    Axis techniques = Sweeps.word("pilot.technique", "forward", "lateral");
    new Sweep(Sweeps.spec(List.of(Sweeps.number("pilot.bank_deg", 20)), techniques));
    Axis banks = Sweeps.number("pilot.bank_deg", 10, 20);
    assertRefused(0, List.of(), List.of(techniques, banks), Sample.NONE);
  }

  @Test
  void aSweepOfTooManyPointsIsRefused() {
    Axis million = new Axis.Range("craft.mass_kg", 300, 600, 1_000_000, Scale.LINEAR);
    Axis more = new Axis.Range("pilot.delay_s", 0, 4, 1_000_000, Scale.LINEAR);
    Axis evenMore = new Axis.Range("entry.wind_kt", 0, 4, 2, Scale.LINEAR);
    new Sweep(Sweeps.spec(List.of(), million, more));
    assertRefused(0, List.of(), List.of(million, more, evenMore), Sample.NONE);
  }

  @Test
  void everySettingIsTakenAtTheEndsOfItsRange() {
    for (Setting setting : Settings.BUILT_IN.all()) {
      setting
          .ranges()
          .forEach(
              (kind, range) -> {
                List<Axis> fixed = new ArrayList<>();
                if (!kind.isEmpty()) {
                  String chosen =
                      switch (setting.group()) {
                        case "entry" -> Settings.ENTRY_KIND;
                        case "model" -> Settings.MODEL_KIND;
                        default -> "pilot.technique";
                      };
                  fixed.add(Sweeps.word(chosen, kind));
                }
                Axis ends = Sweeps.number(setting.key(), range.low(), range.high());
                Sweep sweep = new Sweep(Sweeps.spec(fixed, ends));
                assertEquals(2, sweep.count(), setting.key());
              });
    }
  }

  @Test
  void neitherEndOfARangeMayBeOutsideThatOfTheSetting() {
    for (Axis.Range range :
        List.of(
            new Axis.Range("craft.mass_kg", 1, 600, 3, Scale.LINEAR),
            new Axis.Range("craft.mass_kg", 600, 1e6, 3, Scale.LINEAR))) {
      assertEquals("craft.mass_kg", assertRefused(0, List.of(), List.of(range), Sample.NONE).key());
    }
  }

  @Test
  void aNumberOfAnotherTechniqueIsNotSampled() {
    Sample banks =
        new Sample(
            Sample.Method.SOBOL,
            8,
            List.of(new Sample.Dimension("pilot.bank_deg", 10, 20, Scale.LINEAR)));
    Axis forward = Sweeps.word("pilot.technique", "forward");
    assertEquals("pilot.bank_deg", assertRefused(0, List.of(forward), List.of(), banks).key());
  }

  @Test
  void theRefusalSaysWhatASettingTakes() {
    Axis word = Sweeps.word("craft.mass_kg", "heavy");
    assertEquals("a number", assertRefused(0, List.of(word), List.of(), Sample.NONE).allowed());
    Axis gyro = Sweeps.word("craft.rotation", "sideways");
    String allowed = assertRefused(0, List.of(gyro), List.of(), Sample.NONE).allowed();
    for (RotationSense sense : RotationSense.values()) {
      assertTrue(allowed.contains(sense.label()), allowed);
    }
    Axis bank = Sweeps.number("pilot.bank_deg", 1000);
    Axis lateral = Sweeps.word("pilot.technique", "lateral");
    allowed = assertRefused(0, List.of(lateral, bank), List.of(), Sample.NONE).allowed();
    assertTrue(allowed.endsWith(" with lateral"), allowed);
    Axis mass = Sweeps.number("craft.mass_kg", 1e6);
    allowed = assertRefused(0, List.of(mass), List.of(), Sample.NONE).allowed();
    assertTrue(allowed.endsWith(" kg"), allowed);
  }

  @Test
  void theKeyOfASettingIsItsGroupAndItsName() {
    for (Setting setting : Settings.BUILT_IN.all()) {
      assertEquals(setting.key(), setting.group() + "." + setting.name());
    }
  }
}
