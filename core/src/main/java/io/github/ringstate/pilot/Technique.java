package io.github.ringstate.pilot;

import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A built-in technique: its numbers, how they vary between people, and how a recovery is made of
 * them. The spreads are assumed throughout; no source gives any.
 *
 * @param name the technique's name
 * @param parameters its numbers
 * @param spreads how some of them vary between people
 * @param maker makes the recovery
 */
public record Technique(
    String name,
    List<Parameter> parameters,
    List<Spread> spreads,
    Function<ParameterSet, Recovery> maker)
    implements Pilots {

  /** Nose down, collective reduced, power back with airspeed. */
  public static final Technique FORWARD =
      new Technique(
          "forward",
          Forward.PARAMETERS,
          List.of(
              Spread.normal(Forward.NOSE_DOWN, 4),
              Spread.normal(Forward.RATE, 3),
              Spread.normal(Forward.COLLECTIVE_REDUCTION, 0.5),
              Spread.normal(Forward.COLLECTIVE_RATE, 2),
              Spread.normal(Forward.POWER_AIRSPEED, 4),
              Spread.normal(Forward.EXIT_AIRSPEED, 4),
              Spread.normal(Forward.CLIMB_POWER, 4),
              Spread.even(Forward.COLLECTIVE_LATER, -0.5, 1)),
          Forward::new);

  /** Climb power and bank to the side the tail rotor pushes to. */
  public static final Technique LATERAL =
      new Technique(
          "lateral",
          Lateral.PARAMETERS,
          List.of(
              Spread.normal(Lateral.BANK, 4),
              Spread.normal(Lateral.RATE, 5),
              Spread.normal(Lateral.COLLECTIVE_RATE, 2),
              Spread.normal(Lateral.CLIMB_POWER, 4),
              Spread.normal(Lateral.EXIT_AIRSPEED, 3),
              Spread.even(Lateral.COLLECTIVE_LATER, -0.5, 1)),
          Lateral::new);

  /** Collective down and nose down, then a flare into powered flight. */
  public static final Technique AUTOROTATION =
      new Technique(
          "autorotation",
          Autorotation.PARAMETERS,
          List.of(
              Spread.normal(Autorotation.NOSE_DOWN, 3),
              Spread.normal(Autorotation.FLARE, 3),
              Spread.normal(Autorotation.RATE, 3),
              Spread.normal(Autorotation.COLLECTIVE_KEPT, 0.5),
              Spread.normal(Autorotation.COLLECTIVE_RATE, 2),
              Spread.normal(Autorotation.FLARE_AIRSPEED, 5),
              Spread.normal(Autorotation.CLIMB_POWER, 4),
              Spread.even(Autorotation.COLLECTIVE_LATER, -0.5, 1)),
          Autorotation::new);

  /** Power alone. */
  public static final Technique COLLECTIVE =
      new Technique(
          "collective",
          CollectiveOnly.PARAMETERS,
          List.of(
              Spread.normal(CollectiveOnly.POWER, 5),
              Spread.normal(CollectiveOnly.COLLECTIVE_RATE, 2)),
          CollectiveOnly::new);

  /** Nothing. */
  public static final Technique NONE =
      new Technique("none", List.of(), List.of(), numbers -> new NoRecovery());

  /** All of them. */
  public static final List<Technique> ALL =
      List.of(FORWARD, LATERAL, AUTOROTATION, COLLECTIVE, NONE);

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

  @Override
  public Recovery draw(Draws draws) {
    ParameterSet numbers = ParameterSet.standard(parameters);
    for (Spread spread : spreads) {
      numbers = numbers.with(spread.parameter(), spread.value(draws.uniform()));
    }
    return maker.apply(numbers);
  }
}
