package io.github.ringstate.encounter;

import io.github.ringstate.air.Wind;
import io.github.ringstate.air.WindField;
import io.github.ringstate.dynamics.EquationsOfMotion;
import io.github.ringstate.dynamics.Trim;
import io.github.ringstate.pilot.Drift;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/**
 * From a hover over one point, headed into the wind: the collective is lowered a little and left
 * there, and the craft sinks into its own wake. In a wind of the encounter's own the hover is over
 * one point all the same.
 *
 * @param numbers a value for each of {@link #PARAMETERS}
 */
public record Settling(ParameterSet numbers) implements Entry {

  /** Wind from ahead. Default 0 kt, range 0 to 60 kt. */
  public static final Parameter WIND = Parameter.of("wind", Unit.KNOT, 0, 60, 0, "calm unless set");

  /**
   * How far the collective is lowered below that of the hover, over the inflow angle of the hover,
   * vh / Vtip. Default 45 %, range 10 to 150 %.
   */
  public static final Parameter COLLECTIVE_LOWERED =
      Parameter.of(
          "collective lowered",
          Unit.PERCENT,
          10,
          150,
          45,
          "assumed: three times what the slowest steady descent of the ring-state model needs, about"
              + " 1 degree in a light craft");

  /** How fast nose, bank and collective are moved. Default 2 deg/s, range 0.5 to 20 deg/s. */
  public static final Parameter RATE =
      Parameter.of("control rate", Unit.DEGREE_PER_SECOND, 0.5, 20, 2, "assumed: gently");

  /** All parameters of the entry. */
  public static final List<Parameter> PARAMETERS =
      List.of(WIND, COLLECTIVE_LOWERED, RATE, Drift.GAIN, Drift.MAXIMUM);

  /** Checks that there is a value for each of {@link #PARAMETERS}. */
  public Settling {
    numbers = numbers.only(PARAMETERS);
  }

  /** Creates the entry with the standard value of each parameter. */
  public Settling() {
    this(ParameterSet.standard(PARAMETERS));
  }

  @Override
  public String name() {
    return "settling";
  }

  @Override
  public WindField wind() {
    return new Wind(-numbers.si(WIND), 0);
  }

  @Override
  public Start start(EquationsOfMotion motion) {
    double[] wind = motion.windAtStart();
    double forward = 0 - wind[0];
    double sideways = 0 - wind[1];
    double climb = 0 - wind[2];
    double lowered = numbers.si(COLLECTIVE_LOWERED);
    double rate = numbers.si(RATE);
    Drift drift = Drift.of(numbers);
    Trim trim = Trim.find(motion, forward, sideways, climb);
    double tipSpeed = motion.craft().rotor().nominalSpeed() * motion.craft().rotor().radius();
    double held = trim.collective() - lowered * motion.hoverInduced() / tipSpeed;
    return new Start(
        trim.state(motion, forward, sideways, climb),
        (seen, controls) -> {
          controls.pitch(trim.pitch(), rate);
          controls.bank(drift.bank(seen, trim.bank()), rate);
          controls.collective(held, rate);
        });
  }
}
