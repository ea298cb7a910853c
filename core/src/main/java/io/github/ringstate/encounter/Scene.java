package io.github.ringstate.encounter;

import io.github.ringstate.air.Wind;
import io.github.ringstate.air.WindField;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.ThrustDisturbance;
import io.github.ringstate.dynamics.Trim;
import io.github.ringstate.pilot.PilotView;

/** All that an encounter's flight is set in: the disturbed wind, the known hover, and the start. */
final class Scene {

  private final Encounter encounter;
  private final WindField wind;
  private final ThrustDisturbance shaking;
  private final Trim hover;
  private final Entry.Start start;

  Scene(Encounter encounter) {
    this.encounter = encounter;
    wind =
        encounter
            .disturbances()
            .wind(encounter.entry().wind(), encounter.height(), encounter.craft().rotor());
    shaking = encounter.disturbances().shaking(encounter.craft().rotor());
    hover = Trim.find(steady(Wind.CALM), 0, 0);
    start = encounter.entry().start(steady(encounter.entry().wind()));
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

  Entry.Start start() {
    return start;
  }

  /** The boundary's margin at the present speeds through the air. */
  double margin(Motion motion) {
    return encounter.boundary().margin(motion.edgewiseOverHover(), motion.axialOverHover());
  }
}
