package io.github.ringstate.pilot;

import io.github.ringstate.dynamics.Controls;
import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;

/**
 * For techniques that do one thing below a threshold and another above it. A law that jumps there
 * cannot be integrated: where it drives the quantity back to its threshold it would jump for ever.
 * Two ways out: {@link #share} makes the passage smooth; {@link #phases} goes from one law to the
 * other at an instant that is located exactly, and back only beyond a dead band.
 *
 * <pre>
 * double more = Switching.share(1 - seen.power(), 0.05);      // 1 well below full power, 0 well above
 * controls.collective(low + more * (high - low), 0.1);
 * </pre>
 */
public final class Switching {

  private Switching() {}

  /**
   * A switch that is smooth: its second derivative is continuous.
   *
   * @param quantity what decides, any unit
   * @param halfWidth how far on either side of zero the passage reaches, in that unit, positive
   * @return 0 up to {@code -halfWidth}, 1 from {@code halfWidth} on, one half at zero
   */
  public static double share(double quantity, double halfWidth) {
    if (!(halfWidth > 0)) {
      throw new IllegalArgumentException(
          "the half width of a switch must be positive, not " + halfWidth);
    }
    double t = 0.5 * (1 + quantity / halfWidth);
    if (t <= 0) {
      return 0;
    }
    return t >= 1 ? 1 : t * t * t * (10 - t * (15 - 6 * t));
  }

  /**
   * Phases without an end that go from one law to the other and back for as long as the flight
   * lasts: from {@code below} where the quantity rises through half the dead band, and back where
   * it falls through minus half of it. {@link Cockpit#sinceTechniqueBegan} counts from the last
   * change.
   *
   * @param name the name of the phases
   * @param quantity what decides, continuous along the flight, any unit
   * @param deadBand how far apart the two changes lie, in that unit, positive
   * @param below what is done first
   * @param above what is done once the quantity has risen
   * @return the phases, to stand last in a recovery
   */
  public static List<Phase> phases(
      String name,
      ToDoubleFunction<Cockpit> quantity,
      double deadBand,
      ControlLaw below,
      ControlLaw above) {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(quantity, "quantity");
    Objects.requireNonNull(below, "below");
    Objects.requireNonNull(above, "above");
    if (!(deadBand > 0)) {
      throw new IllegalArgumentException("a dead band must be positive, not " + deadBand);
    }
    return List.of(new Side(name, quantity, 1, 0.5 * deadBand, below, above));
  }

  /** One of two laws, until the quantity has passed to the side of the other. */
  private record Side(
      String name,
      ToDoubleFunction<Cockpit> quantity,
      int sign,
      double passed,
      ControlLaw law,
      ControlLaw other)
      implements Phase {

    @Override
    public void command(Cockpit seen, Controls controls) {
      law.command(seen, controls);
    }

    @Override
    public double end(Cockpit seen) {
      return sign * quantity.applyAsDouble(seen) - passed;
    }

    @Override
    public List<Phase> instead(Cockpit seen) {
      return List.of(new Side(name, quantity, -sign, passed, /* law= */ other, /* other= */ law));
    }
  }
}
