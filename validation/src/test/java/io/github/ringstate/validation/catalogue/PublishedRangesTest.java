package io.github.ringstate.validation.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.study.model.PublishedRange;
import io.github.ringstate.study.model.PublishedRanges;
import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.CheckKind;
import io.github.ringstate.validation.check.Expectation;
import io.github.ringstate.validation.check.Obtained;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What rejects models stands in the catalogue as what it is. */
class PublishedRangesTest {

  /**
   * The catalogue looks for the boundary with the finder and flies the runaway precisely, so that
   * these are second methods as well.
   */
  @Test
  void eachIsACalibrationFromMemoryAndTheStandardModelHasTheSameByAnotherWay() {
    Models models = new Models();
    List<Check> checks =
        Stream.<Topic>of(
                Boundaries::section,
                VerticalAutorotation::section,
                RingPower::section,
                SinkRunaway::section)
            .flatMap(topic -> topic.section(models).checks().stream())
            .filter(check -> check.question().kind() == CheckKind.CALIBRATION)
            .toList();
    for (PublishedRange range : PublishedRanges.ALL) {
      List<Check> same =
          checks.stream().filter(check -> isSame(check.expectation(), range)).toList();
      assertEquals(1, same.size(), range.name());
      assertEquals(Obtained.FROM_MEMORY, same.get(0).question().obtained(), range.name());
      assertTrue(range.source().contains("from memory"), range.name());
      double standard = range.measure().applyAsDouble(RingStateInflow.standard());
      assertEquals(same.get(0).actual(), standard, 0.005, range.name());
    }
  }

  private static boolean isSame(Expectation expectation, PublishedRange range) {
    return expectation.range()
        && Math.abs(expectation.value() - expectation.tolerance() - range.low()) < 1e-9
        && Math.abs(expectation.value() + expectation.tolerance() - range.high()) < 1e-9;
  }
}
