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
    Run run = Run.of(line.split(" "));
    assertEquals(2, run.status());
    assertTrue(run.err().contains("did you mean " + meant + "?"), run.err());
  }

  @Test
  void whereNoOptionIsNearNoneIsNamed() {
    Run run = Run.of("loss", "--zzzzzzzz");
    assertEquals(2, run.status());
    assertTrue(run.err().contains("'--zzzzzzzz'"), run.err());
    assertFalse(run.err().contains("did you mean"), run.err());
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
      value = {"loss --delays 0,5|0.5", "loss --delays 1,25|1.25", "loss --oat-c 12,5|12.5"})
  void aDecimalCommaIsNoticed(String line, String meant) {
    Run run = Run.of(line.split(" "));
    assertEquals(2, run.status());
    assertTrue(run.err().contains(meant), run.err());
  }

  @Test
  void aListWithASpaceIsAList() {
    assertEquals(0, Run.of("loss", "--delays", "0, 5", "--format", "csv").status());
    assertEquals(0, Run.of("loss", "--delays", "0,2", "--format", "csv").status());
  }
}
