package io.github.ringstate.dynamics;

import io.github.ringstate.craft.CraftBody;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.inflow.RingMemory;
import io.github.ringstate.inflow.VortexRing;
import io.github.ringstate.quantity.NotFiniteException;
import io.github.ringstate.quantity.SoftLimit;
import io.github.ringstate.rotor.BladeDrag;
import io.github.ringstate.rotor.GroundEffect;
import io.github.ringstate.rotor.InflowLag;
import io.github.ringstate.rotor.Rotor;
import org.jspecify.annotations.Nullable;

/**
 * The main rotor: its thrust, the power that it takes from the shaft, and the induced velocity.
 *
 * <p>The induced velocity follows, with the lag of the apparent mass, the value that the inflow
 * model gives at this thrust; speeds are handed to the model in units of the hover induced velocity
 * of the thrust at that instant. A thrust below a fiftieth of the weight, or downward, counts for
 * that scale as about a fiftieth, so that the scale never vanishes.
 *
 * <p>The part of the induced velocity that is the vortex ring's own outlasts its flow, as the
 * inflow model's {@link RingMemory} says; so do the losses that come with it. A ring begins inside
 * the boundary of heave damping at the craft's weight.
 */
final class RotorTerm implements Term {

  /** Thrust over weight below which the scale of the inflow falls no further (assumed). */
  private static final double MINIMUM_SCALE_THRUST = 0.02;

  /** Part by which the scale of the inflow is changed to see what depends on it. */
  private static final double SCALE_DIFFERENCE = 1e-3;

  private final Rotor rotor;
  private final BladeDrag drag;
  private final InflowLag lag;
  private final InflowModel inflow;
  private final VortexRing ring;
  private final RingMemory memory;
  private final @Nullable WakeGradient gradient;
  private final ThrustDisturbance shaking;
  private final boolean ground;
  private final double density;
  private final double download;
  private final double leastScaleThrust;
  private final double inverseTwiceDensityArea;
  private final double hoverInduced;
  private final double inverseHoverInduced;
  private final double inverseRingTime;
  private boolean balanced;

  RotorTerm(
      Helicopter craft,
      double density,
      double hoverInduced,
      InflowModel inflow,
      boolean ground,
      ThrustDisturbance shaking) {
    this.density = density;
    this.hoverInduced = hoverInduced;
    this.inflow = inflow;
    ring = inflow.ring();
    memory = ring.memory();
    this.ground = ground;
    this.shaking = shaking;
    rotor = craft.rotor();
    drag = rotor.bladeDrag();
    lag = rotor.inflowLag();
    download = craft.si(CraftBody.DOWNLOAD);
    leastScaleThrust = MINIMUM_SCALE_THRUST * craft.weight();
    inverseTwiceDensityArea = 1 / (2 * density * rotor.area());
    inverseHoverInduced = 1 / hoverInduced;
    inverseRingTime = hoverInduced / rotor.radius();
    gradient =
        inflow.hasGradient()
            ? new WakeGradient(craft.si(InflowLag.APPARENT_MASS), hoverInduced)
            : null;
  }

  /** Whether the gradient of the inflow counts as that of steady flight. */
  void balance(boolean steady) {
    balanced = steady;
  }

  @Override
  public void add(Motion at, double[] rates) {
    double[] y = at.state;
    Loads loads = at.loads;
    double axial = loads.axial;
    double edgewise = loads.edgewise;
    double edgewise2 = loads.edgewiseSquared;
    double induced = y[State.INDUCED];
    double tipSpeed = y[State.ROTOR_SPEED] * rotor.radius();
    double through = axial + induced;
    double edgewiseOverHover = edgewise * inverseHoverInduced;
    double axialOverHover = axial * inverseHoverInduced;
    double loading = rotor.unstalledLoading(tipSpeed, y[State.COLLECTIVE], edgewise2, through);
    double shaken = shaking.factor(at.time, edgewiseOverHover, axialOverHover);
    double roughness = shaking.roughness(edgewiseOverHover, axialOverHover);
    if (!(Math.abs(shaken + roughness) < Double.POSITIVE_INFINITY)) {
      throw new NotFiniteException(shaking, "the factor or roughness of", shaken + roughness);
    }
    double thrust = rotor.thrust(density, tipSpeed, loading) * shaken;

    double scaleThrust =
        leastScaleThrust + SoftLimit.positive(thrust - leastScaleThrust, leastScaleThrust);
    double scale = Math.sqrt(scaleThrust * inverseTwiceDensityArea);
    double inverseScale = 1 / scale;
    double x = edgewise * inverseScale;
    double z = axial * inverseScale;
    double level = y[State.RING];
    double remembered = z - memory.excess(z, level);
    double steadyOverScale = induced(x, z, remembered);
    double feeding =
        memory.mayBegin(z, level) ? ring.feeding(inflow, edgewiseOverHover, axialOverHover) : 0;
    rates[State.RING] = inverseRingTime * memory.rate(z, level, feeding);
    double lossShare = inflow.lossShare(x, remembered);
    double given = steadyOverScale + lossShare + feeding;
    if (!(Math.abs(given) < Double.POSITIVE_INFINITY)) {
      throw new NotFiniteException(inflow, "the induced velocity, loss share or ring of", given);
    }
    double steady = scale * steadyOverScale;
    if (ground) {
      steady *=
          GroundEffect.inducedRatio(
              rotor.radius(), y[State.UP] + rotor.hubHeight(), edgewise, induced);
    }
    double rate = lag.rate(edgewise, through, induced, hoverInduced);
    rates[State.INDUCED] = (steady - induced) * rate;
    rates[State.GRADIENT_NOSE] = 0;
    rates[State.GRADIENT_RIGHT] = 0;
    if (gradient != null) {
      gradient.add(at, rates, rate, balanced);
    }

    loads.inflowScale = scale;
    loads.steadyOverScale = steadyOverScale;
    loads.thrust = thrust;
    loads.download = download * thrust;
    loads.roughness = roughness;
    double ringLosses = ring.losses() * lossShare * scale;
    loads.thrustPower = rotor.thrustPower(thrust, axial, induced, lossShare, ringLosses);
    loads.profilePower = drag.profilePower(density, tipSpeed, edgewise2, loading);
    loads.rotorPower = loads.thrustPower + loads.profilePower;
  }

  /** The induced velocity of steady flow, over its scale, and what an earlier ring adds. */
  private double induced(double x, double z, double remembered) {
    double steady = inflow.induced(x, z);
    return remembered == z ? steady : steady + ring.left(x) * (ring.own(remembered) - ring.own(z));
  }

  /** See {@link Motion#inflowDecay}. */
  double inflowDecay(Motion at) {
    Loads loads = at.loads;
    double induced = at.state[State.INDUCED];
    double scale = loads.inflowScale;
    double x = loads.edgewise / scale;
    double z = loads.axial / scale;
    double wider = 1 + SCALE_DIFFERENCE;
    double remembered = wider * z - memory.excess(wider * z, at.state[State.RING]);
    double steadyPerScale =
        loads.steadyOverScale
            - (induced(wider * x, wider * z, remembered) - loads.steadyOverScale)
                / SCALE_DIFFERENCE;
    double thrustPerInflow =
        rotor.thrustPerInflow(density, at.state[State.ROTOR_SPEED] * rotor.radius());
    double steadyPerInduced =
        steadyPerScale * thrustPerInflow * inverseTwiceDensityArea / (2 * scale);
    double rate = lag.rate(loads.edgewise, loads.axial + induced, induced, hoverInduced);
    return Math.max(0, rate * (1 - steadyPerInduced));
  }

  /** See {@link Motion#sinkFeedsItself}. */
  boolean sinkFeedsItself(Motion at) {
    Loads loads = at.loads;
    return inflow.slope(loads.edgewise / loads.inflowScale, loads.axial / loads.inflowScale) < 0;
  }
}
