package io.github.ringstate.analysis.linear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.ejml.data.DMatrixRMaj;
import org.hipparchus.complex.Complex;
import org.hipparchus.linear.EigenDecompositionNonSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.junit.jupiter.api.Test;

class ModesTest {

  private static final List<Coordinate> THREE =
      List.of(Coordinate.HEAVE, Coordinate.INFLOW, Coordinate.ROTOR_SPEED);

  /** A damped oscillator, s^2 + 2 d s + w^2, by the formula for a quadratic. */
  @Test
  void anOscillatorHasOneModeOfTwoCoordinates() {
    double damping = 0.3;
    double frequency = 2;
    List<Mode> modes =
        Modes.of(
            new DMatrixRMaj(new double[][] {{0, 1}, {-frequency * frequency, -2 * damping}}),
            List.of(Coordinate.HEAVE, Coordinate.INFLOW));
    assertEquals(1, modes.size());
    assertEquals(-damping, modes.get(0).real(), 1e-14);
    assertEquals(
        Math.sqrt(frequency * frequency - damping * damping), modes.get(0).imaginary(), 1e-14);
    assertTrue(modes.get(0).name().contains("heave") && modes.get(0).name().contains("inflow"));
    assertEquals(Math.log(2) / damping, modes.get(0).halfTime().orElseThrow(), 1e-12);
  }

  /** Each mode of a matrix that hardly couples is that of one coordinate. */
  @Test
  void modesAreNamedByWhatTakesPartMost() {
    List<Mode> modes =
        Modes.of(
            new DMatrixRMaj(new double[][] {{-3, 0.1, 0}, {0.2, 1, 0.1}, {0.1, 0, -1}}), THREE);
    assertEquals(
        List.of("inflow", "rotor speed", "heave"), modes.stream().map(Mode::name).toList());
  }

  /**
   * Eigenvalues by Hipparchus, and participation by the eigenvalue's change with an element of the
   * diagonal: what it is by definition, by differences.
   */
  @Test
  void participationIsTheChangeWithTheDiagonal() {
    double[][] matrix = {{-0.4, 1.1, 0.2}, {-2, -0.7, 0.5}, {0.3, 0.6, -1.9}};
    List<Mode> modes = Modes.of(new DMatrixRMaj(matrix), THREE);
    Complex[] values =
        new EigenDecompositionNonSymmetric(MatrixUtils.createRealMatrix(matrix)).getEigenvalues();
    for (Mode mode : modes) {
      Complex value = new Complex(mode.real(), mode.imaginary());
      assertTrue(
          List.of(values).stream().anyMatch(v -> v.subtract(value).norm() < 1e-12),
          "no eigenvalue " + value);
      Complex sum = Complex.ZERO;
      for (int k = 0; k < 3; k++) {
        Complex part = mode.participation().get(k);
        sum = sum.add(part);
        double step = 1e-6;
        Complex change = moved(matrix, k, step, value).subtract(moved(matrix, k, -step, value));
        assertEquals(0, change.divide(2 * step).subtract(part).norm(), 1e-7);
      }
      assertEquals(0, sum.subtract(1).norm(), 1e-12);
    }
  }

  private static Complex moved(double[][] matrix, int k, double by, Complex near) {
    DMatrixRMaj changed = new DMatrixRMaj(matrix);
    changed.add(k, k, by);
    return Modes.eigenvalues(changed).stream()
        .min((a, b) -> Double.compare(a.subtract(near).norm(), b.subtract(near).norm()))
        .orElseThrow();
  }

  @Test
  void theLeastDampedModeComesFirstAndOneAloneIsItsCoordinate() {
    DMatrixRMaj three = new DMatrixRMaj(new double[][] {{-2, 0, 0}, {0, 0.5, 0}, {0, 0, -1}});
    List<Mode> modes =
        Modes.of(three, List.of(Coordinate.SURGE, Coordinate.SWAY, Coordinate.HEAVE));
    assertEquals(List.of(0.5, -1.0, -2.0), modes.stream().map(Mode::real).toList());
    Mode alone = Modes.of(new DMatrixRMaj(new double[][] {{-3}}), List.of(Coordinate.HEAVE)).get(0);
    assertEquals("heave", alone.name());
    assertEquals(-3, alone.real());
  }

  /** A speed that nothing damps stays as it is. */
  @Test
  void aNeutralModeNeitherGrowsNorFalls() {
    Mode neutral =
        Modes.of(new DMatrixRMaj(new double[][] {{0}}), List.of(Coordinate.SURGE)).get(0);
    assertFalse(neutral.grows());
    assertEquals(OptionalDouble.empty(), neutral.doubleTime());
    assertEquals(OptionalDouble.empty(), neutral.halfTime());
  }
}
