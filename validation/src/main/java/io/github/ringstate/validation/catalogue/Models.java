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

  /**
   * The same models but for one.
   *
   * @param other another {@link #momentum}
   * @return the changed models
   */
  public Models withMomentum(InflowModel other) {
    return new Models(
        other,
        momentumEquation,
        smooth,
        ring,
        cubic,
        quartic,
        twoSegment,
        wakeTransport,
        tipVortex,
        atmosphere,
        rotor,
        groundEffect,
        pistonLapse,
        turbineLapse,
        craft,
        dynamicInflow);
  }

  /**
   * The same models but for one.
   *
   * @param other another {@link #momentumEquation}
   * @return the changed models
   */
  public Models withMomentumEquation(MomentumEquation other) {
    return new Models(
        momentum,
        other,
        smooth,
        ring,
        cubic,
        quartic,
        twoSegment,
        wakeTransport,
        tipVortex,
        atmosphere,
        rotor,
        groundEffect,
        pistonLapse,
        turbineLapse,
        craft,
        dynamicInflow);
  }

  /**
   * The same models but for one.
   *
   * @param other another {@link #smooth}
   * @return the changed models
   */
  public Models withSmooth(InflowModel other) {
    return new Models(
        momentum,
        momentumEquation,
        other,
        ring,
        cubic,
        quartic,
        twoSegment,
        wakeTransport,
        tipVortex,
        atmosphere,
        rotor,
        groundEffect,
        pistonLapse,
        turbineLapse,
        craft,
        dynamicInflow);
  }

  /**
   * The same models but for one.
   *
   * @param other another {@link #ring}
   * @return the changed models
   */
  public Models withRing(InflowModel other) {
    return new Models(
        momentum,
        momentumEquation,
        smooth,
        other,
        cubic,
        quartic,
        twoSegment,
        wakeTransport,
        tipVortex,
        atmosphere,
        rotor,
        groundEffect,
        pistonLapse,
        turbineLapse,
        craft,
        dynamicInflow);
  }

  /**
   * The same models but for one.
   *
   * @param other another {@link #cubic}
   * @return the changed models
   */
  public Models withCubic(InflowModel other) {
    return new Models(
        momentum,
        momentumEquation,
        smooth,
        ring,
        other,
        quartic,
        twoSegment,
        wakeTransport,
        tipVortex,
        atmosphere,
        rotor,
        groundEffect,
        pistonLapse,
        turbineLapse,
        craft,
        dynamicInflow);
  }

  /**
   * The same models but for one.
   *
   * @param other another {@link #quartic}
   * @return the changed models
   */
  public Models withQuartic(DoubleFunction<InflowModel> other) {
    return new Models(
        momentum,
        momentumEquation,
        smooth,
        ring,
        cubic,
        other,
        twoSegment,
        wakeTransport,
        tipVortex,
        atmosphere,
        rotor,
        groundEffect,
        pistonLapse,
        turbineLapse,
        craft,
        dynamicInflow);
  }

  /**
   * The same models but for one.
   *
   * @param other another {@link #twoSegment}
   * @return the changed models
   */
  public Models withTwoSegment(DoubleFunction<InflowModel> other) {
    return new Models(
        momentum,
        momentumEquation,
        smooth,
        ring,
        cubic,
        quartic,
        other,
        wakeTransport,
        tipVortex,
        atmosphere,
        rotor,
        groundEffect,
        pistonLapse,
        turbineLapse,
        craft,
        dynamicInflow);
  }

  /**
   * The same models but for one.
   *
   * @param other another {@link #wakeTransport}
   * @return the changed models
   */
  public Models withWakeTransport(Function<InflowModel, BoundaryCriterion> other) {
    return new Models(
        momentum,
        momentumEquation,
        smooth,
        ring,
        cubic,
        quartic,
        twoSegment,
        other,
        tipVortex,
        atmosphere,
        rotor,
        groundEffect,
        pistonLapse,
        turbineLapse,
        craft,
        dynamicInflow);
  }

  /**
   * The same models but for one.
   *
   * @param other another {@link #tipVortex}
   * @return the changed models
   */
  public Models withTipVortex(BoundaryCriterion other) {
    return new Models(
        momentum,
        momentumEquation,
        smooth,
        ring,
        cubic,
        quartic,
        twoSegment,
        wakeTransport,
        other,
        atmosphere,
        rotor,
        groundEffect,
        pistonLapse,
        turbineLapse,
        craft,
        dynamicInflow);
  }

  /**
   * The same models but for one.
   *
   * @param other another {@link #atmosphere}
   * @return the changed models
   */
  public Models withAtmosphere(DoubleFunction<Air> other) {
    return new Models(
        momentum,
        momentumEquation,
        smooth,
        ring,
        cubic,
        quartic,
        twoSegment,
        wakeTransport,
        tipVortex,
        other,
        rotor,
        groundEffect,
        pistonLapse,
        turbineLapse,
        craft,
        dynamicInflow);
  }

  /**
   * The same models but for one.
   *
   * @param other another {@link #rotor}
   * @return the changed models
   */
  public Models withRotor(Function<ParameterSet, Rotor> other) {
    return new Models(
        momentum,
        momentumEquation,
        smooth,
        ring,
        cubic,
        quartic,
        twoSegment,
        wakeTransport,
        tipVortex,
        atmosphere,
        other,
        groundEffect,
        pistonLapse,
        turbineLapse,
        craft,
        dynamicInflow);
  }

  /**
   * The same models but for one.
   *
   * @param other another {@link #groundEffect}
   * @return the changed models
   */
  public Models withGroundEffect(GroundEffectModel other) {
    return new Models(
        momentum,
        momentumEquation,
        smooth,
        ring,
        cubic,
        quartic,
        twoSegment,
        wakeTransport,
        tipVortex,
        atmosphere,
        rotor,
        other,
        pistonLapse,
        turbineLapse,
        craft,
        dynamicInflow);
  }

  /**
   * The same models but for one.
   *
   * @param other another {@link #pistonLapse}
   * @return the changed models
   */
  public Models withPistonLapse(DoubleUnaryOperator other) {
    return new Models(
        momentum,
        momentumEquation,
        smooth,
        ring,
        cubic,
        quartic,
        twoSegment,
        wakeTransport,
        tipVortex,
        atmosphere,
        rotor,
        groundEffect,
        other,
        turbineLapse,
        craft,
        dynamicInflow);
  }

  /**
   * The same models but for one.
   *
   * @param other another {@link #turbineLapse}
   * @return the changed models
   */
  public Models withTurbineLapse(DoubleUnaryOperator other) {
    return new Models(
        momentum,
        momentumEquation,
        smooth,
        ring,
        cubic,
        quartic,
        twoSegment,
        wakeTransport,
        tipVortex,
        atmosphere,
        rotor,
        groundEffect,
        pistonLapse,
        other,
        craft,
        dynamicInflow);
  }

  /**
   * The same models but for one.
   *
   * @param other another {@link #craft}
   * @return the changed models
   */
  public Models withCraft(UnaryOperator<Helicopter> other) {
    return new Models(
        momentum,
        momentumEquation,
        smooth,
        ring,
        cubic,
        quartic,
        twoSegment,
        wakeTransport,
        tipVortex,
        atmosphere,
        rotor,
        groundEffect,
        pistonLapse,
        turbineLapse,
        other,
        dynamicInflow);
  }

  /**
   * The same models but for one.
   *
   * @param other another {@link #dynamicInflow}
   * @return the changed models
   */
  public Models withDynamicInflow(PittPetersInflow other) {
    return new Models(
        momentum,
        momentumEquation,
        smooth,
        ring,
        cubic,
        quartic,
        twoSegment,
        wakeTransport,
        tipVortex,
        atmosphere,
        rotor,
        groundEffect,
        pistonLapse,
        turbineLapse,
        craft,
        other);
  }
}
