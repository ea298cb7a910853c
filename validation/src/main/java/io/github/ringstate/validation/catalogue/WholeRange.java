package io.github.ringstate.validation.catalogue;

import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.inflow.TabulatedInflow;
import io.github.ringstate.sheets.chart.Graph;
import io.github.ringstate.sheets.chart.Pen;
import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.Question;
import io.github.ringstate.validation.check.Section;
import io.github.ringstate.validation.check.Source;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** Every model against momentum theory and against each other, over the whole range. */
final class WholeRange {

  private static final Prose TEXT = Prose.of(WholeRange.class);

  private static final String ONE_PER_CENT =
      "Required of the model: within 1 per cent wherever momentum theory holds. The ring-state"
          + " model joins it with equal value and slope, so the error is rounding where the joins"
          + " are right.";

  private WholeRange() {}

  static Section section(Models models) {
    double[] edgewise = Grid.spaced(0, 4, 21);
    double[] up = Grid.spaced(0, 3, 16);
    double[] coarse = Grid.spaced(0, 1.5, 26);
    double[] descent = Grid.spaced(-2.9, 0.4, 34);
    String again =
        "An eigenvalue's rounding, enlarged where two roots of the momentum equation lie close"
            + " together.";
    TabulatedInflow table = new TabulatedInflow(models.ring());
    return TEXT.section(
        "whole-range",
        List.of(TEXT.figure("ratio", () -> plot(models))),
        Stream.concat(
                Stream.of(
                    departure(
                        "ring-state model in climb and level flight", models.ring(), edgewise, up),
                    departure(
                        "ring-state model below z = -2.3",
                        models.ring(),
                        edgewise,
                        Grid.spaced(-4, -2.3, 18)),
                    departure(
                        "ring-state model at x = 1.2 and more",
                        models.ring(),
                        Grid.spaced(1.2, 4, 15),
                        Grid.spaced(-4, 3, 36)),
                    departure(
                        "smooth momentum theory in climb and level flight",
                        models.smooth(),
                        edgewise,
                        up),
                    departure(
                        "cubic bridge in climb and level flight", models.cubic(), edgewise, up),
                    second("ring-state model worked out a second time", Sources.OWN_FORMULATION)
                        .atMost(
                            1e-8,
                            Grid.largest(
                                coarse,
                                descent,
                                (x, z) ->
                                    Math.abs(
                                        models.ring().induced(x, z)
                                            - RingStateAgain.induced(x, z))),
                            again),
                    second(
                            "smooth momentum theory worked out a second time",
                            Sources.OWN_FORMULATION)
                        .atMost(
                            1e-8,
                            Grid.largest(
                                coarse,
                                descent,
                                (x, z) ->
                                    Math.abs(
                                        models.smooth().total(x, z) - RingStateAgain.smooth(x, z))),
                            again),
                    second("ring-state model as the table for bulk work", Sources.OWN_FORMULATION)
                        .atMost(
                            4e-6,
                            Grid.largest(
                                Grid.spaced(0.0037, 1.9963, 47),
                                Grid.spaced(-2.4937, 0.9971, 61),
                                (x, z) ->
                                    Math.abs(table.induced(x, z) - RingStateAgain.induced(x, z))),
                            "What the table's documentation promises; points off its nodes."),
                    second("slope of the ring-state model", Sources.DIFFERENCES)
                        .atMost(
                            1e-6,
                            slopeError(
                                models.ring(),
                                Grid.spaced(0.003, 1.497, 31),
                                Grid.spaced(-3.0271, 1.0229, 136)),
                            "Central differences with step 1e-5: rounding, 1e-11 to 1e-10, and"
                                + " truncation of the same size; the points avoid the joins, where"
                                + " the second derivative jumps."),
                    second("slope of the quartic fit", Sources.DIFFERENCES)
                        .atMost(
                            1e-8,
                            slopeError(
                                models.quartic(1), new double[] {0}, Grid.spaced(-1.9, -0.1, 37)),
                            "Central differences with step 1e-5.")),
                spread(models))
            .toList());
  }

  private static Stream<Check> spread(Models models) {
    return DoubleStream.of(-0.5, -1.0, -1.45, -1.75, -2.0).mapToObj(z -> spread(models, z));
  }

  private static Check spread(Models models, double z) {
    double[] published = {
      PublishedFits.quartic(1, z),
      PublishedFits.quartic(1.15, z),
      PublishedFits.twoSegment(1, z),
      PublishedFits.twoSegment(1.15, z)
    };
    double low = Arrays.stream(published).min().orElse(Double.NaN);
    double high = Arrays.stream(published).max().orElse(Double.NaN);
    double actual = models.ring().induced(0, z);
    Check check =
        Sources.LEISHMAN
            .at("chapter 2: quartic, and Young's two segments; k 1 to 1.15")
            .published(
                String.format(
                    Locale.ROOT, "ring-state model among the published curves at z = %.2f", z),
                "v",
                "1")
            .calibration()
            .within(low, high, actual, "The span of the four published curves.");
    if (z > -1.5) {
      return check;
    }
    return z > -1.8
        ? check.butDiffers(2.0, 2.4, TEXT.say("steep-differs"))
        : check.butDiffers(1.3, 1.6, TEXT.say("windmill-differs"));
  }

  private static Check departure(String name, InflowModel model, double[] xs, double[] zs) {
    double departure =
        Grid.largest(
            xs,
            zs,
            (x, z) ->
                Math.abs(model.induced(x, z) / Polynomial.momentumByEigenvalues(x, z)[0] - 1));
    return Sources.MOMENTUM_THEORY
        .closedForm(name + " is momentum theory", "largest relative departure of v", "1")
        .atMost(0.01, departure, ONE_PER_CENT);
  }

  private static double slopeError(InflowModel model, double[] xs, double[] zs) {
    double h = 1e-5;
    return Grid.largest(
        xs,
        zs,
        (x, z) -> {
          double difference = (model.total(x, z + h) - model.total(x, z - h)) / (2 * h);
          return Math.abs(model.slope(x, z) - difference);
        });
  }

  private static Question second(String name, Source source) {
    return source.secondMethod(name, "largest error", "1");
  }

  private static Graph plot(Models models) {
    Graph plot =
        Graph.of("axial speed z / vh", "v over momentum theory's v", 860, 520)
            .x(-3.5, 1)
            .y(-0.6, 2.2);
    plot.line(Pens.RULE, new double[] {-3.5, 1}, new double[] {1, 1});
    PublishedFits.draw(plot, models, 1, (model, z) -> model.induced(0, z) / PublishedFits.climb(z));
    plot.curve(
        "smooth momentum",
        Pens.LONG_DASH,
        -2,
        1,
        z -> models.smooth().induced(0, z) / PublishedFits.climb(z));
    plot.curve(
        "ring-state model",
        Pens.THICK,
        -2,
        1,
        z -> models.ring().induced(0, z) / PublishedFits.climb(z));
    plot.curve(
        Pens.LONG_DASH,
        -3.5,
        -2.001,
        z -> models.smooth().induced(0, z) / PublishedFits.windmill(z));
    plot.curve(
        Pens.THICK, -3.5, -2.001, z -> models.ring().induced(0, z) / PublishedFits.windmill(z));
    bar(plot, Pens.DASHED, -0.08, -2, 0, "quartic, two segments: -2 to 0");
    bar(plot, Pens.DASH_DOT, -0.24, -3.5, 1, "cubic bridge: all, cubic from -2 to -1");
    bar(plot, Pens.FAINT, -0.40, -3.5, -2, "windmill branch");
    bar(plot, Pens.FAINT, -0.40, 0, 1, "climb branch");
    return plot;
  }

  private static void bar(Graph plot, Pen line, double y, double from, double to, String label) {
    plot.line(line, new double[] {from, to}, new double[] {y, y});
    plot.label(label, 0.5 * (from + to), y + 0.06);
  }
}
