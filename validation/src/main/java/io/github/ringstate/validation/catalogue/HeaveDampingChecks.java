package io.github.ringstate.validation.catalogue;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.craft.CraftBody;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.State;
import io.github.ringstate.rotor.Rotor;
import io.github.ringstate.sheets.chart.Graph;
import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.Obtained;
import io.github.ringstate.validation.check.Question;
import io.github.ringstate.validation.check.Section;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.ejml.data.Complex_F64;
import org.ejml.data.DMatrixRMaj;

/** Heave damping in hover and along the descent. */
final class HeaveDampingChecks {

  private static final Prose TEXT = Prose.of(HeaveDampingChecks.class);

  private HeaveDampingChecks() {}

  static Section section(Models models) {
    List<Check> checks = new ArrayList<>();
    for (Helicopter declared : DemoCraft.ALL) {
      Craft plain = Craft.of(models, plain(declared));
      Craft real = Craft.of(models, declared);
      double padfield = padfield(plain);
      checks.add(
          damping("hover heave damping, " + declared.name() + " with plain blades")
              .near(
                  padfield,
                  0.01 * Math.abs(padfield),
                  quasiSteady(plain, 0),
                  "1 per cent: the formula has a thrust equal to the weight and an upright shaft,"
                      + " the craft leans against its tail rotor."));
      checks.add(
          damping("hover heave damping, " + declared.name() + " as it is")
              .near(
                  padfield(real),
                  0.01 * Math.abs(padfield(real)),
                  quasiSteady(real, 0),
                  "1 per cent, as above. The lift slope is taken times B^2 - r0^2, since the blade"
                      + " lifts from its cut-out r0 to its tip loss B only, and the download off;"
                      + " the plain formula is 8 to 11 per cent higher."));
      Craft prompt = Craft.of(models, promptEngine(declared));
      double eigenvalue = heaveMode(prompt, 0);
      double both = slowOfTwo(prompt, 0);
      checks.add(
          Sources.EJML
              .at("slow root of vertical speed and induced velocity, closed form")
              .secondMethod("heave mode in hover, " + declared.name(), "eigenvalue", "1/s")
              .near(
                  eigenvalue,
                  0.005 * Math.abs(eigenvalue),
                  both,
                  "Half a per cent: the eigenvalue is of all states, the quadratic of two; rotor"
                      + " speed and lean couple into heave weakly as long as the engine answers at"
                      + " once, as it does here."));
    }
    checks.add(
        Sources.PADFIELD
            .at("chapter 4 and others: -0.25 to -0.4 per second")
            .published("hover heave damping of the trainer among published ones", "Zw", "1/s")
            .validation()
            .within(
                -0.4,
                -0.25,
                quasiSteady(Craft.of(models, DemoCraft.TRAINER), 0),
                "Typical published values."));
    checks.add(ForwardDamping.check(models));
    Craft trainer = Craft.of(models, promptEngine(DemoCraft.TRAINER));
    double inRing = heaveMode(trainer, -trainer.motion().hoverInduced());
    checks.add(
        Sources.EJML
            .at("eigenvalue of the linearised equations of motion")
            .secondMethod(
                "heave mode of the trainer in the ring state, z = -1", "eigenvalue", "1/s")
            .near(
                inRing,
                0.02 * Math.abs(inRing),
                slowOfTwo(trainer, -trainer.motion().hoverInduced()),
                "2 per cent, since rotor speed couples more where power changes fast with sink; and"
                    + " the value is positive: the sink grows."));
    return TEXT.section(
        "heave-damping", List.of(TEXT.figure("heave-mode", () -> plot(models))), checks);
  }

  private static Question damping(String name) {
    return Sources.PADFIELD.closedForm(name, "Zw", "1/s").as(Obtained.FROM_MEMORY);
  }

  /** Blades without twist, tip loss and cut-out, and no download: what the formula is for. */
  private static Helicopter plain(Helicopter craft) {
    return craft
        .with(Rotor.TWIST, 0)
        .with(Rotor.TIP_LOSS, 1)
        .with(Rotor.ROOT_CUTOUT, 0)
        .with(Rotor.BLADE_LOADING_LIMIT, 0.25)
        .with(CraftBody.DOWNLOAD, 0);
  }

  /** An engine that gives what is asked of it at once, so that the rotor keeps its speed. */
  private static Helicopter promptEngine(Helicopter craft) {
    return craft.with(Helicopter.ENGINE_TIME, 0);
  }

  private static double padfield(Craft craft) {
    double outer = craft.si(Rotor.TIP_LOSS);
    double inner = craft.si(Rotor.ROOT_CUTOUT);
    double kept = 1 - craft.si(CraftBody.DOWNLOAD);
    double as =
        craft.si(Rotor.LIFT_SLOPE) * craft.si(Rotor.SOLIDITY) * (outer * outer - inner * inner);
    double tip = craft.si(Rotor.TIP_SPEED);
    double mass = craft.si(Helicopter.MASS);
    double inflow =
        craft.hoverInduced(mass * StandardAtmosphere.STANDARD_GRAVITY_CGPM_1901 / kept) / tip;
    return -2
        * kept
        * as
        * craft.area()
        * Craft.density()
        * tip
        * inflow
        / ((16 * inflow + as) * mass);
  }

  /** Partial derivatives of vertical acceleration and induced velocity's rate. */
  private record Derivatives(double ww, double wv, double vw, double vv) {}

  private static Derivatives derivatives(Craft craft, double speed) {
    double[] state = craft.trimmed(speed);
    return new Derivatives(
        partial(craft, state, State.SPEED_UP, State.SPEED_UP),
        partial(craft, state, State.SPEED_UP, State.INDUCED),
        partial(craft, state, State.INDUCED, State.SPEED_UP),
        partial(craft, state, State.INDUCED, State.INDUCED));
  }

  private static double partial(Craft craft, double[] state, int row, int column) {
    double h = 1e-5 * (1 + Math.abs(state[column]));
    double[] high = state.clone();
    double[] low = state.clone();
    high[column] += h;
    low[column] -= h;
    double above = craft.motion().at(0, high).rate(row);
    double below = craft.motion().at(0, low).rate(row);
    return (above - below) / (2 * h);
  }

  /** Change of vertical acceleration with vertical speed, the inflow in equilibrium. */
  static double quasiSteady(Craft craft, double speed) {
    Derivatives d = derivatives(craft, speed);
    return d.ww() - d.wv() * d.vw() / d.vv();
  }

  /** The slow root of the system of vertical speed and induced velocity. */
  private static double slowOfTwo(Craft craft, double speed) {
    Derivatives d = derivatives(craft, speed);
    double half = 0.5 * (d.ww() + d.vv());
    double determinant = d.ww() * d.vv() - d.wv() * d.vw();
    return half + Math.sqrt(half * half - determinant);
  }

  /**
   * The eigenvalue of the full linearised system that is nearest to the quasi-steady damping; in
   * hover the other slow modes lie at zero (drift) or at a fifth of this (drag of the body).
   */
  private static double heaveMode(Craft craft, double speed) {
    double[] state = craft.trimmed(speed);
    DMatrixRMaj jacobian = new DMatrixRMaj(State.SIZE, State.SIZE);
    for (int row = 0; row < State.SIZE; row++) {
      for (int column = 0; column < State.SIZE; column++) {
        jacobian.set(row, column, partial(craft, state, row, column));
      }
    }
    double guess = slowOfTwo(craft, speed);
    return Arrays.stream(Polynomial.eigenvalues(jacobian))
        .filter(Complex_F64::isReal)
        .map(Complex_F64::getReal)
        .min(Comparator.comparingDouble(eigenvalue -> Math.abs(eigenvalue - guess)))
        .orElse(Double.NaN);
  }

  private static Graph plot(Models models) {
    Craft trainer = Craft.of(models, DemoCraft.TRAINER);
    double vh = trainer.motion().hoverInduced();
    double[] axial = Grid.spaced(-1.8, 0.5, 24);
    double[] modes = Arrays.stream(axial).map(z -> heaveMode(trainer, z * vh)).toArray();
    Graph plot =
        Graph.of("axial speed z / vh", "heave mode, 1/s")
            .x(-1.85, 0.55)
            .y(-1.2, 0.8)
            .shade(-1.85, 0.55, 0, 0.8, 236);
    double[] slow = Arrays.stream(axial).map(z -> slowOfTwo(trainer, z * vh)).toArray();
    plot.line("two states, closed form", Pens.THICK, axial, slow);
    plot.points("all states, EJML", Pens.CIRCLE, axial, modes);
    plot.points(
        "Padfield's formula", Pens.SQUARE, new double[] {0}, new double[] {padfield(trainer)});
    return plot.label("sink grows", -0.2, 0.7);
  }
}
