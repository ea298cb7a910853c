package io.github.ringstate.validation.catalogue;

import io.github.ringstate.air.Air;
import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.craft.EngineKind;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.inflow.BoundaryCriterion;
import io.github.ringstate.inflow.CubicBridge;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.inflow.MomentumTheory;
import io.github.ringstate.inflow.QuarticFit;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.inflow.SmoothMomentum;
import io.github.ringstate.inflow.TipVortex;
import io.github.ringstate.inflow.TwoSegmentFit;
import io.github.ringstate.inflow.WakeTransport;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.rotor.GroundEffect;
import io.github.ringstate.rotor.Rotor;

/**
 * Everything of the library that the catalogue holds against the outside, as it is. To see whether
 * the catalogue notices, a test overrides one method with something wrong.
 */
public class Models {

  private final InflowModel smooth = SmoothMomentum.standard();
  private final InflowModel ring = RingStateInflow.standard();

  /** The library as it is. */
  public Models() {}

  InflowModel momentum() {
    return new MomentumTheory();
  }

  double[] momentumRoots(double edgewise, double axial) {
    return MomentumTheory.roots(edgewise, axial);
  }

  InflowModel smooth() {
    return smooth;
  }

  InflowModel ring() {
    return ring;
  }

  InflowModel cubic() {
    return new CubicBridge();
  }

  InflowModel quartic(double inducedPowerFactor) {
    return new QuarticFit(inducedPowerFactor);
  }

  InflowModel twoSegment(double inducedPowerFactor) {
    return new TwoSegmentFit(inducedPowerFactor);
  }

  BoundaryCriterion wakeTransport(InflowModel inflow) {
    return new WakeTransport(inflow);
  }

  BoundaryCriterion tipVortex() {
    return new TipVortex();
  }

  Air air(double pressureAltitude) {
    return StandardAtmosphere.at(pressureAltitude);
  }

  Rotor rotor(ParameterSet numbers) {
    return new Rotor(numbers);
  }

  double groundEffect(double radius, double discHeight, double edgewise, double induced) {
    return GroundEffect.inducedRatio(radius, discHeight, edgewise, induced);
  }

  double pistonLapse(double densityRatio) {
    return EngineKind.PISTON.lapse(densityRatio, Helicopter.TURBINE_LAPSE.standard());
  }

  double turbineLapse(double densityRatio) {
    return EngineKind.TURBINE.lapse(densityRatio, Helicopter.TURBINE_LAPSE.standard());
  }

  /** A demo craft as it is flown; nothing is done to it, as a rule. */
  Helicopter craft(Helicopter declared) {
    return declared;
  }

  /** The three-state inflow against which the lag is held. */
  PittPetersInflow dynamicInflow() {
    return PittPetersInflow.standard();
  }
}
