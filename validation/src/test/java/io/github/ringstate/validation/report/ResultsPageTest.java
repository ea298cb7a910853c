package io.github.ringstate.validation.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.ringstate.analysis.best.BestRecovery;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.validation.open.Summary;
import io.github.ringstate.validation.results.Against;
import io.github.ringstate.validation.results.Effort;
import io.github.ringstate.validation.results.LossLine;
import io.github.ringstate.validation.results.LossPoint;
import io.github.ringstate.validation.results.LossPoint.Way;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ResultsPageTest {

  private static final double NONE = Double.POSITIVE_INFINITY;

  private static LossPoint point(double value, double feet) {
    double loss = Unit.FOOT.toSi(feet);
    Summary band = new Summary(loss, 0.9 * loss, loss, feet < 200 ? 1.1 * loss : NONE);
    return new LossPoint(
        value,
        OptionalDouble.of(0.5 * loss),
        LossPoint.TECHNIQUES.stream()
            .map(way -> new Way(way, loss, band, band, OptionalDouble.of(0.5 * loss)))
            .toList());
  }

  private static final ResultsPage PAGE =
      new ResultsPage(
          new Effort(
              7, List.of(), encounter -> BestRecovery.find(encounter, BestRecovery.ALL_POWER, 1)),
          List.of(
              new LossLine(
                  DemoCraft.HEAVY, Against.DELAY, List.of(point(0, 100), point(1.5, 300)))),
          List.of());

  @Test
  void theCommandUnderAFigureMakesItByItsName() throws IOException {
    String command = ResultsPage.command("delay-heavy");
    assertTrue(PAGE.html().contains("id=\"figure-delay-heavy\""));
    assertTrue(PAGE.html().contains(command));
    String pom = Files.readString(Path.of("pom.xml"));
    assertTrue(command.contains("-Presults") && pom.contains("<id>results</id>"));
    assertTrue(command.contains("-Dresults=") && pom.contains("<argument>${results}</argument>"));
    assertTrue(pom.contains("<mainClass>" + ResultsReport.class.getName() + "</mainClass>"));
    IllegalArgumentException unknown =
        assertThrows(
            IllegalArgumentException.class,
            () -> ResultsReport.main(new String[] {"nowhere", "delay-ufo"}));
    assertTrue(String.valueOf(unknown.getMessage()).contains("delay-heavy"));
  }

  @Test
  void whatIsNotArrestedIsEmptyInTheRows() {
    List<String> rows = PAGE.csv().lines().toList();
    assertEquals(1 + 2 * LossPoint.TECHNIQUES.size(), rows.size());
    assertEquals(
        "heavy,delay_s,0,forward,100.0,90.0,100.0,110.0,90.0,100.0,110.0,50.0,50.0", rows.get(1));
    assertTrue(
        rows.get(4).startsWith("heavy,delay_s,1.5,forward,300.0,270.0,300.0,,270.0,300.0,,"),
        rows.get(4));
  }
}
