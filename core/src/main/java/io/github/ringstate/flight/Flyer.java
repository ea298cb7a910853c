package io.github.ringstate.flight;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A way of flying the equations of motion. */
public interface Flyer {

  /**
   * Flies one leg.
   *
   * @param motion the equations of motion
   * @param law what is done with the controls
   * @param start when the leg begins, s since the flight began
   * @param state the state then, in the order of {@link State}, SI units; not changed
   * @param end when the leg ends at the latest, s since the flight began; beyond {@code start}
   * @param events what to look for
   * @param history where to put samples of the flight, or null
   * @return how the leg ended
   */
  Leg fly(
      EquationsOfMotion motion,
      ControlLaw law,
      double start,
      double[] state,
      double end,
      List<FlightEvent> events,
      @Nullable History history);
}
