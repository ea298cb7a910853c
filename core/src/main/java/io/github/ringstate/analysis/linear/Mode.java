package io.github.ringstate.analysis.linear;

import java.util.List;
import java.util.OptionalDouble;
import org.hipparchus.complex.Complex;
import org.hipparchus.util.FastMath;

/**
 * A way in which a small disturbance dies away or grows: exp(real t), turning with frequency
 * imaginary.
 *
 * @param name the coordinate that takes part in it most; two of them for a pair of complex
 *     eigenvalues
 * @param real real part of the eigenvalue, 1/s: positive grows
 * @param imaginary imaginary part, rad/s, not negative; a pair of complex eigenvalues is one mode
 * @param participation how much each coordinate takes part, in the order of the model's; complex
 *     numbers whose sum is one
 */
public record Mode(String name, double real, double imaginary, List<Complex> participation) {

  /** Copies the participation. */
  public Mode {
    participation = List.copyOf(participation);
  }

  /**
   * Whether a disturbance grows.
   *
   * @return true if the real part is positive
   */
  public boolean grows() {
    return real > 0;
  }

  /**
   * Time in which a disturbance grows to twice its size.
   *
   * @return the time, s; empty if it does not grow
   */
  public OptionalDouble doubleTime() {
    return grows() ? OptionalDouble.of(FastMath.log(2) / real) : OptionalDouble.empty();
  }

  /**
   * Time in which a disturbance falls to half its size.
   *
   * @return the time, s; empty if it does not fall
   */
  public OptionalDouble halfTime() {
    return real < 0 ? OptionalDouble.of(-FastMath.log(2) / real) : OptionalDouble.empty();
  }
}
