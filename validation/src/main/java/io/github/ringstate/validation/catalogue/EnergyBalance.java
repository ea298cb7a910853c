package io.github.ringstate.validation.catalogue;

import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.State;
import io.github.ringstate.encounter.Settling;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.encounter.Trajectory;
import io.github.ringstate.pilot.Autorotation;
import io.github.ringstate.pilot.Forward;
import io.github.ringstate.pilot.Lateral;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.rotor.Rotor;
import io.github.ringstate.sheets.chart.Graph;
import io.github.ringstate.validation.check.Check;
import io.github.ringstate.validation.check.Question;
import io.github.ringstate.validation.check.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** The energy of the craft along whole encounters. */
final class EnergyBalance {

  private static final Prose TEXT = Prose.of(EnergyBalance.class);

  private static final double STEP = 0.005;

  private EnergyBalance() {}

  /** Time, energy and the power into the craft. */
  private record Sample(double time, double energy, double power, double rate) {}

  static Section section(Models models) {
    List<Check> checks = new ArrayList<>();
    for (Recovery recovery : List.of(new Forward(), new Lateral(), new Autorotation())) {
      List<Sample> samples = fly(models, recovery);
      double instant =
          samples.stream().mapToDouble(s -> Math.abs(s.rate() - s.power())).max().orElseThrow();
      double scale = samples.stream().mapToDouble(s -> Math.abs(s.power())).max().orElseThrow();
      checks.add(
          balance("energy at every instant, " + recovery.name() + " recovery", "rate less power")
              .atMost(
                  1e-9,
                  instant / scale,
                  "Rounding, over the greatest power: forces and powers come from one place."));
      checks.add(
          balance("energy over the flight, " + recovery.name() + " recovery", "energy less work")
              .atMost(
                  2e-6,
                  worst(samples),
                  "Trapezoidal rule over samples 5 ms apart, over the kinetic energy of the"
                      + " rotor."));
    }
    return TEXT.section(
        "energy", List.of(TEXT.figure("energy", () -> plot(fly(models, new Forward())))), checks);
  }

  private static Question balance(String name, String quantity) {
    return Sources.MECHANICS.at("work and energy").closedForm(name, quantity + ", relative", "1");
  }

  private static List<Sample> fly(Models models, Recovery recovery) {
    Helicopter declared = DemoCraft.TRAINER;
    List<Sample> samples = new ArrayList<>();
    Craft.encounter(models, declared)
        .withEntry(new Settling())
        .withRecovery(recovery)
        .withDelay(2)
        .fly(
            Simulator.precise(),
            new Trajectory(STEP, (phase, motion) -> samples.add(sample(declared, motion))));
    return samples;
  }

  private static Sample sample(Helicopter declared, Motion m) {
    double mass = declared.si(Helicopter.MASS);
    double inertia = declared.si(Rotor.INERTIA);
    double weight = mass * StandardAtmosphere.STANDARD_GRAVITY_CGPM_1901;
    double north = m.state(State.SPEED_NORTH);
    double east = m.state(State.SPEED_EAST);
    double up = m.state(State.SPEED_UP);
    double spin = m.state(State.ROTOR_SPEED);
    double energy =
        weight * m.height()
            + 0.5 * mass * (north * north + east * east + up * up)
            + 0.5 * inertia * spin * spin;
    double rate =
        weight * up
            + mass
                * (north * m.rate(State.SPEED_NORTH)
                    + east * m.rate(State.SPEED_EAST)
                    + up * m.rate(State.SPEED_UP))
            + inertia * spin * m.rate(State.ROTOR_SPEED);
    double power =
        m.loads().enginePower()
            - (m.loads().shaftPower() - m.loads().rotorPower())
            - m.loads().inducedPower()
            - m.loads().profilePower()
            + m.dragPower()
            + m.sidePower()
            + m.downloadPower();
    return new Sample(m.time(), energy, power, rate);
  }

  private static double[] work(List<Sample> samples) {
    double[] work = new double[samples.size()];
    for (int i = 1; i < work.length; i++) {
      Sample a = samples.get(i - 1);
      Sample b = samples.get(i);
      work[i] = work[i - 1] + 0.5 * (a.power() + b.power()) * (b.time() - a.time());
    }
    return work;
  }

  private static double worst(List<Sample> samples) {
    double[] work = work(samples);
    double spin = DemoCraft.TRAINER.si(Rotor.TIP_SPEED) / DemoCraft.TRAINER.si(Rotor.RADIUS);
    double scale = 0.5 * DemoCraft.TRAINER.si(Rotor.INERTIA) * spin * spin;
    double start = samples.get(0).energy();
    return IntStream.range(0, work.length)
        .mapToDouble(i -> Math.abs(samples.get(i).energy() - start - work[i]) / scale)
        .max()
        .orElseThrow();
  }

  private static Graph plot(List<Sample> samples) {
    int every = 20;
    int count = (samples.size() + every - 1) / every;
    double[] time = new double[count];
    double[] change = new double[count];
    double[] work = new double[count];
    double[] all = work(samples);
    for (int i = 0; i < count; i++) {
      Sample sample = samples.get(i * every);
      time[i] = sample.time();
      change[i] = (sample.energy() - samples.get(0).energy()) / 1000;
      work[i] = all[i * every] / 1000;
    }
    return Graph.of("time, s", "energy since the start, kJ")
        .x(0, time[time.length - 1])
        .y(-260, 20)
        .line("energy of the craft", Pens.THICK, time, change)
        .line("work of all powers", Pens.DASHED, time, work);
  }
}
