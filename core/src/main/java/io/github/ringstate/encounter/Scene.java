package io.github.ringstate.encounter;

import io.github.ringstate.air.Wind;
import io.github.ringstate.air.WindField;
import io.github.ringstate.dynamics.BadCommandException;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.State;
import io.github.ringstate.dynamics.ThrustDisturbance;
import io.github.ringstate.dynamics.Trim;
import io.github.ringstate.inflow.BoundaryCriterion;
import io.github.ringstate.inflow.SlopeCheck;
import io.github.ringstate.pilot.PilotView;
import io.github.ringstate.quantity.NotFiniteException;
import java.util.Objects;
import org.hipparchus.util.FastMath;

/** All that an encounter's flight is set in: the disturbed wind, the known hover, and the start. */
final class Scene {

  /** Part of the message when an entry gives no start; its name stands before it. */
  static final String NO_START = " gives no state and law to start with";

  private final Encounter encounter;
  private final WindField wind;
  private final ThrustDisturbance shaking;
  private final WindField trimmed;
  private final Trim hover;

  Scene(Encounter encounter) {
    this.encounter = encounter;
    Disturbances disturbances = encounter.disturbances();
    WindField mean = encounter.wind().orElseGet(() -> windOf(encounter.entry()));
    trimmed = fromOnset(disturbances.sheared(mean, encounter.height()));
    wind = fromOnset(disturbances.wind(mean, encounter.height(), encounter.craft().rotor()));
    shaking = encounter.shaking().orElseGet(() -> disturbances.shaking(encounter.craft().rotor()));
    ConstantAnswers.check(
        encounter.inflow(), encounter.boundary(), wind, encounter.height().orElse(0), shaking);
    SlopeCheck.fault(encounter.inflow())
        .ifPresent(
            fault -> {
              throw new IllegalArgumentException(
                  "the inflow " + encounter.inflow().name() + " " + fault);
            });
    hover = Trim.find(steady(Wind.CALM), 0, 0);
  }

  private static WindField windOf(Entry entry) {
    return Objects.requireNonNull(entry.wind(), () -> "the wind of the entry " + entry.name());
  }

  /** A wind for flights whose heights count from onset where there is no ground. */
  private WindField fromOnset(WindField aboveGround) {
    return encounter.height().isPresent() || !aboveGround.variesWithHeight()
        ? aboveGround
        : new Lifted(aboveGround, Disturbances.HEIGHT_WITHOUT_GROUND);
  }

  /** A wind as it is asked for from heights that count from so much above those of another, m. */
  private record Lifted(WindField field, double by) implements WindField {

    @Override
    public void velocity(double time, double north, double east, double height, double[] result) {
      field.velocity(time, north, east, height + by, result);
    }
  }

  /** Whether the wind may vary with height. */
  boolean windVaries() {
    return trimmed.variesWithHeight();
  }

  private EquationsOfMotion steady(WindField field) {
    return new EquationsOfMotion(
        encounter.craft(), encounter.air(), field, encounter.inflow(), false);
  }

  /** Equations of motion in this scene, above ground or away from it. */
  EquationsOfMotion equations(boolean ground) {
    return new EquationsOfMotion(
        encounter.craft(), encounter.air(), wind, encounter.inflow(), ground, shaking);
  }

  /** A pilot at the controls who knows the hover before the descent. */
  PilotView pilot(EquationsOfMotion equations) {
    return PilotView.of(equations, hover);
  }

  /** The start of the entry so high, m; heights in it count from there. */
  Entry.Start start(double height) {
    Entry entry = encounter.entry();
    Entry.Start start = entry.start(steady(windVaries() ? new Lifted(trimmed, height) : trimmed));
    if (start == null || start.law() == null || start.state() == null) {
      throw new IllegalArgumentException("the entry " + entry.name() + NO_START);
    }
    if (start.state().length != State.SIZE) {
      throw new IllegalArgumentException(
          "the entry "
              + entry.name()
              + " starts with a state of "
              + start.state().length
              + " numbers; allowed: "
              + State.SIZE);
    }
    for (double value : start.state()) {
      NotFiniteException.check(value, "a value in the start of the entry", entry.name());
    }
    RotorLimits.check(encounter.craft(), start.state()[State.ROTOR_SPEED], entry.name());
    return new Entry.Start(
        start.state(),
        (seen, controls) -> {
          try {
            start.law().command(seen, controls);
          } catch (BadCommandException bad) {
            throw new BadCommandException("in the entry " + entry.name(), bad);
          }
        });
  }

  Encounter encounter() {
    return encounter;
  }

  /** The boundary's margin at the present speeds through the air. */
  double margin(Motion motion) {
    BoundaryCriterion boundary = encounter.boundary();
    return NotFiniteException.check(
        boundary.isOfPath()
            ? boundary.margin(
                FastMath.hypot(motion.forwardAirspeed(), motion.sidewaysAirspeed())
                    / motion.hoverInduced(),
                motion.verticalSpeed() / motion.hoverInduced())
            : boundary.margin(motion.edgewiseOverHover(), motion.axialOverHover()),
        "the margin of the boundary",
        boundary);
  }
}
