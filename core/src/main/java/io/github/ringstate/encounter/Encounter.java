package io.github.ringstate.encounter;

import io.github.ringstate.air.Air;
import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.air.WindField;
import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.dynamics.NoSteadyFlightException;
import io.github.ringstate.dynamics.ThrustDisturbance;
import io.github.ringstate.inflow.BoundaryCriterion;
import io.github.ringstate.inflow.HeaveDamping;
import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.pilot.Recognition;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * One flight into the ring state and out of it: entry, onset, recognition, the pilot's action, and
 * arrest, ground contact or the end of the time.
 *
 * <p>Onset is the first instant inside the boundary at which the descent is building: usually the
 * crossing of the boundary; the start, if the entry starts inside and sinks. Where an updraught
 * carries the disc into the boundary while the craft climbs, nothing is lost yet, and onset is
 * where the climb ends, if it ends inside. The altitude loss is therefore never negative. The pilot
 * acts as the recognition says, by a delay from onset or from a cue; until then the controls are as
 * in the entry. The descent is arrested when the vertical speed rises through zero and stays
 * arrested. Speeds are held against the boundary in units of the hover induced velocity at the
 * craft's weight.
 *
 * <p>An encounter is data: two that are made alike are equal, and fly on from each other's {@link
 * Approach}. That holds for all that is built in; entries, recoveries, cues and models of one's own
 * have to be values too, as records are. It is immutable and may be flown by any number of threads
 * at once, if all parts of one's own are immutable too.
 *
 * @param craft the helicopter
 * @param air the air at the start
 * @param entry how the flight comes to the ring state
 * @param recovery what the pilot does
 * @param recognition when the pilot acts
 * @param height height above the ground at onset, m, 1 to 3000; empty if there is no ground
 * @param inflow the steady inflow
 * @param boundary what bounds the ring state
 * @param disturbances what disturbs the flight
 * @param wind the wind, before anything disturbs it; empty for that of the entry
 * @param shaking how the thrust fluctuates; empty for what the disturbances say
 * @param events events of one's own that are looked for from onset on
 * @param limits how long the flight may take
 */
public record Encounter(
    Helicopter craft,
    Air air,
    Entry entry,
    Recovery recovery,
    Recognition recognition,
    OptionalDouble height,
    InflowModel inflow,
    BoundaryCriterion boundary,
    Disturbances disturbances,
    Optional<WindField> wind,
    Optional<ThrustDisturbance> shaking,
    List<FlightEvent> events,
    FlightLimits limits) {

  /** The height at onset that is accepted. */
  public static final Quantity HEIGHT = new Quantity("height at onset", Unit.METRE, 1, 3000);

  /** Part of the message when a recovery has no phases; its name stands before it. */
  public static final String NO_PHASES = " has no phases";

  /** Refuses null, checks the height and that the recovery has phases. */
  public Encounter {
    Objects.requireNonNull(craft, "craft");
    Objects.requireNonNull(air, "air");
    Objects.requireNonNull(entry, "entry");
    Objects.requireNonNull(recovery, "recovery");
    Objects.requireNonNull(recognition, "recognition");
    Objects.requireNonNull(inflow, "inflow");
    Objects.requireNonNull(boundary, "boundary");
    Objects.requireNonNull(disturbances, "disturbances");
    Objects.requireNonNull(wind, "wind");
    Objects.requireNonNull(shaking, "shaking");
    Objects.requireNonNull(limits, "limits");
    events = List.copyOf(events);
    PhaseWalk.phasesOf(recovery);
    if (height.isPresent()) {
      HEIGHT.check(height.getAsDouble());
    }
  }

  /**
   * An encounter at sea level on a standard day, away from the ground: the standard entry, forward
   * recovery after one second, the craft's ring-state inflow and its heave-damping boundary.
   *
   * @param craft the helicopter
   * @return the encounter
   */
  public static Encounter of(Helicopter craft) {
    RingStateInflow inflow = craft.inflow();
    return new Encounter(
        craft,
        StandardAtmosphere.at(0),
        EntryKind.STANDARD.standard(),
        Technique.STANDARD.standard(),
        Recognition.afterOnset(1),
        OptionalDouble.empty(),
        inflow,
        new HeaveDamping(inflow),
        Disturbances.NONE,
        Optional.empty(),
        Optional.empty(),
        List.of(),
        FlightLimits.STANDARD);
  }

  /**
   * The same encounter with another craft.
   *
   * @param other the helicopter
   * @return the changed encounter
   */
  public Encounter withCraft(Helicopter other) {
    return with(parts -> parts.craft = other);
  }

  /**
   * The same encounter in other air.
   *
   * @param other the air at the start
   * @return the changed encounter
   */
  public Encounter withAir(Air other) {
    return with(parts -> parts.air = other);
  }

  /**
   * The same encounter from another entry.
   *
   * @param other how the flight comes to the ring state
   * @return the changed encounter
   */
  public Encounter withEntry(Entry other) {
    return with(parts -> parts.entry = other);
  }

  /**
   * The same encounter with another recovery.
   *
   * @param other what the pilot does
   * @return the changed encounter
   */
  public Encounter withRecovery(Recovery other) {
    return with(parts -> parts.recovery = other);
  }

  /**
   * The same encounter with another recognition.
   *
   * @param other when the pilot acts
   * @return the changed encounter
   */
  public Encounter withRecognition(Recognition other) {
    return with(parts -> parts.recognition = other);
  }

  /**
   * The same encounter with another delay on the same clock.
   *
   * @param seconds the delay, s, 0 to 60
   * @return the changed encounter
   */
  public Encounter withDelay(double seconds) {
    return withRecognition(recognition.withDelay(seconds));
  }

  /**
   * The same encounter above ground.
   *
   * @param metres height above the ground at onset, m, 1 to 3000
   * @return the changed encounter
   */
  public Encounter withHeight(double metres) {
    return with(parts -> parts.height = OptionalDouble.of(metres));
  }

  /**
   * The same encounter with another inflow and boundary.
   *
   * @param otherInflow the steady inflow
   * @param otherBoundary what bounds the ring state
   * @return the changed encounter
   */
  public Encounter withInflow(InflowModel otherInflow, BoundaryCriterion otherBoundary) {
    return with(
        parts -> {
          parts.inflow = otherInflow;
          parts.boundary = otherBoundary;
        });
  }

  /**
   * The same encounter with other disturbances.
   *
   * @param other what disturbs the flight
   * @return the changed encounter
   */
  public Encounter withDisturbances(Disturbances other) {
    return with(parts -> parts.disturbances = other);
  }

  /**
   * The same encounter in a wind of its own, in place of that of the entry. The entry is trimmed in
   * it and follows it: a hover stays over its point, an approach has its ground speed or airspeed,
   * whichever it is made of, and its track. The craft heads north; heights count from the ground,
   * and where there is none, onset counts as at 300 ft. The disturbances are added to it.
   *
   * @param other the wind over the ground, which may vary with place, height and time
   * @return the changed encounter
   */
  public Encounter withWind(WindField other) {
    return with(parts -> parts.wind = Optional.of(other));
  }

  /**
   * The same encounter with thrust that fluctuates in a way of one's own, in place of that of the
   * disturbances.
   *
   * @param other how the thrust fluctuates
   * @return the changed encounter
   */
  public Encounter withShaking(ThrustDisturbance other) {
    return with(parts -> parts.shaking = Optional.of(other));
  }

  /**
   * The same encounter with other events of one's own.
   *
   * @param others the events, in place of those before
   * @return the changed encounter
   */
  public Encounter withEvents(FlightEvent... others) {
    return with(parts -> parts.events = List.of(others));
  }

  /**
   * The same encounter within other limits of time and work.
   *
   * @param other how long the flight may take
   * @return the changed encounter
   */
  public Encounter withLimits(FlightLimits other) {
    return with(parts -> parts.limits = other);
  }

  /**
   * The delay.
   *
   * @return from the start of the clock of the recognition to the pilot's action, s
   */
  public double delay() {
    return recognition.delay();
  }

  /**
   * Flies the encounter precisely.
   *
   * @return what came of it
   * @throws io.github.ringstate.dynamics.NoSteadyFlightException if the craft has no steady hover
   *     or no steady start of the entry in this air because its blades cannot carry it; whether its
   *     engine can is not asked: where it cannot the rotor slows from the start, and if it comes
   *     down to half of its speed before the ring state begins there is no such encounter either
   * @throws UnfinishedFlightException if the flight used up its budget of evaluations
   * @throws java.util.concurrent.CancellationException if the thread is interrupted, which it stays
   */
  public Outcome fly() {
    return fly(Simulator.precise(), null);
  }

  /**
   * Flies the encounter.
   *
   * @param simulator what flies it
   * @param trajectory where to put samples of the flight, or null; heights in it are above ground,
   *     or above the height at onset where there is no ground
   * @return what came of it
   * @throws NoSteadyFlightException as {@link #fly()}
   */
  public Outcome fly(Simulator simulator, @Nullable Trajectory trajectory) {
    return fly(Approach.fly(this, simulator), simulator, trajectory);
  }

  /**
   * Flies the encounter on from an approach that is shared with others.
   *
   * @param approach the approach of an encounter that differs from this one in recognition and
   *     recovery at most
   * @param simulator what flies it
   * @param trajectory where to put samples of the flight, or null
   * @return what came of it
   * @throws IllegalArgumentException if the approach is that of another encounter
   */
  public Outcome fly(Approach approach, Simulator simulator, @Nullable Trajectory trajectory) {
    return Flight.fly(this, approach, simulator, trajectory);
  }

  /**
   * Flies the encounter precisely and keeps all of the flight.
   *
   * @return the flight, with its outcome and its history
   */
  public RecordedFlight record() {
    return record(Simulator.precise());
  }

  /**
   * Flies the encounter and keeps all of the flight.
   *
   * @param simulator what flies it
   * @return the flight, with its outcome and its history
   */
  public RecordedFlight record(Simulator simulator) {
    return record(Approach.fly(this, simulator), simulator);
  }

  /**
   * Flies the encounter on from an approach that is shared, and keeps all of the flight.
   *
   * @param approach as above
   * @param simulator what flies it
   * @return the flight, with its outcome and its history
   */
  public RecordedFlight record(Approach approach, Simulator simulator) {
    return Flight.record(this, approach, simulator);
  }

  private Encounter with(Consumer<Parts> change) {
    Parts parts = new Parts(this);
    change.accept(parts);
    return parts.together();
  }

  /** The parts of an encounter while some of them are changed. */
  private static final class Parts {

    private Helicopter craft;
    private Air air;
    private Entry entry;
    private Recovery recovery;
    private Recognition recognition;
    private OptionalDouble height;
    private InflowModel inflow;
    private BoundaryCriterion boundary;
    private Disturbances disturbances;
    private Optional<WindField> wind;
    private Optional<ThrustDisturbance> shaking;
    private List<FlightEvent> events;
    private FlightLimits limits;

    Parts(Encounter of) {
      craft = of.craft;
      air = of.air;
      entry = of.entry;
      recovery = of.recovery;
      recognition = of.recognition;
      height = of.height;
      inflow = of.inflow;
      boundary = of.boundary;
      disturbances = of.disturbances;
      wind = of.wind;
      shaking = of.shaking;
      events = of.events;
      limits = of.limits;
    }

    Encounter together() {
      return new Encounter(
          craft,
          air,
          entry,
          recovery,
          recognition,
          height,
          inflow,
          boundary,
          disturbances,
          wind,
          shaking,
          events,
          limits);
    }
  }
}
