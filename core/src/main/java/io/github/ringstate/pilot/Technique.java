package io.github.ringstate.pilot;

import io.github.ringstate.chance.RandomStream;
import io.github.ringstate.craft.RotationSense;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A built-in technique: what it is called, what the pilot does, whether it is a way out, its
 * numbers, how they vary between people, and how a recovery is made of them. A new technique is one
 * constant more, and one more in {@link #ALL}. The spreads are assumed throughout; no source gives
 * any.
 *
 * @param name the technique's name in files and options: one lower-case word, or several with
 *     hyphens
 * @param label the technique's name for people
 * @param text what the pilot does, as a part of a sentence; {@code {side}} stands for the side to
 *     which the tail rotor pushes
 * @param purpose what it is for; nothing that is not a way out may be presented as a recovery to
 *     choose
 * @param remark where it leads, or why it is not a way out: a sentence
 * @param parameters its numbers
 * @param spreads how some of them vary between people, those first that decide most of the loss:
 *     evenly spread pilots are spread best over what is drawn first
 * @param maker makes the recovery
 */
public record Technique(
    String name,
    String label,
    String text,
    Purpose purpose,
    String remark,
    List<Parameter> parameters,
    List<Spread> spreads,
    Function<ParameterSet, Recovery> maker)
    implements Pilots {

  /** What a technique is for. */
  public enum Purpose {
    /** To take the rotor out of its own wake. */
    WAY_OUT,
    /** Taken for a way out, and none. */
    MISTAKEN,
    /** Nothing is done. */
    NOTHING
  }

  /** What stands beside a technique that is mistaken for a way out. */
  public static final String NOT_A_WAY_OUT = "not a way out";

  /** Nose down, collective reduced, power back with airspeed. */
  public static final Technique FORWARD =
      new Technique(
          "forward",
          "forward",
          "nose down, collective reduced, power back as airspeed comes, then climb away",
          Purpose.WAY_OUT,
          "The rotor leaves its wake ahead.",
          Forward.PARAMETERS,
          List.of(
              Spread.normal(Forward.RATE, 3),
              Spread.normal(Forward.POWER_AIRSPEED, 4),
              Spread.even(Hands.COLLECTIVE_LATER, -0.5, 1),
              Spread.normal(Forward.NOSE_DOWN, 4),
              Spread.normal(Forward.COLLECTIVE_RATE, 2),
              Spread.normal(Forward.COLLECTIVE_REDUCTION, 0.5),
              Spread.normal(Forward.EXIT_AIRSPEED, 4),
              Spread.normal(PowerSetting.CLIMB_POWER, 4)),
          Forward::new);

  /** Climb power and bank to the side the tail rotor pushes to. */
  public static final Technique LATERAL =
      new Technique(
          "lateral",
          "lateral",
          "climb power, power pedal to hold the heading, bank to the side the tail rotor pushes to"
              + " ({side}), level once out",
          Purpose.WAY_OUT,
          "The rotor leaves its wake to the side.",
          Lateral.PARAMETERS,
          List.of(
              Spread.normal(Lateral.BANK, 4),
              Spread.normal(Lateral.RATE, 5),
              Spread.normal(Lateral.COLLECTIVE_RATE, 2),
              Spread.normal(PowerSetting.CLIMB_POWER, 4),
              Spread.normal(Lateral.EXIT_AIRSPEED, 3),
              Spread.even(Hands.COLLECTIVE_LATER, -0.5, 1)),
          Lateral::new);

  /** Collective down and nose down, then a flare into powered flight. */
  public static final Technique AUTOROTATION =
      new Technique(
          "autorotation",
          "autorotation",
          "collective down, nose down, then a flare back into powered flight",
          Purpose.WAY_OUT,
          "The rotor leaves the ring state below, in autorotation, and its wake ahead.",
          Autorotation.PARAMETERS,
          List.of(
              Spread.normal(Autorotation.NOSE_DOWN, 3),
              Spread.normal(Autorotation.FLARE_AIRSPEED, 5),
              Spread.normal(Autorotation.RATE, 3),
              Spread.normal(Autorotation.COLLECTIVE_KEPT, 0.5),
              Spread.even(Hands.COLLECTIVE_LATER, -0.5, 1),
              Spread.normal(Autorotation.COLLECTIVE_RATE, 2),
              Spread.normal(PowerSetting.CLIMB_POWER, 4),
              Spread.normal(Autorotation.FLARE, 3)),
          Autorotation::new);

  /** Power alone. */
  public static final Technique COLLECTIVE =
      new Technique(
          "collective",
          "collective",
          "all the power there is, the rotor speed kept, and nothing else",
          Purpose.MISTAKEN,
          "Not a way out: the rotor stays in its own wake. Handbooks hold that pulling collective in a"
              + " developed ring state makes the sink worse, which the model cannot show.",
          CollectiveOnly.PARAMETERS,
          List.of(
              Spread.normal(CollectiveOnly.POWER, 5),
              Spread.normal(CollectiveOnly.COLLECTIVE_RATE, 2)),
          CollectiveOnly::new);

  /** The lever raised, whatever the rotor does. */
  public static final Technique COLLECTIVE_RAISED =
      new Technique(
          "collective-raised",
          "collective raised",
          "the collective lever raised by a set angle and nothing else, whatever the rotor speed does",
          Purpose.MISTAKEN,
          "Not a way out: the rotor stays in its own wake, and slows where more power is asked for"
              + " than there is.",
          CollectiveRaised.PARAMETERS,
          List.of(
              Spread.normal(CollectiveRaised.COLLECTIVE_RAISED, 1),
              Spread.normal(CollectiveRaised.COLLECTIVE_RATE, 2)),
          CollectiveRaised::new);

  /** Nothing. */
  public static final Technique NONE =
      new Technique(
          "none",
          "none",
          "nothing is done",
          Purpose.NOTHING,
          "Not a way out: nothing is done.",
          NoRecovery.PARAMETERS,
          List.of(),
          NoRecovery::new);

  /** All of them. */
  public static final List<Technique> ALL =
      List.of(FORWARD, LATERAL, AUTOROTATION, COLLECTIVE, COLLECTIVE_RAISED, NONE);

  /** The technique of an encounter or a sweep unless another is asked for. */
  public static final Technique STANDARD = FORWARD;

  /**
   * Finds a technique.
   *
   * @param name its name
   * @return the technique, or empty if none has that name
   */
  public static Optional<Technique> named(String name) {
    return ALL.stream().filter(technique -> technique.name().equals(name)).findFirst();
  }

  /**
   * The recovery with the standard value of every number.
   *
   * @return the recovery
   */
  public Recovery standard() {
    return maker.apply(ParameterSet.standard(parameters));
  }

  /**
   * The recovery with standard numbers but for one.
   *
   * @param parameter one of the parameters of the technique
   * @param value its value, in the parameter's unit
   * @return the recovery
   * @throws IllegalArgumentException if the value is outside the parameter's range
   */
  public Recovery with(Parameter parameter, double value) {
    return maker.apply(ParameterSet.standard(parameters).with(parameter, value));
  }

  /**
   * Whether the technique is meant to take the rotor out of its own wake.
   *
   * @return false for power alone and for nothing at all
   */
  public boolean wayOut() {
    return purpose == Purpose.WAY_OUT;
  }

  /**
   * Whether the technique is taken for a way out and is none.
   *
   * @return true for power alone
   */
  public boolean isMistaken() {
    return purpose == Purpose.MISTAKEN;
  }

  /**
   * The technique's name for people, with what it is not.
   *
   * @return the label; behind it, where the technique is mistaken, {@link #NOT_A_WAY_OUT}
   */
  public String shown() {
    return isMistaken() ? label + " (" + NOT_A_WAY_OUT + ")" : label;
  }

  /**
   * What the pilot does.
   *
   * @param sense which way the main rotor turns
   * @return a part of a sentence
   */
  public String description(RotationSense sense) {
    return text.replace("{side}", sense.tailPush() > 0 ? "right" : "left");
  }

  /** The name, and how its numbers vary between people. */
  @Override
  public String toString() {
    return name + " " + spreads;
  }

  @Override
  public Recovery draw(RandomStream draws) {
    ParameterSet numbers = ParameterSet.standard(parameters);
    for (Spread spread : spreads) {
      numbers = numbers.with(spread.parameter(), spread.value(draws.uniform()));
    }
    return maker.apply(numbers);
  }
}
