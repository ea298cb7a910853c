package outside;

import io.github.ringstate.dynamics.Controls;
import io.github.ringstate.pilot.Cockpit;
import io.github.ringstate.pilot.Phase;
import io.github.ringstate.pilot.Recovery;
import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/**
 * A recovery: nose down and bank together, then level.
 *
 * @param numbers a value for each of {@link #PARAMETERS}
 */
public record Diagonal(ParameterSet numbers) implements Recovery {

  /** How far the craft leans. Default 11 deg, range 3 to 20 deg. */
  public static final Parameter LEAN =
      Parameter.of("lean", Unit.DEGREE, 3, 20, 11, "invented for a test");

  /** All numbers. */
  public static final List<Parameter> PARAMETERS = List.of(LEAN);

  /** The recovery with its standard numbers. */
  public Diagonal() {
    this(ParameterSet.standard(PARAMETERS));
  }

  @Override
  public String name() {
    return "diagonal";
  }

  @Override
  public List<Phase> phases() {
    double lean = numbers.si(LEAN);
    return List.of(
        Phase.of(
            "out",
            (seen, controls) -> lean(lean, seen, controls),
            seen -> seen.forwardAirspeed() - 6),
        Phase.last("level", (seen, controls) -> lean(0, seen, controls)));
  }

  private static void lean(double lean, Cockpit seen, Controls controls) {
    controls.pitch(seen.hoverPitch() - lean, 0.3);
    controls.bank(seen.hoverBank() + seen.tailPush() * lean, 0.3);
    controls.collective(seen.hoverCollective(), 0.1);
  }
}
