package io.github.ringstate.validation.catalogue;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.ejml.data.Complex_F64;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;
import org.hipparchus.analysis.solvers.LaguerreSolver;

/**
 * Roots of polynomials by two libraries, neither of which the library under test uses for them.
 *
 * <p>Momentum theory squared is v^4 + 2 z v^3 + (x^2 + z^2) v^2 - 1 = 0; its positive real roots
 * are the induced velocities.
 */
final class Polynomial {

  /** An imaginary part below this, over the real part, is taken for rounding. */
  private static final double REAL = 1e-7;

  private Polynomial() {}

  /** Coefficients of the momentum equation, lowest power first. */
  private static double[] momentum(double x, double z) {
    return new double[] {-1, 0, x * x + z * z, 2 * z, 1};
  }

  /** The positive real roots of the momentum equation by Laguerre's method, in rising order. */
  static double[] momentumByLaguerre(double x, double z) {
    return positive(
        Arrays.stream(new LaguerreSolver(1e-15).solveAllComplex(momentum(x, z), 0.5))
            .map(root -> new double[] {root.getRealPart(), root.getImaginaryPart()})
            .toArray(double[][]::new));
  }

  /** The same by the eigenvalues of the companion matrix, in rising order. */
  static double[] momentumByEigenvalues(double x, double z) {
    return positive(
        Arrays.stream(eigenvalues(companion(momentum(x, z))))
            .map(root -> new double[] {root.getReal(), root.getImaginary()})
            .toArray(double[][]::new));
  }

  private static DMatrixRMaj companion(double[] c) {
    int n = c.length - 1;
    DMatrixRMaj matrix = new DMatrixRMaj(n, n);
    for (int i = 0; i < n; i++) {
      matrix.set(i, n - 1, -c[i] / c[n]);
      if (i > 0) {
        matrix.set(i, i - 1, 1);
      }
    }
    return matrix;
  }

  /**
   * The eigenvalues of a real matrix by EJML.
   *
   * @throws IllegalStateException if the decomposition fails
   */
  static Complex_F64[] eigenvalues(DMatrixRMaj matrix) {
    EigenDecomposition_F64<DMatrixRMaj> eigen =
        DecompositionFactory_DDRM.eig(matrix.getNumRows(), false);
    if (!eigen.decompose(matrix)) {
      throw new IllegalStateException("the eigenvalues of a matrix were not found");
    }
    return IntStream.range(0, eigen.getNumberOfEigenvalues())
        .mapToObj(eigen::getEigenvalue)
        .toArray(Complex_F64[]::new);
  }

  private static double[] positive(double[][] roots) {
    return Arrays.stream(roots)
        .filter(root -> root[0] > 0 && Math.abs(root[1]) < REAL * root[0])
        .mapToDouble(root -> root[0])
        .sorted()
        .toArray();
  }
}
