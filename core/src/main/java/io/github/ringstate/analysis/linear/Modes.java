package io.github.ringstate.analysis.linear;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.ejml.data.Complex_F64;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;
import org.hipparchus.complex.Complex;

/**
 * The modes of a matrix, by EJML's QR algorithm.
 *
 * <p>The participation of a coordinate k in an eigenvalue is how the eigenvalue changes with the
 * k-th element of the diagonal. By the minors of the matrix that is the product of (eigenvalue - m)
 * over the eigenvalues m of the matrix without row and column k, over the product of (eigenvalue -
 * l) over the other eigenvalues l; no eigenvector is needed. Coordinates lend their names from the
 * strongest participation down, each once.
 */
final class Modes {

  /** A pair of complex eigenvalues has imaginary parts beyond this part of its size. */
  private static final double ROUNDING = 1e-12;

  private Modes() {}

  static List<Mode> of(DMatrixRMaj matrix, List<Coordinate> coordinates) {
    List<Complex> values = eigenvalues(matrix);
    int n = values.size();
    List<List<Complex>> parts = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      parts.add(new ArrayList<>());
    }
    for (int k = 0; k < n; k++) {
      List<Complex> without = eigenvalues(minor(matrix, k));
      for (int i = 0; i < n; i++) {
        parts.get(i).add(participation(i, values, without));
      }
    }
    String[] names = names(parts, coordinates);
    List<Mode> modes = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Complex value = values.get(i);
      if (value.getImaginary() >= 0) {
        String name = names[i];
        for (int j = 0; value.getImaginary() > 0 && j < n; j++) {
          if (values.get(j).equals(value.conjugate())) {
            name += ", " + names[j];
          }
        }
        modes.add(new Mode(name, value.getReal(), value.getImaginary(), parts.get(i)));
      }
    }
    modes.sort(Comparator.comparingDouble(Mode::real).reversed());
    return List.copyOf(modes);
  }

  /** The eigenvalues, rounded pairs made real. */
  static List<Complex> eigenvalues(DMatrixRMaj matrix) {
    List<Complex> values = new ArrayList<>();
    if (matrix.getNumRows() == 0) {
      return values;
    }
    EigenDecomposition_F64<DMatrixRMaj> eigen =
        DecompositionFactory_DDRM.eig(matrix.getNumRows(), false);
    if (!eigen.decompose(matrix.copy())) {
      throw new ArithmeticException("the eigenvalues of the linear model were not found");
    }
    for (int i = 0; i < eigen.getNumberOfEigenvalues(); i++) {
      Complex_F64 value = eigen.getEigenvalue(i);
      boolean isReal = Math.abs(value.imaginary) <= ROUNDING * Math.abs(value.real);
      values.add(new Complex(value.real, isReal ? 0 : value.imaginary));
    }
    return values;
  }

  private static DMatrixRMaj minor(DMatrixRMaj matrix, int without) {
    int n = matrix.getNumRows() - 1;
    DMatrixRMaj minor = new DMatrixRMaj(n, n);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        minor.set(i, j, matrix.get(i < without ? i : i + 1, j < without ? j : j + 1));
      }
    }
    return minor;
  }

  private static Complex participation(int which, List<Complex> values, List<Complex> without) {
    Complex value = values.get(which);
    Complex part = Complex.ONE;
    int next = 0;
    for (int j = 0; j < values.size(); j++) {
      if (j != which) {
        part =
            part.multiply(value.subtract(without.get(next))).divide(value.subtract(values.get(j)));
        next++;
      }
    }
    return part;
  }

  private static String[] names(List<List<Complex>> parts, List<Coordinate> coordinates) {
    int n = parts.size();
    record Claim(int mode, int coordinate, double strength) {}
    List<Claim> claims = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < n; k++) {
        claims.add(new Claim(i, k, parts.get(i).get(k).norm()));
      }
    }
    claims.sort(Comparator.comparingDouble(Claim::strength).reversed());
    String[] names = new String[n];
    boolean[] taken = new boolean[n];
    for (Claim claim : claims) {
      if (names[claim.mode()] == null && !taken[claim.coordinate()]) {
        names[claim.mode()] = coordinates.get(claim.coordinate()).label();
        taken[claim.coordinate()] = true;
      }
    }
    return names;
  }
}
