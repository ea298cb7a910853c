package io.github.ringstate.dynamics;

import io.github.ringstate.craft.CraftBody;
import io.github.ringstate.craft.Helicopter;

/**
 * The body as a point mass: what rotor and tail rotor push it with, the download of the slipstream,
 * drag of three flat plates along the body's axes, and weight.
 */
final class BodyTerm implements Term {

  private final double inverseMass;
  private final double weight;
  private final double liftShare;
  private final double halfDensity;
  private final double forwardArea;
  private final double sideArea;
  private final double undersideArea;

  BodyTerm(Helicopter craft, double density) {
    halfDensity = 0.5 * density;
    inverseMass = 1 / craft.mass();
    weight = craft.weight();
    liftShare = 1 - craft.si(CraftBody.DOWNLOAD);
    forwardArea = craft.si(CraftBody.FORWARD_AREA);
    sideArea = craft.si(CraftBody.SIDE_AREA);
    undersideArea = craft.si(CraftBody.UNDERSIDE_AREA);
  }

  @Override
  public void add(Motion at, double[] rates) {
    Loads loads = at.loads;
    Axes axes = at.axes;
    double[] y = at.state;
    double dragNose = -halfDensity * forwardArea * loads.alongNose * Math.abs(loads.alongNose);
    double dragRight = -halfDensity * sideArea * loads.alongRight * Math.abs(loads.alongRight);
    double dragShaft = -halfDensity * undersideArea * loads.axial * Math.abs(loads.axial);
    double shaft = loads.thrust * liftShare + dragShaft;
    double right = loads.side + dragRight;
    rates[State.NORTH] = y[State.SPEED_NORTH];
    rates[State.EAST] = y[State.SPEED_EAST];
    rates[State.UP] = y[State.SPEED_UP];
    rates[State.SPEED_NORTH] =
        (shaft * axes.shaftN + right * axes.rightN + dragNose * axes.noseN) * inverseMass;
    rates[State.SPEED_EAST] =
        (shaft * axes.shaftE + right * axes.rightE + dragNose * axes.noseE) * inverseMass;
    rates[State.SPEED_UP] =
        (shaft * axes.shaftU + right * axes.rightU + dragNose * axes.noseU - weight) * inverseMass;
    loads.dragNose = dragNose;
    loads.dragRight = dragRight;
    loads.dragShaft = dragShaft;
  }
}
