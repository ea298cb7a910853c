package io.github.ringstate.pilot;

import io.github.ringstate.craft.CraftLimits;
import io.github.ringstate.dynamics.Commander;
import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Motion;
import io.github.ringstate.dynamics.State;
import io.github.ringstate.dynamics.Trim;

/**
 * A flight as its pilot sees it: the motion at an instant, and what the pilot remembers, the hover
 * before the descent, the collective held at recognition, and the instants at which the ring state
 * was recognised and phases began. The pilot follows a {@link ControlLaw}.
 */
public final class PilotView implements Cockpit, Commander {

  private final Motion motion;
  private final Trim hover;
  private final double minimumCollective;
  private final int tailPush;
  private ControlLaw law = (seen, controls) -> {};
  private double recognised = Double.NaN;
  private double held = Double.NaN;
  private double techniqueBegan;
  private double phaseBegan;

  private PilotView(EquationsOfMotion equations, Trim hover) {
    motion = equations.motion();
    this.hover = hover;
    minimumCollective = equations.craft().si(CraftLimits.MINIMUM_COLLECTIVE);
    tailPush = equations.craft().sense().tailPush();
  }

  /**
   * Puts a pilot at the controls.
   *
   * @param equations the equations of motion of the craft; this pilot commands it from here on
   * @param hover the trimmed hover before the descent, away from the ground
   * @return what the pilot sees, at the instant that the equations looked at last
   */
  public static PilotView of(EquationsOfMotion equations, Trim hover) {
    PilotView view = new PilotView(equations, hover);
    equations.commandedBy(view);
    return view;
  }

  /**
   * Says what the pilot does with the controls from here on.
   *
   * @param other the law
   */
  public void follow(ControlLaw other) {
    law = other;
  }

  /**
   * Keeps in mind what was held when the ring state was recognised.
   *
   * @param collective blade pitch at three quarters of the radius, rad; NaN if nothing is
   *     recognised yet
   */
  public void held(double collective) {
    held = collective;
  }

  /**
   * Starts a phase: the times that the pilot counts are counted from these.
   *
   * @param when when the pilot recognised the ring state, s; NaN if not yet
   * @param technique when the technique began, s
   * @param phase when the phase began, s
   */
  public void begin(double when, double technique, double phase) {
    recognised = when;
    techniqueBegan = technique;
    phaseBegan = phase;
  }

  @Override
  public void command(Motion seen, Controls controls) {
    law.command(this, controls);
  }

  @Override
  public double sinceRecognition() {
    return motion.time() >= recognised ? motion.time() - recognised : -1;
  }

  @Override
  public double sincePhaseBegan() {
    return motion.time() - phaseBegan;
  }

  @Override
  public double sinceTechniqueBegan() {
    return motion.time() - techniqueBegan;
  }

  @Override
  public double height() {
    return motion.height();
  }

  @Override
  public double verticalSpeed() {
    return motion.verticalSpeed();
  }

  @Override
  public double indicatedVerticalSpeed() {
    return motion.state(State.INDICATED_VERTICAL_SPEED);
  }

  @Override
  public double verticalAcceleration() {
    return motion.verticalAcceleration();
  }

  @Override
  public double forwardAirspeed() {
    return motion.forwardAirspeed();
  }

  @Override
  public double sidewaysAirspeed() {
    return motion.sidewaysAirspeed();
  }

  @Override
  public double groundSpeed() {
    return motion.groundSpeed();
  }

  @Override
  public double sidewaysGroundSpeed() {
    return motion.sidewaysGroundSpeed();
  }

  @Override
  public double pitch() {
    return motion.pitch();
  }

  @Override
  public double bank() {
    return motion.bank();
  }

  @Override
  public double heading() {
    return motion.heading();
  }

  @Override
  public double collective() {
    return motion.collective();
  }

  @Override
  public double power() {
    return motion.power();
  }

  @Override
  public double takeOffPower() {
    return motion.takeOffPower();
  }

  @Override
  public double rotorSpeed() {
    return motion.rotorSpeed();
  }

  @Override
  public double loadFactor() {
    return motion.loadFactor();
  }

  @Override
  public double roughness() {
    return motion.roughness();
  }

  @Override
  public double pitchRate() {
    return motion.state(State.PITCH_RATE);
  }

  @Override
  public double bankRate() {
    return motion.state(State.BANK_RATE);
  }

  @Override
  public double heldCollective() {
    return Double.isNaN(held) ? motion.collective() : held;
  }

  @Override
  public double hoverCollective() {
    return hover.collective();
  }

  @Override
  public double minimumCollective() {
    return minimumCollective;
  }

  @Override
  public double hoverPitch() {
    return hover.pitch();
  }

  @Override
  public double hoverBank() {
    return hover.bank();
  }

  @Override
  public int tailPush() {
    return tailPush;
  }
}
