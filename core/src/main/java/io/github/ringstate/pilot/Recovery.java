package io.github.ringstate.pilot;

import io.github.ringstate.quantity.ParameterSet;
import java.util.List;

/**
 * What a pilot does once the ring state is recognised: a list of phases. This is the interface to
 * write for a technique of one's own. How long a pilot takes to recognise is no part of it.
 *
 * <pre>
 * record Diagonal(double lean) implements Recovery {
 *   public String name() {
 *     return "diagonal";
 *   }
 *
 *   public List&lt;Phase&gt; phases() {
 *     return List.of(
 *         Phase.of("out", (seen, controls) -&gt; lean(lean, seen, controls), seen -&gt; seen.forwardAirspeed() - 6),
 *         Phase.last("level", (seen, controls) -&gt; lean(0, seen, controls)));
 *   }
 *
 *   private static void lean(double lean, Cockpit seen, Controls controls) {
 *     controls.pitch(seen.hoverPitch() - lean, 0.3);
 *     controls.bank(seen.hoverBank() + seen.tailPush() * lean, 0.3);
 *     controls.collective(seen.hoverCollective(), 0.1);
 *   }
 * }
 * </pre>
 *
 * <p>A recovery should be a value, as a record is: encounters with equal recoveries are equal then.
 */
public interface Recovery {

  /**
   * The technique's name.
   *
   * @return one lower-case word, or several with hyphens
   */
  String name();

  /**
   * What is done, one phase after the other. Each ends by its own {@link Phase#end}; the last one
   * has none.
   *
   * @return at least one phase
   */
  List<Phase> phases();

  /**
   * The numbers that the recovery was made of, to be read back.
   *
   * @return the numbers; none unless the recovery says otherwise
   */
  default ParameterSet numbers() {
    return ParameterSet.NONE;
  }
}
