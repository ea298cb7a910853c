package io.github.ringstate.validation.report;

import io.github.ringstate.files.text.Decimals;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.sheets.page.HtmlWriter;
import io.github.ringstate.sheets.page.Page;
import io.github.ringstate.validation.open.Summary;
import io.github.ringstate.validation.open.Worth;
import io.github.ringstate.validation.results.Against;
import io.github.ringstate.validation.results.Effort;
import io.github.ringstate.validation.results.LossLine;
import io.github.ringstate.validation.results.LossPoint;
import io.github.ringstate.validation.results.LossPoint.Way;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The page of results: what {@code results.mustache} is filled with, and the same numbers as CSV.
 *
 * @param effort how much was flown for each point
 * @param lines losses with their bands; each becomes a figure
 * @param worths what each number would be worth; none if not asked for
 */
record ResultsPage(Effort effort, List<LossLine> lines, List<Worth> worths) {

  /** Name of the table of what would have to be measured. */
  static final String WORTH = "worth";

  private static final String COMMAND = "mvn -q -Presults -DskipTests package -pl validation -am";

  private record FigureOfResults(
      int number,
      String id,
      String craft,
      String against,
      boolean delayHeld,
      List<ResultsFigure.Panel> panels,
      String command) {}

  ResultsPage {
    lines = List.copyOf(lines);
    worths = List.copyOf(worths);
  }

  static String command(String name) {
    return COMMAND + " -Dresults=" + name;
  }

  String html() {
    List<FigureOfResults> figures = new ArrayList<>();
    for (LossLine line : lines) {
      String id = ResultsFigure.id(line.craft(), line.against());
      figures.add(
          new FigureOfResults(
              figures.size() + 1,
              id,
              line.craft().name(),
              line.against().key().replace('-', ' '),
              line.against() != Against.DELAY,
              new ResultsFigure(line).panels(),
              command(id)));
    }
    return HtmlWriter.html(
        new Page(
            ResultsPage.class,
            "results.mustache",
            "ringstate: losses, their bands, and the best",
            false,
            Map.of(
                "figures",
                figures,
                "flown",
                !figures.isEmpty(),
                "pilots",
                Integer.toString(effort.pilots()),
                "models",
                Integer.toString(effort.models().size()),
                "worth",
                worths.isEmpty() ? List.of() : List.of(WorthTable.of(worths)),
                "kept",
                worths.stream()
                    .findFirst()
                    .map(worth -> Integer.toString(worth.flights() + worth.lost()))
                    .orElse(""),
                "heldDelay",
                Decimals.brief(Against.STANDARD_DELAY),
                "worthCommand",
                command(WORTH)),
            Map.of()));
  }

  String csv() {
    StringBuilder csv =
        new StringBuilder(
            "craft,against,value,technique,loss_ft,people_low_ft,people_median_ft,people_high_ft,"
                + "models_low_ft,models_median_ft,models_high_ft,best_loss_ft,excess_ft\n");
    for (LossLine line : lines) {
      for (LossPoint point : line.points()) {
        for (Way way : point.ways()) {
          csv.append(
              String.join(
                  ",",
                  line.craft().name(),
                  line.against().key() + "_" + line.against().unit().symbol(),
                  Decimals.brief(line.against().unit().fromSi(point.value())),
                  way.technique().name(),
                  feet(way.standard()),
                  band(way.people()),
                  band(way.models()),
                  feet(point.best().orElse(Double.NaN)),
                  feet(way.excess().orElse(Double.NaN))));
          csv.append('\n');
        }
      }
    }
    return csv.toString();
  }

  private static String band(Summary summary) {
    return String.join(",", feet(summary.low()), feet(summary.middle()), feet(summary.high()));
  }

  /** Empty where a descent is not arrested. */
  private static String feet(double metres) {
    return Double.isFinite(metres) ? Decimals.fixed(Unit.FOOT.fromSi(metres), 1) : "";
  }
}
