package io.github.ringstate.craft;

import io.github.ringstate.air.Air;
import io.github.ringstate.air.StandardAtmosphere;
import io.github.ringstate.inflow.RingStateInflow;
import io.github.ringstate.quantity.OutOfRangeException;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Quantity;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.rotor.Rotor;
import java.util.List;
import java.util.Optional;

/**
 * A whole helicopter with one main rotor and a tail rotor: mass, rotor, engine, body and limits.
 *
 * <p>Every number is a {@link Parameter} with a range; {@link #with} gives a copy with one of them
 * changed. Instances are immutable and safe to share between threads.
 */
public final class Helicopter {

  static final String INVENTED = "invented within the typical range";

  /** Mass in flight. Default 600 kg, range 200 to 20000 kg. */
  public static final Parameter MASS =
      Parameter.of("mass", Unit.KILOGRAM, 200, 20_000, 600, INVENTED);

  /** Least mass in flight. Default 420 kg, range 200 to 20000 kg. */
  public static final Parameter MINIMUM_MASS =
      Parameter.of("minimum mass", Unit.KILOGRAM, 200, 20_000, 420, INVENTED);

  /** Greatest mass in flight. Default 620 kg, range 200 to 20000 kg. */
  public static final Parameter MAXIMUM_MASS =
      Parameter.of("maximum mass", Unit.KILOGRAM, 200, 20_000, 620, INVENTED);

  /** Power that may be used without limit of time. Default 82 kW, range 20 to 10000 kW. */
  public static final Parameter CONTINUOUS_POWER =
      Parameter.of("continuous power", Unit.KILOWATT, 20, 10_000, 82, INVENTED);

  /** Power that may be used for minutes. Default 87 kW, range 20 to 10000 kW. */
  public static final Parameter TAKE_OFF_POWER =
      Parameter.of("take-off power", Unit.KILOWATT, 20, 10_000, 87, INVENTED);

  /**
   * What the engine could give at sea level on a standard day, were it not limited. Default 115 kW,
   * range 20 to 20000 kW.
   */
  public static final Parameter SEA_LEVEL_POWER =
      Parameter.of("sea level power", Unit.KILOWATT, 20, 20_000, 115, INVENTED);

  /**
   * Tail rotor, gearbox and accessory power over main rotor power. Default 0.13, range 0 to 0.3 (a
   * pure number).
   */
  public static final Parameter TRANSMISSION_AND_TAIL_ROTOR_POWER =
      Parameter.of(
          "transmission and tail rotor power",
          Unit.ONE,
          0,
          0.3,
          0.13,
          "assumed: tail rotor 8 to 10 per cent, gearbox and accessories 3 to 5 per cent");

  /**
   * Time constant with which the engine's power follows what the governor asks for. Default 0.3 s,
   * range 0 to 3 s.
   */
  public static final Parameter ENGINE_TIME =
      Parameter.of(
          "engine time",
          Unit.SECOND,
          0,
          3,
          EngineKind.PISTON.responseTime(),
          "assumed by the kind of engine, see there; 0 is an engine that answers at once");

  /**
   * Power that the drive train bears for seconds, over that for minutes. Default 100 %, range 100
   * to 150 %.
   */
  public static final Parameter DRIVE_TRAIN_LIMIT =
      Parameter.of(
          "drive train limit",
          Unit.PERCENT,
          100,
          150,
          100,
          "assumed: what limits the take-off power limits the engine; pilots keep the take-off power"
              + " whatever this is");

  /**
   * Time constant with which the governor restores the rotor's speed. Default 0.5 s, range 0.1 to 3
   * s.
   */
  public static final Parameter GOVERNOR_TIME =
      Parameter.of("governor time", Unit.SECOND, 0.1, 3, 0.5, "assumed");

  /**
   * Exponent of the density ratio in the power that a turbine can give; nothing with a piston
   * engine. Default 0.8, range 0.3 to 1.5 (a pure number).
   */
  public static final Parameter TURBINE_LAPSE =
      Parameter.of("turbine lapse exponent", Unit.ONE, 0.3, 1.5, 0.8, "assumed; no source");

  /**
   * A titled group of parameters, as a craft is written down.
   *
   * @param title one word
   * @param parameters the parameters, in order
   */
  public record Section(String title, List<Parameter> parameters) {}

  /** All parameters of a helicopter, in groups. */
  public static final List<Section> SECTIONS =
      List.of(
          new Section("weight", List.of(MASS, MINIMUM_MASS, MAXIMUM_MASS)),
          new Section("rotor", Rotor.PARAMETERS),
          new Section(
              "engine",
              List.of(
                  CONTINUOUS_POWER,
                  TAKE_OFF_POWER,
                  SEA_LEVEL_POWER,
                  DRIVE_TRAIN_LIMIT,
                  TRANSMISSION_AND_TAIL_ROTOR_POWER,
                  ENGINE_TIME,
                  GOVERNOR_TIME,
                  TURBINE_LAPSE)),
          new Section("body", CraftBody.PARAMETERS),
          new Section("limits", CraftLimits.PARAMETERS));

  /** The standard value of every parameter: a light craft with two seats. */
  public static final ParameterSet STANDARD_NUMBERS =
      ParameterSet.standard(
          SECTIONS.stream().flatMap(section -> section.parameters().stream()).toList());

  private final String name;
  private final String description;
  private final RotationSense sense;
  private final EngineKind engine;
  private final ParameterSet numbers;
  private final Rotor rotor;
  private final Optional<FittedModel> fitted;

  /**
   * Builds a helicopter.
   *
   * @param name one word
   * @param description one sentence for people
   * @param sense which way the main rotor turns
   * @param engine the kind of engine
   * @param numbers a value for each parameter of {@link #SECTIONS}
   * @throws OutOfRangeException if the mass is outside its limits, or two limits are out of order
   */
  public Helicopter(
      String name,
      String description,
      RotationSense sense,
      EngineKind engine,
      ParameterSet numbers) {
    this(name, description, sense, engine, numbers, Optional.empty());
  }

  private Helicopter(
      String name,
      String description,
      RotationSense sense,
      EngineKind engine,
      ParameterSet numbers,
      Optional<FittedModel> fitted) {
    inOrder(numbers, MINIMUM_MASS, MAXIMUM_MASS);
    inOrder(numbers, CONTINUOUS_POWER, TAKE_OFF_POWER);
    inOrder(numbers, TAKE_OFF_POWER, SEA_LEVEL_POWER);
    inOrder(numbers, CraftLimits.MINIMUM_COLLECTIVE, CraftLimits.MAXIMUM_COLLECTIVE);
    Quantity mass = MASS.quantity();
    mass.within(numbers.get(MINIMUM_MASS), numbers.get(MAXIMUM_MASS)).check(numbers.get(MASS));
    this.name = name;
    this.description = description;
    this.sense = sense;
    this.engine = engine;
    this.numbers = numbers;
    this.rotor = new Rotor(numbers);
    this.fitted = fitted;
  }

  private static void inOrder(ParameterSet numbers, Parameter lower, Parameter upper) {
    upper.quantity().within(numbers.get(lower), upper.quantity().high()).check(numbers.get(upper));
  }

  /**
   * The craft's name.
   *
   * @return one word
   */
  public String name() {
    return name;
  }

  /**
   * What the craft is, for people.
   *
   * @return one sentence
   */
  public String description() {
    return description;
  }

  /**
   * Which way the main rotor turns.
   *
   * @return the sense, seen from above
   */
  public RotationSense sense() {
    return sense;
  }

  /**
   * The kind of engine.
   *
   * @return the kind
   */
  public EngineKind engine() {
    return engine;
  }

  /**
   * All numbers of the craft.
   *
   * @return a value for each parameter of {@link #SECTIONS}
   */
  public ParameterSet numbers() {
    return numbers;
  }

  /**
   * The main rotor.
   *
   * @return the rotor
   */
  public Rotor rotor() {
    return rotor;
  }

  /**
   * Mass in flight.
   *
   * @return the mass, kg
   */
  public double mass() {
    return numbers.si(MASS);
  }

  /**
   * Weight in flight.
   *
   * @return the weight, N
   */
  public double weight() {
    return mass() * StandardAtmosphere.STANDARD_GRAVITY_CGPM_1901;
  }

  /**
   * One number in SI units.
   *
   * @param parameter a parameter of {@link #SECTIONS}
   * @return the value, in SI units
   */
  public double si(Parameter parameter) {
    return numbers.si(parameter);
  }

  /**
   * The same craft with one number changed.
   *
   * @param parameter a parameter of {@link #SECTIONS}
   * @param value the new value, in the parameter's own unit
   * @return the changed craft
   * @throws OutOfRangeException if the value is outside its range, or the craft's limits are broken
   */
  public Helicopter with(Parameter parameter, double value) {
    return new Helicopter(name, description, sense, engine, numbers.with(parameter, value), fitted);
  }

  /**
   * The same craft with the rotor turning the given way.
   *
   * @param newSense the sense, seen from above
   * @return the changed craft
   */
  public Helicopter with(RotationSense newSense) {
    return new Helicopter(name, description, newSense, engine, numbers, fitted);
  }

  /**
   * The same craft with a model that was fitted to recordings of it.
   *
   * @param model the fitted model
   * @return the craft, whose {@link #inflow} is that of the model; its own numbers stay
   */
  public Helicopter withFitted(FittedModel model) {
    return new Helicopter(name, description, sense, engine, numbers, Optional.of(model));
  }

  /**
   * The model that was fitted to recordings of the craft.
   *
   * @return the model; empty if none was
   */
  public Optional<FittedModel> fitted() {
    return fitted;
  }

  /**
   * The inflow with which the craft flies unless another is asked for.
   *
   * @return that of the fitted model, or the standard one
   */
  public RingStateInflow inflow() {
    return fitted
        .map(model -> new RingStateInflow(model.ring()))
        .orElseGet(RingStateInflow::standard);
  }

  /**
   * Power that may be used without limit of time.
   *
   * @param air the air at the craft
   * @return the power, W
   */
  public double continuousPower(Air air) {
    return Math.min(si(CONTINUOUS_POWER), capability(air));
  }

  /**
   * The most power that engine and drive train give, for seconds: what the engine is capable of in
   * this air, and the drive train bears, whichever is less.
   *
   * @param air the air at the craft
   * @return the power, W
   */
  public double maximumPower(Air air) {
    return Math.min(si(TAKE_OFF_POWER) * si(DRIVE_TRAIN_LIMIT), capability(air));
  }

  /**
   * The most power that may be used.
   *
   * @param air the air at the craft
   * @return the power, W
   */
  public double takeOffPower(Air air) {
    return Math.min(si(TAKE_OFF_POWER), capability(air));
  }

  private double capability(Air air) {
    return si(SEA_LEVEL_POWER) * engine.lapse(air.densityRatio(), si(TURBINE_LAPSE));
  }

  /**
   * Hover induced velocity vh at the craft's weight.
   *
   * @param air the air at the craft
   * @return the velocity, m/s
   */
  public double hoverInducedVelocity(Air air) {
    return rotor.hoverInducedVelocity(weight(), air.density());
  }

  /**
   * Disc loading.
   *
   * @return weight over disc area, N/m2
   */
  public double discLoading() {
    return weight() / rotor.area();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Helicopter craft
        && name.equals(craft.name)
        && description.equals(craft.description)
        && sense == craft.sense
        && engine == craft.engine
        && numbers.equals(craft.numbers)
        && fitted.equals(craft.fitted);
  }

  @Override
  public int hashCode() {
    return name.hashCode() * 31 + numbers.hashCode();
  }

  @Override
  public String toString() {
    return name + " (" + numbers + ")";
  }
}
