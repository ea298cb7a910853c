package io.github.ringstate.instructor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What people mistype, and what they are told. */
class MistypedTest {

  @ParameterizedTest
  @CsvSource({
    "loss --mas-kg 600, --mass-kg",
    "loss --mas-kg=600, --mass-kg",
    "loss --delay 1, --delays",
    "runs --calm --hieght-ft 600, --height-ft",
    "boundary --formt svg, --format"
  })
  void theNearestOptionIsNamed(String line, String meant) {
    Run.assertRefused(line, "did you mean " + meant + "?");
  }

  @Test
  void whereNoOptionIsNearNoneIsNamed() {
    String said = Run.refused("loss --zzzzzzzz");
    assertTrue(said.contains("'--zzzzzzzz'"), said);
    assertFalse(said.contains("did you mean"), said);
  }

  @Test
  void theDistanceIsThatOfLevenshtein() {
    // the textbook pair: three changes
    assertEquals(3, NearestOption.distance("kitten", "sitting"));
    assertEquals(0, NearestOption.distance("", ""));
    assertEquals(4, NearestOption.distance("", "four"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "loss --delays 0,5|0.5 for one number, or 0s,5s for two",
        "loss --delays 0,2|0.2 for one number, or 0s,2s for two",
        "loss --delays 1,25|1.25",
        "loss --mass-kg 520,5|520.5 for one number, or 520kg,5kg for two",
        "loss --mass-kg 520,5kg|520.5kg for one number, or 520kg,5kg for two",
        "loss --mass 520,5kg|520.5kg for one number, or 520kg,5kg for two",
        "loss --mass 520,5 --units si|520.5 for one number, or 520kg,5kg for two",
        "runs --calm --height 500,5ft|with a point: 500.5ft",
        "loss --oat-c 12,5C|with a point: 12.5C",
        "loss --oat-c 12,5|12.5"
      })
  void aDecimalCommaIsNoticed(String line, String meant) {
    Run.assertRefused(line, meant);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "runs --wind-from 200|240deg",
        "runs --gust 18|15kt or 7.5m/s",
        "loss --altimeter 1003|1003hPa or 29.62inHg"
      })
  void theExampleOfANumberWithItsUnitIsOneThatTheOptionTakes(String line, String example) {
    Run.assertRefused(line, "such as " + example + ", or");
  }

  @Test
  void whatCannotBeOneNumberIsAList() {
    assertEquals(0, Run.of("loss", "--delays", "0, 5", "--format", "csv").status());
    assertEquals(0, Run.of("loss", "--delays", "0s,2s", "--format", "csv").status());
    assertEquals(0, Run.of("loss", "--delays", "0.0,2", "--format", "csv").status());
    assertEquals(0, Run.of("loss", "--mass-kg", "520,600", "--format", "csv").status());
  }

  @Test
  void whatIsNoWordForTurbulenceIsToldTheWords() {
    Run.assertRefused("loss --turbulence huge", "light, moderate, severe or a number, 0 to 60 kt");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "loss --delays 1 --recoveries lateral|loss --delays 1 --recovery lateral|--recoveries",
        "runs --calm --pilots 20 --technique lateral|runs --calm --pilots 20 --recovery lateral|--technique",
        "loss --delays 1 --gust-kt=15 --seed 3|loss --delays 1 --turbulence=light --seed 3|--gust-kt",
        "loss --delays 1 --gust-kt 30 --seed 3|loss --delays 1 --turbulence moderate --seed 3|--gust-kt"
      })
  void aFormerNameIsTakenWithANotice(String former, String line, String name) {
    Run run = Run.line(former);
    assertEquals(Run.line(line).out(), run.out());
    assertTrue(run.err().contains(name + " is now called"), run.err());
    assertEquals("", Run.line(line).err());
  }
}
