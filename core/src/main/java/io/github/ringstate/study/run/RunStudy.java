package io.github.ringstate.study.run;

import io.github.ringstate.air.Wind;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.NoSteadyFlightException;
import io.github.ringstate.dynamics.Trim;
import io.github.ringstate.encounter.Downwind;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Entry;
import io.github.ringstate.encounter.EntryKind;
import io.github.ringstate.encounter.Settling;
import io.github.ringstate.inflow.BoundaryCriterion;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.inflow.RingBand;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.inflow.TabulatedInflow;
import io.github.ringstate.pilot.PilotState;
import io.github.ringstate.pilot.Pilots;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.PilotStudy;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a planned run takes on each track: the power, how near the ring state is, and what it costs
 * if the ground speed is held while the wind comes round behind.
 *
 * <p>The disc is taken as level for the boundary and away from the ground for the power.
 */
public final class RunStudy {

  /** Step from one track to the next, deg. */
  private static final int TRACK_STEP = 10;

  private final RunPlan plan;
  private final EquationsOfMotion motion;
  private final BoundaryCriterion boundary;
  private final InflowModel table;
  private final double hoverInduced;

  /**
   * Prepares a study by the ring-state inflow model of the craft.
   *
   * @param plan the run
   */
  public RunStudy(RunPlan plan) {
    this.plan = plan;
    RingStateInflow inflow = plan.craft().inflow();
    motion = new EquationsOfMotion(plan.craft(), plan.air(), Wind.CALM, inflow, false);
    boundary = new HeaveDamping(inflow);
    table = new TabulatedInflow(inflow);
    hoverInduced = motion.hoverInduced();
  }

  /**
   * The run.
   *
   * @return the plan
   */
  public RunPlan plan() {
    return plan;
  }

  /**
   * The run on every track.
   *
   * @return a track every ten degrees from the wind, so that each has its mirror image in the wind
   *     beside it; the first from north on first, clockwise
   */
  public List<RunTrack> tracks() {
    double from = Unit.DEGREE.fromSi(plan.wind().from());
    // a hair more, so that rounding does not leave out the first
    double first = from - TRACK_STEP * Math.floor(from / TRACK_STEP + 1e-9);
    List<RunTrack> tracks = new ArrayList<>();
    for (int track = 0; track < 360; track += TRACK_STEP) {
      tracks.add(track(Unit.DEGREE.toSi(first + track)));
    }
    return tracks;
  }

  /**
   * The run on one track.
   *
   * @param track direction flown over the ground, rad clockwise from north
   * @return what it takes
   */
  public RunTrack track(double track) {
    double least = plan.minimumAirspeed(track);
    double greatest = plan.maximumAirspeed(track);
    OptionalDouble power =
        greater(greater(power(least), power(greatest)), power(plan.triangle(track).airspeed()));
    return new RunTrack(
        plan.triangle(track),
        least,
        greatest,
        power,
        margin(plan.craft().continuousPower(plan.air()), power),
        margin(plan.craft().takeOffPower(plan.air()), power),
        boundaryMargin(least));
  }

  private static OptionalDouble greater(OptionalDouble one, OptionalDouble other) {
    return one.isPresent() && other.isPresent()
        ? OptionalDouble.of(Math.max(one.getAsDouble(), other.getAsDouble()))
        : OptionalDouble.empty();
  }

  private static double margin(double available, OptionalDouble needed) {
    return needed.isPresent() ? 1 - needed.getAsDouble() / available : Double.NEGATIVE_INFINITY;
  }

  /**
   * The shaft power of a steady flight at the planned descent, out of ground effect.
   *
   * @param airspeed the airspeed, m/s, not negative
   * @return the power, W; empty where the rotor cannot carry the craft
   */
  public OptionalDouble power(double airspeed) {
    return power(airspeed, plan.descent());
  }

  /**
   * The shaft power of a hover out of ground effect in calm air.
   *
   * @return the power, W; empty where the rotor cannot carry the craft
   */
  public OptionalDouble hoverPower() {
    return power(0, 0);
  }

  /**
   * What a hover out of ground effect in calm air leaves of the take-off power.
   *
   * @return the part of that power that is left; negative where the hover takes more; minus
   *     infinity where the rotor cannot carry the craft
   */
  public double hoverMargin() {
    return margin(plan.craft().takeOffPower(plan.air()), hoverPower());
  }

  /**
   * What a hover out of ground effect in calm air leaves of the continuous power.
   *
   * @return the part of that power that is left; negative where the hover takes more; minus
   *     infinity where the rotor cannot carry the craft
   */
  public double continuousHoverMargin() {
    return margin(plan.craft().continuousPower(plan.air()), hoverPower());
  }

  private OptionalDouble power(double airspeed, double descent) {
    try {
      Trim trim = Trim.find(motion, airspeed, -descent);
      double[] state = trim.state(motion, airspeed, -descent);
      return OptionalDouble.of(motion.at(0, state).loads().shaftPower());
    } catch (NoSteadyFlightException none) {
      return OptionalDouble.empty();
    }
  }

  /**
   * The extra rate of descent that reaches the ring state.
   *
   * @param airspeed the airspeed, m/s, not negative
   * @return the onset less the planned descent, m/s; empty where no rate of descent is in the ring
   *     state
   */
  public OptionalDouble boundaryMargin(double airspeed) {
    Optional<RingBand> band = boundary.band(airspeed / hoverInduced);
    return band.isPresent()
        ? OptionalDouble.of(-band.get().onset() * hoverInduced - plan.descent())
        : OptionalDouble.empty();
  }

  /**
   * The airspeed to which the run comes down if the ground speed is held through a turn downwind.
   *
   * @return the minimum airspeed in gusts on the downwind track, m/s; none where gusts are faster
   *     than the run, for on the way there the airspeed is lost before the craft goes backwards
   */
  public double airspeedDownwind() {
    double downwind = plan.wind().downwind();
    return plan.isOvertaken(downwind) ? 0 : plan.minimumAirspeed(downwind);
  }

  /**
   * A flight from the run into the ring state, or near it.
   *
   * <p>In the air, ground speed held through a turn downwind is a run at the airspeed of the track
   * whose airspeed falls to {@link #airspeedDownwind}; it starts no slower and no faster than
   * {@link Downwind} allows.
   *
   * @param track the run on a track
   * @param mishap how it comes to the ring state
   * @return the encounter, away from the ground; its recovery plays no part; empty where the mishap
   *     does not arise
   */
  public Optional<Encounter> encounter(RunTrack track, RunMishap mishap) {
    Encounter base = Encounter.of(plan.craft()).withAir(plan.air());
    return entry(track, mishap).map(base::withEntry);
  }

  private Optional<Entry> entry(RunTrack track, RunMishap mishap) {
    // whole hundredths of a knot, so that tracks mirrored in the wind are the same flight
    double least = hundredths(track.minimumAirspeed());
    Quantity starts = Downwind.GROUND_SPEED.quantity();
    double start =
        Math.min(Math.max(hundredths(track.triangle().airspeed()), starts.low()), starts.high());
    return switch (mishap) {
      case SETTLING ->
          track.boundaryMargin().isEmpty()
              ? Optional.empty()
              : Optional.of(EntryKind.SETTLING.with(Settling.WIND, least));
      case TURN_DOWNWIND ->
          Optional.of(
              new Downwind(
                  ParameterSet.standard(Downwind.PARAMETERS)
                      .with(Downwind.GROUND_SPEED, start)
                      .with(Downwind.WIND, Math.max(0, start - hundredths(airspeedDownwind())))
                      .with(Downwind.DESCENT, Unit.FOOT_PER_MINUTE.fromSi(plan.descent()))));
    };
  }

  private static double hundredths(double speed) {
    return Math.rint(100 * Unit.KNOT.fromSi(speed)) / 100;
  }

  /**
   * The pilots who fly a mishap.
   *
   * @param encounter one of {@link #encounter}
   * @param pilots who flies
   * @param state the state they are in
   * @param seed the seed
   * @return the study, its inflow tabulated; with a fitted model each pilot has an inflow of their
   *     own, and it is not
   */
  public PilotStudy pilots(Encounter encounter, Pilots pilots, PilotState state, long seed) {
    Encounter flown =
        plan.craft().fitted().isPresent() ? encounter : encounter.withInflow(table, boundary);
    return new PilotStudy(flown, pilots, Optional.of(state.delays()), seed);
  }
}
