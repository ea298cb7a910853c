package io.github.ringstate.validation.catalogue;

import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.Trim;
import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.Source;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import org.hipparchus.analysis.solvers.BrentSolver;

/** Rates of descent without power, with and without airspeed. */
final class MeasuredAutorotation {

  private static final Source STEEP =
      Sources.LEISHMAN.at("chapter 12: vertical flight performance of the autogiro");

  private MeasuredAutorotation() {}

  static List<Check> checks(Models models) {
    List<Check> checks = new ArrayList<>();
    List<Craft> crafts = Craft.all(models);
    for (double edgewise : new double[] {0, 0.5, 1}) {
      Measured steep =
          Measured.of("inclined-autorotation-" + (edgewise == 0.5 ? "0.5" : (int) edgewise));
      Check check =
          steep.near(
              "autorotation at an airspeed of " + edgewise + " vh, mean of the demo craft",
              "z",
              STEEP,
              crafts.stream()
                  .mapToDouble(craft -> autorotation(craft, edgewise * vh(craft)) / vh(craft))
                  .average()
                  .orElseThrow());
      checks.add(
          edgewise == 1
              ? check.butDiffers(-1.65, -1.584, VerticalAutorotation.TEXT.say("fast-differs"))
              : check.butDiffers(-2.1, -1.8, VerticalAutorotation.TEXT.say("slow-differs")));
    }
    Measured ratio = Measured.of("slowest-over-vertical");
    for (Craft craft : crafts) {
      checks.add(
          ratio.near(
              "slowest over vertical autorotation, " + craft.name(),
              "rate of descent over that without airspeed",
              HeldOut.source("autogiro-glide"),
              slowest(craft) / autorotation(craft, 0)));
    }
    Measured glide = Measured.of("best-glide");
    checks.add(
        glide.near(
            "best glide ratio in autorotation, mean of the demo craft",
            "distance over height",
            Sources.AUTOROTATION_GUIDE,
            crafts.stream().mapToDouble(MeasuredAutorotation::glide).average().orElseThrow()));
    return checks;
  }

  private static double vh(Craft craft) {
    return craft.motion().hoverInduced();
  }

  /** The vertical speed of the slowest steady descent in which the rotor takes no power, m/s. */
  private static double autorotation(Craft craft, double airspeed) {
    double step = 0.05 * vh(craft);
    double lower = -step;
    while (rotorPower(craft, airspeed, lower) > 0) {
      lower -= step;
    }
    return new BrentSolver(1e-6)
        .solve(100, vertical -> rotorPower(craft, airspeed, vertical), lower, lower + step);
  }

  private static double rotorPower(Craft craft, double airspeed, double vertical) {
    double[] state =
        Trim.find(craft.motion(), airspeed, vertical).state(craft.motion(), airspeed, vertical);
    Motion motion = craft.motion().at(0, state);
    return motion.loads().rotorPower();
  }

  private static double slowest(Craft craft) {
    return airspeeds().map(airspeed -> autorotation(craft, airspeed)).max().orElseThrow();
  }

  private static double glide(Craft craft) {
    return airspeeds()
        .map(airspeed -> airspeed / -autorotation(craft, airspeed))
        .max()
        .orElseThrow();
  }

  private static DoubleStream airspeeds() {
    return Arrays.stream(Grid.spaced(15, 50, 15));
  }
}
