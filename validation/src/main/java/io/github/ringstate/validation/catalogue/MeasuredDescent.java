package io.github.ringstate.validation.catalogue;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.inflow.Autorotation;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.sheets.chart.Graph;
import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.Figure;
import io.github.ringstate.validation.check.Obtained;
import io.github.ringstate.validation.check.Question;
import io.github.ringstate.validation.reference.ReferenceTable;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** A rotor in a wind tunnel in vertical descent beside the ring-state model. */
final class MeasuredDescent {

  private static final ReferenceTable TABLE = ReferenceTable.read("rotor_descent.csv");
  private static final String WHY =
      "0.1: the quarter of a degree of blade angle that the report allows for is 0.06 to 0.09, and"
          + " the mean of the runs scatters by as much again.";
  private static final double TOLERANCE = 0.1;

  private MeasuredDescent() {}

  static List<Check> checks(Models models) {
    Measured twisted = Measured.of("twisted-autorotation");
    double plain = idealAutorotation();
    return List.of(
        inflow(models.ring(), 0.3, 0.5)
            .butDiffers(0.85, 0.95, DescentFits.TEXT.say("measured-onset-differs")),
        inflow(models.ring(), 0.8, 1.05),
        inflow(models.ring(), 1.35, 1.53)
            .butDiffers(1.15, 1.35, DescentFits.TEXT.say("measured-exit-differs")),
        question("ideal vertical autorotation between untwisted and twisted blades", "z")
            .within(
                twisted.value() * plain - 0.05,
                plain + 0.05,
                Autorotation.axialSpeed(models.ring(), 0).orElse(Double.NaN),
                "From the zero of the measured inflow to a tenth more for 12 degrees of twist; 0.05"
                    + " for the fit of the zero and the report's `about'."),
        question("power over hover at constant thrust, z = -0.92, utility", "P / P in hover")
            .near(
                mean(0.8, 1.05, "torque_increment"),
                TOLERANCE,
                power(models, -0.92),
                "Torque without that of the unloaded blades, over that in the hover of the same"
                    + " run; the runs scatter from 0.84 to 0.96.")
            .butDiffers(0.99, 1.06, DescentFits.TEXT.say("measured-power-differs")));
  }

  /** The measured total inflow beside the models'. */
  static Figure figure(Models models) {
    return DescentFits.TEXT.figure("measured-inflow", () -> graph(models));
  }

  private static Graph graph(Models models) {
    double[] descent = TABLE.numbers("descent_over_vh");
    double[] induced = TABLE.numbers("induced_over_vh");
    double[] axial = Arrays.stream(descent).map(d -> -d).toArray();
    double[] total =
        IntStream.range(0, descent.length).mapToDouble(i -> induced[i] - descent[i]).toArray();
    InflowModel quartic = models.quartic(1.15);
    InflowModel lines = models.twoSegment(1.15);
    return Graph.of("axial speed z / vh", "total inflow (z + v) / vh")
        .x(-2.5, 0.05)
        .y(-1.6, 1.7)
        .curve("quartic, k = 1.15", Pens.DASHED, -2, 0, z -> quartic.total(0, z))
        .curve("two segments, k = 1.15", Pens.DOTTED, -2, 0, z -> lines.total(0, z))
        .curve("ring-state model", Pens.THICK, -2.5, 0, z -> models.ring().total(0, z))
        .points("measured, no twist", Pens.CIRCLE, axial, total);
  }

  private static Check inflow(InflowModel model, double from, double to) {
    double descent = mean(from, to, "descent_over_vh");
    return question(
            String.format(Locale.ROOT, "total inflow of an untwisted rotor at z = %.2f", -descent),
            "z + v")
        .near(
            mean(from, to, "induced_over_vh") - descent, TOLERANCE, model.total(0, -descent), WHY);
  }

  private static Question question(String name, String quantity) {
    return Sources.CASTLES_GRAY
        .published(name, quantity, "1")
        .as(Obtained.TRANSCRIBED)
        .validation();
  }

  /** The mean of a column over a band of rates of descent; torque over that in the run's hover. */
  static double mean(double from, double to, String column) {
    double[] descent = TABLE.numbers("descent_over_vh");
    double[] values = column.equals("torque_increment") ? overHover() : TABLE.numbers(column);
    return IntStream.range(0, descent.length)
        .filter(i -> descent[i] >= from && descent[i] <= to && !Double.isNaN(values[i]))
        .mapToDouble(i -> values[i])
        .average()
        .orElse(Double.NaN);
  }

  /** The axial speed at which a straight line through the steep fall of the inflow meets zero. */
  private static double idealAutorotation() {
    double[] descent = TABLE.numbers("descent_over_vh");
    double[] induced = TABLE.numbers("induced_over_vh");
    int[] steep =
        IntStream.range(0, descent.length)
            .filter(i -> descent[i] > 1.6 && descent[i] < 1.9)
            .toArray();
    double meanDescent = Arrays.stream(steep).mapToDouble(i -> descent[i]).average().orElseThrow();
    double meanInflow =
        Arrays.stream(steep).mapToDouble(i -> induced[i] - descent[i]).average().orElseThrow();
    double products = 0;
    double squares = 0;
    for (int i : steep) {
      double inflow = induced[i] - descent[i] - meanInflow;
      products += inflow * (descent[i] - meanDescent);
      squares += inflow * inflow;
    }
    return -(meanDescent - products / squares * meanInflow);
  }

  /** Torque over that in the hover of its run; at the least thrust the hover's is too small. */
  private static double[] overHover() {
    double[] torque = TABLE.numbers("torque_increment");
    double[] descent = TABLE.numbers("descent_over_vh");
    double[] thrust = TABLE.numbers("ct");
    double[] ratio = new double[torque.length];
    double hover = Double.NaN;
    for (int i = 0; i < torque.length; i++) {
      hover = descent[i] == 0 ? torque[i] : hover;
      ratio[i] = thrust[i] < 0.003 ? Double.NaN : torque[i] / hover;
    }
    return ratio;
  }

  /** Axial speeds of the rows whose power can be told, to z = -1.7, in hover induced velocities. */
  static double[] descents() {
    double[] descent = TABLE.numbers("descent_over_vh");
    return told().mapToDouble(i -> -descent[i]).toArray();
  }

  /** Power of thrust over that in the hover of the same run, of the same rows. */
  static double[] powers() {
    double[] power = overHover();
    return told().mapToDouble(i -> power[i]).toArray();
  }

  private static IntStream told() {
    double[] descent = TABLE.numbers("descent_over_vh");
    double[] power = overHover();
    return IntStream.range(0, descent.length)
        .filter(i -> descent[i] <= 1.7 && !Double.isNaN(power[i]));
  }

  /** Power but for the profile power, steady descent over hover. */
  private static double power(Models models, double axial) {
    Craft craft = Craft.of(models, DemoCraft.UTILITY);
    double hover = withoutProfile(craft.vertical(0));
    return withoutProfile(craft.vertical(axial * craft.motion().hoverInduced())) / hover;
  }

  private static double withoutProfile(Motion motion) {
    return motion.loads().rotorPower() - motion.loads().profilePower();
  }
}
