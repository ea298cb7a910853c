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
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * Everything of the library that the catalogue holds against the outside.
 *
 * @param momentum momentum theory
 * @param momentumEquation all roots of momentum theory
 * @param smooth momentum theory with its gap closed
 * @param ring the ring-state model
 * @param cubic the cubic bridge
 * @param quartic the quartic fit for an induced power factor
 * @param twoSegment the two-segment fit for an induced power factor
 * @param wakeTransport the wake transport boundary on an inflow model
 * @param tipVortex the tip-vortex boundary
 * @param atmosphere air at a pressure altitude in m
 * @param rotor builds a rotor
 * @param groundEffect the ground's effect
 * @param pistonLapse power of a piston engine over that at sea level, by density ratio
 * @param turbineLapse power of a turbine over that at sea level, by density ratio
 * @param craft what is done to each demo craft before it is flown; nothing, as a rule
 * @param dynamicInflow the three-state inflow against which the lag is held
 */
public record Models(
    InflowModel momentum,
    MomentumEquation momentumEquation,
    InflowModel smooth,
    InflowModel ring,
    InflowModel cubic,
    DoubleFunction<InflowModel> quartic,
    DoubleFunction<InflowModel> twoSegment,
    Function<InflowModel, BoundaryCriterion> wakeTransport,
    BoundaryCriterion tipVortex,
    DoubleFunction<Air> atmosphere,
    Function<ParameterSet, Rotor> rotor,
    GroundEffectModel groundEffect,
    DoubleUnaryOperator pistonLapse,
    DoubleUnaryOperator turbineLapse,
    UnaryOperator<Helicopter> craft,
    PittPetersInflow dynamicInflow) {

  /**
   * The library as it is.
   *
   * @return the models
   */
  public static Models standard() {
    return new Models(
        new MomentumTheory(),
        MomentumTheory::roots,
        SmoothMomentum.standard(),
        RingStateInflow.standard(),
        new CubicBridge(),
        QuarticFit::new,
        TwoSegmentFit::new,
        WakeTransport::new,
        new TipVortex(),
        StandardAtmosphere::at,
        Rotor::new,
        GroundEffect::inducedRatio,
        EngineKind.PISTON::lapse,
        EngineKind.TURBINE::lapse,
        UnaryOperator.identity(),
        PittPetersInflow.standard());
  }
}
